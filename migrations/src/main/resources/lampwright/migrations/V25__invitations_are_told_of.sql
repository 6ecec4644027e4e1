-- For whom an invitation is meant stays out of the trail, which outlives it.
create trigger audit after insert or delete on lampwright.invitation
  for each row execute function lampwright.audit('invitation', 'id', '');

-- What somebody did is theirs to take out, whatever their role was.
create policy audit_entry_by_oneself on lampwright.audit_entry for select
  using (studio_id = nullif(current_setting('lampwright.studio', true), '')
    and person_id = nullif(current_setting('lampwright.person', true), ''));
