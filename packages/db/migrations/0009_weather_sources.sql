-- Forecasts that are pulled: from which service, when, and how each site's service is doing.
alter table sites add column forecast_source text check (forecast_source in ('met-norway'));

-- Every forecast stays as it was issued: skill may be claimed only from what was really forecast.
alter table forecasts add column source text check (source in ('met-norway')), add column retrieved_at timestamptz;
revoke update, delete on forecasts from pith_app;

create table weather_sources (
  office_id uuid not null,
  farm_id uuid not null,
  site_id uuid not null,
  source text not null check (source in ('met-norway')),
  last_tried_at timestamptz not null,
  last_success_at timestamptz,
  failures integer not null default 0 check (failures >= 0),
  failing_since timestamptz,
  last_error text,
  deprecated boolean not null default false,
  next_due_at timestamptz,
  claimed_until timestamptz,
  asked_for text not null,
  since text,
  primary key (office_id, site_id),
  foreign key (office_id, farm_id, site_id) references sites (office_id, farm_id, id)
);

alter table weather_sources enable row level security;
alter table weather_sources force row level security;
revoke all on table weather_sources from public;
grant select, insert, update, delete on table weather_sources to pith_app;
create policy agent on weather_sources to pith_app
  using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id));
create policy farmer_reads on weather_sources for select to pith_app
  using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id));
