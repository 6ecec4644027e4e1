-- How the light of each revision of a setup is, computed from its document: by this setups are found
-- and compared. It is written in the transaction that writes the revision, and goes with it. The
-- document stays the truth: one that is missing, or of an older version of the computation, is
-- computed anew from it.
create table lampwright.setup_signature (
  studio_id text not null,
  setup_id text not null,
  revision integer not null,
  version integer not null,
  signature jsonb not null,
  constraint setup_signature_pk primary key (studio_id, setup_id, revision),
  constraint setup_signature_of_revision foreign key (studio_id, setup_id, revision)
    references lampwright.setup_revision (studio_id, setup_id, revision) on delete cascade,
  constraint setup_signature_counts_from_1 check (version >= 1),
  constraint setup_signature_is_an_object check (jsonb_typeof(signature) = 'object')
);

alter table lampwright.setup_signature enable row level security;
alter table lampwright.setup_signature force row level security;

create policy setup_signature_in_its_studio on lampwright.setup_signature
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy setup_signature_for_the_index on lampwright.setup_signature
  for select to lampwright_indexer using (true);

grant select, insert, update (version, signature) on lampwright.setup_signature to lampwright_server;
grant select on lampwright.setup_signature to lampwright_indexer;
