-- Courses that authors put together, each with every revision; and how far members have come on them.
create table lampwright.trail (
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
  constraint trail_pk primary key (studio_id, id),
  constraint trail_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint trail_created_by_person foreign key (created_by) references lampwright.person (id),
  constraint trail_changed_by_person foreign key (changed_by) references lampwright.person (id),
  constraint trail_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint trail_revision_counts_from_1 check (revision >= 1)
);
create index trail_newest_first on lampwright.trail (studio_id, changed_at desc, id desc)
  where deleted_at is null;

create table lampwright.trail_revision (
  studio_id text not null,
  trail_id text not null,
  revision integer not null,
  name text not null,
  document jsonb not null,
  changed_at timestamptz not null,
  changed_by text not null,
  message text not null,
  deleted boolean not null,
  constraint trail_revision_pk primary key (studio_id, trail_id, revision),
  constraint trail_revision_of_trail foreign key (studio_id, trail_id)
    references lampwright.trail (studio_id, id),
  constraint trail_revision_by_person foreign key (changed_by) references lampwright.person (id),
  constraint trail_revision_message_is_bounded check (length(message) <= 1000)
);

alter table lampwright.change_log
  drop constraint change_log_kind_is_known,
  add constraint change_log_kind_is_known
    check (kind in ('setup', 'kit', 'gear', 'location', 'picture', 'take', 'note', 'trail'));

-- A stage of which a member says that they have read or studied it.
create table lampwright.stage_done (
  studio_id text not null,
  person_id text not null,
  trail_id text not null,
  stage text not null,
  done_at timestamptz not null,
  constraint stage_done_pk primary key (studio_id, person_id, trail_id, stage),
  constraint stage_done_by_member foreign key (studio_id, person_id)
    references lampwright.member (studio_id, person_id) on delete cascade,
  constraint stage_done_of_trail foreign key (studio_id, trail_id)
    references lampwright.trail (studio_id, id) on delete cascade,
  constraint stage_done_stage_is_a_name check (stage ~ '^[a-z0-9-]{1,40}$')
);
create index stage_done_of_trail on lampwright.stage_done (studio_id, trail_id);

-- A run-through that a member handed in for a stage of a trail, and what was said of it. Nobody judges
-- their own.
create table lampwright.built (
  studio_id text not null,
  id text not null,
  person_id text not null,
  trail_id text not null,
  stage text not null,
  setup_id text not null,
  take_id text not null,
  handed_in_at timestamptz not null,
  judged_at timestamptz,
  judged_by text,
  is_signed_off boolean,
  words text,
  constraint built_pk primary key (studio_id, id),
  constraint built_by_member foreign key (studio_id, person_id)
    references lampwright.member (studio_id, person_id) on delete cascade,
  constraint built_of_trail foreign key (studio_id, trail_id)
    references lampwright.trail (studio_id, id) on delete cascade,
  constraint built_of_setup foreign key (studio_id, setup_id)
    references lampwright.setup (studio_id, id) on delete cascade,
  constraint built_is_take foreign key (studio_id, take_id)
    references lampwright.take (studio_id, id) on delete cascade,
  constraint built_judged_by_person foreign key (judged_by) references lampwright.person (id),
  constraint built_take_once unique (studio_id, person_id, trail_id, stage, take_id),
  constraint built_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint built_stage_is_a_name check (stage ~ '^[a-z0-9-]{1,40}$'),
  constraint built_is_judged_whole check (
    (judged_at is null) = (judged_by is null)
    and (judged_at is null) = (is_signed_off is null)
    and (judged_at is null) = (words is null)),
  constraint built_words_are_bounded check (length(words) <= 2000),
  constraint built_is_judged_by_another check (judged_by <> person_id)
);
create index built_waits on lampwright.built (studio_id, handed_in_at, id) where judged_at is null;
create index built_of_trail on lampwright.built (studio_id, trail_id);
create index built_of_setup on lampwright.built (studio_id, setup_id);
create index built_is_take on lampwright.built (studio_id, take_id);

alter table lampwright.trail enable row level security;
alter table lampwright.trail force row level security;
alter table lampwright.trail_revision enable row level security;
alter table lampwright.trail_revision force row level security;
alter table lampwright.stage_done enable row level security;
alter table lampwright.stage_done force row level security;
alter table lampwright.built enable row level security;
alter table lampwright.built force row level security;

create policy trail_in_its_studio on lampwright.trail
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy trail_revision_in_its_studio on lampwright.trail_revision
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

-- One's way is one's own; owners see everybody's.
create policy stage_done_of_oneself on lampwright.stage_done
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id = nullif(current_setting('lampwright.person', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id = nullif(current_setting('lampwright.person', true), ''));
create policy stage_done_for_owners on lampwright.stage_done for select
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and exists (
      select from lampwright.member m
      where m.studio_id = stage_done.studio_id
        and m.person_id = nullif(current_setting('lampwright.person', true), '')
        and m.role = 'owner'));

create policy built_of_oneself on lampwright.built
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id = nullif(current_setting('lampwright.person', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id = nullif(current_setting('lampwright.person', true), '')
    and judged_at is null);
create policy built_for_owners on lampwright.built for select
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and exists (
      select from lampwright.member m
      where m.studio_id = built.studio_id
        and m.person_id = nullif(current_setting('lampwright.person', true), '')
        and m.role = 'owner'));
-- Authors see what waits to be judged and what they judged, no more of anybody's way.
create policy built_for_authors on lampwright.built for select
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and (judged_at is null
      or judged_by = nullif(current_setting('lampwright.person', true), ''))
    and exists (
      select from lampwright.member m
      where m.studio_id = built.studio_id
        and m.person_id = nullif(current_setting('lampwright.person', true), '')
        and m.role = 'author'));
create policy built_is_judged on lampwright.built for update
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id <> nullif(current_setting('lampwright.person', true), '')
    and judged_at is null
    and exists (
      select from lampwright.member m
      where m.studio_id = built.studio_id
        and m.person_id = nullif(current_setting('lampwright.person', true), '')
        and m.role in ('owner', 'author')))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and judged_by = nullif(current_setting('lampwright.person', true), ''));

grant select, insert, update (revision, name, document, changed_at, changed_by, deleted_at)
  on lampwright.trail to lampwright_server;
grant select, insert on lampwright.trail_revision to lampwright_server;
grant select, insert on lampwright.stage_done to lampwright_server;
grant select, insert, update (judged_at, judged_by, is_signed_off, words)
  on lampwright.built to lampwright_server;

-- The demo goes with its trails.
create or replace function lampwright.remove_demo() returns integer
  language plpgsql set search_path = pg_catalog, pg_temp as $$
declare
  gone integer;
  member_of_demo text;
begin
  perform set_config('lampwright.studio', 'demo', true);
  perform from lampwright.studio where id = 'demo' for update;

  insert into lampwright.change_log (studio_id, kind, subject_id, revision, deleted)
    select studio_id, 'setup', id, 0, true from lampwright.setup where studio_id = 'demo';
  get diagnostics gone = row_count;

  delete from lampwright.built where studio_id = 'demo';
  delete from lampwright.trail_revision where studio_id = 'demo';
  delete from lampwright.trail where studio_id = 'demo';
  delete from lampwright.note_revision where studio_id = 'demo';
  delete from lampwright.note where studio_id = 'demo';
  delete from lampwright.take_revision where studio_id = 'demo';
  delete from lampwright.take where studio_id = 'demo';
  delete from lampwright.picture_revision where studio_id = 'demo';
  delete from lampwright.picture where studio_id = 'demo';
  update lampwright.setup set parent_id = null, parent_revision = null where studio_id = 'demo';
  delete from lampwright.setup_revision where studio_id = 'demo';
  delete from lampwright.setup where studio_id = 'demo';
  delete from lampwright.location_revision where studio_id = 'demo';
  delete from lampwright.location where studio_id = 'demo';
  delete from lampwright.kit_gear where studio_id = 'demo';
  delete from lampwright.kit_revision where studio_id = 'demo';
  delete from lampwright.kit where studio_id = 'demo';
  delete from lampwright.gear_revision where studio_id = 'demo';
  delete from lampwright.gear where studio_id = 'demo';
  delete from lampwright.made_once where studio_id = 'demo';
  delete from lampwright.member where studio_id = 'demo';
  delete from lampwright.person where archive_studio_id = 'demo';

  for member_of_demo in select id from lampwright.person where email like '%@demo.example' loop
    begin
      delete from lampwright.session where person_id = member_of_demo;
      delete from lampwright.token where person_id = member_of_demo;
      delete from lampwright.person where id = member_of_demo;
    exception
      when foreign_key_violation then null;
    end;
  end loop;
  perform set_config('lampwright.studio', '', true);
  notify lampwright_change;
  return gone;
end
$$;
