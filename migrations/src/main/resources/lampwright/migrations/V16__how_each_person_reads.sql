-- How each person reads pages: their language (null: as their browser asks), the unit of their tape,
-- the fraction of a stop on their meter. The revision counts changes of these alone.
alter table lampwright.person
  add column language text,
  add column lengths text not null default 'metres',
  add column stop_fraction text not null default 'tenths',
  add column preferences_revision integer not null default 1;

alter table lampwright.person
  add constraint person_language_is_spoken check (language in ('en', 'de')),
  add constraint person_lengths_are_known check (lengths in ('metres', 'feet')),
  add constraint person_stop_fraction_is_known check (stop_fraction in ('tenths', 'thirds')),
  add constraint person_preferences_revision_counts_from_1 check (preferences_revision >= 1);

grant update (language, lengths, stop_fraction, preferences_revision)
  on lampwright.person to lampwright_server;
