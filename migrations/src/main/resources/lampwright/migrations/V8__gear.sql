-- What a studio owns, each piece with every revision, and which kits use it.

create table lampwright.gear (
  studio_id text not null,
  id text not null,
  revision integer not null,
  name text not null,
  document jsonb not null,
  -- Taken from the document by the database, so that the two cannot disagree.
  kind text not null generated always as (document ->> 'kind') stored,
  created_at timestamptz not null,
  created_by text not null,
  changed_at timestamptz not null,
  changed_by text not null,
  deleted_at timestamptz,
  constraint gear_pk primary key (studio_id, id),
  constraint gear_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint gear_created_by_person foreign key (created_by) references lampwright.person (id),
  constraint gear_changed_by_person foreign key (changed_by) references lampwright.person (id),
  constraint gear_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint gear_revision_counts_from_1 check (revision >= 1),
  constraint gear_kind_is_known check (
    kind in ('head', 'pack', 'modifier', 'body', 'lens', 'gel', 'neutral_density', 'stand'))
);
create index gear_newest_first on lampwright.gear (studio_id, changed_at desc, id desc)
  where deleted_at is null;

create table lampwright.gear_revision (
  studio_id text not null,
  gear_id text not null,
  revision integer not null,
  name text not null,
  document jsonb not null,
  changed_at timestamptz not null,
  changed_by text not null,
  message text not null,
  deleted boolean not null,
  constraint gear_revision_pk primary key (studio_id, gear_id, revision),
  constraint gear_revision_of_gear foreign key (studio_id, gear_id)
    references lampwright.gear (studio_id, id),
  constraint gear_revision_by_person foreign key (changed_by) references lampwright.person (id),
  constraint gear_revision_message_is_bounded check (length(message) <= 1000)
);

-- Which gear the living kits use, as their documents say it.
create table lampwright.kit_gear (
  studio_id text not null,
  kit_id text not null,
  gear_id text not null,
  constraint kit_gear_pk primary key (studio_id, kit_id, gear_id),
  constraint kit_gear_of_kit foreign key (studio_id, kit_id)
    references lampwright.kit (studio_id, id),
  constraint kit_gear_is_gear foreign key (studio_id, gear_id)
    references lampwright.gear (studio_id, id)
);
create index kit_gear_by_gear on lampwright.kit_gear (studio_id, gear_id);

-- Kept by the database, so that whoever writes a kit cannot forget it. It has no rights of its own:
-- it writes what the writer may write.
create function lampwright.kit_gear_follows_kit() returns trigger language plpgsql as $$
begin
  delete from lampwright.kit_gear k where k.studio_id = new.studio_id and k.kit_id = new.id;
  if new.deleted_at is null then
    insert into lampwright.kit_gear (studio_id, kit_id, gear_id)
      select distinct new.studio_id, new.id, used ->> 'id'
      from jsonb_array_elements(coalesce(new.document -> 'gear', '[]')) as used;
  end if;
  return null;
end
$$;
create trigger kit_gear_follows_kit
  after insert or update of document, deleted_at on lampwright.kit
  for each row execute function lampwright.kit_gear_follows_kit();

alter table lampwright.gear enable row level security;
alter table lampwright.gear force row level security;
alter table lampwright.gear_revision enable row level security;
alter table lampwright.gear_revision force row level security;
alter table lampwright.kit_gear enable row level security;
alter table lampwright.kit_gear force row level security;

create policy gear_in_its_studio on lampwright.gear
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy gear_revision_in_its_studio on lampwright.gear_revision
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy kit_gear_in_its_studio on lampwright.kit_gear
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

grant select, insert, update (revision, name, document, changed_at, changed_by, deleted_at)
  on lampwright.gear to lampwright_server;
grant select, insert on lampwright.gear_revision to lampwright_server;
grant select, insert, delete on lampwright.kit_gear to lampwright_server;
