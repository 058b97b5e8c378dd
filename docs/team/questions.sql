-- Questions of a test department (docs/team.md), the same text for PostgreSQL and for DuckDB: psql -e -f questions.sql

-- 1. Which studies are there, who drove, how many readings counted, how many were spoilt or missed?
SELECT plain(name) AS name, left(study, 8) AS study, plain(crew) AS crew, CAST(began AS date) AS day, finished,
       sum(counted) AS counted, sum(taken) - sum(counted) AS spoilt, sum(missed) AS missed
FROM study LEFT JOIN segment_yield USING (study)
GROUP BY study, name, crew, began, finished ORDER BY began, study;

-- 2. What was the verdict of each study, and with which interval?
SELECT plain(name) AS name, left(study, 8) AS study, c.code, c.class, c.d, c.lo95, c.hi95, v.word
FROM study JOIN comparisons AS c USING (study) LEFT JOIN verdict AS v USING (study)
WHERE c.class <> 'all' AND (v.line IS NULL OR (v.line = 'meter' AND v.question = c.code AND v.against = c.reference))
ORDER BY began, study, c.code, c.class;

-- 3. How well do runs and readings repeat over all finished studies? (pooled by degrees of freedom, as 'archive' does)
SELECT scatter_of, count(*) AS studies,
       sqrt(sum(nu_run * greatest(0, s_run * s_run - kbar * coalesce(s_e, 0) * coalesce(s_e, 0))) / nullif(sum(CASE WHEN s_run IS NOT NULL THEN nu_run END), 0)) AS run_sd_db,
       sum(CASE WHEN s_run IS NOT NULL THEN nu_run END) AS run_df,
       sqrt(sum(nu_e * s_e * s_e) / nullif(sum(CASE WHEN s_e IS NOT NULL THEN nu_e END), 0)) AS reading_sd_db,
       sum(CASE WHEN s_e IS NOT NULL THEN nu_e END) AS reading_df
FROM repeatability JOIN study USING (study)
WHERE finished AND NOT is_kind GROUP BY scatter_of ORDER BY scatter_of;

-- 4. The same on steady segments by crew, loop, car, meter and season: who, where and when repeats best?
SELECT told_by, told, count(*) AS studies,
       sqrt(sum(nu_run * greatest(0, s_run * s_run - kbar * coalesce(s_e, 0) * coalesce(s_e, 0))) / nullif(sum(CASE WHEN s_run IS NOT NULL THEN nu_run END), 0)) AS run_sd_db,
       sum(CASE WHEN s_run IS NOT NULL THEN nu_run END) AS run_df,
       sqrt(sum(nu_e * s_e * s_e) / nullif(sum(CASE WHEN s_e IS NOT NULL THEN nu_e END), 0)) AS reading_sd_db,
       sum(CASE WHEN s_e IS NOT NULL THEN nu_e END) AS reading_df
FROM repeatability JOIN (
    SELECT study, 'crew' AS told_by, plain(crew) AS told FROM study WHERE finished
    UNION ALL SELECT study, 'loop', plain(loop) FROM study WHERE finished
    UNION ALL SELECT study, 'car', coalesce(plain(car_facts), 'not told') FROM study WHERE finished
    UNION ALL SELECT study, 'meter', coalesce(plain(meter), 'not told') FROM study WHERE finished
    UNION ALL SELECT study, 'season', CASE WHEN extract(month FROM began) IN (12, 1, 2) THEN 'December to February' WHEN extract(month FROM began) IN (3, 4, 5) THEN 'March to May'
        WHEN extract(month FROM began) IN (6, 7, 8) THEN 'June to August' ELSE 'September to November' END FROM study WHERE finished
) AS groups USING (study)
WHERE scatter_of = 'steady' AND NOT is_kind GROUP BY told_by, told ORDER BY told_by, run_sd_db, told;

-- 5. Which segments tell most per minute, and which never? (information of a minute on it: readings that count, each worth 1 / variance; empty: never)
SELECT plain(s.segment) AS segment, plain(s.kind) AS kind, count(*) AS studies, sum(y.taken) AS taken,
       1 - CAST(sum(y.counted) AS double precision) / nullif(sum(y.taken), 0) AS spoilt_share,
       sqrt(sum(y.nu * y.sd_db * y.sd_db) / nullif(sum(CASE WHEN y.sd_db IS NOT NULL THEN y.nu END), 0)) AS reading_sd_db,
       60 * sum(y.counted) / nullif(sum((y.taken + y.missed) * y.seconds), 0)
           / nullif(sum(y.nu * y.sd_db * y.sd_db) / nullif(sum(CASE WHEN y.sd_db IS NOT NULL THEN y.nu END), 0), 0) AS per_db2_minute
FROM segment_yield AS y JOIN segments AS s USING (study, segment_number) JOIN study USING (study)
WHERE finished GROUP BY s.segment, s.kind ORDER BY per_db2_minute DESC NULLS LAST, s.segment;

-- 6. How often did each line of a verdict come out as each word?
SELECT line, plain(word) AS word, count(*) AS verdicts
FROM verdict JOIN study USING (study) WHERE finished GROUP BY line, plain(word) ORDER BY line, verdicts DESC, word;

-- 7. How well are predictions calibrated? (a candidate, any code but the control, was the right answer; stated as docs/blind.md puts steps into probability)
SELECT floor(stated * 10) / 10 AS stated_from, count(*) AS predictions, avg(stated) AS stated, avg(CASE WHEN hit THEN 1.0 ELSE 0.0 END) AS came_true
FROM (
    SELECT NOT k.control AS hit,
           CASE WHEN p.sure_percent IS NOT NULL THEN p.sure_percent / 100.0
                ELSE (s.specs - 1.0) / s.specs + (p.sure - 1) / 4.0 / s.specs END AS stated
    FROM predictions AS p JOIN key AS k ON k.study = p.study AND k.code = p.feature JOIN study AS s ON s.study = p.study
    WHERE k.control IS NOT NULL AND k.verified
) AS held GROUP BY floor(stated * 10) / 10 ORDER BY stated_from;

-- 8. Do the predictions of each person beat chance?
SELECT plain(person) AS person, count(*) AS predictions, sum(CASE WHEN k.control THEN 0 ELSE 1 END) AS hits, sum((s.specs - 1.0) / s.specs) AS hits_by_chance
FROM predictions AS p JOIN key AS k ON k.study = p.study AND k.code = p.feature JOIN study AS s ON s.study = p.study
WHERE k.control IS NOT NULL AND k.verified GROUP BY plain(person) ORDER BY plain(person);

-- 9. How does the meter's drift over a session go with the temperature of the air?
SELECT plain(meter) AS meter, count(*) AS sessions, avg(drift_db) AS drift_db, avg(air_c) AS air_c, CASE WHEN min(air_c) < max(air_c) THEN regr_slope(drift_db, air_c) END AS db_per_degree
FROM (
    SELECT s.study, s.session, s.drift_db, avg(w.air_c) AS air_c
    FROM sessions AS s JOIN weather AS w ON w.study = s.study AND w.at BETWEEN s.before_at AND s.after_at
    WHERE s.drift_db IS NOT NULL GROUP BY s.study, s.session, s.drift_db
) AS told JOIN study USING (study) GROUP BY plain(meter) ORDER BY meter;

-- 10. How does the reference's level on steady segments go with the temperature of the air? (days of one crew on one loop, about their own mean)
SELECT count(*) AS days, CASE WHEN min(air_c) < max(air_c) THEN regr_slope(level_db, air_c) END AS db_per_degree, CASE WHEN min(air_c) < max(air_c) THEN regr_r2(level_db, air_c) END AS r2
FROM (
    SELECT level_db - avg(level_db) OVER (PARTITION BY crew, loop) AS level_db, air_c - avg(air_c) OVER (PARTITION BY crew, loop) AS air_c
    FROM (
        SELECT study, crew, loop, level_db
        FROM (
            SELECT study, code, avg((low + high) / 2) AS level_db FROM readings WHERE class = 'steady' AND high IS NOT NULL AND spoilt IS NULL GROUP BY study, code
        ) AS by_code JOIN codes USING (study, code) JOIN study USING (study) WHERE place = 'R' AND finished
    ) AS levels JOIN (SELECT study, avg(air_c) AS air_c FROM weather WHERE air_c IS NOT NULL GROUP BY study) AS airs USING (study)
) AS centred;

-- 11. What spoils readings, and whose? (flags a hundred readings, by who drove)
SELECT plain(driver) AS driver, flag, count(*) AS flags, 100.0 * count(*) / sum(count(*)) OVER (PARTITION BY driver) AS of_readings_percent
FROM readings WHERE high IS NOT NULL GROUP BY driver, flag ORDER BY driver, flags DESC, flag;

-- 12. Which meters drift?
SELECT plain(name) AS name, left(study, 8) AS study, session, CAST(before_at AS date) AS day, drift_db, void
FROM sessions JOIN study USING (study) WHERE abs(drift_db) > 0.2 ORDER BY abs(drift_db) DESC, study LIMIT 100;

-- 13. How loud was each spec by kind of surface, where the key is open? (for looking: differences are made within a study, query 2)
SELECT plain(spec) AS spec, plain(kind) AS kind, count(*) AS readings, avg((low + high) / 2) AS mean_db
FROM readings JOIN key USING (study, code)
WHERE high IS NOT NULL AND spoilt IS NULL AND verified GROUP BY spec, kind ORDER BY spec, kind;
