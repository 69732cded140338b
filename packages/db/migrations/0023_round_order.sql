-- Who reads is asked once for a question and not for each row: the round of a large office is then read in its order
-- through the index, as far as its page goes, and not sorted whole.
create function app_sees_all_farms() returns boolean language sql stable parallel safe as
  $$ select current_setting('app.farm_ids', true) = '*' and app_is_agent() $$;

do $$
declare t text;
begin
  for t in
    select tablename from pg_policies
    where schemaname = 'public' and policyname = 'agent'
      and qual = '((office_id = app_office()) AND app_is_agent() AND app_sees_farm(farm_id))'
  loop
    execute format('alter policy agent on %I
      using (office_id = app_office() and (select app_is_agent())
        and ((select app_sees_all_farms()) or app_sees_farm(farm_id)))', t);
  end loop;
  for t in
    select tablename from pg_policies
    where schemaname = 'public' and policyname = 'farmer_reads'
      and qual = '((office_id = app_office()) AND app_is_of_farm() AND app_sees_farm(farm_id))'
  loop
    execute format('alter policy farmer_reads on %I
      using (office_id = app_office() and (select app_is_of_farm()) and app_sees_farm(farm_id))', t);
  end loop;
end $$;
