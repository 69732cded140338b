-- Series that sensors append to, the keys they do it with, and readings in partitions of a month each.

create function app_is_sensor() returns boolean language sql stable parallel safe as
  $$ select coalesce(current_setting('app.role', true), '') = 'sensor' $$;

-- The key a sensor acts with, and the series it names. A sensor has no farms: app.farm_ids stays empty, so that no
-- policy of the farms lets it in.
create function app_sensor_key() returns uuid language sql stable parallel safe as
  $$ select nullif(current_setting('app.sensor_key', true), '')::uuid $$;

create function app_series() returns uuid[] language sql stable parallel safe as
  $$ select coalesce(string_to_array(nullif(current_setting('app.series_ids', true), ''), ',')::uuid[], '{}') $$;

-- What was presented at the door, hashed, before its office is known.
create function app_presented_sha256() returns text language sql stable parallel safe as
  $$ select nullif(current_setting('app.key_sha256', true), '') $$;

create table series (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  site_id uuid not null,
  bed_id uuid,
  cover text check (cover in ('fleece', 'low-tunnel', 'high-tunnel', 'heated-house')),
  name text not null check (name ~ '^[A-Za-z0-9][-A-Za-z0-9:./_]*$'),
  label text not null,
  quantity text not null,
  unit text not null,
  depth_cm double precision check (depth_cm > 0),
  height_m double precision check (height_m > 0),
  expected_every_s integer not null check (expected_every_s between 1 and 86400),
  silent_after_s integer not null check (silent_after_s >= expected_every_s),
  keep_months integer not null default 14 check (keep_months between 1 and 36),
  added_at timestamptz not null default now(),
  retired_at timestamptz,
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  unique (office_id, farm_id, name),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id),
  check (cover is null or bed_id is not null)
);

create table sensor_keys (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  name text not null,
  prefix text not null,
  -- Of a secret of 256 random bits: nothing to guess, so a plain hash is as good as a slow one.
  secret_sha256 text not null check (secret_sha256 ~ '^[0-9a-f]{64}$'),
  series_ids uuid[] not null check (cardinality(series_ids) between 1 and 500),
  replaces uuid,
  created_by uuid not null default app_user(),
  created_at timestamptz not null default now(),
  ends_at timestamptz,
  revoked_at timestamptz,
  revoked_by uuid,
  last_used_at timestamptz,
  primary key (office_id, id),
  foreign key (office_id, farm_id) references farms (office_id, id),
  foreign key (office_id, replaces) references sensor_keys (office_id, id)
);
create index sensor_keys_by_secret on sensor_keys (secret_sha256);

-- As sent, in the quantity's own unit; flags stand beside the value: 1 range, 2 spike, 4 stuck, 8 after a gap.
create table readings (
  office_id uuid not null,
  farm_id uuid not null,
  series_id uuid not null,
  at timestamptz not null,
  value double precision not null,
  flags smallint not null default 0,
  key_id uuid,
  received_at timestamptz not null default now(),
  primary key (office_id, series_id, at),
  foreign key (office_id, farm_id, series_id) references series (office_id, farm_id, id)
) partition by range (at);

create table reading_hours (
  office_id uuid not null,
  farm_id uuid not null,
  series_id uuid not null,
  hour timestamptz not null,
  readings integer not null,
  flagged integer not null,
  lowest double precision,
  highest double precision,
  mean double precision,
  total double precision,
  primary key (office_id, series_id, hour),
  foreign key (office_id, farm_id, series_id) references series (office_id, farm_id, id)
);

-- By the local day of the series' site. `hours` is how many hours of the day have a usable reading.
create table reading_days (
  office_id uuid not null,
  farm_id uuid not null,
  series_id uuid not null,
  day date not null,
  readings integer not null,
  flagged integer not null,
  hours integer not null,
  lowest double precision,
  highest double precision,
  mean double precision,
  total double precision,
  primary key (office_id, series_id, day),
  foreign key (office_id, farm_id, series_id) references series (office_id, farm_id, id)
);

-- Days (of UTC) with readings that flags and aggregates do not know yet. Whoever brings them up to date takes the row
-- away; whoever adds readings writes it again, and waits where it is just being taken.
create table readings_stale (
  office_id uuid not null,
  farm_id uuid not null,
  series_id uuid not null,
  utc_day date not null,
  marked_at timestamptz not null default now(),
  primary key (office_id, series_id, utc_day),
  foreign key (office_id, farm_id, series_id) references series (office_id, farm_id, id)
);

do $$
declare t text;
begin
  foreach t in array array['series', 'sensor_keys', 'readings', 'reading_hours', 'reading_days', 'readings_stale'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert on table %I to pith_app', t);
    execute format('create policy agent on %I to pith_app
      using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id))', t);
  end loop;
  foreach t in array array['series', 'readings', 'reading_hours', 'reading_days'] loop
    execute format('create policy farmer_reads on %I for select to pith_app
      using (office_id = app_office() and app_is_of_farm() and app_sees_farm(farm_id))', t);
  end loop;
  -- What a sensor may see: the series its key names, and of those the readings.
  foreach t in array array['readings', 'readings_stale'] loop
    execute format('create policy sensor_reads on %I for select to pith_app
      using (office_id = app_office() and app_is_sensor() and series_id = any (app_series()))', t);
    execute format('create policy sensor_appends on %I for insert to pith_app
      with check (office_id = app_office() and app_is_sensor() and series_id = any (app_series()))', t);
  end loop;
end $$;

create policy sensor_reads on series for select to pith_app
  using (office_id = app_office() and app_is_sensor() and id = any (app_series()));
create policy sensor_marks_again on readings_stale for update to pith_app
  using (office_id = app_office() and app_is_sensor() and series_id = any (app_series()));

grant update on series to pith_app;
grant update (flags), delete on readings to pith_app;
grant update, delete on reading_hours, reading_days, readings_stale to pith_app;
grant update (name, series_ids, ends_at, revoked_at, revoked_by, last_used_at) on sensor_keys to pith_app;

-- A key is found by its hash before its office is known, and then in its own office only.
create policy presented on sensor_keys for select to pith_app
  using (secret_sha256 = app_presented_sha256() and (app_office() is null or office_id = app_office()));
create policy sensor_sees_its_own on sensor_keys for select to pith_app
  using (office_id = app_office() and app_is_sensor() and id = app_sensor_key());
create policy sensor_is_seen on sensor_keys for update to pith_app
  using (office_id = app_office() and app_is_sensor() and id = app_sensor_key());

-- Partitions are made and dropped by the owner's hand, because the application owns nothing. Neither function answers
-- anything or takes a tenant's value: a month goes in, and what is dropped follows from the clock alone.
-- A partition has no grant at all, and forced row-level security with a policy that lets nobody in: rows are reached
-- through the parent and its policies, whatever is granted later by mistake.
create function make_readings_month(any_day date) returns void
language plpgsql security definer set search_path = pg_catalog, public as $$
declare
  first date := date_trunc('month', any_day)::date;
  part text := 'readings_' || to_char(first, 'YYYY_MM');
begin
  if first is null or first < date '2000-01-01' or first >= date '2200-01-01' then
    raise exception 'no readings are kept for %', any_day using errcode = 'check_violation';
  end if;
  if to_regclass('public.' || part) is not null then return; end if;
  perform pg_advisory_xact_lock(hashtext('public.readings'));
  if to_regclass('public.' || part) is not null then return; end if;
  execute format('create table public.%I partition of public.readings for values from (%L) to (%L)',
    part, first || ' 00:00:00+00', (first + interval '1 month')::date || ' 00:00:00+00');
  execute format('alter table public.%I enable row level security', part);
  execute format('alter table public.%I force row level security', part);
  execute format('revoke all on table public.%I from public, pith_app', part);
  execute format('create policy closed on public.%I to pith_app using (office_id = public.app_office() and false)', part);
end $$;

-- No series keeps its readings longer than 36 months (a check holds it), so older months are nobody's.
create function drop_old_readings() returns integer
language plpgsql security definer set search_path = pg_catalog, public as $$
declare
  part record;
  dropped integer := 0;
  oldest text := 'readings_' || to_char(date_trunc('month', now()) - interval '37 months', 'YYYY_MM');
begin
  for part in
    select c.relname from pg_inherits i join pg_class c on c.oid = i.inhrelid
    where i.inhparent = 'public.readings'::regclass and c.relname < oldest
    order by 1
  loop
    execute format('drop table public.%I', part.relname);
    dropped := dropped + 1;
  end loop;
  return dropped;
end $$;

revoke all on function make_readings_month(date), drop_old_readings() from public;
grant execute on function make_readings_month(date), drop_old_readings() to pith_app;

select make_readings_month((date_trunc('month', now()) + make_interval(months => m))::date) from generate_series(-1, 2) as m;
