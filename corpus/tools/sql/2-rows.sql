-- The rows of Tables 250.66 and 250.102(C)(1) with areas for sizes: once for each metal of the supply and of the sized conductor.
create table bracket as
with both as (
  select 'electrode-conductor' as id, * from electrode_conductor
  union all
  select 'bonding-conductor', * from bonding_conductor
),
by_supply as (
  select id, edition, row, 'copper' as metal, supplyCopperThrough as through, copper, aluminum from both
  union all
  select id, edition, row, 'aluminum', supplyAluminumThrough, copper, aluminum from both
),
by_both as (
  select id, edition, row, metal, through, 'copper' as read, copper as size from by_supply
  union all
  select id, edition, row, metal, through, 'aluminum', aluminum from by_supply
)
-- Rows may end at an area that is no conductor's, such as 1100 kcmil.
select by_both.id, by_both.edition, metal, read,
  case when through like '% kcmil' then 1000 * cast(through as integer) else ending.area end as through, sized.area as required
from by_both
left join named as ending on ending.edition = by_both.edition and ending.size = by_both.through
left join named as sized on sized.edition = by_both.edition and sized.size = by_both.size;

-- Where the rows end, and what the open last row names; nothing where it only sends to the notes.
create table table_end as
select id, edition, metal, read, max(through) as threshold, max(required) filter (where through is null) as last
from bracket
group by id, edition, metal, read;

create index bracket_by_area on bracket (id, edition, metal, read, through);
