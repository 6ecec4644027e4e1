-- The change log tells of everything that a studio keeps by revisions.
alter table lampwright.change_log
  drop constraint change_log_kind_is_known,
  add constraint change_log_kind_is_known
    check (kind in ('setup', 'kit', 'gear', 'location', 'picture', 'take', 'note'));
