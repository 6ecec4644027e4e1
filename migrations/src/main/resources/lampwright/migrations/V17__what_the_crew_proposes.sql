-- What the crew tells of the day: that a setup was really made so. It waits until somebody who may
-- change setups takes it over, as the setup's next revision, or declines it. A setup's proposals go
-- with its row, which only the demo's removal deletes.
create table lampwright.proposal (
  studio_id text not null,
  id text not null,
  setup_id text not null,
  setup_revision integer not null,
  used jsonb not null,
  created_at timestamptz not null,
  created_by text not null,
  decided_at timestamptz,
  decided_by text,
  made_revision integer,
  constraint proposal_pk primary key (studio_id, id),
  constraint proposal_of_setup foreign key (studio_id, setup_id)
    references lampwright.setup (studio_id, id) on delete cascade,
  constraint proposal_created_by_person foreign key (created_by) references lampwright.person (id),
  constraint proposal_decided_by_person foreign key (decided_by) references lampwright.person (id),
  constraint proposal_id_is_short check (id ~ '^[0-9a-z]{4,32}$'),
  constraint proposal_revision_counts_from_1 check (setup_revision >= 1),
  constraint proposal_is_decided_whole check ((decided_at is null) = (decided_by is null)),
  constraint proposal_makes_a_revision_when_decided
    check (made_revision is null or (decided_at is not null and made_revision > 1))
);
create index proposal_newest_first
  on lampwright.proposal (studio_id, setup_id, created_at desc, id desc);

alter table lampwright.proposal enable row level security;
alter table lampwright.proposal force row level security;

create policy proposal_in_its_studio on lampwright.proposal
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

grant select, insert, update (decided_at, decided_by, made_revision)
  on lampwright.proposal to lampwright_server;
