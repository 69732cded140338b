-- A request that carries a key is begun before it is done: its row stands first without an answer. What it changes is
-- marked on that row in the same transaction, so that after a crash nobody has to guess. `claim` is the try that holds
-- it; a try that lost its claim to a later one commits nothing.
alter table idempotency_keys
  alter column response drop not null,
  add column claim uuid not null default gen_random_uuid(),
  add column effect boolean not null default false;
grant update (claim, effect, response, created_at) on idempotency_keys to pith_app;
