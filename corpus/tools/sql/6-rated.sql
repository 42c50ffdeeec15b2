-- Table 250.122 by the rating of the device.
create table rated as
with by_metal as (
  select edition, cast(ratingThrough as integer) as through, 'copper' as metal, copper as size from equipment_grounding
  union all
  select edition, cast(ratingThrough as integer), 'aluminum', aluminum from equipment_grounding
)
select by_metal.edition, through, metal, area as required
from by_metal join named on named.edition = by_metal.edition and named.size = by_metal.size;

-- Every edge of a row, one ampere below it and one above, and what the table asks there.
create table device as
with edge as (
  select distinct through + step as amperes
  from rated cross join (select -1 as step union select 0 union select 1)
  where through + step <= (select max(through) from rated)
)
select edition, amperes, metal, min(required) as area
from edge join rated on through >= amperes
group by edition, amperes, metal;

-- Of a circuit: limited to its conductors of the same metal, the set or one of them (250.122(A), 250.102(D)), and then the minimum size.
create view equipment as
with policy as (
  select p.policy, p.edition, cap, copper.area as floorCopper, aluminum.area as floorAluminum
  from rating_policies as p
  left join named as copper on copper.edition = p.edition and copper.size = p.floorCopper
  left join named as aluminum on aluminum.edition = p.edition and aluminum.size = p.floorAluminum
)
select policy, edition, amperes, device.metal as read, supply.metal, size, sets, max(
  case when supply.metal = device.metal
    then min(device.area, case cap when 'set' then corresponding when 'conductor' then own end)
    else device.area end,
  coalesce(case device.metal when 'copper' then floorCopper else floorAluminum end, 0)
) as area
from policy
join device using (edition)
join supply using (edition)
where supply is null and sets in (1, 2, 5) and celsius = 75 and supply.read = device.metal;

-- Of water piping in a building on a feeder, where the device decides (250.104(A)(3)): never above the feeder's largest conductor.
create view building_piping as
select edition, amperes, device.metal as read, supply.metal, size, sets,
  case when supply.metal = device.metal then min(device.area, own) else device.area end as area
from placements as p
join device using (edition)
join supply using (edition)
where p.fact = 'building-piping-goes-by' and p.value = 'device'
and supply is null and sets in (1, 2) and celsius = 75 and supply.read = device.metal;

-- Metal of a cable tray (Table 392.60(A), since 2020 392.60(B)), as printed in square millimeters; nothing where the tray may not serve.
create view tray as
with by_metal as (
  select edition, cast(ratingThrough as integer) as through, 'steel' as metal, steelSquareMillimeters as least from tray_as_conductor
  union all
  select edition, cast(ratingThrough as integer), 'aluminum', aluminumSquareMillimeters from tray_as_conductor
),
edge as (select distinct edition, metal, through + step as amperes from by_metal cross join (select -1 as step union select 0 union select 1))
select edge.edition, edge.amperes, edge.metal, (
  select cast(least as real) from by_metal as b
  where b.edition = edge.edition and b.metal = edge.metal and b.through >= edge.amperes and least is not null
  order by b.through limit 1
) as least
from edge;
