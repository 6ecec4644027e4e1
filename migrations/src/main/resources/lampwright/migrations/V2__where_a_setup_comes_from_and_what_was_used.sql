-- A setup may come from another, and a revision may tell what was really used of a planned one.

-- Which setup, and which state of it, a setup was made from. Said when it is made and never changed
-- (the server may not update these columns), so no circle of parents can come about. The key names
-- the revision, which a deletion leaves where it is: the origin stays told after the parent has gone
-- from the catalogue. Rows of revisions are never deleted; where somebody does it by hand, restrict
-- says so, since set null would forget in silence where a setup came from.
alter table lampwright.setup
  add column parent_id text,
  add column parent_revision integer,
  add constraint setup_parent_is_whole check ((parent_id is null) = (parent_revision is null)),
  add constraint setup_is_not_its_own_parent check (parent_id <> id),
  add constraint setup_comes_from_revision foreign key (studio_id, parent_id, parent_revision)
    references lampwright.setup_revision (studio_id, setup_id, revision)
    on update restrict on delete restrict;
create index setup_by_parent on lampwright.setup (studio_id, parent_id)
  where parent_id is not null;

-- The revision that was planned, where this one tells what was really used of it.
alter table lampwright.setup_revision
  add column planned_revision integer,
  add constraint setup_revision_was_planned_before check (planned_revision < revision),
  add constraint setup_revision_of_plan foreign key (studio_id, setup_id, planned_revision)
    references lampwright.setup_revision (studio_id, setup_id, revision)
    on update restrict on delete restrict;
create index setup_revision_of_use on lampwright.setup_revision (studio_id, setup_id, revision desc)
  where planned_revision is not null;
