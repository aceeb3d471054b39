#!/usr/bin/env bash
# run.sh [SECONDS] [TARGET] - fuzzes each target for so long (60), all of them or one
# (cases, draft, interview, job, lines, page, profile, rules, shop, words), as many at once as there are
# cores. Needs clang-14 and libclang-rt-14-dev.
#
# Inputs found worth keeping stay in build-fuzz/corpus/TARGET for the next run.
# One that breaks something is written to build-fuzz/found/TARGET and ends that
# target with a failure: mend it, then keep the input, under a name that says
# what it broke, in tests/fuzz/regressions/TARGET, which ctest plays.
#
# EAVEMARK_FUZZ_BUILD names another folder to build in.
set -euo pipefail
cd "$(dirname "$0")/../.."
seconds=${1:-60}
targets=${2:-cases draft interview job lines page profile rules shop words}
build=${EAVEMARK_FUZZ_BUILD:-build-fuzz}
command -v clang-14 >/dev/null || bash .ci/packages.sh clang-14 libclang-rt-14-dev

CC=clang-14 cmake -S . -B "$build" -DEAVEMARK_FUZZ=ON -DEAVEMARK_SANITIZE=ON \
    -DCMAKE_C_FLAGS=-gdwarf-4 >/dev/null
# shellcheck disable=SC2086
cmake --build "$build" --target $(printf 'fuzz_%s ' $targets) >/dev/null

# The corpus to begin with: what the tree has of each kind.
seed() {
    local corpus=$1
    shift
    for file in "$@"; do
        if test -f "$file"; then
            cp "$file" "$corpus/$(tr / _ <<<"$file")"
        fi
    done
}

# The attacks of one line, a file each.
one_line_attacks() {
    awk -v corpus="$1" '/^[a-z]/ { name = $1; sub(":", "", name); loading = $2 == "loading," }
        /^    / && loading { print substr($0, 5) >(corpus "/attack_" name ".lua") }
        /^    / && !loading { printf "rule \"attack.%s\" { title = \"x\", stage = \"final\", mend = \"x\",\n" \
                  "  judge = function(job, figure)\n%s\n  end }\n", name, $0 >(corpus "/attack_" name ".lua") }' \
        tests/attacks/one_line.attacks
}

# Words of the languages, so that the fuzzer need not spell them out.
words() {
    case $1 in
    job | lines | page) grep -ohE '"[a-z_]+"' rules/fields.lua examples/*/job.json ;;
    profile) grep -ohE '"[a-z_.]+"|\b[a-z_]+ =' jurisdictions/model/irc/layers.lua tests/support/small_law.c ;;
    rules) grep -ohE '"[a-z_.]+"|\b[a-z_]+\(' rules/layers.lua rules/deck.lua tests/support/small_law.c ;;
    cases) grep -ohE '"[a-z_.]+"|\b[a-z_]+ =' tests/fuzz/seeds/cases/county.lua tests/support/small_law.c ;;
    shop) grep -ohE '"[a-z_]+"' rules/fields.lua tests/checks/tear_off.shop.json && echo '==' ;;
    draft) printf '%s\n' 'eavemark draft 1, begun from nothing' ', begun from 2 bytes, ' ;;
    interview) cut -f 2 tests/checks/new.answers ;;
    words) printf '%s\n' '" in "' '" deg"' '" degrees"' '" %"' ;;
    esac | tr -d '"' | sort -u | sed 's/.*/"&"/'
}

fuzz() {
    local target=$1
    local corpus=$build/corpus/$target found=$build/found/$target status=0
    mkdir -p "$corpus" "$found"
    case $target in
    job | lines) seed "$corpus" examples/*/*.json tests/schema/bad/*.json rules/cases/*.json ;;
    cases) seed "$corpus" tests/attacks/cases/*.lua jurisdictions/*/*.cases.lua ;;
    profile) seed "$corpus" jurisdictions/*.lua jurisdictions/*/*.lua ;;
    rules) seed "$corpus" rules/*.lua rules/cases/*.lua tests/attacks/*.lua
        one_line_attacks "$corpus" ;;
    esac
    seed "$corpus" "tests/fuzz/seeds/$target"/* "tests/fuzz/regressions/$target"/*
    words "$target" >"$build/$target.dict"
    "$build/tests/fuzz_$target" -max_total_time="$seconds" -timeout=60 \
        -rss_limit_mb=4096 -max_len=16384 -close_fd_mask=3 -dict="$build/$target.dict" \
        -artifact_prefix="$found/" -print_final_stats=1 "$corpus" \
        2>"$build/$target.log" || status=1
    echo "fuzzed $target for $seconds s: $(grep -o 'number_of_executed_units: [0-9]*' "$build/$target.log")"
    [ "$status" = 0 ] || tail -n 30 "$build/$target.log"
    return "$status"
}

status=0 running=0
cores=$(nproc)
for target in $targets; do
    if [ "$running" -ge "$cores" ]; then
        wait -n || status=1
        running=$((running - 1))
    fi
    fuzz "$target" &
    running=$((running + 1))
done
while [ "$running" -gt 0 ]; do
    wait -n || status=1
    running=$((running - 1))
done
exit "$status"
