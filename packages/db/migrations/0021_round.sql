-- The round of a large office is read a page at a time and counted whole, from the index alone; and what another version
-- of a rule drafted is found by a few steps through the versions there are, however many drafts stand.
create index drafts_open on drafts (office_id, kind, order_key, id) include (set_aside_until, farm_id);
create index drafts_versions on drafts (office_id, rule_id, rule_version, farm_id);
