-- Times are milliseconds since 1970. What the program wrote as JSON is json, not jsonb: it comes
-- back letter by letter, and may hold any character.

create table class (
  id text primary key,
  code text not null,
  secret_hash text not null,
  projector_hash text not null,
  what json not null,
  -- An instructor's own exercise; apart from the rest, since lists of classes do without.
  given json,
  way text not null,
  seed bigint not null,
  opened_ms bigint not null,
  closed_ms bigint,
  retention_days int not null,
  -- Number of the last entry.
  n int not null default 0,
  -- Number of the last seat.
  seats int not null default 0
);
create unique index class_of_code on class (code) where closed_ms is null;

create table class_entry (
  class text not null references class on delete cascade,
  n int not null,
  key text not null,
  at_ms bigint not null,
  event json not null,
  primary key (class, n),
  unique (class, key)
);

create table seat (
  class text not null references class on delete cascade,
  seat int not null,
  nickname text not null,
  token_hash text not null,
  pin_hash text not null,
  joined_ms bigint not null,
  handed_in_ms bigint,
  primary key (class, seat)
);

-- The work of a seat in parts: each goes on from an earlier one, and keeps the first lines of its
-- logs. One without `base` is whole. So what is written is what is new, and nothing is written over.
create table work_part (
  class text not null references class on delete cascade,
  seat int not null,
  attempt int not null,
  rev int not null,
  base int,
  head json not null,
  keep_acts int not null,
  acts json not null,
  keep_desk int not null,
  desk json not null,
  primary key (class, seat, attempt, rev),
  foreign key (class, seat, attempt, base) references work_part (class, seat, attempt, rev)
);
create index work_part_of_base on work_part (class, seat, attempt, base) where base is not null;

create table poll_answer (
  class text not null references class on delete cascade,
  poll text not null,
  seat int not null,
  option int not null,
  primary key (class, poll, seat)
);

create table result (
  class text not null references class on delete cascade,
  seat int not null,
  attempt int not null,
  judged_ms bigint not null,
  result json not null,
  refused json,
  primary key (class, seat, attempt)
);
