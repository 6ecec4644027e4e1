-- The index tells how the finished picture of a setup looks, and where a setup was made that names a
-- location. Its reader sees the columns for that, of every studio, and no more of either table.

-- A location's document says how one gets in and what can hurt there, which is nothing of the
-- index's. So the database takes the point out of it, and the two cannot disagree.
alter table lampwright.location
  add column latitude_deg double precision
    generated always as (
      case when jsonb_typeof(document -> 'latitude_deg') = 'number'
        then (document ->> 'latitude_deg')::double precision end
    ) stored,
  add column longitude_deg double precision
    generated always as (
      case when jsonb_typeof(document -> 'longitude_deg') = 'number'
        then (document ->> 'longitude_deg')::double precision end
    ) stored;

create policy location_for_the_indexer on lampwright.location for select
  to lampwright_indexer using (true);
grant select (studio_id, id, deleted_at, latitude_deg, longitude_deg)
  on lampwright.location to lampwright_indexer;

-- The policy for its reader is there already: it asks which files are needed.
grant select (studio_id, id, setup_id, kind, changed_at, statistics)
  on lampwright.picture to lampwright_indexer;
