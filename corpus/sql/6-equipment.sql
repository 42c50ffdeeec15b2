-- Table 250.122 by the rating of the device, and its limit at the circuit conductors of the same metal: the set, or one conductor.
create table rated as
with by_metal as (
  select edition, cast(ratingThrough as integer) as through, 'copper' as metal, copper as size from equipment_grounding
  union all
  select edition, cast(ratingThrough as integer), 'aluminum', aluminum from equipment_grounding
)
select by_metal.edition, through, metal, area as required
from by_metal join named on named.edition = by_metal.edition and named.size = by_metal.size;

-- `device` holds ratings in whole amperes; the circuit conductors, where there are any, are those of `supply`.
create view equipment as
with policy as (
  select p.policy, p.edition, cap, copper.area as floorCopper, aluminum.area as floorAluminum
  from rating_policies as p
  left join named as copper on copper.edition = p.edition and copper.size = p.floorCopper
  left join named as aluminum on aluminum.edition = p.edition and aluminum.size = p.floorAluminum
),
rowed as (
  select policy.*, device.amperes, circuit.size, circuit.sets, circuit.own, circuit.total, circuit.metal, (
    select r.required from rated as r
    where r.edition = policy.edition and r.metal = circuit.metal and r.through >= device.amperes
    order by r.through limit 1
  ) as before
  from policy
  cross join device
  join circuit using (edition)
)
select policy, edition, amperes, metal, size, sets, max(
  min(before, coalesce(case cap when 'set' then total when 'conductor' then own end, before)),
  coalesce(case metal when 'copper' then floorCopper else floorAluminum end, 0)
) as area
from rowed;
