-- Work that is done later or again: the queue, in a schema of a role of its own, and what became of it, which is the
-- tenant's. The queue's own tables are made by its library, as that role, after this.

-- Only for the time of this migration: what is made for another role is made as it.
grant pith_jobs to current_user;
create schema jobs authorization pith_jobs;

set local role pith_jobs;
-- Whatever is made here later, by the library too, is nobody else's unless it is granted by name.
alter default privileges revoke all on functions from public;

-- The library's own, made before it looks, because its role may make no schema.
create table jobs.migrations (
  id int primary key,
  ts timestamptz not null default now(),
  breaking boolean not null default false
);

-- What an office may want, how often it is tried, and what goes before what (the smaller first). What waits for somebody
-- outside is done one at a time for each office. Kept like the code's list by whoever migrates.
create table jobs.tasks_of_offices (
  task text primary key,
  attempts integer not null check (attempts between 1 and 25),
  priority integer not null,
  one_at_a_time boolean not null
);

-- Wants a job for the office of the transaction, and answers its number. The office is not an argument: nobody can want
-- anything for another. What waits under the same key is wanted once. Ids only; what to do is read when it is done.
create function jobs.enqueue(wanted text, farm uuid, about uuid, key text, at timestamptz) returns bigint
language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
declare
  office uuid := nullif(current_setting('app.office_id', true), '')::uuid;
  kind jobs.tasks_of_offices := (select t from jobs.tasks_of_offices t where t.task = wanted);
begin
  if office is null or coalesce(current_setting('app.role', true), '') = '' then
    raise exception 'a job is wanted inside an office' using errcode = 'insufficient_privilege';
  end if;
  if kind.task is null then
    raise exception 'no office may want the job %', wanted using errcode = 'insufficient_privilege';
  end if;
  return (jobs.add_job(wanted,
    payload => json_build_object('officeId', office, 'farmId', farm, 'id', about),
    queue_name => case when kind.one_at_a_time then concat_ws(' ', wanted, office) end, priority => kind.priority,
    run_at => at, max_attempts => kind.attempts, job_key => concat_ws(' ', office, wanted, key))).id;
end $$;

-- Has a job that failed for good done again: for a lead of its office.
create function jobs.retry(job bigint) returns boolean
language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
begin
  if coalesce(current_setting('app.role', true), '') <> 'lead' then
    raise exception 'only a lead has a job done again' using errcode = 'insufficient_privilege';
  end if;
  perform from jobs._private_jobs j where j.id = job and j.locked_at is null and j.attempts >= j.max_attempts
    and j.payload ->> 'officeId' = nullif(current_setting('app.office_id', true), '') for update;
  if not found then return false; end if;
  perform jobs.reschedule_jobs(array[job], run_at => now(), attempts => 0);
  return true;
end $$;

-- A letter that was laid down is sent by a job of its own, before all that nobody waits for.
create function jobs.mail_queued() returns trigger
language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
begin
  perform jobs.add_job('send-mail', payload => json_build_object('mailId', new.id), priority => -10, max_attempts => 12);
  return null;
end $$;

grant usage on schema jobs to pith_app;
grant execute on function jobs.enqueue(text, uuid, uuid, text, timestamptz), jobs.retry(bigint) to pith_app;
reset role;

-- Letters that bear a secret (a link to sign in, an invitation) and belong to no office yet. Gone once they are sent.
create table auth.mails (
  id uuid primary key default gen_random_uuid(),
  mail jsonb not null,
  queued_at timestamptz not null default now()
);
create trigger mail_queued after insert on auth.mails for each row execute function jobs.mail_queued();
grant insert on auth.mails to pith_auth;
grant usage on schema auth to pith_jobs;
grant select, delete on auth.mails to pith_jobs;

revoke pith_jobs from current_user;

-- Which offices there are, to whoever does the nightly work of each: their ids and nothing else.
grant usage on schema public to pith_jobs;
grant select (id) on offices to pith_jobs;
create policy jobs_list on offices for select to pith_jobs using (true);

-- What was wanted, by whom, and what became of it. Beside the queue, so that an office sees its own.
create table runs (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  -- The queue's number: what is wanted again while it waits stays the same job.
  job_id bigint not null,
  task text not null,
  farm_id uuid,
  about_id uuid,
  key text not null,
  wanted_by uuid default app_user(),
  wanted_at timestamptz not null default now(),
  status text not null default 'waiting' check (status in ('waiting', 'running', 'done', 'failed', 'overtaken')),
  attempts integer not null default 0,
  -- When it is done, or tried again.
  due_at timestamptz,
  started_at timestamptz,
  ended_at timestamptz,
  done integer,
  total integer,
  -- In words of ours: nothing of a person's and nothing secret.
  problem text,
  primary key (office_id, id),
  unique (office_id, job_id),
  foreign key (office_id, farm_id) references farms (office_id, id) on delete cascade
);
create index runs_by_time on runs (office_id, wanted_at desc, id desc);

alter table runs enable row level security;
alter table runs force row level security;
revoke all on table runs from public;
grant select, insert on runs to pith_app;
grant update (status, attempts, due_at, started_at, ended_at, done, total, problem) on runs to pith_app;
create policy agent on runs to pith_app
  using (office_id = app_office() and app_is_agent() and (farm_id is null or app_sees_farm(farm_id)));
-- What people do can want work of which they see nothing.
create policy people_want on runs for insert to pith_app
  with check (office_id = app_office() and (farm_id is null or app_sees_farm(farm_id))
    and status = 'waiting' and wanted_by is not distinct from app_user());

-- What is kept for a while only is let go across offices, by age; what it says is not read.
grant select (created_at), delete on idempotency_keys to pith_jobs;
create policy jobs_read_old on idempotency_keys for select to pith_jobs using (created_at < now() - interval '2 days');
create policy jobs_let_go on idempotency_keys for delete to pith_jobs using (created_at < now() - interval '2 days');
grant select (status, ended_at), delete on runs to pith_jobs;
create policy jobs_read_old on runs for select to pith_jobs using (ended_at < now() - interval '7 days');
create policy jobs_let_go on runs for delete to pith_jobs using (ended_at < now() - interval '7 days');
