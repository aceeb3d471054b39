#!/bin/bash
# What shells offer after loading `eavemark completion bash`, and zsh's and fish's.
#
# usage: completion.sh PROGRAM SOURCE_FOLDER
set -u
program=$(realpath "$1") || exit 2
source=$(realpath "$2") || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 2
export EAVEMARK_HOME="$source"
export ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
failures=0
flunk() { failures=$((failures + 1)); echo "FAILED: $*"; echo "    offered: ${COMPREPLY[*]}"; }

"$program" completion bash >script || { echo "no script"; exit 1; }
bash -n script || { echo "the script is no bash"; exit 1; }
# Only `complete` may set compopt's options; here there is no line being edited.
compopt() { :; }
# shellcheck disable=SC1091
. ./script
complete -p eavemark >/dev/null || flunk "nothing is registered"

# offer WORD...: what is offered for the last word.
offer() {
    COMP_WORDS=("$program" "$@")
    COMP_CWORD=$#
    COMPREPLY=()
    _eavemark
}
has() { printf '%s\n' "${COMPREPLY[@]}" | grep -qxF -- "$1" || flunk "not offered: $1"; }
hasnt() { ! printf '%s\n' "${COMPREPLY[@]}" | grep -qxF -- "$1" || flunk "offered: $1"; }
only() { [ "${COMPREPLY[*]}" = "$*" ] || flunk "not only: $*"; }

# Every command of the program, and every option that its help names.
commands=$("$program" --help | sed -n 's/^  \([a-z]*\) .*/\1/p')
[ "$(echo "$commands" | wc -w)" -ge 9 ] || flunk "too few commands in the help"
offer ''
for command in $commands; do has "$command"; done
for command in $commands; do
    [ "$command" = help ] && continue
    offer "$command" --
    # Help writes an option as "  --name" or "  -o, --name".
    for option in $("$program" help "$command" | sed -n 's/^  \(-., \)\{0,1\}\(--[a-z]*\).*/\2/p'); do
        has "$option"
    done
    has --help
done
offer che; only check
offer help exp; only explain
offer no-such-command ''; only

offer check --stage ''; only permit deck dry-in final
offer check --stage d; only deck dry-in
offer check --stage = d; only deck dry-in
offer check --form j; only json
offer check --st; only --stage --strict
offer fields --schema --jurisdiction model/; has model/irc-2021; hasnt example/tamarack
offer check --jurisdiction = example/tam; only example/tamarack

# Names of this very home.
rule=$("$program" completion rules | head -1)
figure=$("$program" completion figures | head -1)
offer explain ''; has "$rule"; has "$figure"
offer explain "${rule%?}"; has "$rule"
offer proof ''; has "${rule%%.*}"; has example/tamarack
offer fields ''; has roof; hasnt "$rule"
offer completion ''; has bash; has topics

# Another home, named on the line.
mkdir -p "other home/rules" "other home/jurisdictions/example"
echo 'jurisdiction "example/elsewhere" {}' >"other home/jurisdictions/example/elsewhere.lua"
offer check --home "other home" --jurisdiction ''; only example/elsewhere
offer check --home = "other home" --jurisdiction ''; only example/elsewhere

# Files, spaces and all, where a job is wanted; nothing past the last word.
touch 'my job.json'; mkdir folder
offer check my; only 'my job.json'
offer check --stage deck my; only 'my job.json'
offer check --home fol; only folder
offer check --home my; only
offer explain "$rule" my; only 'my job.json'
offer compare a.json my; only 'my job.json'
offer compare a.json b.json my; only 'my job.json'
offer check job.json my; only
offer manual ''; only

# The lists behind the names.
"$program" completion jurisdictions >ids || flunk "no list of jurisdictions"
grep -qx 'model/irc-2021' ids || flunk "a jurisdiction is missing"
grep -q '\.' ids && flunk "a rules or cases file is taken for a place"
sort -C ids || flunk "the list is not sorted"
"$program" completion tcsh >out 2>err; [ $? -eq 2 ] || flunk "an unknown shell is not refused"
"$program" completion >out 2>err; [ $? -eq 2 ] || flunk "no shell at all is not refused"

# zsh and fish: the scripts of the same tables hold every command and option; each shell
# takes its own and, where it is installed, is asked what it offers.
for command in $commands; do
    [ "$command" = help ] || "$program" help "$command" \
        | sed -n "s/^  \(-., \)\{0,1\}--\([a-z]*\).*/$command \2/p;\$s/.*/$command help/p"
done | sort >options
"$program" completion zsh >script.zsh || flunk "no script for zsh"
"$program" completion fish >script.fish || flunk "no script for fish"
# "command option" of each line.
sed -nE "s/^        ([a-z]+)\) _arguments -s '--help.*/\1 help/p" script.zsh >of_zsh
awk '/^        [a-z]+\) _arguments -s/ { command = substr($1, 1, length($1) - 1) }
    match($0, /--[a-z]+[=[]/) && !/--help/ { print command, substr($0, RSTART + 2, RLENGTH - 3) }' script.zsh >>of_zsh
sed -nE "s/.*_eavemark_is ([a-z]+)' -l ([a-z]+).*/\1 \2/p" script.fish >of_fish
for shell in zsh fish; do
    sort "of_$shell" | cmp -s - options || flunk "$shell: other options: $(sort "of_$shell" | diff - options | head -3)"
    ! command -v $shell >/dev/null || $shell -n "script.$shell" || flunk "the script is no $shell"
done
for command in $commands; do
    grep -q "^    '$command:" script.zsh || flunk "zsh: no $command"
    grep -q -- " -a $command -d" script.fish || flunk "fish: no $command"
done
if command -v fish >/dev/null; then
    asked() {
        HOME=$work PATH=$(dirname "$program"):$PATH fish --no-config \
            -c 'source script.fish; complete -C $argv[1]' "$1" | cut -f1
    }
    fished() { # LINE OFFERED...
        local offered
        offered=$(asked "$1" | tr '\n' ' ')
        shift
        [ "$offered" = "$* " ] || flunk "fish: not only $*: $offered"
    }
    fished 'eavemark che' check
    fished 'eavemark check --stage d' deck dry-in
    fished 'eavemark check --jurisdiction example/tam' example/tamarack
    fished 'eavemark check --st' --stage --strict
    fished 'eavemark help exp' explain
    asked "eavemark explain ${rule%?}" | grep -qxF "$rule" || flunk "fish: no rule"
    fished 'eavemark check --home "other home" --jurisdiction e' example/elsewhere
fi
if command -v zsh >/dev/null; then
    # What the function hands to zsh's own ones, which need a line being edited.
    zshed() { # WORDS...
        PATH=$(dirname "$program"):$PATH zsh -f -c '
            compdef() { : }
            _describe() { print -rl -- ${(P)2} }
            compadd() { print -rl -- $names }
            _arguments() { print -rl -- "$@"; for spec; do
                [[ $spec != *:ID:* ]] || { opt_args=(--home "$home"); eval ${${spec##*:\{}%\}}; } done }
            home=$1; shift; words=("$@"); CURRENT=$#words
            source ./script.zsh; _eavemark' zsh "$@"
    }
    zshed '' eavemark '' | grep -q '^check:pre-check' || flunk "zsh: no commands"
    zshed '' eavemark check '' | grep -qxF -- \
        "--stage=[what is looked at then, and what was left undone before\\: permit, deck, dry-in, final]:STAGE:(permit deck dry-in final)" \
        || flunk "zsh: no stages"
    zshed '' eavemark check '' | grep -qx example/tamarack || flunk "zsh: no places"
    [ "$(zshed 'other home' eavemark check '' | grep -c '^example/')" = 1 ] || flunk "zsh: not the places of --home"
fi

[ $failures -eq 0 ] && echo "completion: all well"
exit $((failures > 0))
