-- Every policy over every supply: row or one eighth, of the installed conductors, of assumed ones, or the larger of both; then caps, then floors.
create table required as
with policy as (
  select p.policy, p.edition, p."table" as id, oneEighth = 'true' as eighth, lastRowFloor = 'true' as keepsLast, cap, otherMaterial,
    ceiling_copper.area as ceilingCopper, ceiling_aluminum.area as ceilingAluminum,
    floor_copper.area as floorCopper, floor_aluminum.area as floorAluminum
  from policies as p
  left join named as ceiling_copper on ceiling_copper.edition = p.edition and ceiling_copper.size = p.ceilingCopper
  left join named as ceiling_aluminum on ceiling_aluminum.edition = p.edition and ceiling_aluminum.size = p.ceilingAluminum
  left join named as floor_copper on floor_copper.edition = p.edition and floor_copper.size = p.floorCopper
  left join named as floor_aluminum on floor_aluminum.edition = p.edition and floor_aluminum.size = p.floorAluminum
),
asked as (
  select policy.*, s.size, s.own, s.sets, s.total, s.metal, s.read, s.celsius, s.sets * a.area as assumed,
    e.threshold, e.last, s.total > e.threshold as beyond
  from policy
  join supply as s using (edition)
  join table_end as e on e.id = policy.id and e.edition = policy.edition and e.metal = s.metal and e.read = s.read
  left join assumed as a
    on a.edition = s.edition and a.size = s.size and a.metal = s.metal and a.read = s.read and a.celsius = s.celsius
),
decided as (
  select *, case
    when metal = read or otherMaterial = 'never' then 'installed'
    when otherMaterial = 'always' then 'assumed'
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
        where b.id = decided.id and b.edition = decided.edition and b.metal = decided.metal and b.read = decided.read
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
    case when metal <> read or cap = 'none' then null when cap = 'set' then total else own end as most,
    case read when 'copper' then ceilingCopper else ceilingAluminum end as ceiling,
    coalesce(case read when 'copper' then floorCopper else floorAluminum end, 0) as least,
    case when keepsLast and beyond then coalesce(last, 0) else 0 end as lastFloor
  from ruled
)
select policy, edition, size, sets, metal, read, celsius,
  max(min(before, coalesce(most, before), coalesce(ceiling, before)), least, lastFloor) as area
from limited;

-- The standard size that has the area; nothing above the largest.
create view answer as
select required.*, (
  select n.size from named as n
  where n.edition = required.edition and n.standard and n.area >= required.area
  order by n.area limit 1
) as named
from required;
