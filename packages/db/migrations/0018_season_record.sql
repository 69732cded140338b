-- What work took: minutes beside sprayings and waterings, and work on a bed that leaves no other record.

alter table sprays add column minutes_of_labour double precision
  check (minutes_of_labour between 0 and 10000);
alter table waterings add column minutes_of_labour double precision
  check (minutes_of_labour between 0 and 10000);

create table works (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  bed_id uuid not null,
  on_day date not null,
  task text not null check (task in ('setting-out', 'covering', 'airing', 'topping', 'hardening', 'weeding', 'other')),
  minutes_of_labour double precision not null check (minutes_of_labour between 0 and 10000),
  recorded_by uuid default app_user(),
  recorded_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id, bed_id) references beds (office_id, farm_id, id)
);
create index works_by_bed on works (office_id, farm_id, bed_id, on_day);

alter table works enable row level security;
alter table works force row level security;
revoke all on table works from public;
grant select, insert, update, delete on table works to pith_app;
create policy agent on works to pith_app
  using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id));
create policy farmer_reads on works for select to pith_app
  using (office_id = app_office() and app_is_of_farm() and app_sees_farm(farm_id));
create policy farmer_records on works for insert to pith_app
  with check (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and recorded_by = app_user());
create policy farmer_takes_back on works for delete to pith_app
  using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and recorded_by = app_user());
