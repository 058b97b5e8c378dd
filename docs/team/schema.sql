-- The tables of exports in PostgreSQL, made by 'fieldsession schema postgresql' from the descriptions of datapackage.json. Load with load.sh.

-- The export puts an apostrophe before a text that a spreadsheet would run as a formula; the tables keep it, this takes it off.
CREATE FUNCTION plain(text) RETURNS text LANGUAGE sql IMMUTABLE AS
$$ SELECT CASE WHEN $1 ~ E'^\'+[=+@\t\r-]' THEN substr($1, 2) ELSE $1 END $$;

-- Loading (load.sh) goes through this: it takes out what is there of the study that arrives, so that it can come in whole.
-- A study that is loaded goes on only to a state that holds all of its lines: an older state is refused, and so is a copy that
-- went on differently, as far as its strands and, where it is exported, its journal tell.
CREATE PROCEDURE take_out() LANGUAGE plpgsql AS $$
DECLARE
    arriving record;
    known record;
BEGIN
    SELECT * INTO STRICT arriving FROM arriving_study;
    PERFORM set_config('fieldsession.study', arriving.study, true);
    FOR known IN
        SELECT s.strand, s.lines, s.head, a.lines AS lines_now, a.head AS head_now
        FROM strands AS s LEFT JOIN arriving_strands AS a USING (strand) WHERE s.study = arriving.study
    LOOP
        IF known.lines_now IS NULL OR known.lines_now < known.lines THEN
            RAISE EXCEPTION 'study % (%) is loaded in a later state: export the newest copy of it', arriving.name, left(arriving.study, 8);
        END IF;
        IF (known.lines_now = known.lines AND known.head_now <> known.head)
            OR (EXISTS (SELECT FROM arriving_journal) AND NOT EXISTS (SELECT FROM arriving_journal WHERE body::jsonb->>'hash' = known.head)) THEN
            RAISE EXCEPTION 'study % (%) is loaded from a copy that went on differently: merge the two, then export', arriving.name, left(arriving.study, 8);
        END IF;
    END LOOP;
    DELETE FROM study WHERE study = arriving.study;
END $$;

-- No row of another study comes in with the one that is being loaded.
CREATE FUNCTION of_this_study() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF EXISTS (SELECT FROM fresh WHERE study IS DISTINCT FROM current_setting('fieldsession.study', true)) THEN
        RAISE EXCEPTION 'the table % holds rows of another study: export the study once more into a folder of its own', TG_TABLE_NAME;
    END IF;
    RETURN NULL;
END $$;


-- The study itself: one row. All other tables name it in the column 'study', so that tables of many studies can be put together.
CREATE TABLE study (
    name text NOT NULL,
    asked text,
    specs integer NOT NULL,
    crew text NOT NULL,
    loop text NOT NULL,
    car_facts text,
    meter text,
    order_planned text NOT NULL,
    margin_db double precision NOT NULL,
    began timestamptz,
    finished boolean NOT NULL,
    lines integer NOT NULL,
    study text NOT NULL,
    PRIMARY KEY (study)
);
CREATE TRIGGER of_this_study AFTER INSERT ON study REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN study.name IS 'what the crew calls it; two studies may have one name';
COMMENT ON COLUMN study.asked IS 'what it asks';
COMMENT ON COLUMN study.specs IS 'how many specs are compared, the control included';
COMMENT ON COLUMN study.crew IS 'the crew''s names, in order of the alphabet';
COMMENT ON COLUMN study.loop IS 'the segments with their kinds, in driven order: studies with the same text drove the same loop';
COMMENT ON COLUMN study.car_facts IS 'the car, as the crew wrote it';
COMMENT ON COLUMN study.meter IS 'the sound level meter, as the crew wrote it';
COMMENT ON COLUMN study.order_planned IS 'the order of runs, by place: R the reference, 1, 2, ... the others';
COMMENT ON COLUMN study.margin_db IS 'differences within this are equivalent, on steady segments; dB';
COMMENT ON COLUMN study.began IS 'when its first run started; empty: none did; UTC';
COMMENT ON COLUMN study.finished IS 'whether the key is open';
COMMENT ON COLUMN study.lines IS 'lines of the journal: of two states of one study the later has more';
COMMENT ON COLUMN study.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- How far the journal goes: one row a strand, the chain of lines of one laptop.
CREATE TABLE strands (
    strand text NOT NULL,
    lines integer NOT NULL,
    head text NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, strand)
);
CREATE TRIGGER of_this_study AFTER INSERT ON strands REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN strands.strand IS '16 hex digits';
COMMENT ON COLUMN strands.lines IS 'how many lines it has';
COMMENT ON COLUMN strands.head IS 'hash of its last line';
COMMENT ON COLUMN strands.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- The route of the plan: one row a segment, in driven order.
CREATE TABLE segments (
    segment_number integer NOT NULL,
    segment text NOT NULL,
    kind text NOT NULL,
    class text NOT NULL CHECK (class IN ('steady', 'impact')),
    speed_kmh double precision NOT NULL,
    length_m double precision NOT NULL,
    limit_kmh double precision,
    nominal_db double precision,
    start_mark text,
    phrase text,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, segment_number),
    UNIQUE (study, segment)
);
CREATE TRIGGER of_this_study AFTER INSERT ON segments REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN segments.segment_number IS 'place in the route, from 1';
COMMENT ON COLUMN segments.segment IS 'the crew''s name of it';
COMMENT ON COLUMN segments.kind IS 'kind of surface: impact, or a word for a steady one';
COMMENT ON COLUMN segments.class IS 'how it is read: steady (a range) or impact (a peak)';
COMMENT ON COLUMN segments.speed_kmh IS 'planned speed; km/h';
COMMENT ON COLUMN segments.length_m IS 'length; m';
COMMENT ON COLUMN segments.limit_kmh IS 'posted limit; km/h';
COMMENT ON COLUMN segments.nominal_db IS 'level expected before the day; dB';
COMMENT ON COLUMN segments.start_mark IS 'what is seen where it begins';
COMMENT ON COLUMN segments.phrase IS 'its own note phrase';
COMMENT ON COLUMN segments.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- The blind codes: one row a code. Which spec a code is, this table does not say.
CREATE TABLE codes (
    code text NOT NULL,
    fitting integer,
    place text,
    commitment text,
    line integer,
    at timestamptz,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, code)
);
CREATE TRIGGER of_this_study AFTER INSERT ON codes REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN codes.code IS 'three digits';
COMMENT ON COLUMN codes.fitting IS 'number of the fitting that drew it; empty: driven without sealing';
COMMENT ON COLUMN codes.place IS 'place in the order: R (the reference), 1, 2, ...';
COMMENT ON COLUMN codes.commitment IS 'SHA-256 of the key''s canonical line; empty: a paper key';
COMMENT ON COLUMN codes.line IS 'journal line of the sealing';
COMMENT ON COLUMN codes.at IS 'when it was sealed; UTC';
COMMENT ON COLUMN codes.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- The sessions, each with its calibration checks: one row a session.
CREATE TABLE sessions (
    session integer NOT NULL,
    before_db double precision,
    after_db double precision,
    drift_db double precision,
    void boolean,
    before_line integer,
    before_at timestamptz,
    before_typed_later boolean,
    after_line integer,
    after_at timestamptz,
    after_typed_later boolean,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, session)
);
CREATE TRIGGER of_this_study AFTER INSERT ON sessions REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN sessions.session IS 'number, from 1';
COMMENT ON COLUMN sessions.before_db IS 'shown on the calibrator before; dB';
COMMENT ON COLUMN sessions.after_db IS 'shown on the calibrator after; dB';
COMMENT ON COLUMN sessions.drift_db IS 'after minus before; dB';
COMMENT ON COLUMN sessions.void IS 'whether the meter drifted too far, so that no reading of the session counts';
COMMENT ON COLUMN sessions.before_line IS 'journal line of the check before';
COMMENT ON COLUMN sessions.before_at IS 'when the check before was made; UTC';
COMMENT ON COLUMN sessions.before_typed_later IS 'whether the check before was logged on paper and typed in afterwards';
COMMENT ON COLUMN sessions.after_line IS 'journal line of the check after';
COMMENT ON COLUMN sessions.after_at IS 'when the check after was made; UTC';
COMMENT ON COLUMN sessions.after_typed_later IS 'whether the check after was logged on paper and typed in afterwards';
COMMENT ON COLUMN sessions.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- The conditions: one row a note of them; what was not typed is empty.
CREATE TABLE weather (
    line integer NOT NULL,
    at timestamptz NOT NULL,
    air_c double precision,
    road_c double precision,
    wind_m_s double precision,
    gust_m_s double precision,
    surface text,
    typed_later boolean NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line)
);
CREATE TRIGGER of_this_study AFTER INSERT ON weather REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN weather.line IS 'journal line';
COMMENT ON COLUMN weather.at IS 'when it was noted; UTC';
COMMENT ON COLUMN weather.air_c IS 'air temperature; degC';
COMMENT ON COLUMN weather.road_c IS 'temperature of the road surface; degC';
COMMENT ON COLUMN weather.wind_m_s IS 'mean wind; m/s';
COMMENT ON COLUMN weather.gust_m_s IS 'gusts; m/s';
COMMENT ON COLUMN weather.surface IS 'state of the surface: dry, damp, wet, or the crew''s word';
COMMENT ON COLUMN weather.typed_later IS 'whether it was logged on paper and typed in afterwards';
COMMENT ON COLUMN weather.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- What was changed of the plan after it was frozen: one row a change.
CREATE TABLE amendments (
    line integer NOT NULL,
    at timestamptz NOT NULL,
    what text NOT NULL,
    "from" text,
    "to" text,
    reason text NOT NULL,
    after_run integer NOT NULL,
    order_was_driven boolean NOT NULL,
    results_were_seen boolean NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line)
);
CREATE TRIGGER of_this_study AFTER INSERT ON amendments REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN amendments.line IS 'journal line';
COMMENT ON COLUMN amendments.at IS 'when it was made; UTC';
COMMENT ON COLUMN amendments.what IS 'what was changed, in the word of plan.toml';
COMMENT ON COLUMN amendments."from" IS 'what it was before';
COMMENT ON COLUMN amendments."to" IS 'what it has been since then';
COMMENT ON COLUMN amendments.reason IS 'why, in the crew''s words';
COMMENT ON COLUMN amendments.after_run IS 'runs driven by then';
COMMENT ON COLUMN amendments.order_was_driven IS 'whether the order was driven to its end by then';
COMMENT ON COLUMN amendments.results_were_seen IS 'whether somebody may have seen a comparison before';
COMMENT ON COLUMN amendments.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- The checks that were made: one row a typed value.
CREATE TABLE checks (
    line integer NOT NULL,
    at timestamptz NOT NULL,
    typed_later boolean NOT NULL,
    "check" text NOT NULL,
    value text NOT NULL,
    typed text NOT NULL,
    answer text NOT NULL CHECK (answer IN ('records', 'warns', 'blocks')),
    words text,
    after_run integer NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line, value)
);
CREATE TRIGGER of_this_study AFTER INSERT ON checks REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN checks.line IS 'journal line of the check';
COMMENT ON COLUMN checks.at IS 'when it was made; UTC';
COMMENT ON COLUMN checks.typed_later IS 'whether it was logged on paper and typed in afterwards';
COMMENT ON COLUMN checks."check" IS 'name of the check';
COMMENT ON COLUMN checks.value IS 'name of the value, as in the entry line';
COMMENT ON COLUMN checks.typed IS 'what was typed, in the plan''s units';
COMMENT ON COLUMN checks.answer IS 'what the whole check answered';
COMMENT ON COLUMN checks.words IS 'the answer in words';
COMMENT ON COLUMN checks.after_run IS 'number of the last run begun before it; 0: none';
COMMENT ON COLUMN checks.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- Blocking checks that the crew went over: one row an override.
CREATE TABLE overrides (
    line integer NOT NULL,
    at timestamptz NOT NULL,
    "check" text NOT NULL,
    before_run integer NOT NULL,
    reason text NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line)
);
CREATE TRIGGER of_this_study AFTER INSERT ON overrides REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN overrides.line IS 'journal line';
COMMENT ON COLUMN overrides.at IS 'when it was given; UTC';
COMMENT ON COLUMN overrides."check" IS 'name of the check';
COMMENT ON COLUMN overrides.before_run IS 'number of the run that it let start; beyond the last run: none was started';
COMMENT ON COLUMN overrides.reason IS 'why, in the crew''s words';
COMMENT ON COLUMN overrides.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- The runs: one row a trip over the route, in driven order.
CREATE TABLE runs (
    run integer NOT NULL,
    code text NOT NULL,
    session integer NOT NULL,
    driver text,
    car text,
    strand text,
    doubt text,
    place integer NOT NULL,
    aborted boolean,
    abort_cause text,
    typed_later boolean NOT NULL,
    start_line integer NOT NULL,
    start_at timestamptz NOT NULL,
    end_line integer,
    end_at timestamptz,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, run),
    FOREIGN KEY (study, code) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, session) REFERENCES sessions (study, session) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON runs REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN runs.run IS 'number, from 1';
COMMENT ON COLUMN runs.code IS 'code that was driven';
COMMENT ON COLUMN runs.session IS 'session it belongs to';
COMMENT ON COLUMN runs.driver IS 'who drove';
COMMENT ON COLUMN runs.car IS 'car that was driven; empty: there is one';
COMMENT ON COLUMN runs.strand IS 'strand of the laptop that it was typed on, to which its journal lines belong; empty: the first';
COMMENT ON COLUMN runs.doubt IS 'why the code is doubtful';
COMMENT ON COLUMN runs.place IS 'its place among the runs to be driven, from 1; a run that repeats an aborted one has the same';
COMMENT ON COLUMN runs.aborted IS 'whether it was ended before its last segment';
COMMENT ON COLUMN runs.abort_cause IS 'why it was aborted';
COMMENT ON COLUMN runs.typed_later IS 'whether its start was logged on paper and typed in afterwards';
COMMENT ON COLUMN runs.start_line IS 'journal line of the start';
COMMENT ON COLUMN runs.start_at IS 'when it started; UTC';
COMMENT ON COLUMN runs.end_line IS 'journal line of the end; empty: still on';
COMMENT ON COLUMN runs.end_at IS 'when it ended; empty: still on; UTC';
COMMENT ON COLUMN runs.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- Brackets that were driven again: one row a bracket. Which drive counts is decided by the plan's rule.
CREATE TABLE reruns (
    line integer NOT NULL,
    at timestamptz NOT NULL,
    bracket integer NOT NULL,
    first_run integer NOT NULL,
    last_run integer NOT NULL,
    reason text NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line)
);
CREATE TRIGGER of_this_study AFTER INSERT ON reruns REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN reruns.line IS 'journal line';
COMMENT ON COLUMN reruns.at IS 'when it was decided; UTC';
COMMENT ON COLUMN reruns.bracket IS 'number of the bracket';
COMMENT ON COLUMN reruns.first_run IS 'number of the first run of the re-run';
COMMENT ON COLUMN reruns.last_run IS 'number of its last run';
COMMENT ON COLUMN reruns.reason IS 'why, in the crew''s words';
COMMENT ON COLUMN reruns.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- The readings: one row a reading, and one with empty low and high for each planned reading that was missed. 'compare readings.csv' gives the study's own comparison.
CREATE TABLE readings (
    run integer NOT NULL,
    code text NOT NULL,
    segment text NOT NULL,
    kind text NOT NULL,
    low double precision,
    high double precision,
    spoilt text,
    minutes double precision,
    seconds double precision NOT NULL,
    class text NOT NULL CHECK (class IN ('steady', 'impact')),
    session integer NOT NULL,
    note text,
    car text,
    slot text,
    order_runs text,
    segment_number integer NOT NULL,
    take integer NOT NULL,
    flag text,
    flag_words text,
    flag_late boolean,
    doubt text,
    typed_later boolean,
    filled boolean,
    swapped boolean,
    speed_kmh double precision NOT NULL,
    driver text,
    line integer,
    at timestamptz,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, run, segment_number, take),
    FOREIGN KEY (study, run) REFERENCES runs (study, run) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, code) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, segment_number) REFERENCES segments (study, segment_number) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, session) REFERENCES sessions (study, session) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON readings REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN readings.run IS 'number of the run, in driven order';
COMMENT ON COLUMN readings.code IS 'code that was driven';
COMMENT ON COLUMN readings.segment IS 'name of the segment';
COMMENT ON COLUMN readings.kind IS 'kind of surface: impact, or a word for a steady one';
COMMENT ON COLUMN readings.low IS 'lowest level seen; empty: missed; dB';
COMMENT ON COLUMN readings.high IS 'highest level seen, or the peak; empty: missed; dB';
COMMENT ON COLUMN readings.spoilt IS 'why the reading is left out: traffic, wind, speed, road, noise, entry, void session, bracket driven again, run aborted, filled at the stop, or conflict settled; empty: it counts';
COMMENT ON COLUMN readings.minutes IS 'from the first run''s start to the middle of this run; empty: the times are not believed; min';
COMMENT ON COLUMN readings.seconds IS 'how long a run stays on the segment at its planned speed; s';
COMMENT ON COLUMN readings.class IS 'how the segment is read: steady or impact';
COMMENT ON COLUMN readings.session IS 'session of the run; of cars side by side, the first of theirs';
COMMENT ON COLUMN readings.note IS 'what was said on this segment of this run, cut by '' / ''; one by one in notes.csv';
COMMENT ON COLUMN readings.car IS 'car that was driven; empty: there is one';
COMMENT ON COLUMN readings.slot IS 'runs driven side by side share it; empty: driven alone';
COMMENT ON COLUMN readings.order_runs IS 'runs of the order as planned, then after each time it was lengthened when a comparison could be seen; the same in every row';
COMMENT ON COLUMN readings.segment_number IS 'place of the segment in the route, from 1';
COMMENT ON COLUMN readings.take IS 'which reading of this run and segment it is, from 1';
COMMENT ON COLUMN readings.flag IS 'what spoilt it, late flags included; empty: no flag';
COMMENT ON COLUMN readings.flag_words IS 'more about what spoilt it';
COMMENT ON COLUMN readings.flag_late IS 'whether the flag came after the next segment had begun, so that the reading still counts; empty: no flag';
COMMENT ON COLUMN readings.doubt IS 'what is doubtful about the reading';
COMMENT ON COLUMN readings.typed_later IS 'whether it was logged on paper and typed in afterwards';
COMMENT ON COLUMN readings.filled IS 'whether it was filled in at a stop and not typed while driving';
COMMENT ON COLUMN readings.swapped IS 'whether the range was typed high first';
COMMENT ON COLUMN readings.speed_kmh IS 'planned speed of the segment; km/h';
COMMENT ON COLUMN readings.driver IS 'who drove';
COMMENT ON COLUMN readings.line IS 'journal line; empty: missed because the run ended before';
COMMENT ON COLUMN readings.at IS 'when it was typed; where it was typed later, when the paper says it was read; UTC';
COMMENT ON COLUMN readings.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- What somebody said or saw: one row a note.
CREATE TABLE notes (
    line integer NOT NULL,
    at timestamptz NOT NULL,
    run integer,
    segment_number integer,
    who text,
    words text NOT NULL,
    typed_later boolean NOT NULL,
    after_reveal boolean NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line),
    FOREIGN KEY (study, run) REFERENCES runs (study, run) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, segment_number) REFERENCES segments (study, segment_number) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON notes REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN notes.line IS 'journal line';
COMMENT ON COLUMN notes.at IS 'when it was made; UTC';
COMMENT ON COLUMN notes.run IS 'run it belongs to; empty: said outside a run';
COMMENT ON COLUMN notes.segment_number IS 'segment it belongs to; empty: none';
COMMENT ON COLUMN notes.who IS 'who said it';
COMMENT ON COLUMN notes.words IS 'the note';
COMMENT ON COLUMN notes.typed_later IS 'whether it was logged on paper and typed in afterwards';
COMMENT ON COLUMN notes.after_reveal IS 'whether it was made after the reveal';
COMMENT ON COLUMN notes.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- Levels beside dB(A) and recordings: one row a reading that has any.
CREATE TABLE extra (
    run integer NOT NULL,
    code text NOT NULL,
    segment_number integer NOT NULL,
    c double precision,
    l200 double precision,
    l250 double precision,
    recording text,
    line integer NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line),
    FOREIGN KEY (study, run) REFERENCES runs (study, run) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, code) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, segment_number) REFERENCES segments (study, segment_number) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON extra REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN extra.run IS 'run it was read in';
COMMENT ON COLUMN extra.code IS 'code of the run';
COMMENT ON COLUMN extra.segment_number IS 'segment it was read on';
COMMENT ON COLUMN extra.c IS 'C-weighted level; empty: not read; dB(C)';
COMMENT ON COLUMN extra.l200 IS 'one-third-octave level at 200 Hz; empty: not read, or covered before the last prediction; dB';
COMMENT ON COLUMN extra.l250 IS 'one-third-octave level at 250 Hz; empty: not read, or covered before the last prediction; dB';
COMMENT ON COLUMN extra.recording IS 'name of a recording; empty: none';
COMMENT ON COLUMN extra.line IS 'journal line of the reading';
COMMENT ON COLUMN extra.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- Levels of bands in the recordings: one row a reading that was heard and a band. Only once the ring is uncovered.
CREATE TABLE bands (
    run integer NOT NULL,
    code text NOT NULL,
    segment_number integer NOT NULL,
    band text NOT NULL,
    level double precision,
    counts boolean NOT NULL,
    line integer NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line, band),
    FOREIGN KEY (study, run) REFERENCES runs (study, run) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, code) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, segment_number) REFERENCES segments (study, segment_number) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON bands REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN bands.run IS 'run that was recorded';
COMMENT ON COLUMN bands.code IS 'code of the run';
COMMENT ON COLUMN bands.segment_number IS 'segment';
COMMENT ON COLUMN bands.band IS 'middle of the third-octave band in Hz, or ''ring''';
COMMENT ON COLUMN bands.level IS 'level, energy mean; re full scale where the chain is not calibrated; empty: not known; dB';
COMMENT ON COLUMN bands.counts IS 'false: the recorder clipped, or the reading is left out';
COMMENT ON COLUMN bands.line IS 'journal line of the reading';
COMMENT ON COLUMN bands.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- What somebody gave for one attribute after a run, 1 to 10 in quarter points: one row a rating. Covered ones are left out.
CREATE TABLE ratings (
    person text NOT NULL,
    seat text NOT NULL,
    run integer NOT NULL,
    code text NOT NULL,
    attribute text NOT NULL,
    score double precision NOT NULL,
    line integer NOT NULL,
    at timestamptz NOT NULL,
    typed_later boolean NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line),
    FOREIGN KEY (study, run) REFERENCES runs (study, run) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, code) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON ratings REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN ratings.person IS 'who rates';
COMMENT ON COLUMN ratings.seat IS 'where they sat';
COMMENT ON COLUMN ratings.run IS 'run that is rated';
COMMENT ON COLUMN ratings.code IS 'code of the run';
COMMENT ON COLUMN ratings.attribute IS 'what is rated';
COMMENT ON COLUMN ratings.score IS 'what they give; the reference code is 7; points';
COMMENT ON COLUMN ratings.line IS 'journal line';
COMMENT ON COLUMN ratings.at IS 'when it was stored; UTC';
COMMENT ON COLUMN ratings.typed_later IS 'whether it was logged on paper and typed in afterwards';
COMMENT ON COLUMN ratings.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- What somebody chose in one forced-choice trial: one row a trial. A set that is not at its planned end is left out.
CREATE TABLE choices (
    set integer NOT NULL,
    kind text NOT NULL CHECK (kind IN ('paired', 'triangle')),
    question text NOT NULL,
    segment_number integer,
    expected text,
    planned integer NOT NULL,
    trial integer NOT NULL,
    presented text NOT NULL,
    person text NOT NULL,
    place integer NOT NULL,
    chosen text NOT NULL,
    odd_found boolean,
    sight text NOT NULL CHECK (sight IN ('unseen', 'meter seen', 'order seen')),
    from_recordings boolean NOT NULL,
    clip_segment integer,
    clip_runs text,
    line integer NOT NULL,
    at timestamptz NOT NULL,
    typed_later boolean NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, line),
    FOREIGN KEY (study, segment_number) REFERENCES segments (study, segment_number) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, chosen) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, expected) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON choices REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN choices.set IS 'number of the set of trials';
COMMENT ON COLUMN choices.kind IS 'how it is put';
COMMENT ON COLUMN choices.question IS 'what is asked';
COMMENT ON COLUMN choices.segment_number IS 'segment it is asked on; empty: any';
COMMENT ON COLUMN choices.expected IS 'code named beforehand: one-sided; empty: two-sided, or a triangle';
COMMENT ON COLUMN choices.planned IS 'trials planned in the set';
COMMENT ON COLUMN choices.trial IS 'number of the trial in the set';
COMMENT ON COLUMN choices.presented IS 'the codes in the order they were presented';
COMMENT ON COLUMN choices.person IS 'who chose';
COMMENT ON COLUMN choices.place IS 'place chosen, from 1';
COMMENT ON COLUMN choices.chosen IS 'code at that place';
COMMENT ON COLUMN choices.odd_found IS 'whether the odd one was found; empty: no triangle';
COMMENT ON COLUMN choices.sight IS 'what the person could know of the answer; only unseen choices carry the ear''s word';
COMMENT ON COLUMN choices.from_recordings IS 'whether clips of recordings were played at home';
COMMENT ON COLUMN choices.clip_segment IS 'segment that the clips are of; empty: presented in the car';
COMMENT ON COLUMN choices.clip_runs IS 'runs that the clips are of, place by place; empty: presented in the car';
COMMENT ON COLUMN choices.line IS 'journal line';
COMMENT ON COLUMN choices.at IS 'when it was stored; UTC';
COMMENT ON COLUMN choices.typed_later IS 'whether it was logged on paper and typed in afterwards';
COMMENT ON COLUMN choices.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- The legs of the energy days: one row a leg, in typed order.
CREATE TABLE legs (
    leg integer NOT NULL,
    day integer NOT NULL,
    car text NOT NULL,
    code text NOT NULL,
    driver text,
    distance_km double precision NOT NULL,
    energy_kwh double precision,
    fuel_l double precision,
    fuel_us_gal double precision,
    fuel_imp_gal double precision,
    energy_step double precision,
    soc_start_percent double precision,
    soc_end_percent double precision,
    soc_step_percent double precision,
    usable_kwh double precision,
    tank_l double precision,
    per_100_km double precision NOT NULL,
    air_start_c double precision,
    air_end_c double precision,
    wind_m_s double precision,
    speed_kmh double precision,
    start text,
    minutes double precision,
    spoilt text,
    late_flag text,
    note text,
    doubt text,
    typed text,
    line integer NOT NULL,
    at timestamptz NOT NULL,
    typed_later boolean NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, leg),
    FOREIGN KEY (study, code) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON legs REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN legs.leg IS 'number, from 1';
COMMENT ON COLUMN legs.day IS 'number of the energy day';
COMMENT ON COLUMN legs.car IS 'the car';
COMMENT ON COLUMN legs.code IS 'code on the car';
COMMENT ON COLUMN legs.driver IS 'who drove';
COMMENT ON COLUMN legs.distance_km IS 'how far; km';
COMMENT ON COLUMN legs.energy_kwh IS 'energy by the car''s meter; kWh';
COMMENT ON COLUMN legs.fuel_l IS 'fuel, typed in litres; l';
COMMENT ON COLUMN legs.fuel_us_gal IS 'fuel, typed in US gallons; US gal';
COMMENT ON COLUMN legs.fuel_imp_gal IS 'fuel, typed in imperial gallons; imp gal';
COMMENT ON COLUMN legs.energy_step IS 'smallest step of the typed energy; as typed';
COMMENT ON COLUMN legs.soc_start_percent IS 'state of charge at the start; %';
COMMENT ON COLUMN legs.soc_end_percent IS 'state of charge at the end; %';
COMMENT ON COLUMN legs.soc_step_percent IS 'step of its display; %';
COMMENT ON COLUMN legs.usable_kwh IS 'usable capacity of the battery; kWh';
COMMENT ON COLUMN legs.tank_l IS 'usable litres of the tank; l';
COMMENT ON COLUMN legs.per_100_km IS 'energy over distance, derived; kWh or l per 100 km';
COMMENT ON COLUMN legs.air_start_c IS 'air at the start; degC';
COMMENT ON COLUMN legs.air_end_c IS 'air at the end; degC';
COMMENT ON COLUMN legs.wind_m_s IS 'mean wind; m/s';
COMMENT ON COLUMN legs.speed_kmh IS 'mean speed; km/h';
COMMENT ON COLUMN legs.start IS 'local time it began';
COMMENT ON COLUMN legs.minutes IS 'how long it took; min';
COMMENT ON COLUMN legs.spoilt IS 'what spoilt it, where it is left out; empty: it counts';
COMMENT ON COLUMN legs.late_flag IS 'what spoilt it, where the flag came too late to leave it out';
COMMENT ON COLUMN legs.note IS 'words about what spoilt it';
COMMENT ON COLUMN legs.doubt IS 'why it is doubtful';
COMMENT ON COLUMN legs.typed IS 'the line or row as it was typed';
COMMENT ON COLUMN legs.line IS 'journal line';
COMMENT ON COLUMN legs.at IS 'when it was typed; UTC';
COMMENT ON COLUMN legs.typed_later IS 'whether it was logged on paper and typed in afterwards';
COMMENT ON COLUMN legs.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- What each of the crew said before the key was opened: one row a person.
CREATE TABLE predictions (
    person text NOT NULL,
    feature text NOT NULL,
    sure integer NOT NULL,
    sure_percent integer,
    quieter text,
    would_pay boolean,
    basis text NOT NULL CHECK (basis IN ('sound', 'seen', 'guess')),
    words text,
    line integer NOT NULL,
    at timestamptz NOT NULL,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, person),
    FOREIGN KEY (study, feature) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, quieter) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON predictions REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN predictions.person IS 'who says it';
COMMENT ON COLUMN predictions.feature IS 'code held to have the hidden feature';
COMMENT ON COLUMN predictions.sure IS 'how sure, 1 (a guess) to 5 (certain)';
COMMENT ON COLUMN predictions.sure_percent IS 'how sure as it was said in per cent, 1..100; empty: it was said in steps';
COMMENT ON COLUMN predictions.quieter IS 'code held to be quieter; empty: no opinion';
COMMENT ON COLUMN predictions.would_pay IS 'whether they would pay for the feature; empty: no opinion';
COMMENT ON COLUMN predictions.basis IS 'what it rests on: sound, seen (something seen or overheard) or guess';
COMMENT ON COLUMN predictions.words IS 'more in their own words';
COMMENT ON COLUMN predictions.line IS 'journal line';
COMMENT ON COLUMN predictions.at IS 'when it was locked; UTC';
COMMENT ON COLUMN predictions.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- Which spec each code was, as the opened key says: one row a code.
CREATE TABLE key (
    code text NOT NULL,
    spec text NOT NULL,
    control boolean,
    mark text,
    verified boolean NOT NULL,
    mark_wanted text NOT NULL,
    earlier_mark text,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, code),
    FOREIGN KEY (study, code) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON key REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN key.code IS 'the code';
COMMENT ON COLUMN key.spec IS 'the custodian''s name of the spec';
COMMENT ON COLUMN key.control IS 'whether it is the control; empty: not given';
COMMENT ON COLUMN key.mark IS 'mark that two people read on the tyres, last; empty: not read';
COMMENT ON COLUMN key.verified IS 'whether the key gave the published commitment, where there was one, and agrees with all marks';
COMMENT ON COLUMN key.mark_wanted IS 'mark that is in the key';
COMMENT ON COLUMN key.earlier_mark IS 'mark that was read before and was not the same; empty: none';
COMMENT ON COLUMN key.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- The blind comparison: one row a code and class of segments, readings that count only. comparison.json has more.
CREATE TABLE comparisons (
    code text NOT NULL,
    reference text NOT NULL,
    class text NOT NULL CHECK (class IN ('all', 'steady', 'impact')),
    runs integer NOT NULL,
    segments integer NOT NULL,
    d double precision,
    se double precision,
    df double precision,
    lo95 double precision,
    hi95 double precision,
    verdict text,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, code, class),
    FOREIGN KEY (study, code) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, reference) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON comparisons REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN comparisons.code IS 'code that is compared';
COMMENT ON COLUMN comparisons.reference IS 'code it is compared with';
COMMENT ON COLUMN comparisons.class IS 'all segments, the steady ones or the impacts';
COMMENT ON COLUMN comparisons.runs IS 'runs of all codes that enter';
COMMENT ON COLUMN comparisons.segments IS 'segments that every code was read on';
COMMENT ON COLUMN comparisons.d IS 'code minus reference; empty: not comparable; dB';
COMMENT ON COLUMN comparisons.se IS 'its standard error; dB';
COMMENT ON COLUMN comparisons.df IS 'of the standard error; degrees of freedom';
COMMENT ON COLUMN comparisons.lo95 IS 'lower end of its 95 % interval; dB';
COMMENT ON COLUMN comparisons.hi95 IS 'upper end of its 95 % interval; dB';
COMMENT ON COLUMN comparisons.verdict IS 'the word';
COMMENT ON COLUMN comparisons.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- How well runs and readings repeated: one row a class of segments or kind of surface, without floor and prior.
CREATE TABLE repeatability (
    scatter_of text NOT NULL,
    is_kind boolean NOT NULL,
    nu_run double precision NOT NULL,
    s_run double precision,
    kbar double precision NOT NULL,
    nu_e double precision NOT NULL,
    s_e double precision,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, scatter_of, is_kind)
);
CREATE TRIGGER of_this_study AFTER INSERT ON repeatability REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN repeatability.scatter_of IS 'all, steady, impact, ring, or a kind of surface';
COMMENT ON COLUMN repeatability.is_kind IS 'whether it is a kind of surface';
COMMENT ON COLUMN repeatability.nu_run IS 'of s_run; degrees of freedom';
COMMENT ON COLUMN repeatability.s_run IS 'run-to-run standard deviation of the run means; empty: no degrees of freedom; dB';
COMMENT ON COLUMN repeatability.kbar IS 'of the reading variance that enters a run mean; share';
COMMENT ON COLUMN repeatability.nu_e IS 'of s_e; degrees of freedom';
COMMENT ON COLUMN repeatability.s_e IS 'standard deviation of a reading about its run and segment; empty: no degrees of freedom; dB';
COMMENT ON COLUMN repeatability.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- What each segment gave over the whole study: one row a segment.
CREATE TABLE segment_yield (
    segment_number integer NOT NULL,
    taken integer NOT NULL,
    counted integer NOT NULL,
    missed integer NOT NULL,
    seconds double precision NOT NULL,
    nu double precision NOT NULL,
    sd_db double precision,
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, segment_number),
    FOREIGN KEY (study, segment_number) REFERENCES segments (study, segment_number) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON segment_yield REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN segment_yield.segment_number IS 'place in the route, from 1';
COMMENT ON COLUMN segment_yield.taken IS 'readings taken';
COMMENT ON COLUMN segment_yield.counted IS 'of these, readings that count';
COMMENT ON COLUMN segment_yield.missed IS 'passages without a reading, in runs that have ended';
COMMENT ON COLUMN segment_yield.seconds IS 'how long a run stays on it; s';
COMMENT ON COLUMN segment_yield.nu IS 'of sd_db; degrees of freedom';
COMMENT ON COLUMN segment_yield.sd_db IS 'standard deviation of a reading on it, what a whole run was off taken away; empty: no degrees of freedom; dB';
COMMENT ON COLUMN segment_yield.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

-- What the study says: one row a line of a verdict, for every code against the reference.
CREATE TABLE verdict (
    question text NOT NULL,
    against text NOT NULL,
    line text NOT NULL CHECK (line IN ('meter', 'ring', 'ear', 'worth')),
    word text NOT NULL,
    reason text NOT NULL,
    hangs_on text,
    looks integer,
    d double precision,
    lo95 double precision,
    hi95 double precision,
    p double precision,
    p_tost double precision,
    alpha double precision,
    lo double precision,
    hi double precision,
    left_out integer,
    key text CHECK (key IN ('not open', 'holds', 'failed')),
    study text NOT NULL REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (study, question, against, line),
    FOREIGN KEY (study, question) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED,
    FOREIGN KEY (study, against) REFERENCES codes (study, code) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_this_study AFTER INSERT ON verdict REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();
COMMENT ON COLUMN verdict.question IS 'code that is asked about';
COMMENT ON COLUMN verdict.against IS 'code it is held against';
COMMENT ON COLUMN verdict.line IS 'which line of the verdict';
COMMENT ON COLUMN verdict.word IS 'the word';
COMMENT ON COLUMN verdict.reason IS 'what it rests on';
COMMENT ON COLUMN verdict.hangs_on IS 'single changes that give another word; empty: none of those tried, or not asked of this line';
COMMENT ON COLUMN verdict.looks IS 'how often the order was lengthened after a comparison could be seen; empty: not of the meter';
COMMENT ON COLUMN verdict.d IS 'code minus reference; empty: not of the meter, or not known; dB';
COMMENT ON COLUMN verdict.lo95 IS 'lower end of its 95 % interval; dB';
COMMENT ON COLUMN verdict.hi95 IS 'upper end of its 95 % interval; dB';
COMMENT ON COLUMN verdict.p IS 'p of the difference, allowing for all comparisons asked at once; empty: none before the plan''s end; probability';
COMMENT ON COLUMN verdict.p_tost IS 'p of equivalence, likewise; probability';
COMMENT ON COLUMN verdict.alpha IS 'level that p has to stay below; probability';
COMMENT ON COLUMN verdict.lo IS 'lower end of the interval that agrees with the word; dB';
COMMENT ON COLUMN verdict.hi IS 'upper end of the interval that agrees with the word; dB';
COMMENT ON COLUMN verdict.left_out IS 'readings of the two codes that are left out of the clean result';
COMMENT ON COLUMN verdict.key IS 'what the checks of the key found';
COMMENT ON COLUMN verdict.study IS 'which study: hash of its journal''s first line, 64 hex digits, the same in every row of an export';

