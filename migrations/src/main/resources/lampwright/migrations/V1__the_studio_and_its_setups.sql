-- The studio's memory: people, studios, setups and kits with every revision, and a log of changes.
--
-- Row-level security is the second lock. A transaction says which studio it works for by
--   set_config('lampwright.studio', <id>, true)
-- and sees that studio's rows only. It is forced, so it binds the owner of the tables too.
-- After a commit the setting reads '' and not null; nullif turns that into "no studio, no rows".

-- Roles belong to the whole cluster, so another database of it may have made them already.
do $$
begin
  if not exists (select from pg_roles where rolname = 'lampwright_server') then
    -- Noinherit: what it may become (the indexer), it becomes only where it says so.
    create role lampwright_server login noinherit nosuperuser nocreatedb nocreaterole nobypassrls;
  end if;
exception
  when duplicate_object or unique_violation then null;
end
$$;

do $$
begin
  if not exists (select from pg_roles where rolname = 'lampwright_indexer') then
    create role lampwright_indexer nologin nosuperuser nocreatedb nocreaterole nobypassrls;
  end if;
exception
  when duplicate_object or unique_violation then null;
end
$$;

do $$
begin
  if not pg_has_role('lampwright_server', 'lampwright_indexer', 'member') then
    -- From PostgreSQL 16 the grant keeps the noinherit of the role that it is granted to.
    grant lampwright_indexer to lampwright_server;
  end if;
end
$$;

-- Says which database this is: a search index that was built from another must not be trusted.
create table lampwright.catalogue (
  only_row boolean not null default true,
  identity text not null default gen_random_uuid()::text,
  constraint catalogue_pk primary key (only_row),
  constraint catalogue_has_one_row check (only_row)
);
insert into lampwright.catalogue default values;

create table lampwright.studio (
  id text not null,
  name text not null,
  created_at timestamptz not null,
  constraint studio_pk primary key (id),
  constraint studio_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint studio_name_is_bounded check (length(name) between 1 and 200)
);

create table lampwright.person (
  id text not null,
  email text not null,
  name text not null,
  password_hash text not null,
  created_at timestamptz not null,
  constraint person_pk primary key (id),
  constraint person_email_once unique (email),
  constraint person_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint person_email_is_lower_case check (email = lower(email)),
  constraint person_email_is_bounded check (length(email) between 3 and 320),
  constraint person_name_is_bounded check (length(name) between 1 and 200)
);

create table lampwright.member (
  studio_id text not null,
  person_id text not null,
  role text not null,
  created_at timestamptz not null,
  constraint member_pk primary key (studio_id, person_id),
  constraint member_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint member_is_person foreign key (person_id) references lampwright.person (id),
  constraint member_role_is_known check (role in ('owner', 'author', 'crew', 'reader'))
);
create index member_by_person on lampwright.member (person_id);

-- Secrets are kept as SHA-256 only; they are long and random, so they need no slow hash.
create table lampwright.session (
  token_hash bytea not null,
  person_id text not null,
  created_at timestamptz not null,
  seen_at timestamptz not null,
  expires_at timestamptz not null,
  constraint session_pk primary key (token_hash),
  constraint session_of_person foreign key (person_id) references lampwright.person (id),
  constraint session_token_is_hashed check (octet_length(token_hash) = 32)
);
create index session_by_person on lampwright.session (person_id);
create index session_by_expiry on lampwright.session (expires_at);

create table lampwright.token (
  id text not null,
  token_hash bytea not null,
  person_id text not null,
  name text not null,
  created_at timestamptz not null,
  last_used_at timestamptz,
  constraint token_pk primary key (id),
  constraint token_hash_once unique (token_hash),
  constraint token_of_person foreign key (person_id) references lampwright.person (id),
  constraint token_is_hashed check (octet_length(token_hash) = 32),
  constraint token_name_is_bounded check (length(name) between 1 and 200)
);
create index token_by_person on lampwright.token (person_id);

-- The link by which the first owner of a new server signs up; it works once.
create table lampwright.first_start_link (
  token_hash bytea not null,
  created_at timestamptz not null,
  expires_at timestamptz not null,
  used_at timestamptz,
  constraint first_start_link_pk primary key (token_hash),
  constraint first_start_link_is_hashed check (octet_length(token_hash) = 32)
);

create table lampwright.setup (
  studio_id text not null,
  id text not null,
  revision integer not null,
  title text not null,
  document jsonb not null,
  created_at timestamptz not null,
  created_by text not null,
  changed_at timestamptz not null,
  changed_by text not null,
  deleted_at timestamptz,
  constraint setup_pk primary key (studio_id, id),
  constraint setup_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint setup_created_by_person foreign key (created_by) references lampwright.person (id),
  constraint setup_changed_by_person foreign key (changed_by) references lampwright.person (id),
  constraint setup_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint setup_revision_counts_from_1 check (revision >= 1)
);
create index setup_newest_first on lampwright.setup (studio_id, changed_at desc, id desc)
  where deleted_at is null;

-- A deletion is a revision too, so that the record of who did what has no hole.
create table lampwright.setup_revision (
  studio_id text not null,
  setup_id text not null,
  revision integer not null,
  title text not null,
  document jsonb not null,
  changed_at timestamptz not null,
  changed_by text not null,
  message text not null,
  deleted boolean not null,
  constraint setup_revision_pk primary key (studio_id, setup_id, revision),
  constraint setup_revision_of_setup foreign key (studio_id, setup_id)
    references lampwright.setup (studio_id, id),
  constraint setup_revision_by_person foreign key (changed_by) references lampwright.person (id),
  constraint setup_revision_message_is_bounded check (length(message) <= 1000)
);

create table lampwright.kit (
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
  constraint kit_pk primary key (studio_id, id),
  constraint kit_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint kit_created_by_person foreign key (created_by) references lampwright.person (id),
  constraint kit_changed_by_person foreign key (changed_by) references lampwright.person (id),
  constraint kit_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint kit_revision_counts_from_1 check (revision >= 1)
);
create index kit_newest_first on lampwright.kit (studio_id, changed_at desc, id desc)
  where deleted_at is null;

create table lampwright.kit_revision (
  studio_id text not null,
  kit_id text not null,
  revision integer not null,
  name text not null,
  document jsonb not null,
  changed_at timestamptz not null,
  changed_by text not null,
  message text not null,
  deleted boolean not null,
  constraint kit_revision_pk primary key (studio_id, kit_id, revision),
  constraint kit_revision_of_kit foreign key (studio_id, kit_id)
    references lampwright.kit (studio_id, id),
  constraint kit_revision_by_person foreign key (changed_by) references lampwright.person (id),
  constraint kit_revision_message_is_bounded check (length(message) <= 1000)
);

-- What the search index follows. A sequence alone can become visible out of order: a transaction
-- that took a lower number may commit later. So it is read in the order (transaction_id, seq), and
-- only up to the oldest transaction that is still open; nothing can appear before that any more.
create table lampwright.change_log (
  seq bigint generated always as identity,
  transaction_id bigint not null default pg_current_xact_id()::text::bigint,
  studio_id text not null,
  kind text not null,
  subject_id text not null,
  revision integer not null,
  deleted boolean not null,
  at timestamptz not null default now(),
  constraint change_log_pk primary key (seq),
  constraint change_log_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint change_log_kind_is_known check (kind in ('setup', 'kit'))
);
create index change_log_in_order on lampwright.change_log (transaction_id, seq);

alter table lampwright.studio enable row level security;
alter table lampwright.studio force row level security;
alter table lampwright.member enable row level security;
alter table lampwright.member force row level security;
alter table lampwright.setup enable row level security;
alter table lampwright.setup force row level security;
alter table lampwright.setup_revision enable row level security;
alter table lampwright.setup_revision force row level security;
alter table lampwright.kit enable row level security;
alter table lampwright.kit force row level security;
alter table lampwright.kit_revision enable row level security;
alter table lampwright.kit_revision force row level security;
alter table lampwright.change_log enable row level security;
alter table lampwright.change_log force row level security;

create policy studio_in_its_transaction on lampwright.studio
  using (id = nullif(current_setting('lampwright.studio', true), ''))
  with check (id = nullif(current_setting('lampwright.studio', true), ''));
create policy member_in_its_studio on lampwright.member
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy setup_in_its_studio on lampwright.setup
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy setup_revision_in_its_studio on lampwright.setup_revision
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy kit_in_its_studio on lampwright.kit
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy kit_revision_in_its_studio on lampwright.kit_revision
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy change_log_in_its_studio on lampwright.change_log
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

-- A person may list the studios that they belong to before they have chosen one.
create policy member_for_oneself on lampwright.member for select
  using (person_id = nullif(current_setting('lampwright.person', true), ''));
create policy studio_for_its_members on lampwright.studio for select
  using (
    exists (
      select from lampwright.member m
      where m.studio_id = studio.id
        and m.person_id = nullif(current_setting('lampwright.person', true), '')
    )
  );

-- The index holds every studio's setups; its reader reads across studios and can do nothing else.
create policy studio_for_the_indexer on lampwright.studio for select
  to lampwright_indexer using (true);
create policy setup_for_the_indexer on lampwright.setup for select
  to lampwright_indexer using (true);
create policy change_log_for_the_indexer on lampwright.change_log for select
  to lampwright_indexer using (true);

grant usage on schema lampwright to lampwright_server, lampwright_indexer;

grant select on lampwright.catalogue to lampwright_server, lampwright_indexer;
grant select, insert, update (name) on lampwright.studio to lampwright_server;
grant select, insert, update (email, name, password_hash) on lampwright.person to lampwright_server;
grant select, insert, update (role), delete on lampwright.member to lampwright_server;
grant select, insert, update (seen_at, expires_at), delete on lampwright.session to lampwright_server;
grant select, insert, update (name, last_used_at), delete on lampwright.token to lampwright_server;
grant select, insert, update (used_at) on lampwright.first_start_link to lampwright_server;
grant select, insert, update (revision, title, document, changed_at, changed_by, deleted_at)
  on lampwright.setup to lampwright_server;
grant select, insert on lampwright.setup_revision to lampwright_server;
grant select, insert, update (revision, name, document, changed_at, changed_by, deleted_at)
  on lampwright.kit to lampwright_server;
grant select, insert on lampwright.kit_revision to lampwright_server;
-- Its number, its transaction and its time are the database's to say.
grant insert (studio_id, kind, subject_id, revision, deleted)
  on lampwright.change_log to lampwright_server;

grant select on lampwright.studio, lampwright.setup, lampwright.change_log to lampwright_indexer;
