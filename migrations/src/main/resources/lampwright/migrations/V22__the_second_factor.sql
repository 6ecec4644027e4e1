-- A session whose person has given the password and still owes the code lets nobody in.
alter table lampwright.session
  add column waits_for_code boolean not null default false;

-- A session goes on under another secret where what a person may do with it has changed.
grant update (token_hash, waits_for_code) on lampwright.session to lampwright_server;

-- Counts the changes of name and e-mail.
alter table lampwright.person
  add column account_revision integer not null default 1,
  add constraint person_account_revision_counts_from_1 check (account_revision >= 1);
grant update (account_revision) on lampwright.person to lampwright_server;

-- The secret that a person's device makes codes from (RFC 6238). The server must make the same
-- codes, so it keeps the secret itself and no hash. It counts once a code of it has been given.
create table lampwright.second_factor (
  person_id text not null,
  secret bytea not null,
  created_at timestamptz not null,
  confirmed_at timestamptz,
  last_step bigint not null default 0,
  constraint second_factor_pk primary key (person_id),
  constraint second_factor_of_person foreign key (person_id)
    references lampwright.person (id) on delete cascade,
  constraint second_factor_secret_is_long check (octet_length(secret) between 20 and 64),
  constraint second_factor_step_counts_up check (last_step >= 0)
);

-- What lets in once, each, where that device is lost. Random and long, so a quick hash will do.
create table lampwright.recovery_code (
  person_id text not null,
  code_hash bytea not null,
  constraint recovery_code_pk primary key (person_id, code_hash),
  constraint recovery_code_of_second_factor foreign key (person_id)
    references lampwright.second_factor (person_id) on delete cascade,
  constraint recovery_code_is_hashed check (octet_length(code_hash) = 32)
);

-- Browsers in which a person has signed in before: what others guess does not slow them down there.
create table lampwright.known_device (
  person_id text not null,
  secret_hash bytea not null,
  seen_at timestamptz not null,
  expires_at timestamptz not null,
  constraint known_device_pk primary key (person_id, secret_hash),
  constraint known_device_of_person foreign key (person_id)
    references lampwright.person (id) on delete cascade,
  constraint known_device_is_hashed check (octet_length(secret_hash) = 32)
);
create index known_device_by_expiry on lampwright.known_device (expires_at);

grant select, insert, update (confirmed_at, last_step), delete
  on lampwright.second_factor to lampwright_server;
grant select, insert, delete on lampwright.recovery_code to lampwright_server;
grant select, insert, update (seen_at, expires_at), delete
  on lampwright.known_device to lampwright_server;
