-- The two sums over sets with unlike phases; `phase_of_set` holds the area of one phase of one set, and how often the set is there.
create view sums as
with by_phase as (
  select supply, phase, sum(count * area) as area from phase_of_set group by supply, phase
),
by_set as (
  select supply, setNumber, max(count * area) as area from phase_of_set group by supply, setNumber
)
select supply,
  (select max(area) from by_phase where by_phase.supply = s.supply) as corresponding,
  (select sum(area) from by_set where by_set.supply = s.supply) as largest
from (select distinct supply from phase_of_set) as s;
