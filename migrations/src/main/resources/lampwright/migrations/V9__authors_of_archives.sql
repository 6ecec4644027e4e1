-- Whose name stands in the history of an archive that came in, and who is no member here: a person
-- who can never sign in. Of them only the name is known, and what the archive called them, so that
-- an archive that goes out again calls them the same.

alter table lampwright.person
  alter column email drop not null,
  alter column password_hash drop not null,
  add column archive_studio_id text,
  add column archived_as text;
alter table lampwright.person
  add column signs_in boolean not null generated always as (archive_studio_id is null) stored,
  add constraint person_of_archive_of_studio foreign key (archive_studio_id)
    references lampwright.studio (id),
  add constraint person_archived_once unique (archive_studio_id, archived_as),
  add constraint person_signs_in_or_not unique (id, signs_in),
  add constraint person_archived_as_is_short check (archived_as ~ '^[0-9a-z]{4,32}$'),
  add constraint person_signs_in_or_is_of_an_archive check (
    case
      when archive_studio_id is null
        then archived_as is null and email is not null and password_hash is not null
      else archived_as is not null and email is null and password_hash is null
    end
  );

-- Nobody can make such a person a member, or give them a session or a token: the keys say so.
alter table lampwright.member
  add column signs_in boolean not null default true,
  add constraint member_signs_in check (signs_in),
  add constraint member_is_person_who_signs_in foreign key (person_id, signs_in)
    references lampwright.person (id, signs_in);
alter table lampwright.session
  add column signs_in boolean not null default true,
  add constraint session_signs_in check (signs_in),
  add constraint session_of_person_who_signs_in foreign key (person_id, signs_in)
    references lampwright.person (id, signs_in);
alter table lampwright.token
  add column signs_in boolean not null default true,
  add constraint token_signs_in check (signs_in),
  add constraint token_of_person_who_signs_in foreign key (person_id, signs_in)
    references lampwright.person (id, signs_in);

-- An archive's setups come in one by one; a child may come before its parent.
alter table lampwright.setup
  alter constraint setup_comes_from_revision deferrable initially immediate;
