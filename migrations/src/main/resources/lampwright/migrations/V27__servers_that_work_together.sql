-- How far imports are, for whichever server is asked. The archive itself lies where it was received; that
-- server says here that it lives (alive_until, by this database's clock), and what it no longer says is
-- over. What an import brings in is committed together with the step to 'committing', or not at all.
create table lampwright.import_job (
  studio_id text not null,
  id text not null,
  person_id text not null,
  server text not null,
  clashes text not null,
  state text not null,
  done integer not null default 0,
  total integer not null default 0,
  plan text,
  faults text,
  trouble text,
  is_ordered boolean not null default false,
  refusal text,
  begun_at timestamptz not null,
  alive_until timestamptz not null,
  constraint import_job_pk primary key (studio_id, id),
  constraint import_job_of_member foreign key (studio_id, person_id)
    references lampwright.member (studio_id, person_id) on delete cascade,
  constraint import_job_clashes_is_known check (clashes in ('refuse', 'copy', 'keep')),
  constraint import_job_state_is_known check (state in
    ('checking', 'planned', 'faulty', 'running', 'committing', 'imported', 'failed')),
  constraint import_job_counts_from_0 check (done >= 0 and total >= 0)
);
create index import_job_of_person on lampwright.import_job (studio_id, person_id);

alter table lampwright.import_job enable row level security;
alter table lampwright.import_job force row level security;

create policy import_job_in_its_studio on lampwright.import_job
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

grant select, insert, delete,
    update (state, done, total, plan, faults, trouble, is_ordered, refusal, alive_until)
  on lampwright.import_job to lampwright_server;
