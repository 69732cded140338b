-- Whom a transaction acts for. The doors set app.* with set_config(..., true); after a transaction a setting is '' and
-- not null. Plain SQL functions without options, so that the planner folds them into the query and indexes are used.

create function app_office() returns uuid language sql stable parallel safe as
  $$ select nullif(current_setting('app.office_id', true), '')::uuid $$;

create function app_user() returns uuid language sql stable parallel safe as
  $$ select nullif(current_setting('app.user_id', true), '')::uuid $$;

create function app_is_agent() returns boolean language sql stable parallel safe as
  $$ select coalesce(current_setting('app.role', true), '') = 'agent' $$;

create function app_is_farmer() returns boolean language sql stable parallel safe as
  $$ select coalesce(current_setting('app.role', true), '') = 'farmer' $$;

-- All farms ('*') is an agent's; otherwise the farm must be in the list. CASE keeps '*' from being read as a uuid.
create function app_sees_farm(farm uuid) returns boolean language sql stable parallel safe as
  $$ select case current_setting('app.farm_ids', true)
       when '*' then coalesce(current_setting('app.role', true), '') = 'agent'
       else coalesce(farm = any (string_to_array(nullif(current_setting('app.farm_ids', true), ''), ',')::uuid[]), false)
     end $$;
