-- How often something of a studio was written: who has read of it, and finds the count as it was, knows that
-- all of it still is as it was. It is counted once a transaction and at its very end, so that writers do not
-- wait for each other while they work; in eight places, so that they seldom do at the end. Two counts are
-- compared place by place. They outlive their studio: what comes after it under its id is not taken for it.
create table lampwright.studio_writes (
  studio_id text not null,
  slot integer not null,
  writes bigint not null,
  constraint studio_writes_pk primary key (studio_id, slot),
  constraint studio_writes_has_eight_slots check (slot between 0 and 7),
  constraint studio_writes_counts_from_1 check (writes >= 1)
) with (fillfactor = 50);

alter table lampwright.studio_writes enable row level security;
alter table lampwright.studio_writes force row level security;

create policy studio_writes_in_its_studio on lampwright.studio_writes
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

grant select, insert, update (writes) on lampwright.studio_writes to lampwright_server;

-- Counts a studio, whoever writes and wherever they are. It has no rights of its own.
create function lampwright.count_write_in(studio text) returns void language plpgsql as $$
declare
  counted constant text := coalesce(current_setting('lampwright.counted', true), '');
  entered constant text := coalesce(current_setting('lampwright.studio', true), '');
begin
  if position(' ' || studio || ' ' in counted) > 0 then
    return;
  end if;
  perform set_config('lampwright.counted', counted || ' ' || studio || ' ', true);
  perform set_config('lampwright.studio', studio, true);
  insert into lampwright.studio_writes as counts (studio_id, slot, writes)
    values (studio, pg_backend_pid() % 8, 1)
    on conflict (studio_id, slot) do update set writes = counts.writes + 1;
  perform set_config('lampwright.studio', entered, true);
end
$$;

-- Counts the studio of a row that was written.
create function lampwright.count_write() returns trigger language plpgsql as $$
declare
  studio text;
begin
  if tg_relname = 'studio' then
    studio := case tg_op when 'DELETE' then old.id else new.id end;
  else
    studio := case tg_op when 'DELETE' then old.studio_id else new.studio_id end;
  end if;
  if studio is not null
      and position(' ' || studio || ' ' in coalesce(current_setting('lampwright.counted', true), '')) = 0 then
    perform lampwright.count_write_in(studio);
  end if;
  return null;
end
$$;

-- Who belongs to another studio now, or is called otherwise, is shown so in each of theirs.
create function lampwright.count_write_of_person() returns trigger language plpgsql as $$
declare
  acting constant text := coalesce(current_setting('lampwright.person', true), '');
  person text;
  studio text;
begin
  if tg_relname = 'person' then
    person := case tg_op when 'DELETE' then old.id else new.id end;
  else
    person := case tg_op when 'DELETE' then old.person_id else new.person_id end;
  end if;
  perform set_config('lampwright.person', person, true);
  for studio in
    select m.studio_id from lampwright.member m where m.person_id = person order by m.studio_id
  loop
    perform lampwright.count_write_in(studio);
  end loop;
  perform set_config('lampwright.person', acting, true);
  return null;
end
$$;

create constraint trigger counted_of_person after insert or update or delete on lampwright.person
  deferrable initially deferred for each row execute function lampwright.count_write_of_person();
create constraint trigger counted_of_person after insert or update or delete on lampwright.member
  deferrable initially deferred for each row execute function lampwright.count_write_of_person();
create constraint trigger counted after insert or update or delete on lampwright.studio
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.member
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.setup
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.setup_revision
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.kit
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.kit_revision
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.change_log
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.picture
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.picture_revision
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.location
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.location_revision
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.take
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.take_revision
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.note
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.note_revision
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.gear
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.gear_revision
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.kit_gear
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.made_once
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.setup_signature
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.setup_meaning
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.saved_search
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.proposal
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.drill_answer
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.trail
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.trail_revision
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.stage_done
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.built
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.invitation
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.audit_entry
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.share_link
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.former_member
  deferrable initially deferred for each row execute function lampwright.count_write();
create constraint trigger counted after insert or update or delete on lampwright.import_job
  deferrable initially deferred for each row execute function lampwright.count_write();

-- The glance tells the count too, as it was when the rest is read or before, for whoever asks; and who comes
-- alone, where no setup is asked for.
drop function lampwright.glance(boolean, bytea, timestamptz, text, text, integer);
create function lampwright.glance(
  by_token boolean, secret bytea, at timestamptz, studio text, setup text, known integer, with_writes boolean,
  out way_id text, out begun_at timestamptz, out noted_at timestamptz,
  out at_most text, out only_studio_id text,
  out person_id text, out email text, out name text, out language text, out lengths text, out stop_fraction text,
  out role text,
  out revision integer, out changed_at timestamptz, out state text, out archived boolean,
  out parent_id text, out parent_revision integer,
  out parent_title text, out parent_state text, out parent_archived boolean,
  out changed_by_name text, out is_member boolean, out is_named boolean, out is_of_archive boolean,
  out document text, out writes text
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
  if with_writes then
    select coalesce(string_agg(w.slot || ':' || w.writes, ' ' order by w.slot), '') into writes
      from lampwright.studio_writes w where w.studio_id = studio;
  end if;
  if setup is null then
    return next;
    return;
  end if;
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
