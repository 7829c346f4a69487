-- Jobs as they are kept. What was done is only ever added to; what stands now is kept beside it, in the same transaction.

CREATE TABLE job (
    id      TEXT PRIMARY KEY NOT NULL,
    made_at TEXT NOT NULL,  -- ISO 8601, UTC
    title   TEXT NOT NULL   -- of the text that stands
) STRICT;

-- Every text a job ever had and every state of a piece, each once, under its own SHA-256: a body that was damaged is noticed.
CREATE TABLE document (
    digest TEXT PRIMARY KEY NOT NULL,
    body   TEXT NOT NULL
) STRICT;

CREATE TABLE step (
    job     TEXT NOT NULL REFERENCES job (id),
    number  INTEGER NOT NULL CHECK (number > 0),
    at      TEXT NOT NULL,
    did     TEXT NOT NULL CHECK (did IN ('edit', 'undo', 'redo')),
    of_step INTEGER CHECK ((of_step IS NULL) = (did = 'edit')),
    what    TEXT NOT NULL,
    seal    TEXT NOT NULL,  -- SHA-256 over this step, its changes and the seal of the step before
    PRIMARY KEY (job, number)
) STRICT;

CREATE TABLE change (
    job    TEXT NOT NULL,
    step   INTEGER NOT NULL,
    place  INTEGER NOT NULL,
    kind   TEXT NOT NULL CHECK (kind IN ('job', 'piece', 'photo')),
    name   TEXT NOT NULL,
    before TEXT REFERENCES document (digest),  -- NULL: was not there
    after  TEXT REFERENCES document (digest),  -- NULL: is taken out
    PRIMARY KEY (job, step, place),
    FOREIGN KEY (job, step) REFERENCES step (job, number)
) STRICT;

-- What each subject is now; what was taken out stays as a row without a document, so that bringing it again finds its place.
CREATE TABLE standing (
    job      TEXT NOT NULL REFERENCES job (id),
    kind     TEXT NOT NULL,
    name     TEXT NOT NULL,
    place    INTEGER NOT NULL,
    document TEXT REFERENCES document (digest),
    PRIMARY KEY (job, kind, name)
) STRICT;

-- The weights, measures and times that stand, one a row, for questions over many jobs.
CREATE TABLE figure (
    job         TEXT NOT NULL REFERENCES job (id),
    piece       TEXT NOT NULL,
    name        TEXT NOT NULL,  -- mass_g, length_mm, balance_mm, m1_mm, d1_mm, …, turning_s
    value       REAL NOT NULL CHECK (value > 0),
    source      TEXT NOT NULL CHECK (source IN ('hand', 'photo')),
    photo       TEXT CHECK ((photo IS NULL) = (source = 'hand')),
    accuracy_mm REAL,
    step        INTEGER NOT NULL,  -- since when it is so
    PRIMARY KEY (job, piece, name)
) STRICT;

CREATE TRIGGER step_stays BEFORE UPDATE ON step BEGIN SELECT RAISE(ABORT, 'history is only added to'); END;
CREATE TRIGGER step_is_not_lost BEFORE DELETE ON step BEGIN SELECT RAISE(ABORT, 'history is only added to'); END;
CREATE TRIGGER change_stays BEFORE UPDATE ON change BEGIN SELECT RAISE(ABORT, 'history is only added to'); END;
CREATE TRIGGER change_is_not_lost BEFORE DELETE ON change BEGIN SELECT RAISE(ABORT, 'history is only added to'); END;
CREATE TRIGGER document_stays BEFORE UPDATE ON document BEGIN SELECT RAISE(ABORT, 'history is only added to'); END;
CREATE TRIGGER document_is_not_lost BEFORE DELETE ON document BEGIN SELECT RAISE(ABORT, 'history is only added to'); END;
