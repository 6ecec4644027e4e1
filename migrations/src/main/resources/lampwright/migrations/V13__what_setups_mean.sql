-- What each setup's text means, as numbers that a model of sentences made of it, and of which
-- revision. Derived from the setup: it can be thrown away and is made again in the background.
create table lampwright.setup_meaning (
  studio_id text not null,
  setup_id text not null,
  revision integer not null,
  model text not null,
  numbers bytea not null,
  constraint setup_meaning_pk primary key (studio_id, setup_id),
  constraint setup_meaning_of_setup foreign key (studio_id, setup_id)
    references lampwright.setup (studio_id, id) on delete cascade,
  constraint setup_meaning_model_is_bounded check (length(model) between 1 and 100),
  constraint setup_meaning_numbers_are_bounded check (octet_length(numbers) between 1 and 8192)
);

alter table lampwright.setup_meaning enable row level security;
alter table lampwright.setup_meaning force row level security;

create policy setup_meaning_in_its_studio on lampwright.setup_meaning
  using (studio_id = nullif(current_setting('lampwright.studio', true), ''))
  with check (studio_id = nullif(current_setting('lampwright.studio', true), ''));
create policy setup_meaning_for_the_indexer on lampwright.setup_meaning for select
  to lampwright_indexer using (true);

grant select, insert, update (revision, model, numbers)
  on lampwright.setup_meaning to lampwright_server;
grant select on lampwright.setup_meaning to lampwright_indexer;
