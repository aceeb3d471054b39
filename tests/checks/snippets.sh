#!/bin/bash
# Every marked snippet of the guides, written and run as it stands, in a copy of
# the home. A document tells with HTML comments what its fenced blocks are:
#
#   <!-- file: PATH -->    the block is the whole file PATH of the home
#   <!-- append: PATH -->  the block is added to the end of PATH
#   <!-- output: COMMAND -->  the block is what COMMAND prints, where COMMAND
#                          begins with eavemark
#
# A block of ```console holds commands ("$ eavemark ...") and what they print;
# there a line "..." stands for any lines. Standard error counts as printed. The
# home of one document is that document's own; blocks run in order.
#
# usage: snippets.sh PROGRAM SOURCE_FOLDER
set -u
program=$(realpath "$1") || exit 2
source=$(realpath "$2") || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
unset EAVEMARK_HOME
export NO_COLOR=1 TERM=dumb ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
mkdir "$work/bin"
ln -s "$program" "$work/bin/eavemark"
PATH=$work/bin:$PATH
failures=0 ran=0

# A file as one text in which lines keep their bounds; as a pattern, its "..." are
# any lines and nothing else in it is special.
as_text() {
    sed 's/[ \t]*$//; s/^/\x01/; s/$/\x02/' "$1"
}
as_pattern() {
    sed 's/[ \t]*$//; s/[][\\*?]/\\&/g; /^\.\.\.$/{s/.*/*/;b}; s/^/\x01/; s/$/\x02/' "$1"
}

# Does what was printed match what was wanted?
matches() {
    local text pattern
    text=$(as_text "$1" | tr -d '\n')
    pattern=$(as_pattern "$2" | tr -d '\n')
    # shellcheck disable=SC2053
    [[ $text == $pattern ]]
}

# One command of a document, against what it is said to print.
try() {
    local where=$1 command=$2
    case $command in
    eavemark*) ;;
    *) return ;;
    esac
    ran=$((ran + 1))
    (cd "$work/home" && EAVEMARK_HOME=$work/home eval "$command") \
        >"$work/raw" 2>&1 </dev/null
    [ $? -ne 99 ] || { failures=$((failures + 1)); echo "FAILED: sanitizer: $command"; }
    sed "s|$work/home/||g; s/[ \t]*$//" "$work/raw" >"$work/got"
    matches "$work/got" "$work/wanted" && return
    failures=$((failures + 1))
    echo "FAILED: $where: $command"
    diff "$work/wanted" "$work/got" | head -30 | sed 's/^/    /'
}

# The lines of a console block: commands, and after each what it prints.
console() {
    local where=$1 command=
    : >"$work/wanted"
    while IFS= read -r line; do
        case $line in
        '$ '*)
            [ -z "$command" ] || try "$where" "$command"
            command=${line#\$ }
            : >"$work/wanted"
            ;;
        *) printf '%s\n' "$line" >>"$work/wanted" ;;
        esac
    done <"$work/block"
    [ -z "$command" ] || try "$where" "$command"
}

block() {
    local where=$1 language=$2 mark=$3
    case $mark in
    'file: '* | 'append: '*)
        local path=$work/home/${mark#*: }
        mkdir -p "$(dirname "$path")"
        case $mark in
        file:*) cp "$work/block" "$path" ;;
        *) cat "$work/block" >>"$path" ;;
        esac
        ran=$((ran + 1))
        ;;
    'output: '*)
        cp "$work/block" "$work/wanted"
        try "$where" "${mark#output: }"
        ;;
    *) [ "$language" != console ] || console "$where" ;;
    esac
}

document() {
    local name=$1 number=0 mark= inside= language= start=0
    rm -rf "$work/home"
    mkdir "$work/home"
    cp -r "$source/rules" "$source/jurisdictions" "$source/examples" "$work/home"
    while IFS= read -r line || [ -n "$line" ]; do
        number=$((number + 1))
        if [ -n "$inside" ] && [ "$line" = '```' ]; then
            inside=
            block "$name:$start" "$language" "$mark"
            mark=
        elif [ -n "$inside" ]; then
            printf '%s\n' "$line" >>"$work/block"
        elif [ "${line#\`\`\`}" != "$line" ]; then
            inside=yes language=${line#\`\`\`} start=$number
            : >"$work/block"
        elif [[ $line =~ ^\<!--\ ((file|append|output):\ .*)\ --\>$ ]]; then
            mark=${BASH_REMATCH[1]}
        fi
    done <"$source/$name"
    [ -z "$inside" ] || { failures=$((failures + 1)); echo "FAILED: $name: a block has no end"; }
}

for name in README.md DEVELOPERS.md rules/README.md jurisdictions/README.md engine/README.md; do
    before=$ran
    [ ! -f "$source/$name" ] || document "$name"
    case $name in
    rules/* | jurisdictions/*)
        [ $((ran - before)) -ge 10 ] || {
            failures=$((failures + 1))
            echo "FAILED: $name teaches by fewer than ten snippets that run"
        } ;;
    esac
done
echo "$ran snippets run, $failures failed"
[ "$failures" -eq 0 ]
