-- Ampacities under conditions of use, devices and dwellings: the tables as they are, and questions at every step of each.

-- The ampacity table, a row for each cell that has a value.
create table ampacity_cell as
select edition, size, 'copper' as metal, 60 as celsius, cast(copper60 as integer) as amperes from raceway_ampacity where copper60 is not null
union all select edition, size, 'copper', 75, cast(copper75 as integer) from raceway_ampacity where copper75 is not null
union all select edition, size, 'copper', 90, cast(copper90 as integer) from raceway_ampacity where copper90 is not null
union all select edition, size, 'aluminum', 60, cast(aluminum60 as integer) from raceway_ampacity where aluminum60 is not null
union all select edition, size, 'aluminum', 75, cast(aluminum75 as integer) from raceway_ampacity where aluminum75 is not null
union all select edition, size, 'aluminum', 90, cast(aluminum90 as integer) from raceway_ampacity where aluminum90 is not null;

-- The bands of ambient temperature, each with what it leaves of a rating.
create table ambient_band as
select edition, cast("through" as integer) as through, 60 as celsius, cast(factor60 as integer) as percent from ambient_correction
union all select edition, cast("through" as integer), 75, cast(factor75 as integer) from ambient_correction
union all select edition, cast("through" as integer), 90, cast(factor90 as integer) from ambient_correction;

-- Every limit of a band, the degree above it, and half a degree between two bands.
create view ambient_asked as
select distinct through as ambient from ambient_band
union select through + 1 from ambient_band
union select through + 0.5 from ambient_band
union select -20;

-- What an ambient temperature leaves of a rating: the band that it is in or, between two, the hotter one.
create table ambient_percent as
select b.edition, a.ambient, b.celsius, b.percent
from ambient_asked as a
join ambient_band as b
  on b.through = (select min(o.through) from ambient_band as o where o.edition = b.edition and o.through >= a.ambient)
where b.percent is not null;

-- Both ends of every row of the adjustment, and three conductors, which it leaves alone.
create view count_asked as
select 1 as conductors union select 3 union select 4
union select cast("through" as integer) from conductor_count_adjustment where "through" is not null
union select cast("through" as integer) + 1 from conductor_count_adjustment where "through" is not null;

create table count_percent as
select e.edition, c.conductors,
  case when c.conductors <= 3 then 100 else (
    select cast(o.percent as integer) from conductor_count_adjustment as o
    where o.edition = e.edition and (o."through" is null or cast(o."through" as integer) >= c.conductors)
    order by o."through" is null, cast(o."through" as integer) limit 1
  ) end as percent
from (select distinct edition from conductor_count_adjustment) as e cross join count_asked as c;

-- Ten-thousandths of an ampere: the column of the rating, corrected and adjusted, and not above the column of the terminations.
create view ampacity_answer as
select own.edition, own.size, own.metal, own.celsius as rated, a.ambient, c.conductors, t.celsius as terminations,
  min(own.amperes * a.percent * c.percent, t.amperes * 10000) as tenThousandths
from ampacity_cell as own
join ampacity_cell as t on t.edition = own.edition and t.size = own.size and t.metal = own.metal
join ambient_percent as a on a.edition = own.edition and a.celsius = own.celsius
join count_percent as c on c.edition = own.edition;

-- Every ampacity at, just below and just above a standard rating; the largest standard rating that conductors of it may have, rounded up or not.
create view device_answer as
with asked as (
  select distinct cast(amperes as real) + d.delta as ampacity
  from standard_ratings cross join (select 0 as delta union select 1 union select -1 union select 0.5) as d
  where cast(amperes as real) + d.delta > 0
),
kind as (select 'fuse' as device union select 'circuit-breaker'),
rating as (
  select edition, k.device, cast(amperes as integer) as amperes
  from standard_ratings as r cross join kind as k where r.device = 'any' or k.device = 'fuse'
),
beside as (
  select e.edition, k.device, a.ampacity,
    (select max(amperes) from rating as r where r.edition = e.edition and r.device = k.device and r.amperes <= a.ampacity) as below,
    (select min(amperes) from rating as r where r.edition = e.edition and r.device = k.device and r.amperes >= a.ampacity) as above
  from asked as a cross join kind as k cross join (select distinct edition from standard_ratings) as e
)
select edition, device, ampacity, below, case when above <= 800 then above else below end as rounded from beside;

-- The conductors of dwellings of every whole rating: by the list as long as there is one alone, from 2014 by 83 percent at 75 C.
create view dwelling_answer as
with recursive rating (amperes) as (select 100 union all select amperes + 1 from rating where amperes < 400),
metal as (select 'copper' as metal union select 'aluminum'),
rule as (select edition, value from placements where fact = 'dwelling-conductors-by')
select u.edition, m.metal, r.amperes,
  case u.value
    when 'list' then (
      select case m.metal when 'copper' then d.copper else d.aluminum end from dwelling_conductors as d
      where d.edition = u.edition and cast(d.amperes as integer) >= r.amperes order by cast(d.amperes as integer) limit 1
    )
    else (
      select c.size from ampacity_cell as c
      where c.edition = u.edition and c.metal = m.metal and c.celsius = 75 and c.amperes * 100 >= r.amperes * 83
      order by c.amperes limit 1
    )
  end as size
from rating as r cross join metal as m cross join rule as u;
