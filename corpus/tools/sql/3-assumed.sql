-- The smallest conductor of the other metal that carries as much (Table 250.66 and 250.102(C)(1), the sentences on unlike metals).
create table ampacity as
with by_metal as (
  select edition, size, 'copper' as metal, 60 as celsius, copper60 as amperes from raceway_ampacity
  union all select edition, size, 'copper', 75, copper75 from raceway_ampacity
  union all select edition, size, 'copper', 90, copper90 from raceway_ampacity
  union all select edition, size, 'aluminum', 60, aluminum60 from raceway_ampacity
  union all select edition, size, 'aluminum', 75, aluminum75 from raceway_ampacity
  union all select edition, size, 'aluminum', 90, aluminum90 from raceway_ampacity
)
select edition, size, area, standard, metal, celsius, cast(amperes as integer) as amperes
from by_metal join named using (edition, size)
where amperes is not null;

create index ampacity_by_area on ampacity (edition, metal, celsius, area);

-- A size that the table leaves out counts as the next larger that it has.
create table assumed as
with installed as (
  select edition, size, area as own, metal, read, celsius
  from named cross join question
  where metal <> read and metal <> 'both'
),
carried as (
  select installed.*, (
    select amperes from ampacity as a
    where a.edition = installed.edition and a.metal = installed.metal and a.celsius = installed.celsius and a.area >= own
    order by a.area limit 1
  ) as amperes
  from installed
)
-- Where no single conductor carries as much: the area of equal conductance, aluminum having 61 percent of copper's.
select edition, size, metal, read, celsius, coalesce(
  (
    select min(a.area) from ampacity as a
    where a.edition = carried.edition and a.metal = carried.read and a.celsius = carried.celsius
    and a.amperes >= carried.amperes and a.standard
  ),
  (own * 100 + 60) / 61
) as area
from carried;

create index assumed_by_size on assumed (edition, size, metal, read, celsius);
