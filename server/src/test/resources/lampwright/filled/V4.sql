-- A few rows in every table of version 4, all of them invented.
insert into lampwright.studio (id, name, created_at) values
  ('quay', 'Quay Studio', '2030-01-02T08:00:00Z'),
  ('mill', 'Mill Studio', '2030-01-03T08:00:00Z');
insert into lampwright.person (id, email, name, password_hash, created_at) values
  ('imke', 'imke@demo.example', 'Imke Tal', 'no hash', '2030-01-02T08:00:00Z'),
  ('oren', 'oren@demo.example', 'Oren Vale', 'no hash', '2030-01-02T08:05:00Z');
insert into lampwright.member (studio_id, person_id, role, created_at) values
  ('quay', 'imke', 'owner', '2030-01-02T08:00:00Z'),
  ('quay', 'oren', 'reader', '2030-01-02T08:06:00Z'),
  ('mill', 'oren', 'owner', '2030-01-03T08:00:00Z');
insert into lampwright.session (token_hash, person_id, created_at, seen_at, expires_at) values
  (decode(repeat('0a', 32), 'hex'), 'imke', '2030-01-04T08:00:00Z', '2030-01-04T09:00:00Z', '2030-02-04T08:00:00Z');
insert into lampwright.token (id, token_hash, person_id, name, created_at, last_used_at) values
  ('tok1', decode(repeat('0b', 32), 'hex'), 'imke', 'a program', '2030-01-04T08:00:00Z', null);
insert into lampwright.first_start_link (token_hash, created_at, expires_at, used_at) values
  (decode(repeat('0c', 32), 'hex'), '2030-01-02T07:00:00Z', '2030-01-03T07:00:00Z', '2030-01-02T08:00:00Z');

insert into lampwright.setup
  (studio_id, id, revision, title, document, created_at, created_by, changed_at, changed_by, deleted_at) values
  ('quay', 'rope', 2, 'Rope in the rain', '{"title": "Rope in the rain"}',
   '2030-01-05T08:00:00Z', 'imke', '2030-01-06T08:00:00Z', 'imke', null),
  ('quay', 'gone', 2, 'Gone again', '{"title": "Gone again"}',
   '2030-01-05T09:00:00Z', 'imke', '2030-01-06T09:00:00Z', 'oren', '2030-01-06T09:00:00Z'),
  ('mill', 'rope', 1, 'The mill’s own rope', '{"title": "The mill’s own rope"}',
   '2030-01-05T10:00:00Z', 'oren', '2030-01-05T10:00:00Z', 'oren', null);
insert into lampwright.setup_revision
  (studio_id, setup_id, revision, title, document, changed_at, changed_by, message, deleted, planned_revision) values
  ('quay', 'rope', 1, 'Rope', '{"title": "Rope"}', '2030-01-05T08:00:00Z', 'imke', '', false, null),
  ('quay', 'rope', 2, 'Rope in the rain', '{"title": "Rope in the rain"}',
   '2030-01-06T08:00:00Z', 'imke', 'It rained.', false, 1),
  ('quay', 'gone', 1, 'Gone again', '{"title": "Gone again"}', '2030-01-05T09:00:00Z', 'imke', '', false, null),
  ('quay', 'gone', 2, 'Gone again', '{"title": "Gone again"}', '2030-01-06T09:00:00Z', 'oren', '', true, null),
  ('mill', 'rope', 1, 'The mill’s own rope', '{"title": "The mill’s own rope"}',
   '2030-01-05T10:00:00Z', 'oren', '', false, null);
insert into lampwright.setup
  (studio_id, id, revision, title, document, created_at, created_by, changed_at, changed_by, parent_id, parent_revision)
  values ('quay', 'knot', 1, 'Knot', '{"title": "Knot"}',
   '2030-01-07T08:00:00Z', 'imke', '2030-01-07T08:00:00Z', 'imke', 'rope', 1);
insert into lampwright.setup_revision
  (studio_id, setup_id, revision, title, document, changed_at, changed_by, message, deleted) values
  ('quay', 'knot', 1, 'Knot', '{"title": "Knot"}', '2030-01-07T08:00:00Z', 'imke', '', false);

insert into lampwright.kit
  (studio_id, id, revision, name, document, created_at, created_by, changed_at, changed_by, deleted_at) values
  ('quay', 'van1', 1, 'The van', '{"name": "The van"}',
   '2030-01-05T08:00:00Z', 'imke', '2030-01-05T08:00:00Z', 'imke', null);
insert into lampwright.kit_revision
  (studio_id, kit_id, revision, name, document, changed_at, changed_by, message, deleted) values
  ('quay', 'van1', 1, 'The van', '{"name": "The van"}', '2030-01-05T08:00:00Z', 'imke', '', false);
insert into lampwright.change_log (studio_id, kind, subject_id, revision, deleted, at) values
  ('quay', 'setup', 'rope', 1, false, '2030-01-05T08:00:00Z'),
  ('quay', 'kit', 'van1', 1, false, '2030-01-05T08:00:00Z');

-- What version 4 adds: a draft, an archived setup, and a revision that brought another back.
update lampwright.setup set state = 'draft' where studio_id = 'quay' and id = 'knot';
update lampwright.setup_revision set state = 'draft' where studio_id = 'quay' and setup_id = 'knot';
insert into lampwright.setup
  (studio_id, id, revision, title, document, created_at, created_by, changed_at, changed_by, state, archived) values
  ('quay', 'tide', 2, 'Tide', '{"title": "Tide"}',
   '2030-01-08T08:00:00Z', 'imke', '2030-01-09T08:00:00Z', 'imke', 'proven', true);
insert into lampwright.setup_revision
  (studio_id, setup_id, revision, title, document, changed_at, changed_by, message, deleted, state, archived, restored_from)
  values
  ('quay', 'tide', 1, 'Tide', '{"title": "Tide"}', '2030-01-08T08:00:00Z', 'imke', '', false, 'proven', false, null),
  ('quay', 'tide', 2, 'Tide', '{"title": "Tide"}', '2030-01-09T08:00:00Z', 'imke', '', false, 'proven', true, 1);
