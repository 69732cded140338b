-- What the round shows of a draft's answer, so that listing thousands need not read every answer whole.
alter table drafts add column summary jsonb not null default '{}';
