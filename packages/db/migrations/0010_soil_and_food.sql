-- The shed as a subject of advice, materials in full, deliveries, and what was measured of plants, drains and by laboratories.
alter table drafts drop constraint drafts_subject_kind_check,
  add constraint drafts_subject_kind_check
    check (subject_kind in ('planting', 'valve', 'bed', 'structure', 'shed', 'farm-season'));
alter table advisories drop constraint advisories_subject_kind_check,
  add constraint advisories_subject_kind_check
    check (subject_kind in ('planting', 'valve', 'bed', 'structure', 'shed', 'farm-season'));

alter table materials
  add column analysis jsonb not null default '{}',
  add column certified_proof text,
  add column certified_proof_until date,
  add column label_most_kg_per_ha double precision check (label_most_kg_per_ha >= 0),
  add column can_buy boolean,
  add column bag_kg double precision check (bag_kg > 0);

-- What was given keeps what the material was on that day.
alter table applications add column kind text, add column composted boolean;

-- A delivery into the shed. The material's stock is the one truth; what is left of a lot follows from it, oldest used first.
create table material_lots (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  material_id uuid not null,
  received_on date not null,
  lot text,
  kg double precision not null check (kg > 0),
  price_per_kg double precision check (price_per_kg >= 0),
  best_before date,
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, material_id) references materials (office_id, farm_id, id)
);
create index material_lots_by_material on material_lots (office_id, farm_id, material_id, received_on);

create table plant_tests (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  planting_id uuid not null,
  sampled_on date not null,
  kind text not null check (kind in ('petiole-sap', 'leaf')),
  stage text not null,
  lab_name text,
  "values" jsonb not null,
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, planting_id) references plantings (office_id, farm_id, id)
);
create index plant_tests_by_planting on plant_tests (office_id, farm_id, planting_id, sampled_on);

create table drain_readings (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  planting_id uuid not null,
  on_day date not null,
  ec_ds_per_m double precision check (ec_ds_per_m >= 0),
  ph double precision check (ph between 2 and 12),
  drained_pct double precision check (drained_pct between 0 and 100),
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, planting_id) references plantings (office_id, farm_id, id),
  check (num_nonnulls(ec_ds_per_m, ph, drained_pct) > 0)
);
create index drain_readings_by_planting on drain_readings (office_id, farm_id, planting_id, on_day);

-- An office's own tables for reading soil tests, each with its source.
create table office_guides (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  guide jsonb not null,
  added_by uuid not null default app_user(),
  added_at timestamptz not null default now(),
  retired_at timestamptz,
  primary key (office_id, id)
);
create unique index office_guides_by_name on office_guides (office_id, (guide ->> 'id')) where retired_at is null;

-- How an office reads the columns of a laboratory's files, once it has said so.
create table lab_mappings (
  office_id uuid not null references offices (id),
  lab text not null check (lab = lower(lab) and length(lab) between 1 and 80),
  columns jsonb not null,
  updated_by uuid not null default app_user(),
  updated_at timestamptz not null default now(),
  primary key (office_id, lab)
);

do $$
declare t text;
begin
  foreach t in array array['material_lots', 'plant_tests', 'drain_readings'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert, delete on table %I to pith_app', t);
    execute format('create policy agent on %I to pith_app
      using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id))', t);
    execute format('create policy farmer_reads on %I for select to pith_app
      using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id))', t);
    execute format('create policy farmer_records on %I for insert to pith_app
      with check (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and recorded_by = app_user())', t);
    execute format('create policy farmer_takes_back on %I for delete to pith_app
      using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and recorded_by = app_user())', t);
  end loop;
  foreach t in array array['office_guides', 'lab_mappings'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert, update on table %I to pith_app', t);
    execute format('create policy agent on %I to pith_app using (office_id = app_office() and app_is_agent())', t);
  end loop;
end $$;
