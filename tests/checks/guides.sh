#!/usr/bin/env bash
# Every type and key of a field, and every key of a place and of a figure, is told in the
# guides: in a row of a table, or in the example of the reference.
#
# usage: guides.sh SOURCE
set -u
cd "$1" || exit 1
failures=0

# The words of a C table of texts: from the line that names it to its end.
words_of() { # file name
  sed -n "/$2/,/};/p" "$1" | grep -oE '"[a-z_]+"' | tr -d '"' | sort -u
}

told() { # document, words on standard input, what they are
  local count=0
  while read -r word; do
    count=$((count + 1))
    grep -qE "^\|.*\`$word\`" "$1" && continue
    echo "FAILED: $1: no row tells the $2 \"$word\""
    failures=$((failures + 1))
  done
  [ "$count" -gt 5 ] || { echo "FAILED: no $2s found"; failures=$((failures + 1)); }
}

told rules/README.md "field type" < <(sed -n '/^} TYPES\[\] = {/,/^};/p' engine/job/fields.c \
  | grep -oE '= \{"[a-z_]+"' | grep -oE '[a-z_]+')
told rules/README.md "field key" < <(words_of engine/judge/declare_field_lua.c 'FIELD_KEYS\[\]')
told jurisdictions/README.md "place key" < <(words_of engine/profile/place_block_lua.c 'BLOCK_KEYS\[\]')
told jurisdictions/README.md "figure key" < <(words_of engine/profile/place_figure_lua.c 'FIGURE_KEYS\[\]')
exit $((failures > 0))
