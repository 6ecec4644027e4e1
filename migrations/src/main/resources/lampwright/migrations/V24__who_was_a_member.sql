-- Who belonged to a studio and does so no more. What they wrote stays; whether the studio goes on
-- calling them by their name there is theirs to choose where they leave this server for good, and
-- otherwise it does not. So a search by author finds what former members made, too.
create table lampwright.former_member (
  studio_id text not null,
  person_id text not null,
  is_named boolean not null default false,
  constraint former_member_pk primary key (studio_id, person_id),
  constraint former_member_of_studio foreign key (studio_id) references lampwright.studio (id),
  constraint former_member_is_person foreign key (person_id)
    references lampwright.person (id) on delete cascade
);
create index former_member_by_person on lampwright.former_member (person_id);

alter table lampwright.former_member enable row level security;
alter table lampwright.former_member force row level security;

create policy former_member_in_its_studio on lampwright.former_member
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));

grant select, insert, update (is_named) on lampwright.former_member to lampwright_server;

-- However somebody ceases to be a member: no way of doing so can forget it. It has no rights of its own.
create function lampwright.remember_member() returns trigger language plpgsql as $$
begin
  -- The demo goes as a whole, and whoever owns the tables takes it away: nobody was its member.
  if old.studio_id = 'demo' and current_user <> 'lampwright_server' then
    delete from lampwright.former_member where studio_id = 'demo';
    return null;
  end if;
  insert into lampwright.former_member (studio_id, person_id)
    values (old.studio_id, old.person_id)
    on conflict do nothing;
  return null;
end
$$;

create trigger member_is_remembered after delete on lampwright.member
  for each row execute function lampwright.remember_member();
