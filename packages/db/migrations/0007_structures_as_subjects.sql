-- A house or tunnel is a subject of advice like a bed or a valve.
alter table drafts drop constraint drafts_subject_kind_check,
  add constraint drafts_subject_kind_check check (subject_kind in ('planting', 'valve', 'bed', 'structure', 'farm-season'));
alter table advisories drop constraint advisories_subject_kind_check,
  add constraint advisories_subject_kind_check check (subject_kind in ('planting', 'valve', 'bed', 'structure', 'farm-season'));

alter table weather_days add column cloud_pct double precision check (cloud_pct between 0 and 100);
