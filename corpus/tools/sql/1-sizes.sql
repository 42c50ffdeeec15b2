-- Sizes and areas of an edition (Chapter 9 Table 8), in whole circular mils; `named` holds also the sizes that only a table names.
create table named as
select edition, size, cast(area as integer) as area, standard = 'true' as standard
from conductor_properties;

create index named_by_size on named (edition, size);

-- The metals of the supply and of the sized conductor, and the temperature at which unlike metals are matched.
create table question as
with metal (name) as (values ('copper'), ('aluminum')),
temperature (celsius) as (values (60), (75), (90))
select supplied.name as metal, sized.name as read, celsius
from (select name from metal union all select 'both') as supplied
cross join metal as sized
cross join temperature
-- one metal against itself is not matched, so the temperature says nothing
where supplied.name <> sized.name or celsius = 75;
