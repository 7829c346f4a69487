-- What a database has beside the tables that a file has too.

-- One row. Whoever writes takes it for himself until he is done, so that one writes at a time.
CREATE TABLE store (
    version INTEGER NOT NULL,
    made    TEXT NOT NULL  -- SHA-256 over the tables and triggers as the scripts made them
);
INSERT INTO store (version, made) VALUES (0, '');

-- The last write of each connection: one that was kept just as the connection was lost is found by its key and not made again.
CREATE TABLE sent (
    key TEXT PRIMARY KEY,
    at  TIMESTAMP WITH TIME ZONE NOT NULL DEFAULT now()
);

CREATE FUNCTION refused() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION '%', TG_ARGV[0]; END $$;
