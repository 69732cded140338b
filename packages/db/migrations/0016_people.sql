-- People: a second step at sign-in, how often somebody tried, invitations, and the names of those who have left.

-- The second step's secret and its backup codes are stored encrypted by the sign-in library.
alter table auth."user" add column two_factor_enabled boolean not null default false;
create table auth.two_factor (
  id uuid primary key default gen_random_uuid(),
  user_id uuid not null unique references auth."user" (id) on delete cascade,
  secret text not null,
  backup_codes text not null,
  verified boolean not null default true,
  failed_verification_count integer not null default 0,
  locked_until timestamptz
);

-- How often a network address, or somebody naming an e-mail address, tried something in the window that ends then. Here
-- and not in memory, so that all copies of the API count together. The key holds no address in clear.
create table auth.attempts (
  key text primary key,
  count integer not null,
  ends_at timestamptz not null
);
create index attempts_by_end on auth.attempts (ends_at);
grant select, insert, update, delete on auth.two_factor, auth.attempts to pith_auth;

alter table offices add column second_step_for_staff boolean not null default false;

-- An invitation is removed when it is taken up or withdrawn: what happened stands in the audit, and no address is kept.
create table invitations (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  email text not null check (email = lower(email) and length(email) <= 254),
  name text not null,
  role text not null check (role in ('lead', 'agent', 'farmer', 'reader')),
  farm_ids uuid[] not null default '{}',
  token_sha256 text not null check (token_sha256 ~ '^[0-9a-f]{64}$'),
  invited_by uuid not null default app_user(),
  invited_at timestamptz not null default now(),
  expires_at timestamptz not null,
  primary key (office_id, id),
  unique (office_id, email),
  check ((role in ('lead', 'agent')) = (cardinality(farm_ids) = 0))
);
create index invitations_by_token on invitations (token_sha256);

-- What those were called who belong to the office no longer: what they issued and answered still says by whom.
create table former_people (
  office_id uuid not null references offices (id),
  user_id uuid not null,
  name text not null,
  left_at timestamptz not null default now(),
  -- Named by an export that was taken in: that they ever were of this office, nobody here can tell.
  taken_in boolean not null default false,
  primary key (office_id, user_id)
);

alter table invitations enable row level security;
alter table invitations force row level security;
alter table former_people enable row level security;
alter table former_people force row level security;
grant select, insert, update, delete on invitations, former_people to pith_app;

create policy lead on invitations to pith_app using (office_id = app_office() and app_is_lead());
create policy agent on invitations to pith_app
  using (office_id = app_office() and app_is_agent() and role in ('farmer', 'reader'));
-- Whoever holds the token reads the one invitation it is for, before the office is known.
create policy presented on invitations for select to pith_app
  using (app_office() is null and token_sha256 = app_presented_sha256());

create policy agent on former_people to pith_app using (office_id = app_office() and app_is_agent());

-- Who signed in, and from what they were refused, is for those who answer for the office.
drop policy agent_reads on audit_log;
create policy lead_reads on audit_log for select to pith_app using (office_id = app_office() and app_is_lead());

-- An office without a lead could not be looked after any more. The lock makes two leads who leave at once wait for each
-- other, so that the second finds itself the last.
create function keep_a_lead() returns trigger language plpgsql as $$
begin
  if tg_op = 'UPDATE' and new.role = 'lead' then return new; end if;
  perform pg_advisory_xact_lock(hashtextextended('leads of ' || old.office_id, 0));
  if not exists (select from memberships where office_id = old.office_id and role = 'lead' and id <> old.id) then
    raise exception 'the last lead of an office cannot go' using errcode = '23514', constraint = 'keep_a_lead';
  end if;
  return case tg_op when 'DELETE' then old else new end;
end $$;
create trigger keep_a_lead before update or delete on memberships
  for each row when (old.role = 'lead') execute function keep_a_lead();
