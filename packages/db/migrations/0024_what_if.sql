-- What an agent tried on a planting and made a draft of: one a planting, until it is issued or let go.
alter table plantings add column what_if jsonb check (jsonb_typeof(what_if) = 'object');
