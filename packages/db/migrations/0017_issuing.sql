-- How advice comes to be issued, and when it lapses: standing orders, a second pair of eyes, the end of its window.

-- The instant its window has gone by at the site: fixed when it is issued, so that whoever reads sees it lapse without a
-- job having run. The job only writes down what is already so.
alter table advisories
  add column expires_at timestamptz,
  add column expired_at timestamptz,
  add column superseded_by uuid,
  add column superseded_at timestamptz,
  add column confirmed_by uuid,
  add column standing_order_id uuid,
  add column standing_order_version integer,
  drop constraint advisories_status_check,
  add check (status in ('issued', 'read', 'done', 'not-done', 'cannot', 'withdrawn', 'superseded', 'expired')),
  add check (confirmed_by <> issued_by),
  add check ((standing_order_id is null) = (standing_order_version is null)),
  add foreign key (office_id, farm_id, superseded_by) references advisories (office_id, farm_id, id);
grant update (superseded_by, superseded_at, expired_at) on advisories to pith_app;
create index advisories_to_expire on advisories (office_id, expires_at) where status in ('issued', 'read');

-- What was issued before lapses too. Its subject's site is not named in the row; a farm's sites share a clock.
update advisories a set expires_at = ((a.answer -> 'window' ->> 'to')::date + 1)::timestamp at time zone s.time_zone
from (select distinct on (office_id, farm_id) office_id, farm_id, time_zone from sites order by office_id, farm_id, id) s
where s.office_id = a.office_id and s.farm_id = a.farm_id and a.answer -> 'window' ->> 'to' is not null;

-- Cautions ride inside: each rendering that is stored holds each caution of the answer word for word, or the row is refused.
create function cautions_ride(answer jsonb, rendered jsonb) returns boolean language sql immutable parallel safe as $$
  select not exists (
    select from jsonb_each(rendered) r (lang, said), jsonb_array_elements(coalesce(answer -> 'cautions', '[]')) c
    where lang <> 'salt' and not coalesce(said -> 'cautions', '[]') @> jsonb_build_array(jsonb_build_object(
      'id', c -> 'id', 'version', c -> 'version', 'severity', c -> 'severity', 'text', c -> 'text' -> lang)))
$$;
alter table advisories add constraint cautions_ride check (cautions_ride(answer, rendered));

-- A signed permission for one rule to issue on one farm by itself. Its terms never change: other terms are another
-- version of it, signed again. Not more than one a rule and farm stands.
create table standing_orders (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  version integer not null default 1 check (version > 0),
  farm_id uuid not null,
  rule_id text not null,
  rule_version integer not null,
  terms jsonb not null,
  ends_on date not null,
  signed_by uuid not null,
  signed_at timestamptz not null default now(),
  confirmed_by uuid,
  confirmed_at timestamptz,
  paused_by uuid,
  paused_at timestamptz,
  ended_by uuid,
  ended_at timestamptz,
  primary key (office_id, id, version),
  unique (office_id, farm_id, id, version),
  foreign key (office_id, farm_id) references farms (office_id, id),
  check (confirmed_by <> signed_by)
);
create unique index standing_orders_stand on standing_orders (office_id, farm_id, rule_id) where ended_at is null;
alter table advisories add foreign key (office_id, farm_id, standing_order_id, standing_order_version)
  references standing_orders (office_id, farm_id, id, version);
create index advisories_by_order on advisories (office_id, standing_order_id, issued_at desc)
  where standing_order_id is not null;

-- One agent has read a draft and asks another to. It names the state that was read; a draft made anew must be read again.
alter table drafts add unique (office_id, farm_id, id);
create table second_readings (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  draft_id uuid not null,
  state_sha256 text not null check (state_sha256 ~ '^[0-9a-f]{64}$'),
  note_text_id uuid,
  asked_by uuid not null,
  asked_at timestamptz not null default now(),
  sent_back_by uuid,
  sent_back_at timestamptz,
  sent_back_text_id uuid,
  primary key (office_id, id),
  unique (office_id, draft_id),
  foreign key (office_id, farm_id, draft_id) references drafts (office_id, farm_id, id) on delete cascade,
  foreign key (office_id, note_text_id) references texts (office_id, id),
  foreign key (office_id, sent_back_text_id) references texts (office_id, id)
);

-- Which advice an office wants two people for. A lead's to set: it would be no check on an agent who may lift it.
create table issuing_settings (
  office_id uuid not null references offices (id),
  second_reader text not null default 'never' check (second_reader in ('never', 'rules', 'danger', 'always')),
  rule_ids text[] not null default '{}',
  changed_by uuid default app_user(),
  changed_at timestamptz not null default now(),
  primary key (office_id)
);

do $$
declare t text;
begin
  foreach t in array array['standing_orders', 'second_readings', 'issuing_settings'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert on table %I to pith_app', t);
  end loop;
end $$;
grant update (confirmed_by, confirmed_at, paused_by, paused_at, ended_by, ended_at) on standing_orders to pith_app;
grant update (sent_back_by, sent_back_at, sent_back_text_id), delete on second_readings to pith_app;
grant update on issuing_settings to pith_app;

create policy agent on standing_orders to pith_app
  using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id));
-- What may be said to a farm without anybody reading it first is the farm's to know.
create policy farmer_reads on standing_orders for select to pith_app
  using (office_id = app_office() and app_is_of_farm() and app_sees_farm(farm_id));
create policy agent on second_readings to pith_app
  using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id));
create policy agent_reads on issuing_settings for select to pith_app using (office_id = app_office() and app_is_agent());
create policy lead on issuing_settings to pith_app using (office_id = app_office() and app_is_lead());
