#!/usr/bin/env bash
# Loads folders that 'fieldsession export STUDY --out FOLDER' wrote into the tables of schema.sql. A study that is there
# already is replaced, so the same folder can be loaded again. The database is named by PGHOST, PGDATABASE and the like.
# usage: load.sh FOLDER...
set -euo pipefail

load() {
    local folder=$1
    {
        echo "\\set ON_ERROR_STOP on"
        echo "BEGIN;"
        document plan "$folder/plan.json"
        document comparison "$folder/comparison.json"
        echo "SELECT (SELECT body::jsonb->>'study' FROM plan_json) AS study \\gset"
        echo "DELETE FROM study WHERE study = :'study';"
        echo "INSERT INTO study (study, plan, comparison) SELECT :'study', (SELECT body::jsonb FROM plan_json), (SELECT body::jsonb FROM comparison_json);"
        table "$folder" segments segment "segment_number::int, plain(segment) AS segment, plain(kind) AS kind, class, speed_kmh::float8, length_m::float8"
        table "$folder" codes code "code, place"
        table "$folder" key key "code, plain(spec) AS spec, control::bool, verified::bool"
        table "$folder" sessions session "session::int, before_db::float8, after_db::float8, drift_db::float8, void::bool, before_at::timestamptz, after_at::timestamptz"
        table "$folder" runs run "run::int, code, session::int, plain(driver) AS driver, plain(car) AS car, strand, plain(doubt) AS doubt, start_at::timestamptz, end_at::timestamptz"
        table "$folder" readings reading "run::int, segment_number::int, take::int, code, plain(kind) AS kind, class, low::float8, high::float8, spoilt, minutes::float8, plain(car) AS car, slot, flag, flag_late::bool, plain(doubt) AS doubt, plain(note) AS note, at::timestamptz"
        table "$folder" predictions prediction "plain(person) AS person, feature, sure::int, basis"
        table "$folder" ratings rating "run::int, code, plain(person) AS person, plain(seat) AS seat, plain(attribute) AS attribute, score::float8"
        table "$folder" verdict verdict "question, against, line, plain(word) AS word, plain(reason) AS reason, plain(hangs_on) AS hangs_on, looks::int, d::float8, lo95::float8, hi95::float8, left_out::int, key"
        echo "COMMIT;"
    } | psql -q -X -f -
}

# a JSON file as one text; quoted so that COPY takes it as it is
document() {
    local name=$1 file=$2
    echo "CREATE TEMP TABLE ${name}_json (body text) ON COMMIT DROP;"
    [ -f "$file" ] || return 0
    echo "COPY ${name}_json FROM STDIN (FORMAT csv);"
    printf '"%s"\n' "$(sed 's/"/""/g' "$file")"
    echo "\\."
}

# The columns are taken by name from the header, so that columns added later do no harm. A table that the export leaves out is empty.
table() {
    local folder=$1 csv=$2 name=$3 columns=$4 header
    [ -f "$folder/$csv.csv" ] || return 0
    header=$(head -n 1 "$folder/$csv.csv" | tr -d '\r')
    echo "CREATE TEMP TABLE ${csv}_csv (\"$(sed 's/,/" text, "/g' <<< "$header")\" text) ON COMMIT DROP;"
    echo "COPY ${csv}_csv FROM STDIN (FORMAT csv, HEADER);"
    # COPY wants one kind of line end; inside of quotes there is none but spaces
    tr -d '\r' < "$folder/$csv.csv"
    echo "\\."
    local names
    names=$(sed -E 's/plain\(([a-z_]+)\) AS [a-z_]+/\1/g; s/::[a-z0-9]+//g' <<< "$columns")
    echo "INSERT INTO $name (study, $names) SELECT :'study', $columns FROM ${csv}_csv;"
}

[ $# -gt 0 ] || { echo "usage: load.sh FOLDER..." >&2; exit 2; }
for folder in "$@"; do
    [ -f "$folder/datapackage.json" ] || { echo "$folder: no export of a study; run 'fieldsession export STUDY --out $folder' first" >&2; exit 2; }
    load "$folder"
    echo "$folder: loaded"
done
