-- A session can be told from the person's others without its secret, by when and on what it began.
alter table lampwright.session
  add column id text,
  add column device text not null default '',
  add constraint session_device_is_bounded check (length(device) <= 200);
update lampwright.session set id = substr(md5(encode(token_hash, 'hex')), 1, 16);
alter table lampwright.session
  alter column id set not null,
  add constraint session_id_once unique (id),
  add constraint session_id_is_short check (id ~ '^[0-9a-z]{4,32}$');

-- What a token may do at most, where, and until when; where nothing is said, what its person may.
alter table lampwright.token
  add column at_most text,
  add column only_studio_id text,
  add column expires_at timestamptz,
  add constraint token_at_most_is_a_role check (at_most in ('owner', 'author', 'crew', 'reader')),
  add constraint token_only_in_studio foreign key (only_studio_id)
    references lampwright.studio (id);

-- Who left for good signs in no more. What they wrote stays; their name only where they wanted that.
alter table lampwright.member drop constraint member_is_person_who_signs_in;
alter table lampwright.session drop constraint session_of_person_who_signs_in;
alter table lampwright.token drop constraint token_of_person_who_signs_in;
alter table lampwright.person
  drop constraint person_signs_in_or_not,
  drop constraint person_signs_in_or_is_of_an_archive,
  drop column signs_in,
  add column left_at timestamptz;
alter table lampwright.person
  add column signs_in boolean not null
    generated always as (archive_studio_id is null and left_at is null) stored,
  add constraint person_signs_in_or_not unique (id, signs_in),
  add constraint person_signs_in_or_left_or_is_of_an_archive check (
    case
      when archive_studio_id is not null
        then archived_as is not null and email is null and password_hash is null and left_at is null
      when left_at is not null
        then archived_as is null and email is null and password_hash is null
      else archived_as is null and email is not null and password_hash is not null
    end
  );
alter table lampwright.member
  add constraint member_is_person_who_signs_in foreign key (person_id, signs_in)
    references lampwright.person (id, signs_in);
alter table lampwright.session
  add constraint session_of_person_who_signs_in foreign key (person_id, signs_in)
    references lampwright.person (id, signs_in);
alter table lampwright.token
  add constraint token_of_person_who_signs_in foreign key (person_id, signs_in)
    references lampwright.person (id, signs_in);

grant update (left_at) on lampwright.person to lampwright_server;
