-- Where setups are made: each location with every revision, and which setups name it.

create table lampwright.location (
  studio_id text not null,
  id text not null,
  revision integer not null,
  name text not null,
  document jsonb not null,
  created_at timestamptz not null,
  created_by text not null,
  changed_at timestamptz not null,
  changed_by text not null,
  deleted_at timestamptz,
  constraint location_pk primary key (studio_id, id),
  constraint location_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint location_created_by_person foreign key (created_by) references lampwright.person (id),
  constraint location_changed_by_person foreign key (changed_by) references lampwright.person (id),
  constraint location_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint location_revision_counts_from_1 check (revision >= 1)
);
create index location_newest_first on lampwright.location (studio_id, changed_at desc, id desc)
  where deleted_at is null;

create table lampwright.location_revision (
  studio_id text not null,
  location_id text not null,
  revision integer not null,
  name text not null,
  document jsonb not null,
  changed_at timestamptz not null,
  changed_by text not null,
  message text not null,
  deleted boolean not null,
  constraint location_revision_pk primary key (studio_id, location_id, revision),
  constraint location_revision_of_location foreign key (studio_id, location_id)
    references lampwright.location (studio_id, id),
  constraint location_revision_by_person foreign key (changed_by) references lampwright.person (id),
  constraint location_revision_message_is_bounded check (length(message) <= 1000)
);

-- Taken from the document by the database, so that the two cannot disagree. Rows of locations are
-- never deleted, so the key holds for a location that has gone from the list too.
alter table lampwright.setup
  add column location_id text
    generated always as (document #>> '{occasion,place,location}') stored,
  add constraint setup_made_at_location foreign key (studio_id, location_id)
    references lampwright.location (studio_id, id);
create index setup_by_location on lampwright.setup
  (studio_id, location_id, changed_at desc, id desc)
  where location_id is not null and deleted_at is null;

alter table lampwright.location enable row level security;
alter table lampwright.location force row level security;
alter table lampwright.location_revision enable row level security;
alter table lampwright.location_revision force row level security;

create policy location_in_its_studio on lampwright.location
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy location_revision_in_its_studio on lampwright.location_revision
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

grant select, insert, update (revision, name, document, changed_at, changed_by, deleted_at)
  on lampwright.location to lampwright_server;
grant select, insert on lampwright.location_revision to lampwright_server;
