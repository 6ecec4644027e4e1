-- What members answered to drills, as it was when they answered. One's answers are one's own: beside
-- oneself only owners of the studio see them, and nobody changes them. They go with the membership and
-- with their setup's row, which only the demo's removal deletes.
create table lampwright.drill_answer (
  studio_id text not null,
  id bigint generated always as identity,
  person_id text not null,
  kind text not null,
  setup_id text not null,
  setup_revision integer not null,
  seed bigint not null,
  answer text not null,
  is_right boolean not null,
  slip text,
  answered_at timestamptz not null,
  constraint drill_answer_pk primary key (studio_id, id),
  constraint drill_answer_of_member foreign key (studio_id, person_id)
    references lampwright.member (studio_id, person_id) on delete cascade,
  constraint drill_answer_of_setup foreign key (studio_id, setup_id)
    references lampwright.setup (studio_id, id) on delete cascade,
  constraint drill_answer_kind_is_a_word check (kind ~ '^[a-z_]{1,40}$'),
  constraint drill_answer_revision_counts_from_1 check (setup_revision >= 1),
  constraint drill_answer_is_bounded check (length(answer) between 1 and 40),
  constraint drill_answer_slip_is_of_a_wrong_one check (slip is null or not is_right),
  constraint drill_answer_slip_is_a_key check (slip ~ '^[A-Za-z.]{1,80}$')
);
create index drill_answer_of_person
  on lampwright.drill_answer (studio_id, person_id, answered_at, id);
create index drill_answer_of_setup on lampwright.drill_answer (studio_id, setup_id);

alter table lampwright.drill_answer enable row level security;
alter table lampwright.drill_answer force row level security;

create policy drill_answer_of_oneself on lampwright.drill_answer
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id = nullif(current_setting('lampwright.person', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id = nullif(current_setting('lampwright.person', true), ''));
create policy drill_answer_for_owners on lampwright.drill_answer for select
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and exists (
      select from lampwright.member m
      where m.studio_id = drill_answer.studio_id
        and m.person_id = nullif(current_setting('lampwright.person', true), '')
        and m.role = 'owner'));

grant select, insert on lampwright.drill_answer to lampwright_server;
