-- Questions of a test department, each with a query (docs/team.md). psql -f questions.sql

\echo 1. Which studies are there, who drove, how many readings counted, how many were spoilt or missed?
SELECT study, plan->>'question' AS question, min(start_at)::date AS day, count(DISTINCT run) AS runs,
       count(*) FILTER (WHERE high IS NOT NULL AND spoilt IS NULL) AS counted,
       count(*) FILTER (WHERE high IS NOT NULL AND spoilt IS NOT NULL) AS spoilt,
       count(*) FILTER (WHERE high IS NULL) AS missed
FROM study JOIN reading USING (study) JOIN run USING (study, run)
GROUP BY study ORDER BY day;

\echo 2. What was the verdict of each study, and with which interval?
SELECT study, c->>'code' AS code, k.class, (b->'overall'->>'d')::float8 AS d_db, (b->'overall'->>'lo95')::float8 AS lo95, (b->'overall'->>'hi95')::float8 AS hi95, b->>'verdict' AS verdict
FROM study, jsonb_array_elements(comparison->'comparisons') AS c,
     LATERAL (VALUES ('steady'), ('impact')) AS k(class), LATERAL (SELECT c->'classes'->k.class AS b) AS body
WHERE jsonb_typeof(b) = 'object' ORDER BY study, code, class;

\echo 3. How well do runs and readings repeat over all studies, by class? (pooled by degrees of freedom, as 'archive' does)
SELECT class, sqrt(sum(nu_run * greatest(0, s_run * s_run - kbar * s_e * s_e)) / nullif(sum(nu_run), 0)) AS run_sd_db, sum(nu_run) AS run_df,
       sqrt(sum(nu_e * s_e * s_e) / nullif(sum(nu_e), 0)) AS reading_sd_db, sum(nu_e) AS reading_df
FROM (
    SELECT k.class, (b->>'nu_run')::float8 AS nu_run, (b->>'s_run')::float8 AS s_run, (b->>'kbar')::float8 AS kbar, (b->>'nu_e')::float8 AS nu_e, (b->>'s_e')::float8 AS s_e
    FROM study, LATERAL (VALUES ('all'), ('steady'), ('impact')) AS k(class),
         LATERAL (SELECT comparison->'comparisons'->0->'classes'->k.class AS b) AS body
    WHERE jsonb_typeof(b) = 'object'
) AS scatter GROUP BY class ORDER BY class;

\echo 4. Mean level of each spec by kind of surface, where the key is open (levels of different days are not comparable; differences within a study are)
SELECT study, spec, kind, count(*) AS readings, avg(level_db) AS mean_db
FROM level JOIN key USING (study, code)
WHERE verified IS NOT FALSE GROUP BY study, spec, kind ORDER BY study, kind, spec;

\echo 5. What spoils readings, and whose?
SELECT driver, spoilt AS cause, count(*) AS readings
FROM reading JOIN run USING (study, run) WHERE spoilt IS NOT NULL AND high IS NOT NULL GROUP BY driver, spoilt ORDER BY readings DESC;

\echo 6. Which meters drift?
SELECT study, session, before_at::date AS day, drift_db, void FROM session WHERE abs(drift_db) > 0.2 ORDER BY abs(drift_db) DESC;

\echo 7. Do the predictions beat chance? (a candidate, any code but the control, was the right answer)
SELECT person, count(*) AS predictions, count(*) FILTER (WHERE NOT control) AS hits,
       sum(1 - 1.0 / (plan->>'specs')::int) AS expected_by_chance
FROM prediction JOIN key ON key.study = prediction.study AND key.code = prediction.feature JOIN study ON study.study = prediction.study
GROUP BY person ORDER BY person;

-- How often did each line of a verdict come out as each word?
SELECT line, word, count(*) AS verdicts FROM verdict GROUP BY line, word ORDER BY line, verdicts DESC, word;
