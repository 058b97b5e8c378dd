#!/usr/bin/env bash
# Loads folders that 'fieldsession export STUDY --out FOLDER' wrote into the tables of schema.sql, each study in one transaction. A study that
# is there already comes in anew, so that the same folder can be loaded again; an older state of it is refused. The database is named by PGHOST,
# PGDATABASE and the like.
# usage: load.sh FOLDER...
set -euo pipefail

copy() { # TABLE FILE: the columns are taken by name from the header, so that an export of an older program comes in too
    local header
    IFS= read -r header < "$2"
    header=${header%$'\r'}
    echo "\\copy $1 (\"${header//,/\",\"}\") FROM '${2//\'/\'\'}' (FORMAT csv, HEADER MATCH)"
}

has_rows() { { read -r _ && read -r _; } < "$1"; }

script() {
    local folder csv table
    echo "\\set ON_ERROR_STOP on"
    echo "CREATE TEMP TABLE arriving_study (LIKE study) ON COMMIT DELETE ROWS;"
    echo "CREATE TEMP TABLE arriving_strands (LIKE strands) ON COMMIT DELETE ROWS;"
    echo "CREATE TEMP TABLE arriving_journal (body text) ON COMMIT DELETE ROWS;"
    for folder in "$@"; do
        echo "BEGIN;"
        copy arriving_study "$folder/study.csv"
        copy arriving_strands "$folder/strands.csv"
        if [ -f "$folder/journal.jsonl" ]; then
            echo "SELECT EXISTS (SELECT FROM study JOIN arriving_study USING (study)) AS known \\gset"
            echo "\\if :known"
            echo "\\copy arriving_journal FROM '${folder//\'/\'\'}/journal.jsonl' (FORMAT csv, QUOTE E'\\x01', DELIMITER E'\\x02')"
            echo "\\endif"
        fi
        echo "CALL take_out();"
        for csv in "$folder"/*.csv; do
            table=${csv##*/}
            if has_rows "$csv"; then copy "${table%.csv}" "$csv"; fi
        done
        echo "COMMIT;"
        echo "\\echo '${folder//\'/\'\'}: loaded'"
    done
}

# says each line on, and in the end how many there were
told() {
    local line lines=0
    while IFS= read -r line; do
        echo "$line" >&3
        lines=$((lines + 1))
    done
    echo "$lines"
}

[ $# -gt 0 ] || { echo "usage: load.sh FOLDER..." >&2; exit 2; }
for folder in "$@"; do
    [ -f "$folder/study.csv" ] || { echo "$folder: no export of a study; run 'fieldsession export STUDY --out $folder' first" >&2; exit 2; }
done

# A study that is refused leaves the others alone: the next script begins behind it.
exec 3>&1
refused=0 at=0
while [ "$at" -lt $# ]; do
    ended=0
    loaded=$(script "${@:at+1}" | { psql -q -X -t -f - || exit $?; } | told) || ended=$?
    at=$((at + loaded))
    [ "$ended" -ne 0 ] || break
    [ "$ended" -eq 3 ] || exit "$ended"
    folders=("${@:at+1:1}")
    echo "${folders[0]}: not loaded" >&2
    refused=1 at=$((at + 1))
done
exit "$refused"
