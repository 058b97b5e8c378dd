-- The archive of a team in PostgreSQL: the tables that 'fieldsession export' writes, each row with the study it belongs to.
-- Names, units and meanings of the columns are those of datapackage.json. Tried on PostgreSQL 15; psql -f schema.sql

CREATE TABLE study (
    study text PRIMARY KEY,
    plan jsonb NOT NULL,        -- plan.json
    comparison jsonb,           -- comparison.json: the verdict and its figures
    loaded timestamptz NOT NULL DEFAULT now()
);

CREATE TABLE segment (
    study text NOT NULL REFERENCES study ON DELETE CASCADE,
    segment_number integer NOT NULL,
    segment text NOT NULL,
    kind text NOT NULL,
    class text NOT NULL CHECK (class IN ('steady', 'impact')),
    speed_kmh double precision,
    length_m double precision,
    PRIMARY KEY (study, segment_number)
);

CREATE TABLE code (
    study text NOT NULL REFERENCES study ON DELETE CASCADE,
    code text NOT NULL,
    place text,
    PRIMARY KEY (study, code)
);

-- filled only once the key of a study is open
CREATE TABLE key (
    study text NOT NULL,
    code text NOT NULL,
    spec text NOT NULL,
    control boolean,
    verified boolean,
    PRIMARY KEY (study, code),
    FOREIGN KEY (study, code) REFERENCES code ON DELETE CASCADE
);

CREATE TABLE session (
    study text NOT NULL REFERENCES study ON DELETE CASCADE,
    session integer NOT NULL,
    before_db double precision,
    after_db double precision,
    drift_db double precision,
    void boolean,
    before_at timestamptz,
    after_at timestamptz,
    PRIMARY KEY (study, session)
);

CREATE TABLE run (
    study text NOT NULL,
    run integer NOT NULL,
    code text NOT NULL,
    session integer NOT NULL,
    driver text,
    car text,
    strand text,
    doubt text,
    start_at timestamptz NOT NULL,
    end_at timestamptz,
    PRIMARY KEY (study, run),
    FOREIGN KEY (study, code) REFERENCES code ON DELETE CASCADE,
    FOREIGN KEY (study, session) REFERENCES session ON DELETE CASCADE
);

CREATE TABLE reading (
    study text NOT NULL,
    run integer NOT NULL,
    segment_number integer NOT NULL,
    take integer NOT NULL,
    code text NOT NULL,
    kind text NOT NULL,
    class text NOT NULL,
    low double precision,       -- empty: missed
    high double precision,
    spoilt text,                -- empty: it counts
    minutes double precision,
    car text,
    slot text,
    flag text,
    flag_late boolean,
    doubt text,
    note text,
    at timestamptz,
    PRIMARY KEY (study, run, segment_number, take),
    FOREIGN KEY (study, run) REFERENCES run ON DELETE CASCADE,
    FOREIGN KEY (study, segment_number) REFERENCES segment ON DELETE CASCADE
);

CREATE TABLE prediction (
    study text NOT NULL REFERENCES study ON DELETE CASCADE,
    person text NOT NULL,
    feature text NOT NULL,
    sure integer,
    basis text,
    PRIMARY KEY (study, person)
);

CREATE TABLE rating (
    study text NOT NULL REFERENCES study ON DELETE CASCADE,
    run integer NOT NULL,
    code text NOT NULL,
    person text NOT NULL,
    seat text,
    attribute text NOT NULL,
    score double precision NOT NULL,
    PRIMARY KEY (study, run, person, attribute)
);

-- one row a line of a verdict; codes, never names
CREATE TABLE verdict (
    study text NOT NULL REFERENCES study ON DELETE CASCADE,
    question text NOT NULL,     -- the code that is asked about
    against text NOT NULL,      -- the code it is held against
    line text NOT NULL CHECK (line IN ('meter', 'ring', 'ear', 'worth')),
    word text NOT NULL,
    reason text NOT NULL,
    hangs_on text,
    looks integer,
    d double precision,         -- dB, question minus against
    lo95 double precision,
    hi95 double precision,
    left_out integer,           -- readings of the two codes that are left out of the clean result
    key text,                   -- what the checks of the key found
    PRIMARY KEY (study, question, against, line)
);

-- What enters the comparison: one level a reading that counts, the middle of its range.
CREATE VIEW level AS
SELECT study, run, code, car, segment_number, kind, class, (low + high) / 2 AS level_db, high - low AS width_db
FROM reading
WHERE high IS NOT NULL AND spoilt IS NULL;

-- The export puts an apostrophe before a text that a spreadsheet would run as a formula; this takes it off again.
CREATE FUNCTION plain(text) RETURNS text LANGUAGE sql IMMUTABLE AS
$$ SELECT CASE WHEN $1 ~ E'^\'+[=+@\t\r-]' THEN substr($1, 2) ELSE $1 END $$;
