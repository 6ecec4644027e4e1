-- What is asked for most, in one round trip: who comes, whether the studio lets them in, and one of its
-- setups. It has no rights of its own: each step is told to row-level security before the next one
-- reads. Who may see what of the row is for the server to judge, by the role that stands beside it.
--
-- SECRET is the hash of a token or a session. Nobody it opens for gives no row; somebody who does not belong to the
-- studio, or whose token is not good for it, a row without a role; a setup that is not there, one without a
-- revision. The document of the revision that is KNOWN is left out.
create function lampwright.glance(
  by_token boolean, secret bytea, at timestamptz, studio text, setup text, known integer,
  out way_id text, out begun_at timestamptz, out noted_at timestamptz,
  out at_most text, out only_studio_id text,
  out person_id text, out email text, out name text, out language text, out lengths text, out stop_fraction text,
  out role text,
  out revision integer, out changed_at timestamptz, out state text, out archived boolean,
  out parent_id text, out parent_revision integer,
  out parent_title text, out parent_state text, out parent_archived boolean,
  out changed_by_name text, out is_member boolean, out is_named boolean, out is_of_archive boolean,
  out document text
) returns setof record language plpgsql rows 1 as $$
declare
  changed_by text;
begin
  if by_token then
    select t.id, t.created_at, t.last_used_at, t.at_most, t.only_studio_id,
        p.id, p.email, p.name, p.language, p.lengths, p.stop_fraction
      into way_id, begun_at, noted_at, at_most, only_studio_id,
        person_id, email, name, language, lengths, stop_fraction
      from lampwright.token t join lampwright.person p on p.id = t.person_id
      where t.token_hash = secret and (t.expires_at is null or t.expires_at > at) and p.signs_in;
  else
    select s.id, s.created_at, s.seen_at,
        p.id, p.email, p.name, p.language, p.lengths, p.stop_fraction
      into way_id, begun_at, noted_at,
        person_id, email, name, language, lengths, stop_fraction
      from lampwright.session s join lampwright.person p on p.id = s.person_id
      where s.token_hash = secret and s.expires_at > at and not s.waits_for_code and p.signs_in;
  end if;
  if person_id is null then
    return;
  end if;
  perform set_config('lampwright.person', person_id, true);
  if only_studio_id is null or only_studio_id = studio then
    select m.role into role from lampwright.member m
      where m.studio_id = studio and m.person_id = glance.person_id;
  end if;
  if role is null then
    return next;
    return;
  end if;
  perform set_config('lampwright.studio', studio, true);
  -- One small step after the other: a join of all takes longer to begin than they take to run.
  select s.revision, s.changed_at, s.state, s.archived, s.parent_id, s.parent_revision, s.changed_by,
      case when s.revision is distinct from known then s.document::text end
    into revision, changed_at, state, archived, parent_id, parent_revision, changed_by, document
    from lampwright.setup s
    where s.studio_id = studio and s.id = setup and s.deleted_at is null;
  if parent_id is not null then
    select r.title, r.state, r.archived into parent_title, parent_state, parent_archived
      from lampwright.setup_revision r
      where r.studio_id = studio and r.setup_id = glance.parent_id
        and r.revision = glance.parent_revision;
  end if;
  if changed_by = person_id then
    changed_by_name := name;
    is_member := true;
    is_of_archive := false;
  else
    select p.name, p.archive_studio_id is not null,
        exists (select from lampwright.member m
          where m.studio_id = studio and m.person_id = changed_by),
        (select f.is_named from lampwright.former_member f
          where f.studio_id = studio and f.person_id = changed_by)
      into changed_by_name, is_of_archive, is_member, is_named
      from lampwright.person p
      where p.id = changed_by and (p.archive_studio_id is null or p.archive_studio_id = studio);
  end if;
  return next;
end
$$;
