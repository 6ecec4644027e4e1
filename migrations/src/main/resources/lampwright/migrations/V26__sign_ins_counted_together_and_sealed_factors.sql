-- What failed at signing in, counted by all servers on this database together. Names are hashes of
-- account, address or browser; a row says until when it counts, and means nothing after that. Those
-- where somebody has signed in before are kept in the same way. It is no loss when a crash empties it.
create unlogged table lampwright.failed_try (
  name bytea not null,
  until timestamptz not null,
  constraint failed_try_pk primary key (name),
  constraint failed_try_name_is_hashed check (octet_length(name) = 32)
);
create index failed_try_by_end on lampwright.failed_try (until);
grant select, insert, update (until), delete on lampwright.failed_try to lampwright_server;

-- Judges one try that was looked at, and counts it where it was wrong: at one server after the other,
-- so that of many sent at once no more are answered than of as many sent one by one. It has no rights
-- of its own, and takes one round trip.
--
-- NAMES are those that it counts under, in hexadecimal digits; the first counts everywhere, the others
-- only count for whoever comes from somewhere that is not KNOWN. So many failures are free AT_ONCE, and
-- then one more each EACH_MILLIS. It returns for how many milliseconds nothing is to be told, or 0.
create function lampwright.judge_try(
  names text[], at_once bigint[], each_millis bigint[], known text, is_right boolean, at timestamptz
) returns bigint language plpgsql as $$
declare
  is_known boolean;
  pause bigint;
begin
  perform pg_advisory_xact_lock(one.key)
    from (select distinct hashtextextended(n, 26) as key from unnest(names) n order by 1) one;
  is_known := exists (select from lampwright.failed_try f
    where f.name = decode(known, 'hex') and f.until > at);
  select ceil(max(extract(epoch from f.until - at) * 1000 + (1 - t.free) * t.each)) into pause
    from unnest(names, at_once, each_millis) with ordinality as t (name, free, each, nr)
    join lampwright.failed_try f on f.name = decode(t.name, 'hex')
    where t.nr = 1 or not is_known;
  if pause > 0 then
    return pause;
  end if;
  if not is_right then
    -- A failure moves the moment at which all tries are free again by one interval, never beyond all.
    insert into lampwright.failed_try (name, until)
      select decode(t.name, 'hex'),
          least(greatest(at, f.until) + t.each * interval '1 millisecond',
            at + t.free * t.each * interval '1 millisecond')
        from unnest(names, at_once, each_millis) as t (name, free, each)
        left join lampwright.failed_try f on f.name = decode(t.name, 'hex')
      on conflict (name) do update set until = excluded.until;
    -- Each failure makes three rows at most and takes more that are over away, so they stay few.
    delete from lampwright.failed_try
      where name in (select o.name from lampwright.failed_try o
        where o.until < at - interval '1 minute' order by o.until limit 12 for update skip locked);
  end if;
  return 0;
end
$$;

-- The device's key can be sealed (AES-256-GCM) under a key of the server that is not in the database.
-- Which one it was is told by 64 bits of that key's own hash; null is a key in the open.
alter table lampwright.second_factor
  add column sealed_under text,
  add constraint second_factor_sealed_under_is_short check (sealed_under ~ '^[0-9a-f]{16}$');
grant update (secret, sealed_under) on lampwright.second_factor to lampwright_server;

-- What was done to one setup and to what hangs on it is asked for from the setup's page.
create index audit_entry_of_setup on lampwright.audit_entry (studio_id, (detail ->> 'setup'), seq desc)
  where detail ->> 'setup' is not null;
