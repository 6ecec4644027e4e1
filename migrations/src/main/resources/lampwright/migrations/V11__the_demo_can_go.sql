-- Takes the demo studio away with its members: all of it was invented, and whoever has seen enough
-- wants it gone. The server's role may delete no history, nor call this: the owner of the tables
-- does, at a start that was told so, and it deletes what is of one studio, named here. What is left
-- is the bare row of the studio, which the change log names. Each server's index learns from that log
-- that the setups are gone, by revision 0, which says that there is no history any more: one that
-- comes under the same id later begins at 1 again.
--
-- Tells how many setups went. A member who wrote something in another studio stays a person there.
create function lampwright.remove_demo() returns integer
  language plpgsql set search_path = pg_catalog, pg_temp as $$
declare
  gone integer;
  member_of_demo text;
begin
  perform set_config('lampwright.studio', 'demo', true);
  perform from lampwright.studio where id = 'demo' for update;

  insert into lampwright.change_log (studio_id, kind, subject_id, revision, deleted)
    select studio_id, 'setup', id, 0, true from lampwright.setup where studio_id = 'demo';
  get diagnostics gone = row_count;

  delete from lampwright.note_revision where studio_id = 'demo';
  delete from lampwright.note where studio_id = 'demo';
  delete from lampwright.take_revision where studio_id = 'demo';
  delete from lampwright.take where studio_id = 'demo';
  delete from lampwright.picture_revision where studio_id = 'demo';
  delete from lampwright.picture where studio_id = 'demo';
  update lampwright.setup set parent_id = null, parent_revision = null where studio_id = 'demo';
  delete from lampwright.setup_revision where studio_id = 'demo';
  delete from lampwright.setup where studio_id = 'demo';
  delete from lampwright.location_revision where studio_id = 'demo';
  delete from lampwright.location where studio_id = 'demo';
  delete from lampwright.kit_gear where studio_id = 'demo';
  delete from lampwright.kit_revision where studio_id = 'demo';
  delete from lampwright.kit where studio_id = 'demo';
  delete from lampwright.gear_revision where studio_id = 'demo';
  delete from lampwright.gear where studio_id = 'demo';
  delete from lampwright.made_once where studio_id = 'demo';
  delete from lampwright.member where studio_id = 'demo';
  delete from lampwright.person where archive_studio_id = 'demo';

  for member_of_demo in select id from lampwright.person where email like '%@demo.example' loop
    begin
      delete from lampwright.session where person_id = member_of_demo;
      delete from lampwright.token where person_id = member_of_demo;
      delete from lampwright.person where id = member_of_demo;
    exception
      when foreign_key_violation then null;
    end;
  end loop;
  perform set_config('lampwright.studio', '', true);
  notify lampwright_change;
  return gone;
end
$$;
revoke all on function lampwright.remove_demo() from public;
