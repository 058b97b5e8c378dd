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

