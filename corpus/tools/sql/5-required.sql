-- Every policy over every supply: row or 12.5 percent, of the installed conductors, of assumed ones, or the larger of both; then caps, then floors.
create view required as
with policy as (
  select p.policy, p.edition, p."table" as id, p.sum, oneEighth = 'true' as eighth, lastRowFloor = 'true' as keepsLast, cap, otherMaterial,
    ceiling_copper.area as ceilingCopper, ceiling_aluminum.area as ceilingAluminum,
    floor_copper.area as floorCopper, floor_aluminum.area as floorAluminum
  from policies as p
  left join named as ceiling_copper on ceiling_copper.edition = p.edition and ceiling_copper.size = p.ceilingCopper
  left join named as ceiling_aluminum on ceiling_aluminum.edition = p.edition and ceiling_aluminum.size = p.ceilingAluminum
  left join named as floor_copper on floor_copper.edition = p.edition and floor_copper.size = p.floorCopper
  left join named as floor_aluminum on floor_aluminum.edition = p.edition and floor_aluminum.size = p.floorAluminum
),
summed as (
  select policy.*, s.supply, s.whole, s.size, s.own, s.sets, s.metal, s.read, s.celsius,
    -- a supply of two metals is entered in the column of the sized conductor
    case s.metal when 'both' then s.read else s.metal end as entered,
    case sum when 'corresponding' then corresponding when 'largest' then largest end as total,
    case sum when 'corresponding' then assumedCorresponding when 'largest' then assumedLargest end as assumed
  from policy
  join supply as s using (edition)
),
asked as (
  select summed.*, e.last, case summed.metal when 'both' then assumed else total end > e.threshold as beyond, assumed > own.threshold as assumedBeyond
  from summed
  join table_end as e on e.id = summed.id and e.edition = summed.edition and e.metal = entered and e.read = summed.read
  join table_end as own on own.id = summed.id and own.edition = summed.edition and own.metal = summed.read and own.read = summed.read
),
decided as (
  select *, case
    when metal = 'both' then case otherMaterial when 'larger-of-both' then 'both' else 'assumed' end
    when metal = read or otherMaterial = 'never' then 'installed'
    when otherMaterial = 'always' then 'assumed'
    when otherMaterial = 'larger-through-threshold' then case when beyond then 'assumed' else 'both' end
    when not beyond then 'installed'
    when otherMaterial = 'larger-of-both' then 'both'
    when otherMaterial = 'above-threshold' then 'assumed'
    when otherMaterial = 'parallel-above-threshold' then case when sets = 1 then 'installed' else 'assumed' end
  end as decides
  from asked
),
ruled as (
  select *,
    case when decides in ('installed', 'both') then coalesce(
      (
        select required from bracket as b
        where b.id = decided.id and b.edition = decided.edition and b.metal = decided.entered and b.read = decided.read
        and b.through >= total order by b.through limit 1
      ),
      case when eighth then (total + 7) / 8 else last end
    ) end as byInstalled,
    case when decides in ('assumed', 'both') then coalesce(
      (
        select required from bracket as b
        where b.id = decided.id and b.edition = decided.edition and b.metal = decided.read and b.read = decided.read
        and b.through >= assumed order by b.through limit 1
      ),
      case when eighth then (assumed + 7) / 8 else last end
    ) end as byAssumed
  from decided
),
limited as (
  select *, max(coalesce(byInstalled, 0), coalesce(byAssumed, 0)) as before,
    case when metal <> read or not whole or cap = 'none' then null when cap = 'set' then total else own end as most,
    case read when 'copper' then ceilingCopper else ceilingAluminum end as ceiling,
    coalesce(case read when 'copper' then floorCopper else floorAluminum end, 0) as least,
    -- the last row stays as a floor by what is installed or by what is assumed in its place
    case when keepsLast and (beyond or decides in ('assumed', 'both') and assumedBeyond) then coalesce(last, 0) else 0 end as lastFloor
  from ruled
)
select policy, edition, supply, size, sets, metal, read, celsius,
  max(min(before, coalesce(most, before), coalesce(ceiling, before)), least, lastFloor) as area
from limited;

-- The standard size that has the area; nothing above the largest. A supply of two metals never needs less than its copper or its aluminum alone.
create view answer as
with whole as (
  select edition, policy, supply, size, sets, metal, read, celsius, area from required where supply is null
  union all
  select edition, policy, supply, null, null, null, read, celsius, max(area) from required
  where supply is not null group by edition, policy, supply, read, celsius
)
select whole.*, (
  select n.size from named as n
  where n.edition = whole.edition and n.standard and n.area >= whole.area
  order by n.area limit 1
) as named
from whole;
