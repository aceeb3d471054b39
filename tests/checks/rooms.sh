#!/bin/sh
# rooms.sh SOURCE_DIR - which room may know of which, held against the files.
# Prints a line per breach; the exit status says whether there was one.
set -eu
cd "$1"
breaches=$(mktemp)
trap 'rm -f "$breaches"' EXIT

say() {
    sed "s|\$| -- $1|" >>"$breaches"
}

# Lua stands behind the sandbox and the binders, and headers internal to them.
grep -rnE '#include [<"](lua|lauxlib|lualib)\.h' engine --include='*.[ch]' \
    | grep -vE '^engine/sandbox/' \
    | grep -vE '^engine/[a-z]+/(bind_[a-z_]+|[a-z_]+_lua)\.c:' \
    | grep -vE '^engine/judge/(judging|walk)\.h:|^engine/judge/bind_[a-z_]+\.h:' \
    | grep -vE '^engine/check/case_job\.h:' \
    | say 'only the sandbox and the binders may include Lua' || true

# Those internal headers stay among the binders.
grep -rnE '#include "(judge/judging|judge/walk|judge/bind_[a-z_]+|check/case_job)\.h"' engine --include='*.[ch]' \
    | grep -vE '^engine/judge/|^engine/check/[a-z_]+_lua\.c:' \
    | say 'a header internal to another room' || true

# The trade's arithmetic knows only itself, base and the system.
grep -rnE '#include "' engine/trade --include='*.[ch]' \
    | grep -vE '#include "(trade|base)/' \
    | say 'the trade may include only trade/ and base/' || true
grep -rnE '#include <(lua|lauxlib|lualib|cjson)' engine/trade engine/base --include='*.[ch]' \
    | say 'neither the trade nor base may know Lua or JSON' || true

# Drawings are made of numbers: no jobs, no rules.
grep -rnE '#include "' engine/draw --include='*.[ch]' \
    | grep -vE '#include "(draw|trade|base)/' \
    | say 'draw may include only draw/, trade/ and base/' || true
grep -rnE '#include <(lua|lauxlib|lualib|cjson)' engine/draw --include='*.[ch]' \
    | say 'draw may not know Lua or JSON' || true

# base knows nobody.
grep -rnE '#include "' engine/base --include='*.[ch]' \
    | grep -vE '#include "base/' \
    | say 'base may include only base/' || true

# The commands use the public interface, like anyone else.
grep -nE '#include ["<]' engine/main.c engine/command/*.[ch] \
    | grep -vE '#include "(include/eavemark\.h|base/|command/)' \
    | grep -vE '#include <(lua|lauxlib|lualib|cjson|sha)' \
    | grep -E '#include "' \
    | say 'a command may include only eavemark.h, base/ and command/' || true
grep -nE '#include <(lua|lauxlib|lualib|cjson|sha)' engine/main.c engine/command/*.[ch] \
    | say 'a command may not know Lua or JSON' || true

# Rules do not know of reports, nor reports of rules.
grep -rnE '#include "(sandbox|judge/(judge|rulebook|judging)|profile)[/.]' engine/report --include='*.[ch]' \
    | say 'a report knows findings only' || true

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
