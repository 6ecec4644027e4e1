-- A change of a role, or of a studio's name, says what it is based on.
alter table lampwright.member add column revision integer not null default 1;
alter table lampwright.studio add column revision integer not null default 1;
grant update (revision) on lampwright.member to lampwright_server;
grant update (revision) on lampwright.studio to lampwright_server;

-- A link by which somebody comes to belong to a studio. Only the hash of its secret is kept. It goes
-- when it is used or withdrawn, and with the membership of who made it.
create table lampwright.invitation (
  studio_id text not null,
  id text not null,
  token_hash bytea not null,
  role text not null,
  meant_for text not null,
  invited_by text not null,
  created_at timestamptz not null,
  expires_at timestamptz not null,
  constraint invitation_pk primary key (studio_id, id),
  constraint invitation_by_member foreign key (studio_id, invited_by)
    references lampwright.member (studio_id, person_id) on delete cascade,
  constraint invitation_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint invitation_token_is_hashed check (octet_length(token_hash) = 32),
  constraint invitation_role_is_known check (role in ('owner', 'author', 'crew', 'reader')),
  constraint invitation_meant_for_is_bounded check (length(meant_for) between 1 and 200)
);
create index invitation_by_token on lampwright.invitation (token_hash);
create index invitation_by_who_made_it on lampwright.invitation (studio_id, invited_by);

alter table lampwright.invitation enable row level security;
alter table lampwright.invitation force row level security;
create policy invitation_in_its_studio on lampwright.invitation
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
-- Whoever holds the secret finds the one invitation that it is of, and so learns the studio.
create policy invitation_for_its_link on lampwright.invitation for select
  using (token_hash = decode(nullif(current_setting('lampwright.link', true), ''), 'hex'));
grant select, insert, delete on lampwright.invitation to lampwright_server;

-- A link by which a person sets a new password: one a person, the newest. Who made it is kept, since
-- it is good only while they own every studio of that person; nobody made it where it is the
-- server's keeper's. It belongs to no studio, and is found by its secret or by its person.
create table lampwright.password_reset (
  person_id text not null,
  token_hash bytea not null,
  made_by text,
  created_at timestamptz not null,
  expires_at timestamptz not null,
  constraint password_reset_pk primary key (person_id),
  constraint password_reset_token_once unique (token_hash),
  constraint password_reset_of_person foreign key (person_id)
    references lampwright.person (id) on delete cascade,
  constraint password_reset_made_by_person foreign key (made_by)
    references lampwright.person (id) on delete cascade,
  constraint password_reset_token_is_hashed check (octet_length(token_hash) = 32)
);
create index password_reset_by_who_made_it on lampwright.password_reset (made_by);
grant select, insert, update (token_hash, made_by, created_at, expires_at), delete
  on lampwright.password_reset to lampwright_server;
