-- The log of the day and what people wrote beside a setup, each with every revision.

-- A take's number and its key are never given a second time, not even after it was deleted: the
-- rows stay. What finds takes is taken from the document by the database where it may change.
create table lampwright.take (
  studio_id text not null,
  id text not null,
  revision integer not null,
  setup_id text not null,
  setup_revision integer not null,
  taken_at timestamptz not null,
  day date not null,
  number integer not null,
  client_key text not null,
  kept text not null generated always as (coalesce(document ->> 'kept', 'undecided')) stored,
  label text not null,
  document jsonb not null,
  created_at timestamptz not null,
  created_by text not null,
  changed_at timestamptz not null,
  changed_by text not null,
  deleted_at timestamptz,
  constraint take_pk primary key (studio_id, id),
  constraint take_of_revision foreign key (studio_id, setup_id, setup_revision)
    references lampwright.setup_revision (studio_id, setup_id, revision),
  constraint take_created_by_person foreign key (created_by) references lampwright.person (id),
  constraint take_changed_by_person foreign key (changed_by) references lampwright.person (id),
  constraint take_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint take_revision_counts_from_1 check (revision >= 1),
  constraint take_number_counts_from_1 check (number >= 1),
  constraint take_kept_is_known check (kept in ('yes', 'no', 'undecided')),
  constraint take_number_once unique (studio_id, setup_id, day, number),
  constraint take_client_key_once unique (studio_id, setup_id, client_key)
);
create index take_newest_first on lampwright.take
  (studio_id, setup_id, taken_at desc, id desc) where deleted_at is null;

create table lampwright.take_revision (
  studio_id text not null,
  take_id text not null,
  revision integer not null,
  label text not null,
  document jsonb not null,
  changed_at timestamptz not null,
  changed_by text not null,
  message text not null,
  deleted boolean not null,
  constraint take_revision_pk primary key (studio_id, take_id, revision),
  constraint take_revision_of_take foreign key (studio_id, take_id)
    references lampwright.take (studio_id, id),
  constraint take_revision_by_person foreign key (changed_by) references lampwright.person (id),
  constraint take_revision_message_is_bounded check (length(message) <= 1000)
);

create table lampwright.note (
  studio_id text not null,
  id text not null,
  revision integer not null,
  setup_id text not null,
  label text not null,
  document jsonb not null,
  created_at timestamptz not null,
  created_by text not null,
  changed_at timestamptz not null,
  changed_by text not null,
  deleted_at timestamptz,
  constraint note_pk primary key (studio_id, id),
  constraint note_of_setup foreign key (studio_id, setup_id)
    references lampwright.setup (studio_id, id),
  constraint note_created_by_person foreign key (created_by) references lampwright.person (id),
  constraint note_changed_by_person foreign key (changed_by) references lampwright.person (id),
  constraint note_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint note_revision_counts_from_1 check (revision >= 1)
);
create index note_oldest_first on lampwright.note (studio_id, setup_id, created_at desc, id desc)
  where deleted_at is null;

create table lampwright.note_revision (
  studio_id text not null,
  note_id text not null,
  revision integer not null,
  label text not null,
  document jsonb not null,
  changed_at timestamptz not null,
  changed_by text not null,
  message text not null,
  deleted boolean not null,
  constraint note_revision_pk primary key (studio_id, note_id, revision),
  constraint note_revision_of_note foreign key (studio_id, note_id)
    references lampwright.note (studio_id, id),
  constraint note_revision_by_person foreign key (changed_by) references lampwright.person (id),
  constraint note_revision_message_is_bounded check (length(message) <= 1000)
);

alter table lampwright.take enable row level security;
alter table lampwright.take force row level security;
alter table lampwright.take_revision enable row level security;
alter table lampwright.take_revision force row level security;
alter table lampwright.note enable row level security;
alter table lampwright.note force row level security;
alter table lampwright.note_revision enable row level security;
alter table lampwright.note_revision force row level security;

create policy take_in_its_studio on lampwright.take
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy take_revision_in_its_studio on lampwright.take_revision
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy note_in_its_studio on lampwright.note
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy note_revision_in_its_studio on lampwright.note_revision
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

grant select, insert, update (revision, label, document, changed_at, changed_by, deleted_at)
  on lampwright.take to lampwright_server;
grant select, insert on lampwright.take_revision to lampwright_server;
grant select, insert, update (revision, label, document, changed_at, changed_by, deleted_at)
  on lampwright.note to lampwright_server;
grant select, insert on lampwright.note_revision to lampwright_server;
