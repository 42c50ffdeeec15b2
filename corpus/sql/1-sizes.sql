-- Sizes and areas of an edition (Chapter 9 Table 8), in whole circular mils; `named` holds also the sizes that only a table names.
create table named as
select edition, size, cast(area as integer) as area, standard = 'true' as standard
from conductor_properties;

create index named_by_size on named (edition, size);

-- Conductors of one kind in parallel, and the column in which the sized conductor is read.
create table supply as
with recursive count (sets) as (select 1 union all select sets + 1 from count where sets < 20),
metal (name) as (values ('copper'), ('aluminum')),
temperature (celsius) as (values (60), (75), (90))
select edition, size, area as own, sets, sets * area as total, of.name as metal, sized.name as read, celsius
from named
cross join count
cross join metal as of
cross join metal as sized
cross join temperature
where standard
-- one metal against itself is not matched by ampacity, so the column of temperature says nothing
and (of.name <> sized.name or celsius = 75);
