-- Tenant tables. office_id leads every key, so that the schema distributes by tenant. A key that names a farm's thing
-- carries the farm too: a row of one farm cannot hang on another farm's bed. SI units in the names.

create table offices (
  id uuid primary key default gen_random_uuid(),
  name text not null,
  county text not null,
  units text not null default 'metric' check (units in ('metric', 'us')),
  settings jsonb not null default '{}',
  created_at timestamptz not null default now()
);

create table memberships (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  user_id uuid not null,
  role text not null check (role in ('agent', 'farmer')),
  farm_ids uuid[] not null default '{}',
  name text not null,
  email text,
  primary key (office_id, id),
  unique (office_id, user_id)
);
create index memberships_by_user on memberships (user_id);

create table farms (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  name text not null,
  contact_name text,
  phone text,
  email text,
  units text not null default 'metric' check (units in ('metric', 'us')),
  language text not null default 'en',
  created_at timestamptz not null default now(),
  archived_at timestamptz,
  primary key (office_id, id)
);

create table sites (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  name text not null,
  latitude_deg double precision not null check (latitude_deg between -90 and 90),
  longitude_deg double precision not null check (longitude_deg between -180 and 180),
  elevation_m double precision not null,
  time_zone text not null,
  coastal boolean not null default false,
  station_id text,
  station_offset jsonb,
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id) references farms (office_id, id)
);

create table valves (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  site_id uuid not null,
  name text not null,
  method text not null check (method in ('drip', 'sprinkler', 'furrow', 'hand')),
  flow_l_per_h double precision not null check (flow_l_per_h > 0),
  efficiency double precision not null check (efficiency > 0 and efficiency <= 1),
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id)
);

create table beds (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  site_id uuid not null,
  valve_id uuid,
  name text not null,
  kind text not null check (kind in ('ground', 'containers')),
  length_m double precision not null check (length_m > 0),
  width_m double precision not null check (width_m > 0),
  spacing_m double precision not null check (spacing_m > 0),
  soil jsonb not null default '{}',
  containers jsonb,
  certification text not null default 'none' check (certification in ('none', 'transition', 'certified')),
  certifier text,
  position integer not null default 0,
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id),
  foreign key (office_id, farm_id, valve_id) references valves (office_id, farm_id, id)
);

create table bed_covers (
  office_id uuid not null,
  farm_id uuid not null,
  bed_id uuid not null,
  cover text not null check (cover in ('none', 'fleece', 'low-tunnel', 'high-tunnel', 'heated-house')),
  from_day date not null,
  to_day date check (to_day >= from_day),
  primary key (office_id, bed_id, cover, from_day),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id)
);

create table bed_mulches (
  office_id uuid not null,
  farm_id uuid not null,
  bed_id uuid not null,
  mulch text not null check (mulch in ('none', 'black', 'clear', 'white', 'silver', 'organic')),
  from_day date not null,
  to_day date check (to_day >= from_day),
  primary key (office_id, bed_id, mulch, from_day),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id)
);

create table plantings (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  bed_id uuid not null,
  variety_name text not null,
  species text not null check (species in ('annuum', 'chinense', 'baccatum', 'frutescens', 'pubescens')),
  market_type text not null,
  sown_on date not null,
  planned_set_out_on date check (planned_set_out_on >= sown_on),
  set_out_on date check (set_out_on >= sown_on),
  ended_on date check (ended_on >= sown_on),
  plants integer not null check (plants > 0),
  rows_per_bed integer not null check (rows_per_bed > 0),
  plant_spacing_m double precision not null check (plant_spacing_m > 0),
  staked boolean not null default false,
  grafted boolean not null default false,
  overwintered boolean not null default false,
  yield_goal_t_per_ha double precision,
  days_to_maturity jsonb,
  base_temperature_c double precision,
  feeding jsonb not null,
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id)
);
create index plantings_by_bed on plantings (office_id, farm_id, bed_id);

create table materials (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  kind text not null,
  name text not null,
  n_pct double precision not null check (n_pct between 0 and 100),
  p2o5_pct double precision not null check (p2o5_pct between 0 and 100),
  k2o_pct double precision not null check (k2o_pct between 0 and 100),
  soluble boolean not null,
  bulk_density_kg_per_l double precision check (bulk_density_kg_per_l > 0),
  certified_use text not null default 'unknown'
    check (certified_use in ('allowed', 'restricted', 'prohibited', 'unknown')),
  stock_kg double precision check (stock_kg >= 0),
  price_per_kg double precision check (price_per_kg >= 0),
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id) references farms (office_id, id)
);

-- People's own words, and the salt of their hash. Erased: both gone.
create table texts (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  farm_id uuid,
  salt bytea,
  bytes text,
  erased_at timestamptz,
  primary key (office_id, id),
  foreign key (office_id, farm_id) references farms (office_id, id),
  check (case when erased_at is null then salt is not null and bytes is not null else salt is null and bytes is null end)
);

create table imports (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  kind text not null check (kind in ('soil-tests', 'weather', 'forecast')),
  site_id uuid,
  bed_id uuid,
  file_name text not null,
  status text not null default 'staged' check (status in ('staged', 'saved', 'discarded')),
  mapping jsonb not null,
  accepted jsonb not null,
  refused jsonb not null,
  accepted_count integer not null check (accepted_count >= 0),
  refused_count integer not null check (refused_count >= 0),
  duplicate_count integer not null default 0 check (duplicate_count >= 0),
  created_by uuid not null,
  created_at timestamptz not null default now(),
  saved_at timestamptz,
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id) references farms (office_id, id),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id)
);
create index imports_newest on imports (office_id, farm_id, created_at desc);

create table soil_tests (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  bed_id uuid not null,
  sampled_on date not null,
  depth_cm double precision not null check (depth_cm > 0),
  medium text not null check (medium in ('mineral-soil', 'organic-soil', 'potting-medium')),
  lab_name text,
  sample_ref text not null,
  result jsonb not null,
  import_id uuid,
  primary key (office_id, id),
  unique (office_id, bed_id, sampled_on, sample_ref, depth_cm),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id),
  foreign key (office_id, farm_id, import_id) references imports (office_id, farm_id, id)
);

create table weather_days (
  office_id uuid not null,
  farm_id uuid not null,
  site_id uuid not null,
  date date not null,
  t_max_c double precision,
  t_min_c double precision,
  rain_mm double precision,
  rh_max_pct double precision,
  rh_min_pct double precision,
  rh_mean_pct double precision,
  dew_point_c double precision,
  wind_m_per_s double precision,
  wind_height_m double precision,
  rs_mj_per_m2_day double precision,
  sunshine_h double precision,
  import_id uuid,
  primary key (office_id, site_id, date),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id),
  foreign key (office_id, farm_id, import_id) references imports (office_id, farm_id, id),
  check (t_max_c >= t_min_c)
);

create table forecasts (
  office_id uuid not null,
  farm_id uuid not null,
  site_id uuid not null,
  issued_at timestamptz not null,
  days jsonb not null,
  import_id uuid,
  primary key (office_id, site_id, issued_at),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id),
  foreign key (office_id, farm_id, import_id) references imports (office_id, farm_id, id)
);

create table plant_temperatures (
  office_id uuid not null,
  farm_id uuid not null,
  planting_id uuid not null,
  at timestamptz not null,
  temperature_c double precision not null,
  primary key (office_id, planting_id, at),
  foreign key (office_id, farm_id, planting_id) references plantings (office_id, farm_id, id)
);

-- One open draft a rule and subject; issuing deletes it.
create table drafts (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  rule_id text not null,
  rule_version integer not null,
  subject_kind text not null check (subject_kind in ('planting', 'valve', 'bed', 'farm-season')),
  subject_id uuid not null,
  planting_ids uuid[] not null default '{}',
  kind text not null check (kind in ('advice', 'needs-more', 'does-not-apply', 'refused')),
  answer jsonb not null,
  state_sha256 text not null check (state_sha256 ~ '^[0-9a-f]{64}$'),
  decision_code text,
  harm double precision not null default 0,
  act_by timestamptz,
  order_key double precision not null,
  made_at timestamptz not null default now(),
  set_aside_until date,
  primary key (office_id, id),
  unique (office_id, rule_id, subject_kind, subject_id),
  foreign key (office_id, farm_id) references farms (office_id, id)
);
create index drafts_round on drafts (office_id, order_key);
create index drafts_by_farm on drafts (office_id, farm_id, order_key);

create table advisories (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  rule_id text not null,
  rule_version integer not null,
  subject_kind text not null check (subject_kind in ('planting', 'valve', 'bed', 'farm-season')),
  subject_id uuid not null,
  planting_ids uuid[] not null default '{}',
  state_sha256 text not null check (state_sha256 ~ '^[0-9a-f]{64}$'),
  answer jsonb not null,
  rendered jsonb not null,
  expected jsonb,
  note_text_id uuid,
  issued_by uuid not null,
  issued_at timestamptz not null default now(),
  ledger_seq bigint not null check (ledger_seq > 0),
  status text not null default 'issued'
    check (status in ('issued', 'read', 'done', 'not-done', 'cannot', 'withdrawn', 'superseded')),
  read_at timestamptz,
  withdrawn_at timestamptz,
  withdrawn_by uuid,
  withdrawn_text_id uuid,
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  unique (office_id, ledger_seq),
  foreign key (office_id, farm_id) references farms (office_id, id),
  foreign key (office_id, note_text_id) references texts (office_id, id),
  foreign key (office_id, withdrawn_text_id) references texts (office_id, id)
);
create index advisories_newest on advisories (office_id, issued_at desc);
create index advisories_by_farm on advisories (office_id, farm_id, issued_at desc);
create index advisories_by_subject on advisories (office_id, rule_id, subject_id, issued_at desc);

create table answers (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  advisory_id uuid not null,
  kind text not null check (kind in ('done', 'not-done', 'cannot')),
  actual jsonb,
  reason_text_id uuid,
  answered_by uuid not null,
  answered_at timestamptz not null default now(),
  ledger_seq bigint not null check (ledger_seq > 0),
  primary key (office_id, id),
  unique (office_id, ledger_seq),
  foreign key (office_id, farm_id, advisory_id) references advisories (office_id, farm_id, id),
  foreign key (office_id, reason_text_id) references texts (office_id, id)
);
create index answers_by_advisory on answers (office_id, advisory_id, ledger_seq desc);

create table field_notes (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  planting_id uuid not null,
  on_day date not null,
  kind text not null,
  value double precision,
  text_id uuid,
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, planting_id) references plantings (office_id, farm_id, id),
  foreign key (office_id, text_id) references texts (office_id, id)
);
create index field_notes_by_planting on field_notes (office_id, farm_id, planting_id, on_day);

create table applications (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  planting_id uuid not null,
  bed_id uuid not null,
  material_id uuid not null,
  n_pct double precision not null,
  p2o5_pct double precision not null,
  k2o_pct double precision not null,
  lot text,
  amount_kg double precision not null check (amount_kg >= 0),
  area_m2 double precision not null check (area_m2 > 0),
  on_day date not null,
  minutes_of_labour double precision check (minutes_of_labour >= 0),
  person_text_id uuid,
  advisory_id uuid,
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, planting_id) references plantings (office_id, farm_id, id),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id),
  foreign key (office_id, farm_id, material_id) references materials (office_id, farm_id, id),
  foreign key (office_id, farm_id, advisory_id) references advisories (office_id, farm_id, id),
  foreign key (office_id, person_text_id) references texts (office_id, id)
);
create index applications_by_planting on applications (office_id, farm_id, planting_id, on_day);

create table waterings (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  valve_id uuid not null,
  on_day date not null,
  minutes double precision check (minutes >= 0),
  litres double precision check (litres >= 0),
  metered boolean not null default false,
  advisory_id uuid,
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, valve_id) references valves (office_id, farm_id, id),
  foreign key (office_id, farm_id, advisory_id) references advisories (office_id, farm_id, id),
  check (minutes is not null or litres is not null)
);
create index waterings_by_valve on waterings (office_id, farm_id, valve_id, on_day);

create table harvests (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  planting_id uuid not null,
  on_day date not null,
  lot text,
  kg double precision not null check (kg >= 0),
  marketable_kg double precision check (marketable_kg >= 0 and marketable_kg <= kg),
  culls jsonb not null default '[]',
  hours double precision check (hours >= 0),
  price_per_kg double precision check (price_per_kg >= 0),
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, planting_id) references plantings (office_id, farm_id, id)
);
create index harvests_by_planting on harvests (office_id, farm_id, planting_id, on_day);

create table ledger_states (
  office_id uuid not null references offices (id),
  sha256 text not null check (sha256 ~ '^[0-9a-f]{64}$'),
  state text not null,
  primary key (office_id, sha256)
);

create table ledger_heads (
  office_id uuid primary key references offices (id),
  seq bigint not null check (seq >= 0),
  hash text not null check (hash ~ '^[0-9a-f]{64}$')
);

create table ledger_entries (
  office_id uuid not null references offices (id),
  seq bigint not null check (seq > 0),
  farm_id uuid,
  kind text not null,
  body text not null,
  prev_hash text not null check (prev_hash ~ '^[0-9a-f]{64}$'),
  hash text not null check (hash ~ '^[0-9a-f]{64}$'),
  at timestamptz not null,
  primary key (office_id, seq),
  foreign key (office_id, farm_id) references farms (office_id, id)
);
create index ledger_entries_by_farm on ledger_entries (office_id, farm_id, seq desc);

create table audit_log (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  at timestamptz not null default now(),
  user_id uuid default app_user(),
  action text not null,
  entity text not null,
  entity_id text,
  detail jsonb not null default '{}',
  primary key (office_id, id)
);
create index audit_log_newest on audit_log (office_id, at desc);

create table idempotency_keys (
  office_id uuid not null references offices (id),
  user_id uuid not null,
  key text not null,
  request_sha256 text not null check (request_sha256 ~ '^[0-9a-f]{64}$'),
  response jsonb not null,
  created_at timestamptz not null default now(),
  primary key (office_id, user_id, key)
);
create index idempotency_keys_oldest on idempotency_keys (office_id, created_at);
