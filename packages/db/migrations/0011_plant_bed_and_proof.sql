-- Bed plans and trials as subjects of advice; signs with photographs, sprays, what stood in a bed, where it lies; an
-- office's own evidence.
alter table drafts drop constraint drafts_subject_kind_check,
  add constraint drafts_subject_kind_check
    check (subject_kind in ('planting', 'valve', 'bed', 'structure', 'shed', 'bed-plan', 'trial', 'farm-season'));
alter table advisories drop constraint advisories_subject_kind_check,
  add constraint advisories_subject_kind_check
    check (subject_kind in ('planting', 'valve', 'bed', 'structure', 'shed', 'bed-plan', 'trial', 'farm-season'));

alter table plantings
  add column base_temperature_from text,
  add column pick_at text check (pick_at in ('green', 'colour')),
  add column height_cm double precision check (height_cm > 0),
  add column pungent boolean,
  add column save_seed boolean;

-- Where a bed lies on the farm's plan, how many rows it takes, and from where something else shades it.
alter table beds
  add column place jsonb,
  add column plan_rows integer check (plan_rows > 0),
  add column shaded_from text check (shaded_from in ('north', 'east', 'south', 'west'));

-- Lime and the like go onto a bed whether anything stands in it or not.
alter table applications alter column planting_id drop not null;

create table signs (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  planting_id uuid not null,
  on_day date not null,
  sign text not null,
  part text,
  pattern text,
  speed text,
  plants_pct double precision check (plants_pct between 0 and 100),
  text_id uuid,
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id, planting_id) references plantings (office_id, farm_id, id),
  foreign key (office_id, text_id) references texts (office_id, id)
);
create index signs_by_planting on signs (office_id, farm_id, planting_id, on_day);

create table photos (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  sign_id uuid not null,
  media_type text not null check (media_type in ('image/jpeg', 'image/png', 'image/webp')),
  bytes bytea not null check (octet_length(bytes) between 1 and 4000000),
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, sign_id) references signs (office_id, farm_id, id) on delete cascade
);
create index photos_by_sign on photos (office_id, farm_id, sign_id);

-- As its label says it. The intervals close the bed to work and to harvest.
create table sprays (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  bed_id uuid not null,
  at timestamptz not null,
  product text not null,
  registration text,
  target text not null check (target in ('insects', 'mites', 'disease', 'weeds', 'other')),
  re_entry_hours double precision not null check (re_entry_hours between 0 and 1440),
  pre_harvest_days integer not null check (pre_harvest_days between 0 and 365),
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id)
);
create index sprays_by_bed on sprays (office_id, farm_id, bed_id, at);

create table bed_history (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  bed_id uuid not null,
  season integer not null check (season between 1900 and 2200),
  crop text not null,
  disease text,
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  unique (office_id, bed_id, season, crop),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id)
);

-- A season's plantings placed on the beds of one site.
create table bed_plans (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  site_id uuid not null,
  season integer not null check (season between 1900 and 2200),
  blocks jsonb not null default '[]',
  version integer not null default 1,
  changed_at timestamptz not null default now(),
  primary key (office_id, id),
  unique (office_id, site_id, season),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id)
);

create table trials (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  site_id uuid not null,
  name text not null,
  design jsonb not null,
  plots jsonb not null,
  started_on date,
  ended_on date check (ended_on >= started_on),
  made_at timestamptz not null default now(),
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id)
);

create table trial_values (
  office_id uuid not null,
  farm_id uuid not null,
  trial_id uuid not null,
  plot_id uuid not null,
  response_id uuid not null,
  on_day date not null,
  value double precision,
  missing text check (missing in ('plants-lost', 'not-measured', 'mixed-up', 'spoiled')),
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, trial_id, plot_id, response_id),
  foreign key (office_id, farm_id, trial_id) references trials (office_id, farm_id, id),
  check (num_nonnulls(value, missing) = 1)
);

-- What an office itself holds as evidence, beside what is published.
create table office_sources (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  source jsonb not null,
  added_by uuid not null default app_user(),
  added_at timestamptz not null default now(),
  retired_at timestamptz,
  primary key (office_id, id)
);
create unique index office_sources_by_name on office_sources (office_id, (source ->> 'id')) where retired_at is null;

do $$
declare t text;
begin
  foreach t in array array['signs', 'photos', 'sprays', 'trial_values'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert, update, delete on table %I to pith_app', t);
    execute format('create policy agent on %I to pith_app
      using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id))', t);
    execute format('create policy farmer_reads on %I for select to pith_app
      using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id))', t);
    execute format('create policy farmer_records on %I for insert to pith_app
      with check (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and recorded_by = app_user())', t);
    execute format('create policy farmer_takes_back on %I for delete to pith_app
      using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and recorded_by = app_user())', t);
  end loop;
  foreach t in array array['bed_history', 'bed_plans', 'trials'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert, update, delete on table %I to pith_app', t);
    execute format('create policy agent on %I to pith_app
      using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id))', t);
    execute format('create policy farmer_reads on %I for select to pith_app
      using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id))', t);
  end loop;
  execute 'alter table office_sources enable row level security';
  execute 'alter table office_sources force row level security';
  execute 'revoke all on table office_sources from public';
  execute 'grant select, insert, update on table office_sources to pith_app';
  -- Farmers read it too: it stands beside the published evidence of what they are advised.
  execute 'create policy agent on office_sources to pith_app using (office_id = app_office() and app_is_agent())';
  execute 'create policy farmer_reads on office_sources for select to pith_app
    using (office_id = app_office() and app_is_farmer())';
end $$;
