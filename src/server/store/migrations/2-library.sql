-- Files that instructors wrote: every version of them. A text that is null: it was removed then.
CREATE TABLE library_version (
  kind text NOT NULL,
  id text NOT NULL,
  version integer NOT NULL,
  saved_ms bigint NOT NULL,
  title text NOT NULL,
  plant text NOT NULL,
  text text,
  PRIMARY KEY (kind, id, version)
);
