-- How issued advice reaches people: what each wants, an outbox that is written in the issuing transaction, warnings that
-- somebody must have read by an hour, private links, and webhooks to the office's own systems.

-- The server at work for an office (its worker): an agent of all farms under the id that is nobody's.
create function app_is_server() returns boolean language sql stable parallel safe as
  $$ select app_is_agent() and app_user() = '00000000-0000-0000-0000-000000000000' $$;

-- One person's wishes in one office. They go when the person leaves it.
create table delivery_preferences (
  office_id uuid not null,
  user_id uuid not null,
  mail text not null default 'at-once' check (mail in ('off', 'at-once', 'daily')),
  push text not null default 'off' check (push in ('off', 'at-once', 'daily')),
  text text not null default 'off' check (text in ('off', 'at-once', 'daily')),
  mail_to text check (length(mail_to) <= 320),
  text_to text check (text_to ~ '^\+[1-9][0-9]{6,14}$'),
  daily_at_minute integer not null default 360 check (daily_at_minute between 0 and 1439),
  quiet_from_minute integer check (quiet_from_minute between 0 and 1439),
  quiet_to_minute integer check (quiet_to_minute between 0 and 1439),
  time_zone text not null default 'UTC',
  language text not null default 'en' check (language ~ '^[a-z]{2}$'),
  changed_at timestamptz not null default now(),
  primary key (office_id, user_id),
  foreign key (office_id, user_id) references memberships (office_id, user_id) on delete cascade,
  check ((quiet_from_minute is null) = (quiet_to_minute is null)),
  check (text = 'off' or text_to is not null)
);

-- A browser that lets itself be told (http on this machine alone, for a try). The address is a secret of the browser's push service; only the worker calls it.
create table push_subscriptions (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  user_id uuid not null,
  endpoint text not null check (endpoint ~ '^(https://|http://(127[.]0[.]0[.]1|localhost)[:/])' and length(endpoint) <= 1000),
  endpoint_sha256 text not null check (endpoint_sha256 ~ '^[0-9a-f]{64}$'),
  p256dh text not null check (length(p256dh) between 80 and 100),
  auth text not null check (length(auth) between 20 and 30),
  added_at timestamptz not null default now(),
  primary key (office_id, id),
  unique (office_id, user_id, endpoint_sha256),
  foreign key (office_id, user_id) references memberships (office_id, user_id) on delete cascade
);

-- What is to be sent, and what became of it. One row a person, channel and advice: however often the job runs, it is
-- sent once as far as can be. The words themselves are made when it is sent.
create table deliveries (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  advisory_id uuid not null,
  user_id uuid not null,
  channel text not null check (channel in ('mail', 'push', 'text')),
  about text not null check (about in ('advice', 'unread')),
  due_at timestamptz not null,
  state text not null default 'waiting' check (state in ('waiting', 'sent', 'dropped', 'failed')),
  attempts integer not null default 0,
  claimed_until timestamptz,
  sent_at timestamptz,
  outcome text,
  made_at timestamptz not null default now(),
  primary key (office_id, id),
  unique (office_id, advisory_id, user_id, channel, about),
  -- The outbox is written before the advice itself, which waits for the ledger's head.
  foreign key (office_id, farm_id, advisory_id) references advisories (office_id, farm_id, id)
    deferrable initially deferred,
  foreign key (office_id, user_id) references memberships (office_id, user_id) on delete cascade
);
create index deliveries_waiting on deliveries (office_id, user_id, due_at) where state = 'waiting';

-- An issued advice with an hour to act by, until it is read, somebody has called, or it no longer stands.
create table warnings (
  office_id uuid not null,
  advisory_id uuid not null,
  farm_id uuid not null,
  act_by timestamptz not null,
  call_from timestamptz not null,
  frost boolean not null,
  told_at timestamptz,
  called_at timestamptz,
  called_by uuid,
  primary key (office_id, advisory_id),
  foreign key (office_id, farm_id, advisory_id) references advisories (office_id, farm_id, id)
    deferrable initially deferred
);
create index warnings_to_call on warnings (office_id, call_from) where called_at is null;

-- Addresses that let in whoever has them: a calendar's, and the one that stops mail. Of 256 random bits, kept as a hash.
create table private_links (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  user_id uuid not null,
  farm_id uuid,
  kind text not null check (kind in ('calendar', 'stop-mail')),
  secret_sha256 text not null check (secret_sha256 ~ '^[0-9a-f]{64}$'),
  made_at timestamptz not null default now(),
  last_used_at timestamptz,
  revoked_at timestamptz,
  primary key (office_id, id),
  foreign key (office_id, user_id) references memberships (office_id, user_id) on delete cascade,
  foreign key (office_id, farm_id) references farms (office_id, id),
  check ((kind = 'calendar') = (farm_id is not null))
);
create index private_links_by_secret on private_links (secret_sha256);
create unique index private_links_one_calendar on private_links (office_id, user_id, farm_id)
  where kind = 'calendar' and revoked_at is null;

-- Where an office wants to be told. The secret is sealed with a key that the database does not have.
create table webhook_endpoints (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  url text not null check (length(url) <= 1000),
  events text[] not null check (cardinality(events) > 0),
  secret_sealed text not null,
  previous_sealed text,
  previous_until timestamptz,
  added_by uuid not null default app_user(),
  added_at timestamptz not null default now(),
  failing_since timestamptz,
  disabled_at timestamptz,
  removed_at timestamptz,
  primary key (office_id, id)
);

-- What happened: its id travels with each attempt, so that a receiver can tell a retry from news.
create table webhook_messages (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid,
  event text not null,
  body text not null check (length(body) <= 20000),
  made_at timestamptz not null default now(),
  primary key (office_id, id),
  foreign key (office_id, farm_id) references farms (office_id, id)
);

create table webhook_sends (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  endpoint_id uuid not null,
  message_id uuid not null,
  state text not null default 'waiting' check (state in ('waiting', 'sent', 'dropped', 'failed')),
  attempts integer not null default 0,
  next_at timestamptz not null,
  claimed_until timestamptz,
  primary key (office_id, id),
  unique (office_id, endpoint_id, message_id),
  foreign key (office_id, endpoint_id) references webhook_endpoints (office_id, id),
  foreign key (office_id, message_id) references webhook_messages (office_id, id)
);

create table webhook_attempts (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  send_id uuid not null,
  endpoint_id uuid not null,
  at timestamptz not null,
  status integer,
  outcome text not null,
  took_ms integer not null,
  primary key (office_id, id),
  foreign key (office_id, send_id) references webhook_sends (office_id, id),
  foreign key (office_id, endpoint_id) references webhook_endpoints (office_id, id)
);
create index webhook_attempts_newest on webhook_attempts (office_id, endpoint_id, at desc);

do $$
declare t text;
begin
  foreach t in array array[
    'delivery_preferences', 'push_subscriptions', 'deliveries', 'warnings', 'private_links', 'webhook_endpoints',
    'webhook_messages', 'webhook_sends', 'webhook_attempts'
  ] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert on table %I to pith_app', t);
  end loop;

  -- What is a person's own, in each of their offices and by no other's hand. Whether they belong there, the foreign key
  -- holds.
  foreach t in array array['delivery_preferences', 'push_subscriptions', 'private_links'] loop
    execute format('create policy own on %I to pith_app
      using (user_id = app_user() and (app_office() is null or office_id = app_office()))', t);
    execute format('grant delete on table %I to pith_app', t);
  end loop;
  create policy own on deliveries for select to pith_app
    using (user_id = app_user() and (app_office() is null or office_id = app_office()));

  -- Whoever issues must know how each person wants to be told; where their browsers are, the worker alone.
  create policy agent_reads on delivery_preferences for select to pith_app
    using (office_id = app_office() and app_is_agent());
  create policy server on push_subscriptions to pith_app using (office_id = app_office() and app_is_server());
  create policy server on private_links to pith_app using (office_id = app_office() and app_is_server());
  create policy presented on private_links to pith_app
    using (secret_sha256 = app_presented_sha256() and (app_office() is null or office_id = app_office()));

  foreach t in array array['deliveries', 'warnings'] loop
    execute format('create policy agent on %I to pith_app
      using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id))', t);
  end loop;

  create policy lead on webhook_endpoints to pith_app using (office_id = app_office() and app_is_lead());
  create policy agent_reads on webhook_endpoints for select to pith_app
    using (office_id = app_office() and app_is_agent());
  create policy server_notes on webhook_endpoints for update to pith_app
    using (office_id = app_office() and app_is_server());
  create policy agent on webhook_messages to pith_app
    using (office_id = app_office() and app_is_agent() and (farm_id is null or app_sees_farm(farm_id)));
  create policy agent on webhook_sends to pith_app using (office_id = app_office() and app_is_agent());
  create policy agent on webhook_attempts to pith_app using (office_id = app_office() and app_is_agent());
end $$;

grant update on delivery_preferences to pith_app;
grant update (p256dh, auth) on push_subscriptions to pith_app;
grant update (due_at, state, attempts, claimed_until, sent_at, outcome) on deliveries to pith_app;
grant update (told_at, called_at, called_by) on warnings to pith_app;
grant update (last_used_at, revoked_at) on private_links to pith_app;
grant update (url, events, secret_sealed, previous_sealed, previous_until, failing_since, disabled_at, removed_at)
  on webhook_endpoints to pith_app;
grant update (state, attempts, next_at, claimed_until) on webhook_sends to pith_app;
