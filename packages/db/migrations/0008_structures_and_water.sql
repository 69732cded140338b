-- Houses and tunnels, what a laboratory said of the water, what soil sensors read, and what a planting is raised for.
create table structures (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  site_id uuid not null,
  name text not null,
  glazing text not null,
  u_w_per_m2_k double precision check (u_w_per_m2_k > 0),
  inner_layer text not null default 'none',
  floor_area_m2 double precision not null check (floor_area_m2 > 0),
  cover_area_m2 double precision not null check (cover_area_m2 > 0),
  volume_m3 double precision not null check (volume_m3 > 0),
  air_changes_per_h double precision check (air_changes_per_h > 0),
  heaters jsonb not null default '[]',
  trays jsonb,
  night_c double precision,
  heated_from date,
  heated_to date,
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id),
  check (heated_to >= heated_from)
);

create table water_tests (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  site_id uuid not null,
  valve_id uuid,
  sampled_on date not null,
  lab_name text,
  sample_ref text,
  result jsonb not null,
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id),
  foreign key (office_id, farm_id, valve_id) references valves (office_id, farm_id, id)
);

create table soil_water_readings (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  bed_id uuid not null,
  at timestamptz not null,
  kind text not null check (kind in ('tension-kpa', 'water-content')),
  depth_cm double precision not null check (depth_cm > 0),
  value double precision not null check (value >= 0),
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  unique (office_id, bed_id, kind, depth_cm, at),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id)
);

alter table valves add column wetted_fraction double precision check (wetted_fraction > 0 and wetted_fraction <= 1);
alter table plantings
  add column expected_price_per_kg double precision check (expected_price_per_kg >= 0),
  add column propagation jsonb,
  add column deficit jsonb;
alter table forecasts add column hours jsonb;

do $$
declare t text;
begin
  foreach t in array array['structures', 'water_tests', 'soil_water_readings'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert, update on table %I to pith_app', t);
    execute format('create policy agent on %I to pith_app
      using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id))', t);
    execute format('create policy farmer_reads on %I for select to pith_app
      using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id))', t);
  end loop;
  -- A farmer writes down what was measured, in their own name, and takes back what they wrote by mistake.
  foreach t in array array['water_tests', 'soil_water_readings'] loop
    execute format('grant delete on table %I to pith_app', t);
    execute format('create policy farmer_records on %I for insert to pith_app
      with check (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and recorded_by = app_user())', t);
    execute format('create policy farmer_takes_back on %I for delete to pith_app
      using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and recorded_by = app_user())', t);
  end loop;
end $$;
