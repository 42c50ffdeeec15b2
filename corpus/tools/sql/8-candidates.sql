-- The conductors that may supply a load: questions on a grid, and every number of sets, size and metal that is lawful for each.

create table breaker_rating as
select edition, cast(amperes as integer) as amperes from standard_ratings where device = 'any';

-- Continuous load, all other load, whether the assembly is listed for all of it; hundredths of an ampere that they require before correction.
create view load_asked as
with asked (continuous, other, listed) as (
  values (0, 6, 0), (8, 2, 0), (12, 5, 0), (0, 30, 0), (44, 0, 0), (0, 100, 0), (80, 20, 0), (160, 40, 0), (400, 0, 1),
    (300, 100, 0), (0, 790, 0), (640, 0, 0), (500, 301, 0), (1200, 500, 0), (1500, 1200, 0)
)
select continuous, other, listed, case listed when 1 then 100 else 125 end * continuous + 100 * other as hundredths
from asked;

-- Each load with its device: none given, so that it is the smallest standard rating, or the rating after it, or three amperes above what the load requires.
create view protected_load as
with smallest as (
  select r.edition, l.*, min(r.amperes) as standard
  from load_asked as l join breaker_rating as r on r.amperes * 100 >= l.hundredths
  group by r.edition, l.continuous, l.other, l.listed
)
select *, null as given, standard as device from smallest
union all
select s.*, min(r.amperes), min(r.amperes)
from smallest as s join breaker_rating as r on r.edition = s.edition and r.amperes > s.standard
group by s.edition, s.continuous, s.other, s.listed
union all
select *, (hundredths + 99) / 100 + 3, (hundredths + 99) / 100 + 3 from smallest;

-- What is supplied, its conductors of a set that carry current, whether the next standard rating may protect them, and how far the search goes.
create view supplied_asked as
with asked (system, perSet, mayRoundUp, mostInRaceway, smallest, largest) as (
  values ('service', 3, 1, 1, null, null), ('feeder', 4, 1, 6, '10 AWG', '350 kcmil'),
    ('separately-derived', 2, 0, 3, null, '600 kcmil')
)
select * from asked;

-- Ambient temperatures, one of them between two bands, and what the terminations are marked for, if anything.
create table candidate_question as
with place (ambient, terminations) as (values (30, null), (40.5, null), (15, 75), (56, 90), (30, 90))
select row_number() over () as id, p.*, s.*, a.*, i.type as insulation, cast(i.dry as integer) as rated,
  coalesce(a.terminations, case when p.device <= 100 then 60 else 75 end) as ends
from protected_load as p cross join supplied_asked as s cross join place as a
join insulation_types as i on i.edition = p.edition and i.type in ('THW', 'THHN');

-- Sets, and how many of them are in each raceway: as many in one as in another.
create table set_division as
with recursive number (n) as (select 1 union all select n + 1 from number where n < 6)
select sets.n as sets, share.n as inRaceway
from number as sets join number as share on share.n <= sets.n and sets.n % share.n = 0;

-- What is left of a rating with so many conductors in a raceway.
create table raceway_percent as
with carrying as (select distinct inRaceway * perSet as conductors from set_division cross join supplied_asked),
edition as (select distinct edition from conductor_count_adjustment)
select e.edition, c.conductors,
  case when c.conductors <= 3 then 100 else (
    select max(cast(percent as integer)) from conductor_count_adjustment as o
    where o.edition = e.edition and (o."through" is null or cast(o."through" as integer) >= c.conductors)
  ) end as percent
from edition as e cross join carrying as c;

-- The most that may protect a small conductor (240.4(D)): the first of these ratings above which a larger one is named.
create table small_conductor as
with step (name, amperes) as (
  values ('least-above-seven-amperes', 7), ('least-above-ten-amperes', 10), ('least-above-fifteen-amperes', 15),
    ('least-above-twenty-amperes', 20), ('least-above-twenty-five-amperes', 25), ('least-above-thirty-amperes', 30)
),
least as (
  select n.edition, 'copper' as metal, n.copper as size, s.amperes from named_sizes as n join step as s using (name)
  union all select n.edition, 'aluminum', n.aluminum, s.amperes from named_sizes as n join step as s using (name)
)
select own.edition, own.size, least.metal, min(least.amperes) as amperes
from least
join named as required on required.edition = least.edition and required.size = least.size
join named as own on own.edition = least.edition and own.area < required.area
group by own.edition, own.size, least.metal;

create table tried_size as
select own.edition, own.size, own.metal, own.celsius as rated, t.celsius as ends, own.amperes, t.amperes as atEnds, n.area,
  (select amperes from small_conductor as s where s.edition = own.edition and s.size = own.size and s.metal = own.metal) as small
from ampacity_cell as own
join ampacity_cell as t on t.edition = own.edition and t.size = own.size and t.metal = own.metal
join named as n on n.edition = own.edition and n.size = own.size and n.standard;

create index tried_by_column on tried_size (edition, rated, ends);

-- Ten-thousandths of an ampere of all sets in their place, and whole amperes of all sets before correction.
create view candidate_tried as
select q.*, z.metal, z.size, z.area, z.small, d.sets, d.inRaceway, d.sets * min(z.amperes, z.atEnds) as before,
  d.sets * min(z.amperes * a.percent * r.percent, z.atEnds * 10000) as tenThousandths
from candidate_question as q
join ambient_percent as a on a.edition = q.edition and a.celsius = q.rated and a.ambient = q.ambient
join tried_size as z on z.edition = q.edition and z.rated = q.rated and z.ends = q.ends
join set_division as d on d.inRaceway <= q.mostInRaceway
join raceway_percent as r on r.edition = q.edition and r.conductors = d.inRaceway * q.perSet;

-- The device is not above the ampacity or, through 800 A, no standard rating lies between (240.4(B)); parallel conductors are 1/0 AWG or larger.
create view candidate_answer as
select t.id, t.metal, t.sets, t.inRaceway, t.size, t.tenThousandths, t.device * 10000 > t.tenThousandths as nextRating
from candidate_tried as t
where t.before * 100 >= t.hundredths
  and t.tenThousandths >= (t.continuous + t.other) * 10000
  and (t.small is null or t.device <= t.small)
  and (t.device * 10000 <= t.tenThousandths or (
    t.mayRoundUp and t.device <= 800 and not exists (
      select 1 from breaker_rating as r
      where r.edition = t.edition and r.amperes * 10000 >= t.tenThousandths and r.amperes < t.device
    )
  ))
  and (t.sets = 1 or t.area >= (select area from named as n where n.edition = t.edition and n.size = '1/0 AWG'))
  and (t.smallest is null or t.area >= (select area from named as n where n.edition = t.edition and n.size = t.smallest))
  and (t.largest is null or t.area <= (select area from named as n where n.edition = t.edition and n.size = t.largest));
