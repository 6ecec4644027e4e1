-- A few rows in every table of version 12, all of them invented.
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

-- A draft, an archived setup, and a revision that brought another back.
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

-- Who is known from an archive only; a setup of theirs.
insert into lampwright.person (id, name, created_at, archive_studio_id, archived_as) values
  ('past', 'Ilse Brand', '2030-02-01T08:00:00Z', 'quay', 'ilse');

-- A location, and a setup that names it.
insert into lampwright.location
  (studio_id, id, revision, name, document, created_at, created_by, changed_at, changed_by) values
  ('quay', 'pier', 1, 'The pier', '{"name": "The pier"}',
   '2030-02-02T08:00:00Z', 'imke', '2030-02-02T08:00:00Z', 'imke');
insert into lampwright.location_revision
  (studio_id, location_id, revision, name, document, changed_at, changed_by, message, deleted) values
  ('quay', 'pier', 1, 'The pier', '{"name": "The pier"}', '2030-02-02T08:00:00Z', 'imke', '', false);
insert into lampwright.setup
  (studio_id, id, revision, title, document, created_at, created_by, changed_at, changed_by, state) values
  ('quay', 'lamp', 1, 'Lamp on the pier',
   '{"title": "Lamp on the pier", "occasion": {"place": {"name": "The pier", "location": "pier"}}}',
   '2030-02-02T09:00:00Z', 'past', '2030-02-02T09:00:00Z', 'past', 'proven');
insert into lampwright.setup_revision
  (studio_id, setup_id, revision, title, document, changed_at, changed_by, message, deleted, state) values
  ('quay', 'lamp', 1, 'Lamp on the pier',
   '{"title": "Lamp on the pier", "occasion": {"place": {"name": "The pier", "location": "pier"}}}',
   '2030-02-02T09:00:00Z', 'past', 'Before the storm.', false, 'proven');

-- A picture of it, a take and a note, each with its revision.
insert into lampwright.picture
  (studio_id, id, revision, kind, document, created_at, created_by, changed_at, changed_by, setup_id,
   sha256, bytes, media_type, width, height, facts, statistics) values
  ('quay', 'pic1', 1, 'final', '{"kind": "final"}',
   '2030-02-03T08:00:00Z', 'imke', '2030-02-03T08:00:00Z', 'imke', 'lamp',
   repeat('0d', 32), 1234, 'image/jpeg', 60, 40, '{}', '{}');
insert into lampwright.picture_revision
  (studio_id, picture_id, revision, kind, document, changed_at, changed_by, message, deleted) values
  ('quay', 'pic1', 1, 'final', '{"kind": "final"}', '2030-02-03T08:00:00Z', 'imke', '', false);
insert into lampwright.take
  (studio_id, id, revision, setup_id, setup_revision, taken_at, day, number, client_key, label,
   document, created_at, created_by, changed_at, changed_by) values
  ('quay', 'tak1', 1, 'lamp', 1, '2030-02-03T18:00:00Z', '2030-02-03', 1, 'a-phone-1', 'Take 1',
   '{"kept": "yes"}', '2030-02-03T18:00:00Z', 'imke', '2030-02-03T18:00:00Z', 'imke');
insert into lampwright.take_revision
  (studio_id, take_id, revision, label, document, changed_at, changed_by, message, deleted) values
  ('quay', 'tak1', 1, 'Take 1', '{"kept": "yes"}', '2030-02-03T18:00:00Z', 'imke', '', false);
insert into lampwright.note
  (studio_id, id, revision, setup_id, label, document, created_at, created_by, changed_at, changed_by) values
  ('quay', 'not1', 1, 'lamp', 'Note', '{"text": "Sandbag the boom."}',
   '2030-02-03T19:00:00Z', 'oren', '2030-02-03T19:00:00Z', 'oren');
insert into lampwright.note_revision
  (studio_id, note_id, revision, label, document, changed_at, changed_by, message, deleted) values
  ('quay', 'not1', 1, 'Note', '{"text": "Sandbag the boom."}', '2030-02-03T19:00:00Z', 'oren', '', false);

-- A head, and a kit that uses it: the database itself writes down that it does.
insert into lampwright.gear
  (studio_id, id, revision, name, document, created_at, created_by, changed_at, changed_by) values
  ('quay', 'head1', 1, '400 W·s battery head', '{"kind": "head", "count": 2}',
   '2030-02-04T08:00:00Z', 'imke', '2030-02-04T08:00:00Z', 'imke');
insert into lampwright.gear_revision
  (studio_id, gear_id, revision, name, document, changed_at, changed_by, message, deleted) values
  ('quay', 'head1', 1, '400 W·s battery head', '{"kind": "head", "count": 2}',
   '2030-02-04T08:00:00Z', 'imke', '', false);
insert into lampwright.kit
  (studio_id, id, revision, name, document, created_at, created_by, changed_at, changed_by) values
  ('quay', 'bag1', 1, 'The bag', '{"name": "The bag", "gear": [{"id": "head1", "count": 1}]}',
   '2030-02-04T09:00:00Z', 'imke', '2030-02-04T09:00:00Z', 'imke');
insert into lampwright.kit_revision
  (studio_id, kit_id, revision, name, document, changed_at, changed_by, message, deleted) values
  ('quay', 'bag1', 1, 'The bag', '{"name": "The bag", "gear": [{"id": "head1", "count": 1}]}',
   '2030-02-04T09:00:00Z', 'imke', '', false);

-- What a program made under its key.
insert into lampwright.made_once (studio_id, person_id, key, fingerprint, subject_id, made_at) values
  ('quay', 'imke', 'a-key', repeat('0e', 32), 'bag1', '2030-02-04T09:00:00Z');

-- How the light of a setup is: of its current revision, and of one before.
insert into lampwright.setup_signature (studio_id, setup_id, revision, version, signature) values
  ('quay', 'rope', 1, 1, '{"lights": {"by_role": [{"role": "key", "count": 1}]}}'),
  ('quay', 'rope', 2, 1, '{"lights": {"by_role": [{"role": "key", "count": 2}]}}'),
  ('mill', 'rope', 1, 1, '{"lights": {"by_role": [{"role": "rim", "count": 1}]}}');
