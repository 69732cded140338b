-- Five kinds of callers: lead and agent of an office, farmer and reader of some farms, and a sensor's key (which has a
-- door of its own). A lead may whatever an agent may; a reader reads what a farmer reads and writes nothing.

create or replace function app_is_agent() returns boolean language sql stable parallel safe as
  $$ select coalesce(current_setting('app.role', true), '') in ('agent', 'lead') $$;

create function app_is_lead() returns boolean language sql stable parallel safe as
  $$ select coalesce(current_setting('app.role', true), '') = 'lead' $$;

-- Whoever belongs to some farms of the office and reads what the office says to them.
create function app_is_of_farm() returns boolean language sql stable parallel safe as
  $$ select coalesce(current_setting('app.role', true), '') in ('farmer', 'reader') $$;

create or replace function app_sees_farm(farm uuid) returns boolean language sql stable parallel safe as
  $$ select case current_setting('app.farm_ids', true)
       when '*' then coalesce(current_setting('app.role', true), '') in ('agent', 'lead')
       else coalesce(farm = any (string_to_array(nullif(current_setting('app.farm_ids', true), ''), ',')::uuid[]), false)
     end $$;

alter table memberships drop constraint memberships_role_check;
alter table memberships add check (role in ('lead', 'agent', 'farmer', 'reader'));

-- Until now there was one kind of staff: an office's first agent becomes its lead, so that none is without one.
update memberships set role = 'lead'
where role = 'agent' and (office_id, id) in (
  select distinct on (office_id) office_id, id from memberships where role = 'agent' order by office_id, id);

do $$
declare p record;
begin
  for p in
    select tablename, qual from pg_policies
    where schemaname = 'public' and policyname = 'farmer_reads'
  loop
    execute format('alter policy farmer_reads on %I using (%s)', p.tablename,
      replace(p.qual, 'app_is_farmer()', 'app_is_of_farm()'));
  end loop;
end $$;
alter policy members_read on offices using (id = app_office() and (app_is_agent() or app_is_of_farm()));

-- An agent lets farmers and readers in and out; staff come and go by a lead.
drop policy agent on memberships;
create policy agent_reads on memberships for select to pith_app using (office_id = app_office() and app_is_agent());
create policy lead on memberships to pith_app using (office_id = app_office() and app_is_lead());
create policy agent_adds on memberships for insert to pith_app
  with check (office_id = app_office() and app_is_agent() and role in ('farmer', 'reader'));
create policy agent_changes on memberships for update to pith_app
  using (office_id = app_office() and app_is_agent() and role in ('farmer', 'reader'))
  with check (office_id = app_office() and app_is_agent() and role in ('farmer', 'reader'));
create policy agent_removes on memberships for delete to pith_app
  using (office_id = app_office() and app_is_agent() and role in ('farmer', 'reader'));
