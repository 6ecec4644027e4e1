-- Who did what to what, and when. It is only ever added to: the server's role may insert and read, and
-- number and time are the database's to say. It outlives what it tells of and whoever did it, so no key
-- points away from it but that of the studio. A person's name does not stand in it: it is looked up
-- when somebody reads, so that who leaves nameless is nameless here too. Where the studio is null, it
-- is about a person's account; where the person is null, the server did it, or somebody outside.
create table lampwright.audit_entry (
  seq bigint not null generated always as identity,
  studio_id text,
  person_id text,
  at timestamptz not null default now(),
  action text not null,
  kind text not null,
  subject_id text not null,
  subject_name text not null,
  detail jsonb not null default '{}',
  constraint audit_entry_pk primary key (seq),
  constraint audit_entry_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint audit_entry_is_of_a_studio_or_an_account
    check (studio_id is not null or person_id is not null),
  constraint audit_entry_action_is_a_word check (action ~ '^[a-z_]{1,40}$'),
  constraint audit_entry_kind_is_a_word check (kind ~ '^[a-z_]{1,40}$'),
  constraint audit_entry_subject_is_bounded check (length(subject_id) <= 64),
  constraint audit_entry_name_is_bounded check (length(subject_name) <= 200),
  constraint audit_entry_detail_is_small
    check (jsonb_typeof(detail) = 'object' and length(detail::text) <= 1000)
);
create index audit_entry_newest_first on lampwright.audit_entry (studio_id, seq desc);
create index audit_entry_of_subject on lampwright.audit_entry (studio_id, subject_id, seq desc);
create index audit_entry_of_account on lampwright.audit_entry (person_id, seq desc)
  where studio_id is null;

alter table lampwright.audit_entry enable row level security;
alter table lampwright.audit_entry force row level security;

-- An owner reads it. What is written is of the studio that one is in, and by whom one is.
create policy audit_entry_in_its_studio on lampwright.audit_entry
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and exists (
      select from lampwright.member m
      where m.studio_id = audit_entry.studio_id
        and m.person_id = nullif(current_setting('lampwright.person', true), '')
        and m.role = 'owner'))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id is not distinct from nullif(current_setting('lampwright.person', true), ''));
create policy audit_entry_of_oneself on lampwright.audit_entry for select
  using (studio_id is null
    and person_id = nullif(current_setting('lampwright.person', true), ''));
-- Who signs in is nobody yet, and nobody must write of another's account who is somebody.
create policy audit_entry_of_an_account on lampwright.audit_entry for insert
  with check (studio_id is null
    and person_id = coalesce(nullif(current_setting('lampwright.person', true), ''), person_id));
-- The demo goes as a whole; who owns the tables takes it away, and never the server's role.
create policy audit_entry_goes_with_the_demo on lampwright.audit_entry
  using ((studio_id is null or studio_id = 'demo') and current_user <> 'lampwright_server')
  with check (false);

grant select, insert (studio_id, person_id, action, kind, subject_id, subject_name, detail)
  on lampwright.audit_entry to lampwright_server;

-- Writes the entry of a row that was made, changed, deleted (for good or by deleted_at) or restored,
-- in the transaction that does it: no way of writing can forget it. It has no rights of its own. Of the
-- row it takes the id, a name and a few small facts; never a document, never what somebody wrote.
--
--   create trigger audit after insert or update or delete on lampwright.THING
--     for each row execute function lampwright.audit(KIND, ID_COLUMN, NAME_COLUMN[, UPDATED])
--
-- NAME_COLUMN is empty for what has no name, and setup_id for what is called by its setup's title.
-- UPDATED is what an update is called; usually changed.
create function lampwright.audit() returns trigger language plpgsql as $$
declare
  -- What is large and never told of: to turn it into text and throw it away would cost the most.
  large constant jsonb := '{"document": null, "facts": null, "statistics": null, "used": null}';
  thing jsonb;
  was jsonb;
  studio text;
  did text;
  called text;
begin
  if tg_op = 'INSERT' then
    thing := to_jsonb(jsonb_populate_record(new, large));
    did := 'made';
  elsif tg_op = 'DELETE' then
    thing := to_jsonb(jsonb_populate_record(old, large));
    did := 'deleted';
  else
    if new *= old then
      return null;
    end if;
    thing := to_jsonb(jsonb_populate_record(new, large));
    was := to_jsonb(jsonb_populate_record(old, large));
    did := case
      when (thing ->> 'deleted_at') is not null and (was ->> 'deleted_at') is null then 'deleted'
      when (thing ->> 'deleted_at') is null and (was ->> 'deleted_at') is not null then 'restored'
      else coalesce(tg_argv[3], 'changed')
    end;
  end if;
  studio := case tg_argv[0] when 'studio' then thing ->> 'id' else thing ->> 'studio_id' end;
  if tg_argv[2] = 'setup_id' then
    select s.title into called from lampwright.setup s
      where s.studio_id = studio and s.id = thing ->> 'setup_id';
  else
    called := thing ->> tg_argv[2];
  end if;
  insert into lampwright.audit_entry
    (studio_id, person_id, action, kind, subject_id, subject_name, detail)
  values (
    studio,
    nullif(current_setting('lampwright.person', true), ''),
    did,
    tg_argv[0],
    thing ->> tg_argv[1],
    left(coalesce(called, ''), 200),
    jsonb_strip_nulls(jsonb_build_object(
      'revision', thing -> 'revision',
      'state', thing -> 'state',
      'is_archived', thing -> 'archived',
      'setup', thing -> 'setup_id',
      'role', thing -> 'role',
      'role_before', was -> 'role',
      'made_revision', thing -> 'made_revision',
      'is_signed_off', thing -> 'is_signed_off',
      'ends_at', thing -> 'expires_at')));
  return null;
end
$$;

create trigger audit after insert or update or delete on lampwright.studio
  for each row execute function lampwright.audit('studio', 'id', 'name');
create trigger audit after insert or update or delete on lampwright.member
  for each row execute function lampwright.audit('member', 'person_id', '');
create trigger audit after insert or update on lampwright.setup
  for each row execute function lampwright.audit('setup', 'id', 'title');
create trigger audit after insert or update on lampwright.kit
  for each row execute function lampwright.audit('kit', 'id', 'name');
create trigger audit after insert or update on lampwright.gear
  for each row execute function lampwright.audit('gear', 'id', 'name');
create trigger audit after insert or update on lampwright.location
  for each row execute function lampwright.audit('location', 'id', 'name');
create trigger audit after insert or update on lampwright.trail
  for each row execute function lampwright.audit('trail', 'id', 'name');
create trigger audit after insert or update on lampwright.take
  for each row execute function lampwright.audit('take', 'id', 'setup_id');
create trigger audit after insert or update on lampwright.note
  for each row execute function lampwright.audit('note', 'id', 'setup_id');
create trigger audit after insert or update on lampwright.picture
  for each row execute function lampwright.audit('picture', 'id', 'setup_id');
create trigger audit after insert or update on lampwright.proposal
  for each row execute function lampwright.audit('proposal', 'id', 'setup_id');
create trigger audit after insert or update on lampwright.built
  for each row execute function lampwright.audit('build', 'id', 'setup_id');

-- What shows one revision of a setup to somebody outside until it ends. It goes with the membership of
-- whoever made it; to withdraw it is to delete it. Its secret is kept as SHA-256 only.
create table lampwright.share_link (
  studio_id text not null,
  id text not null,
  token_hash bytea not null,
  setup_id text not null,
  revision integer not null,
  shows_pictures boolean not null,
  shows_place boolean not null,
  created_at timestamptz not null,
  created_by text not null,
  expires_at timestamptz not null,
  opened_at timestamptz,
  constraint share_link_pk primary key (studio_id, id),
  constraint share_link_hash_once unique (studio_id, token_hash),
  constraint share_link_of_revision foreign key (studio_id, setup_id, revision)
    references lampwright.setup_revision (studio_id, setup_id, revision) on delete cascade,
  constraint share_link_by_member foreign key (studio_id, created_by)
    references lampwright.member (studio_id, person_id) on delete cascade,
  constraint share_link_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint share_link_is_hashed check (octet_length(token_hash) = 32),
  constraint share_link_ends check (
    expires_at > created_at and expires_at <= created_at + interval '91 days')
);
create index share_link_by_hash on lampwright.share_link (token_hash);
create index share_link_of_setup on lampwright.share_link (studio_id, setup_id, created_at desc);
create index share_link_by_member on lampwright.share_link (studio_id, created_by);

alter table lampwright.share_link enable row level security;
alter table lampwright.share_link force row level security;

create policy share_link_in_its_studio on lampwright.share_link
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
-- Whoever holds the secret finds the link that it is of, and no other.
create policy share_link_for_its_holder on lampwright.share_link for select
  using (token_hash = decode(nullif(current_setting('lampwright.link', true), ''), 'hex'));

grant select, insert, update (opened_at), delete on lampwright.share_link to lampwright_server;

create trigger audit after insert or update or delete on lampwright.share_link
  for each row execute function lampwright.audit('share_link', 'id', 'setup_id', 'opened');

-- The demo goes with what is told of it.
alter function lampwright.remove_demo() rename to remove_demo_with_its_people;
create function lampwright.remove_demo() returns integer
  language plpgsql set search_path = pg_catalog, pg_temp as $$
declare
  gone integer;
begin
  gone := lampwright.remove_demo_with_its_people();
  delete from lampwright.audit_entry where studio_id = 'demo';
  delete from lampwright.audit_entry e
    where e.studio_id is null
      and not exists (select from lampwright.person p where p.id = e.person_id);
  return gone;
end
$$;
revoke all on function lampwright.remove_demo() from public;
