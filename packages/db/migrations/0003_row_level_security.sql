-- Forced row-level security on every tenant table, and the grants that the application's role needs and no more.
-- Every policy is for pith_app: to anybody else but a superuser, the owner included, the tables are empty.

do $$
declare t text;
begin
  foreach t in array array[
    'offices', 'memberships', 'farms', 'sites', 'valves', 'beds', 'bed_covers', 'bed_mulches', 'plantings', 'materials',
    'texts', 'imports', 'soil_tests', 'weather_days', 'forecasts', 'plant_temperatures', 'drafts', 'advisories', 'answers',
    'field_notes', 'applications', 'waterings', 'harvests', 'ledger_states', 'ledger_heads', 'ledger_entries', 'audit_log',
    'idempotency_keys'
  ] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert on table %I to pith_app', t);
  end loop;

  -- An agent reads and writes what belongs to the farms they act on.
  foreach t in array array[
    'sites', 'valves', 'beds', 'bed_covers', 'bed_mulches', 'plantings', 'materials', 'imports', 'soil_tests',
    'weather_days', 'forecasts', 'plant_temperatures', 'drafts', 'advisories', 'answers', 'field_notes', 'applications',
    'waterings', 'harvests'
  ] loop
    execute format('create policy agent on %I to pith_app
      using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id))', t);
  end loop;

  -- A farmer reads their farms' rows; not what is only drafted, and not files that wait to be saved.
  foreach t in array array[
    'sites', 'valves', 'beds', 'bed_covers', 'bed_mulches', 'plantings', 'materials', 'soil_tests', 'weather_days',
    'forecasts', 'plant_temperatures', 'advisories', 'answers', 'field_notes', 'applications', 'waterings', 'harvests',
    'texts', 'ledger_entries'
  ] loop
    execute format('create policy farmer_reads on %I for select to pith_app
      using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id))', t);
  end loop;

  -- A farmer writes down what was done and seen, in their own name, and takes back what they wrote by mistake, or what an
  -- answer of theirs wrote.
  foreach t in array array['field_notes', 'applications', 'waterings', 'harvests'] loop
    execute format('create policy farmer_records on %I for insert to pith_app
      with check (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and recorded_by = app_user())', t);
    execute format('create policy farmer_takes_back on %I for delete to pith_app
      using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and %s)', t,
      case when t in ('applications', 'waterings')
        then '(recorded_by = app_user() or advisory_id is not null)' else 'recorded_by = app_user()' end);
  end loop;

  foreach t in array array[
    'memberships', 'sites', 'valves', 'beds', 'bed_covers', 'bed_mulches', 'plantings', 'materials', 'imports', 'soil_tests',
    'weather_days', 'forecasts', 'plant_temperatures', 'drafts', 'field_notes', 'applications', 'waterings', 'harvests',
    'offices', 'farms', 'ledger_heads'
  ] loop
    execute format('grant update on table %I to pith_app', t);
  end loop;
  foreach t in array array[
    'memberships', 'bed_covers', 'bed_mulches', 'soil_tests', 'weather_days', 'forecasts', 'plant_temperatures', 'drafts',
    'field_notes', 'applications', 'waterings', 'harvests', 'idempotency_keys'
  ] loop
    execute format('grant delete on table %I to pith_app', t);
  end loop;
end $$;

revoke all on schema public from public;
grant usage on schema public to pith_app;

create policy members_read on offices for select to pith_app
  using (id = app_office() and (app_is_agent() or app_is_farmer()));
create policy agent_adds on offices for insert to pith_app with check (id = app_office() and app_is_agent());
create policy agent_changes on offices for update to pith_app using (id = app_office() and app_is_agent());

create policy agent on memberships to pith_app using (office_id = app_office() and app_is_agent());
-- A person's own memberships are read before the office is known, and inside an office only that office's.
create policy own on memberships for select to pith_app
  using (user_id = app_user() and (app_office() is null or office_id = app_office()));

create policy agent on farms to pith_app
  using (office_id = app_office() and app_is_agent() and app_sees_farm(id))
  -- An agent of some farms may not add one that they then do not see.
  with check (office_id = app_office() and app_is_agent() and app_sees_farm(id));
create policy farmer_reads on farms for select to pith_app
  using (office_id = app_office() and app_is_farmer() and app_sees_farm(id));

-- What was issued stays as it was: these columns alone change, and a farmer moves the status to reading or an answer.
grant update (status, read_at, withdrawn_at, withdrawn_by, withdrawn_text_id) on advisories to pith_app;
create policy farmer_answers on advisories for update to pith_app
  using (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and status not in ('withdrawn', 'superseded'))
  with check (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id)
    and status in ('read', 'done', 'not-done', 'cannot')
    and withdrawn_at is null and withdrawn_by is null and withdrawn_text_id is null);
create policy farmer_answers on answers for insert to pith_app
  with check (office_id = app_office() and app_is_farmer() and app_sees_farm(farm_id) and answered_by = app_user());

-- Words: an agent reads those of their farms and of the office; a change can only be the erasure.
create policy agent_reads on texts for select to pith_app
  using (office_id = app_office() and app_is_agent() and (farm_id is null or app_sees_farm(farm_id)));
create policy people_write on texts for insert to pith_app
  with check (office_id = app_office() and (app_sees_farm(farm_id) or (farm_id is null and app_is_agent())));
grant update (salt, bytes, erased_at) on texts to pith_app;
create policy agent_erases on texts for update to pith_app
  using (office_id = app_office() and app_is_agent() and (farm_id is null or app_sees_farm(farm_id)))
  with check (office_id = app_office() and erased_at is not null);

-- The ledger: an agent reads it whole, because a chain is verified whole; a farmer's answer is appended to it too.
create policy agent_reads on ledger_entries for select to pith_app using (office_id = app_office() and app_is_agent());
create policy people_append on ledger_entries for insert to pith_app
  with check (office_id = app_office()
    and (app_is_agent() and (farm_id is null or app_sees_farm(farm_id)) or app_is_farmer() and app_sees_farm(farm_id)));
create policy people_append on ledger_heads to pith_app
  using (office_id = app_office() and (app_is_agent() or app_is_farmer()));
create policy agent on ledger_states to pith_app using (office_id = app_office() and app_is_agent());

create policy agent_reads on audit_log for select to pith_app using (office_id = app_office() and app_is_agent());
create policy people_append on audit_log for insert to pith_app
  with check (office_id = app_office() and (app_is_agent() or app_is_farmer()) and user_id is not distinct from app_user());

create policy own on idempotency_keys to pith_app
  using (office_id = app_office() and user_id = app_user() and (app_is_agent() or app_is_farmer()));
