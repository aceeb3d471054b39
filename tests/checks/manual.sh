#!/bin/bash
# The manual page: rendered without a complaint, and as complete as the help.
#
# usage: manual.sh PROGRAM
set -u
program=$(realpath "$1") || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 2
export ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
failures=0
flunk() { failures=$((failures + 1)); echo "FAILED: $*"; }

"$program" manual >eavemark.1 || { echo "no manual"; exit 1; }
"$program" manual >again; cmp -s eavemark.1 again || flunk "two runs differ"

# What roff would take for a request must be one.
grep -nE "^[.']" eavemark.1 \
    | grep -vE '^[0-9]+:\.(TH|SH|SS|PP|TP|RS|RE|B|I|nf|fi)( |$)' && flunk "no request of the man macros"
grep -nE '^$' eavemark.1 && flunk "a blank line"
grep -nP '[^\x20-\x7e\n]' eavemark.1 && flunk "a character that is not plain"
[ "$(head -c 4 eavemark.1)" = '.TH ' ] || flunk "does not begin with a title"
for section in NAME SYNOPSIS DESCRIPTION COMMANDS ENVIRONMENT CAVEATS '"EXIT STATUS"'; do
    grep -qx "\.SH $section" eavemark.1 || flunk "no section $section"
done

if command -v groff >/dev/null; then
    groff -man -Tascii -P-cbou -ww eavemark.1 >page 2>complaints || flunk "groff refuses the page"
    [ ! -s complaints ] || flunk "groff complains: $(head -3 complaints)"
elif command -v mandoc >/dev/null; then
    mandoc -Tascii eavemark.1 2>complaints | sed 's/.\x08//g' >page || flunk "mandoc refuses the page"
else
    # Neither is here: what is left when requests and escapes are taken out.
    sed -E '/^\.(TH|RS|RE|nf|fi|PP|TP)/d; s/^\.(SH|SS|B|I) //; s/\\f.//g; s/\\-/-/g; s/\\e/\\/g' \
        eavemark.1 >page
fi
tr -s ' \n' '  ' <page >flat

# Every command and option that help knows, with its words.
for command in $("$program" --help | sed -n 's/^  \([a-z]*\) .*/\1/p'); do
    [ "$command" = help ] && continue
    grep -qF "eavemark $command" flat || flunk "no word of $command"
    "$program" help "$command" >help
    for option in $(sed -n 's/^  \(-., \)\{0,1\}\(--[a-z]*\).*/\2/p' help); do
        grep -qF -- "$option" flat || flunk "no word of $command $option"
    done
    example=$(sed -n 's/^example: //p' help)
    [ -n "$example" ] || flunk "help $command has no example"
    grep -qF -- "$(tr -s ' ' <<<"$example")" flat || flunk "the example of $command is missing: $example"
    about=$(sed -n '3p' help | cut -d' ' -f1-6)
    grep -qF -- "$about" flat || flunk "what $command is about is missing: $about"
    [ "$(wc -l <help)" -le 24 ] || flunk "help $command is longer than a screen"
    [ "$(wc -L <help)" -le 80 ] || flunk "help $command is wider than a screen"
done
grep -qiE 'approved|compliant' flat && flunk "the manual promises too much"
grep -qF 'pre-check, not a permit' flat || flunk "the manual does not say what it is not"

[ $failures -eq 0 ] && echo "manual: all well"
exit $((failures > 0))
