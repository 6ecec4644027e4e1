-- The searches that a member keeps, each with the setups that it found when they last looked: what it
-- finds beyond these is new to them. They are nobody else's business, and go with the membership.
-- Where more matched than are kept (seen is null), nothing is told to be new.
create table lampwright.saved_search (
  studio_id text not null,
  person_id text not null,
  id text not null,
  revision integer not null,
  name text not null,
  name_key text not null,
  question text not null,
  created_at timestamptz not null,
  changed_at timestamptz not null,
  seen_at timestamptz not null,
  seen text[],
  constraint saved_search_pk primary key (studio_id, person_id, id),
  constraint saved_search_of_member foreign key (studio_id, person_id)
    references lampwright.member (studio_id, person_id) on delete cascade,
  constraint saved_search_name_once unique (studio_id, person_id, name_key),
  constraint saved_search_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint saved_search_revision_counts_from_1 check (revision >= 1),
  constraint saved_search_name_is_bounded check (length(name) between 1 and 80),
  constraint saved_search_question_is_bounded check (length(question) between 1 and 4000),
  constraint saved_search_seen_is_bounded check (coalesce(cardinality(seen), 0) <= 11000)
);

alter table lampwright.saved_search enable row level security;
alter table lampwright.saved_search force row level security;

create policy saved_search_of_oneself on lampwright.saved_search
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id = nullif(current_setting('lampwright.person', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id = nullif(current_setting('lampwright.person', true), ''));

grant select, insert, delete,
  update (revision, name, name_key, question, changed_at, seen_at, seen)
  on lampwright.saved_search to lampwright_server;
