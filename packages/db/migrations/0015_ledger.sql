-- What vouches for a ledger from outside it, what came from another office, and who wrote which words.

-- Set by one door alone, inside the one transaction that takes in what another office exported.
create function app_is_importing() returns boolean language sql stable parallel safe as
  $$ select coalesce(current_setting('app.importing', true), '') = 'yes' and app_is_lead() $$;

-- Signed with a key that the database never sees. `document` is what was signed with its signature, as canonical JSON.
create table ledger_checkpoints (
  office_id uuid not null references offices (id),
  id uuid not null default gen_random_uuid(),
  on_day date not null,
  seq bigint not null check (seq > 0),
  document text not null,
  made_at timestamptz not null default now(),
  primary key (office_id, id),
  unique (office_id, on_day, seq)
);

-- A chain that came whole from another office goes on here: its entries up to last_seq name that office.
create table ledger_origins (
  office_id uuid not null references offices (id),
  last_seq bigint not null check (last_seq > 0),
  from_office uuid not null,
  signature text not null,
  taken_in_at timestamptz not null default now(),
  taken_in_by uuid not null,
  primary key (office_id, last_seq, from_office)
);

-- What another office's ledger says of a farm that moved here. It is read and checked, and never goes on.
create table ledger_histories (
  office_id uuid not null,
  id uuid not null default gen_random_uuid(),
  farm_id uuid not null,
  from_office uuid not null,
  from_office_name text not null,
  checkpoint text not null,
  taken_in_at timestamptz not null default now(),
  taken_in_by uuid not null,
  primary key (office_id, id),
  unique (office_id, farm_id, id),
  foreign key (office_id, farm_id) references farms (office_id, id)
);

-- `proof` leads from the entry's hash to the root that the checkpoint signs (RFC 9162, 2.1.3).
create table ledger_history_entries (
  office_id uuid not null,
  history_id uuid not null,
  farm_id uuid not null,
  seq bigint not null check (seq > 0),
  body text not null,
  hash text not null check (hash ~ '^[0-9a-f]{64}$'),
  proof jsonb not null,
  text_id uuid,
  primary key (office_id, history_id, seq),
  foreign key (office_id, farm_id, history_id) references ledger_histories (office_id, farm_id, id),
  foreign key (office_id, text_id) references texts (office_id, id)
);

do $$
declare t text;
begin
  foreach t in array array['ledger_checkpoints', 'ledger_origins', 'ledger_histories', 'ledger_history_entries'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('revoke all on table %I from public', t);
    execute format('grant select, insert on table %I to pith_app', t);
    execute format('create trigger only_grows before update or delete or truncate on %I
      for each statement execute function refuse_change()', t);
  end loop;
  foreach t in array array['ledger_histories', 'ledger_history_entries'] loop
    execute format('create policy agent_reads on %I for select to pith_app
      using (office_id = app_office() and app_is_agent() and app_sees_farm(farm_id))', t);
    execute format('create policy farmer_reads on %I for select to pith_app
      using (office_id = app_office() and app_is_of_farm() and app_sees_farm(farm_id))', t);
    execute format('create policy import_adds on %I for insert to pith_app
      with check (office_id = app_office() and app_is_importing())', t);
  end loop;
end $$;

-- Whoever belongs to the office may hold its checkpoints: that is what they are for. They tell of no farm.
create policy people_read on ledger_checkpoints for select to pith_app
  using (office_id = app_office() and (app_is_agent() or app_is_of_farm()));
create policy agent_adds on ledger_checkpoints for insert to pith_app
  with check (office_id = app_office() and app_is_agent());
create policy agent_reads on ledger_origins for select to pith_app using (office_id = app_office() and app_is_agent());
create policy import_adds on ledger_origins for insert to pith_app
  with check (office_id = app_office() and app_is_importing());

-- Lines of the audit that come with an office were written by others, in their names.
create policy import_adds on audit_log for insert to pith_app
  with check (office_id = app_office() and app_is_importing());

-- A chain that is taken in comes before its head: there each entry must continue the one before it.
create or replace function refuse_loose_entry() returns trigger language plpgsql as $$
begin
  if public.app_is_importing() then
    if not exists (select from public.ledger_heads h where h.office_id = new.office_id)
      and (new.seq = 1 and new.prev_hash = repeat('0', 64) or exists (
        select from public.ledger_entries e
        where e.office_id = new.office_id and e.seq = new.seq - 1 and e.hash = new.prev_hash))
    then
      return new;
    end if;
  elsif exists (
    select from public.ledger_heads h
    where h.office_id = new.office_id and h.seq = new.seq - 1 and h.hash = new.prev_hash
  ) then
    return new;
  end if;
  raise exception 'ledger entry % does not continue the head of its office', new.seq using errcode = 'check_violation';
end $$;

-- So that a person's words can be found when they ask for them to be erased.
alter table texts add column written_by uuid default app_user();
