-- Tables of the sign-in library, reached by its own role only.

create schema auth;
revoke all on schema auth from public;
grant usage on schema auth to pith_auth;

create table auth."user" (
  id uuid primary key default gen_random_uuid(),
  name text not null,
  email text not null unique,
  email_verified boolean not null default false,
  image text,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);

create table auth.session (
  id uuid primary key default gen_random_uuid(),
  user_id uuid not null references auth."user" (id) on delete cascade,
  token text not null unique,
  expires_at timestamptz not null,
  ip_address text,
  user_agent text,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);
create index session_by_user on auth.session (user_id);

create table auth.account (
  id uuid primary key default gen_random_uuid(),
  user_id uuid not null references auth."user" (id) on delete cascade,
  account_id text not null,
  provider_id text not null,
  access_token text,
  refresh_token text,
  id_token text,
  access_token_expires_at timestamptz,
  refresh_token_expires_at timestamptz,
  scope text,
  password text,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);
create index account_by_user on auth.account (user_id);

create table auth.verification (
  id uuid primary key default gen_random_uuid(),
  identifier text not null,
  value text not null,
  expires_at timestamptz not null,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);
create index verification_by_identifier on auth.verification (identifier);

grant select, insert, update, delete on all tables in schema auth to pith_auth;
