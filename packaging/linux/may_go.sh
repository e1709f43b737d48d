#!/bin/sh
# Say why the program's folder may not be taken away, and end with status 1 if so: what is open
# reads its parts from there as it goes, and what the user keeps there would go, too.
target=$1
[ -d "$target" ] || exit 0

program=$(CDPATH='' cd -P -- "$target" && pwd -P)/fullshell
for process in /proc/[0-9]*/exe; do
    if [ "$(readlink -- "$process" 2>/dev/null)" = "$program" ]; then
        echo "Fullshell is open; close it and run this again." >&2
        exit 1
    fi
done

kept=$(find "$target" '(' -name '*.logbook' -o -name '*.fullshell' -o -name settings.json ')' -print)
if [ -n "$kept" ]; then
    echo "This is yours and lies in the program's own folder; move it away first:" >&2
    echo "$kept" >&2
    exit 1
fi
