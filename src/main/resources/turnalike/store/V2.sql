-- Jobs that were put into the bin. They are kept as they are, history and all; emptied, the bin does not show them any more.
CREATE TABLE bin (
    job     TEXT PRIMARY KEY NOT NULL REFERENCES job (id),
    at      TEXT NOT NULL,  -- ISO 8601, UTC
    emptied INTEGER NOT NULL CHECK (emptied IN (0, 1))
) STRICT;
