-- A setup is a draft until somebody calls it proven, and may be put by as archived. A change of
-- either is a revision, so both stand with the revisions too; and a revision may bring an earlier
-- one back.

-- What was there before anybody spoke of drafts could be read by all, and so it stays; what is made
-- from now on is a draft where nobody says otherwise.
alter table lampwright.setup
  add column state text not null default 'proven',
  add column archived boolean not null default false,
  add constraint setup_state_is_known check (state in ('draft', 'proven'));
alter table lampwright.setup alter column state set default 'draft';

alter table lampwright.setup_revision
  add column state text not null default 'proven',
  add column archived boolean not null default false,
  add column restored_from integer,
  add constraint setup_revision_state_is_known check (state in ('draft', 'proven')),
  add constraint setup_revision_is_of_before check (restored_from < revision),
  add constraint setup_revision_brings_back foreign key (studio_id, setup_id, restored_from)
    references lampwright.setup_revision (studio_id, setup_id, revision)
    on update restrict on delete restrict;
alter table lampwright.setup_revision alter column state set default 'draft';

grant update (state, archived) on lampwright.setup to lampwright_server;
