#!/bin/sh
# rooms.sh [--write] SOURCE_DIR - which room may know of which (engine/rooms.tsv), held
# against the files. Prints a line per breach; the exit status says whether there was one.
# With --write the table of engine/README.md is made anew.
set -eu
write=
if [ "$1" = --write ]; then
    write=$1
    shift
fi
cd "$1"
breaches=$(mktemp)
trap 'rm -f "$breaches"' EXIT

say() {
    sed "s|\$| -- $1|" >>"$breaches"
}

# The table of rooms, without its head: room, files, holds, knows nothing of, may include,
# libraries.
rooms() {
    grep -v '^#' engine/rooms.tsv | tail -n +2
}

# README.md's rows, as the table has them.
rows() {
    rooms | awk -F'\t' '{ printf "| %s | %s | %s |\n", $2, $3, $4 }'
}

readme_rows() {
    sed -n '/^| room | holds/,/^$/p' engine/README.md | grep '^| `'
}

if [ "$write" = --write ]; then
    rows >"$breaches"
    sed -i -e '/^| room | holds/,/^$/{/^| `/d}' -e "/^|---|---|---|\$/{
        x; s/^/x/; /^x\$/{x; r $breaches
        b}; x}" engine/README.md
    : >"$breaches"
fi
[ "$(rows)" = "$(readme_rows)" ] \
    || echo 'engine/README.md: its table of rooms is not that of rooms.tsv' >>"$breaches"

# Every folder is a room, and every room is there.
for folder in engine/*/; do
    name=$(basename "$folder")
    rooms | grep -q "^$name/" || echo "$folder" | say 'no room of engine/rooms.tsv'
done

# A room includes itself and what its row allows; those come before it, so that no two
# rooms hang on each other.
above=
tab=$(printf '\t')
while IFS=$tab read -r room files holds not may libraries; do
    name=${room%/}
    own="engine/$name"
    case $name in
    command) own='engine/command engine/main.c' ;;
    esac
    for other in $may; do
        case " - $above" in *" $other "*) ;; *) echo "$other" | say "not above $room" ;; esac
    done
    above="$above $name "
    allowed=$(echo "$name $may" | tr ' ' '|')
    grep -rnE '#include "' $own --include='*.[ch]' \
        | grep -vE "#include \"($allowed)/" \
        | say "$room may not include it (engine/rooms.tsv)" || true
    case $libraries in *cjson*) ;; *)
        grep -rnE '#include <cjson' $own --include='*.[ch]' | say "$room may not know JSON" || true ;;
    esac
    case $libraries in *sha*) ;; *)
        grep -rnE '#include <sha' $own --include='*.[ch]' | say "$room may not know sha2.h" || true ;;
    esac
    case $libraries in
    *'lua all'*) ;;
    *lua*)
        # Behind the sandbox stand the binders, and the headers between them.
        grep -rnE '#include <(lua|lauxlib|lualib)\.h' $own --include='*.[ch]' \
            | grep -vE '^engine/[a-z]+/(bind_[a-z_]+\.[ch]|[a-z_]+_lua\.c):' \
            | grep -vE '^engine/(judge/(judging|walk)|profile/place_reading|prove/case_job)\.h:' \
            | say 'only the sandbox and the binders may include Lua' || true ;;
    *)
        grep -rnE '#include <(lua|lauxlib|lualib)\.h' $own --include='*.[ch]' \
            | say "$room may not know Lua" || true ;;
    esac
done <<TABLE
$(rooms)
TABLE

# Those headers between the binders stay there.
grep -rnE '#include "(judge/judging|judge/walk|judge/bind_[a-z_]+|profile/place_reading|prove/case_job)\.h"' engine --include='*.[ch]' \
    | grep -vE '^engine/judge/|^engine/(prove|profile)/[a-z_]+_lua\.c:' \
    | say 'a header internal to another room' || true

# What a pack handed over is called where the sandbox sees it.
grep -rn 'lua_rawgeti(.*LUA_REGISTRYINDEX' engine --include='*.[ch]' \
    | grep -v '^engine/sandbox/' | say 'take it with sandbox_push_kept' || true

# Rules do not know of reports, nor reports of rules.
grep -rnE '#include "judge/(judge|rulebook)[/.]' engine/report --include='*.[ch]' \
    | say 'a report knows findings only' || true

# Pages and drawings are made of findings and of plain numbers: which field of the job
# holds what is declared beside the rules (rules/drawings.lua). So they read no JSON, nor
# name a field that ends in its unit; the keys that they write are their own.
grep -rnE 'cJSON_(GetObjectItem|GetArray|HasObjectItem|ArrayForEach|GetStringValue|GetNumberValue|Is[A-Z]|Parse)' \
    engine/report engine/draw --include='*.[ch]' | say 'a report reads no job' || true
grep -rnE 'fields_(child|find)\([^)]*"' engine/report engine/draw --include='*.[ch]' \
    | say 'a report asks the catalogue for no field by its name' || true
measured=$(sed -nE 's/^field "(.*[].])?([A-Za-z0-9_]+)" \{ type = "[a-z]+", unit = "([A-Za-z0-9_]+)".*/\2 \3/p' \
    rules/fields.lua | awk 'substr($1, length($1) - length($2)) == "_" $2 { print "\"" $1 "\"" }' \
    | sort -u)
test -n "$measured" || { echo "no fields found in $1/rules/fields.lua"; exit 1; }
grep -rnF "$measured" engine/report engine/draw --include='*.[ch]' \
    | grep -v '^engine/report/[a-z_]*json\.c:' | say 'a report names no field of the job' || true

# No two headers share a name: an include is read as its file.
find engine -name '*.h' | sed 's:.*/::' | sort | uniq -d | say 'the name of two headers'

# The engine knows no rule by name: topics alone are words of the trade, ids are not.
ids=$(grep -hoE '^rule "[a-z0-9_]+\.[a-z0-9_]+"' rules/*.lua | sed 's/^rule //' | tr -d '"' | sort -u)
test -n "$ids" || { echo "no rules found in $1/rules"; exit 1; }
for id in $ids; do
    grep -rnF "\"$id\"" engine --include='*.[ch]' \
        | grep -vE ':[0-9]+: ?(/?\*|//)|/\*.*".*\*/' \
        | say "the engine names the rule $id" || true
done

# A line is read whole; in the catalogue of fields, one declaration is one line.
grep -rnE '^.{101,}$' engine rules --include='*.[ch]' --include='*.lua' \
    | grep -v '^rules/fields\.lua:' \
    | cut -c1-120 | say 'over 100 columns' || true

# Nothing here approves of anything or calls it compliant: the building
# department does. Comments are not printed. Allowed are names of documents that
# the trade calls so, each listed here.
allowed='approved_plans|approved plans'
find engine rules jurisdictions -type f \( -name '*.[ch]' -o -name '*.lua' -o -name '*.json' \) \
    | while read -r file; do
        sed -E -e "s/($allowed)//g" -e 's/^ \*.*//' -e 's/^ *--.*//' -e 's/ -- .*//' \
            -e 's:/\*[^*]*(\*/)?::g' "$file" \
            | grep -niE 'approved|compliant' | sed "s|^|$file:|" || true
    done | say 'a pre-check neither approves nor finds compliant'

# The top level holds what was agreed, and what is not kept.
for entry in * ; do
    case $entry in
    README.md | DEVELOPERS.md | CMakeLists.txt | engine | rules | jurisdictions | tests | examples) ;;
    build | build-*) ;;
    *) echo "$entry" | say 'not an agreed entry of the top level' ;;
    esac
done

sort -u "$breaches"
test ! -s "$breaches"
