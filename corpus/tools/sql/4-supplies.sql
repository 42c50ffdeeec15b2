-- The supplies that are asked for, with both sums of the installed conductors and of those assumed in their place.

-- Supplies as they are listed: a row for each phase of each set. Of two metals, also what each metal makes alone.
create table counted as
with each_phase as (
  select n.edition, p.supply, setNumber, count, phase, p.metal, q.read, q.celsius, n.area as own, coalesce(a.area, n.area) as assumed
  from phase_of_set as p
  join named as n on n.size = p.size
  cross join (select distinct read, celsius from question) as q
  left join assumed as a
    on a.edition = n.edition and a.size = n.size and a.metal = p.metal and a.read = q.read and a.celsius = q.celsius
),
kind as (
  select supply, case count(distinct metal) when 1 then min(metal) else 'both' end as metal
  from phase_of_set group by supply
)
select e.*, kind.metal as of, true as whole from each_phase as e join kind using (supply)
union all
select e.*, e.metal, false from each_phase as e join kind using (supply) where kind.metal = 'both';

-- Phase by phase, the largest (250.28(D)(3)); and each set's largest conductor, added (250.64(D)(1), since 2023 also 250.102(C)(2)).
create table sums as
with by_phase as (
  select edition, supply, whole, of, read, celsius, sum(count * own) as own, sum(count * assumed) as assumed
  from counted group by edition, supply, whole, of, read, celsius, phase
),
by_set as (
  select edition, supply, whole, of, read, celsius, count, count * max(own) as own, count * max(assumed) as assumed, max(own) as one
  from counted group by edition, supply, whole, of, read, celsius, setNumber, count
),
corresponding as (
  select edition, supply, whole, of, read, celsius, max(own) as corresponding, max(assumed) as assumedCorresponding
  from by_phase group by edition, supply, whole, of, read, celsius
),
largest as (
  select edition, supply, whole, of, read, celsius, sum(own) as largest, sum(assumed) as assumedLargest, max(one) as own, sum(count) as sets
  from by_set group by edition, supply, whole, of, read, celsius
)
select * from corresponding join largest using (edition, supply, whole, of, read, celsius);

-- The grid, every standard size 1 to 20 times, where both sums are the same; and the listed supplies.
create table supply as
with recursive count (sets) as (select 1 union all select sets + 1 from count where sets < 20),
grid as (
  select edition, size, n.area as own, sets, metal, read, celsius, sets * n.area as installed, sets * a.area as assumed
  from named as n
  cross join count
  cross join question
  left join assumed as a using (edition, size, metal, read, celsius)
  where standard and metal <> 'both'
)
select edition, null as supply, true as whole, size, own, sets, metal, read, celsius,
  installed as corresponding, installed as largest, assumed as assumedCorresponding, assumed as assumedLargest
from grid
union all
select edition, supply, whole, null, own, sets, of, read, celsius, corresponding, largest, assumedCorresponding, assumedLargest
from sums
where not whole or (of, read, celsius) in (select metal, read, celsius from question);
