-- What a person's program made under a key of its own (the header Idempotency-Key), so that the same
-- request, sent again since its answer was lost, makes nothing twice. Written in the transaction that
-- makes the thing: there is never one without the other.
create table lampwright.made_once (
  studio_id text not null,
  person_id text not null,
  key text not null,
  fingerprint text not null,
  subject_id text not null,
  made_at timestamptz not null,
  constraint made_once_pk primary key (studio_id, person_id, key),
  constraint made_once_in_studio foreign key (studio_id) references lampwright.studio (id),
  constraint made_once_by_person foreign key (person_id) references lampwright.person (id),
  constraint made_once_key_is_bounded check (length(key) between 1 and 255),
  constraint made_once_fingerprint_is_whole check (fingerprint ~ '^[0-9a-f]{64}$'),
  constraint made_once_subject_is_short check (subject_id ~ '^[0-9a-z]{4,32}$')
);
create index made_once_by_age on lampwright.made_once (studio_id, person_id, made_at);

alter table lampwright.made_once enable row level security;
alter table lampwright.made_once force row level security;

create policy made_once_in_its_studio on lampwright.made_once
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

grant select, insert, delete on lampwright.made_once to lampwright_server;
