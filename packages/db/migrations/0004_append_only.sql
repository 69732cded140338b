-- The ledger and the audit log only grow. The application has no grant to change them; these triggers stop everybody
-- else who uses plain statements, the owner too. (Whoever may drop a trigger can still rewrite: the chain shows it.)

create function refuse_change() returns trigger language plpgsql as $$
begin
  raise exception '% only grows: % is refused', tg_table_name, lower(tg_op) using errcode = 'insufficient_privilege';
end $$;

create trigger only_grows before update or delete or truncate on ledger_entries
  for each statement execute function refuse_change();
create trigger only_grows before update or delete or truncate on ledger_states
  for each statement execute function refuse_change();
create trigger only_grows before update or delete or truncate on audit_log
  for each statement execute function refuse_change();

-- An entry that does not continue its office's head would fork the chain or leave a hole.
create function refuse_loose_entry() returns trigger language plpgsql as $$
begin
  if not exists (
    select from public.ledger_heads h
    where h.office_id = new.office_id and h.seq = new.seq - 1 and h.hash = new.prev_hash
  ) then
    raise exception 'ledger entry % does not continue the head of its office', new.seq using errcode = 'check_violation';
  end if;
  return new;
end $$;

create trigger continues_the_head before insert on ledger_entries
  for each row execute function refuse_loose_entry();
