#!/usr/bin/env bash
# readme.sh PROGRAM SOURCE_DIR: what the README says a command prints is what it
# prints. Each marked block is held against the command named in its mark, line
# by line; a line of three dots stands for any lines left out.
set -uo pipefail
program=$1 source=$2
cd "$source" || exit 1
mark=$(grep -n '^<!-- output of: eavemark ' README.md | head -n 1)
[ -n "$mark" ] || { echo "README.md marks no output" >&2; exit 1; }
command=${mark#*output of: eavemark }
command=${command% -->}
# shellcheck disable=SC2086  # the command's words are meant to be split
"$program" $command --home "$source" >"${TMPDIR:-/tmp}/readme-output.$$" 2>/dev/null
trap 'rm -f "${TMPDIR:-/tmp}/readme-output.$$"' EXIT
awk -v start="${mark%%:*}" -v output="${TMPDIR:-/tmp}/readme-output.$$" '
  function fail(what) { print "README.md:" NR ": " what > "/dev/stderr"; bad = 1; exit 1 }
  NR <= start || done { next }
  /^```text$/ { inside = 1; next }
  /^```$/ && inside { done = 1; next }
  inside && $0 == "..." { skipping = 1; next }
  inside {
    shown++
    while ((more = (getline line < output)) > 0) {
      # The last line names the fingerprint, which every rule edit changes.
      if (line == $0) break
      if (!skipping) fail("shows \"" $0 "\", but the command prints \"" line "\"")
    }
    if (more <= 0) fail("shows \"" $0 "\", which the command does not print there")
    skipping = 0
  }
  END { if (!bad && shown < 30) { print "README.md shows too little" > "/dev/stderr"; exit 1 } exit bad }
' README.md
