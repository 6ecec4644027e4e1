-- Pictures of setups. Their bytes are files of the data folder, named by their SHA-256; here stands
-- what is known of them. Files go before rows, and rows go before files, so that a row never lacks
-- its file; what a crash leaves behind without a row is swept away at the next start.

create table lampwright.picture (
  studio_id text not null,
  id text not null,
  revision integer not null,
  kind text not null,
  document jsonb not null,
  created_at timestamptz not null,
  created_by text not null,
  changed_at timestamptz not null,
  changed_by text not null,
  deleted_at timestamptz,
  setup_id text not null,
  sha256 text not null,
  bytes bigint not null,
  media_type text not null,
  width integer not null,
  height integer not null,
  facts jsonb not null,
  statistics jsonb not null,
  constraint picture_pk primary key (studio_id, id),
  constraint picture_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint picture_of_setup foreign key (studio_id, setup_id)
    references lampwright.setup (studio_id, id),
  constraint picture_created_by_person foreign key (created_by) references lampwright.person (id),
  constraint picture_changed_by_person foreign key (changed_by) references lampwright.person (id),
  constraint picture_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint picture_revision_counts_from_1 check (revision >= 1),
  constraint picture_kind_is_known
    check (kind in ('final', 'untouched', 'contact_frame', 'behind_the_scenes', 'reference')),
  constraint picture_hash_is_whole check (sha256 ~ '^[0-9a-f]{64}$'),
  constraint picture_bytes_are_bounded check (bytes between 1 and 67108864),
  constraint picture_media_type_is_known
    check (media_type in ('image/jpeg', 'image/png', 'image/webp', 'image/tiff')),
  constraint picture_sides_are_bounded
    check (width between 1 and 30000 and height between 1 and 30000)
);
create index picture_newest_first
  on lampwright.picture (studio_id, setup_id, changed_at desc, id desc) where deleted_at is null;
create index picture_by_hash on lampwright.picture (sha256) where deleted_at is null;

create table lampwright.picture_revision (
  studio_id text not null,
  picture_id text not null,
  revision integer not null,
  kind text not null,
  document jsonb not null,
  changed_at timestamptz not null,
  changed_by text not null,
  message text not null,
  deleted boolean not null,
  constraint picture_revision_pk primary key (studio_id, picture_id, revision),
  constraint picture_revision_of_picture foreign key (studio_id, picture_id)
    references lampwright.picture (studio_id, id),
  constraint picture_revision_by_person foreign key (changed_by) references lampwright.person (id),
  constraint picture_revision_message_is_bounded check (length(message) <= 1000)
);

alter table lampwright.picture enable row level security;
alter table lampwright.picture force row level security;
alter table lampwright.picture_revision enable row level security;
alter table lampwright.picture_revision force row level security;

create policy picture_in_its_studio on lampwright.picture
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy picture_revision_in_its_studio on lampwright.picture_revision
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

-- Two studios may hold the same bytes, which lie in one file: whether it is still needed is asked
-- across studios, by the reader who can do nothing else, and of these two columns only.
create policy picture_for_the_indexer on lampwright.picture for select
  to lampwright_indexer using (true);

grant select, insert, update (revision, kind, document, changed_at, changed_by, deleted_at)
  on lampwright.picture to lampwright_server;
grant select, insert on lampwright.picture_revision to lampwright_server;
grant select (sha256, deleted_at) on lampwright.picture to lampwright_indexer;
