#!/usr/bin/env bash
# Puts the page together: one HTML file that asks for nothing.
#
# usage: build_page.sh SOURCE_DIR BUILD_DIR PROGRAM VERSION OUT
set -euo pipefail
source=$(realpath "$1") build=$(realpath "$2") program=$(realpath "$3") version=$4 out=$5
page=$source/engine/page
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# Modules in one: each without what joins it to the others.
for module in engine pointer dom store field screen jobs house check roof order county app; do
    awk '/^import / { skipping = 1 }
        !skipping { sub(/^export /, ""); print }
        skipping && /;$/ { skipping = 0 }' "$page/script/$module.js"
done >"$work/script"
cp "$page/page.css" "$work/style"
# The style of the engine's own pages, shown in frames.
"$program" check --home "$source" --form html "$source/examples/cross-gable/job.json" >"$work/report" || true
awk 'BEGIN { RS = "^$" } { sub(/.*<style>/, ""); sub(/<\/style>.*/, ""); printf "%s", $0 }' "$work/report" >"$work/sheet"
hash() { sha256sum "$1" | cut -c1-64 | sed 's/../\\x&/g' | xargs -0 printf '%b' | head -c 32 | base64 -w0; }
bash "$page/notices.sh" | sed -e 's/&/\&amp;/g' -e 's/</\&lt;/g' >"$work/notices"
gzip -9nc "$build/page/engine.wasm" | base64 -w0 >"$work/engine"
gzip -9nc "$build/home.pack" | base64 -w0 >"$work/home"
gzip -9nc "$build/home.made" | base64 -w0 >"$work/made"
awk -v work="$work" -v version="$version" -v script_hash="$(hash "$work/script")" \
    -v style_hash="$(hash "$work/style")" -v sheet_hash="$(hash "$work/sheet")" \
    -v facts="$page/facts.json" -v mark="$(cat "$build/home.pack.mark")" '
    function whole(file,   text, line, first) {
        first = 1
        while ((getline line < file) > 0) { text = text (first ? "" : "\n") line; first = 0 }
        close(file)
        return text
    }
    function put(mark, text,   at) {
        at = index($0, mark)
        if (at > 0) $0 = substr($0, 1, at - 1) text substr($0, at + length(mark))
    }
    {
        put("@SCRIPT_HASH@", script_hash); put("@STYLE_HASH@", style_hash)
        put("@SHEET_HASH@", sheet_hash); put("@VERSION@", version); put("@HOME_MARK@", mark)
        if (index($0, "@STYLE@")) put("@STYLE@", whole(work "/style") "\n")
        if (index($0, "@NOTICES@")) put("@NOTICES@", whole(work "/notices"))
        if (index($0, "@FACTS@")) put("@FACTS@", whole(facts))
        if (index($0, "@ENGINE@")) put("@ENGINE@", whole(work "/engine"))
        if (index($0, "@HOME@")) put("@HOME@", whole(work "/home"))
        if (index($0, "@MADE@")) put("@MADE@", whole(work "/made"))
        if (index($0, "@SCRIPT@")) put("@SCRIPT@", whole(work "/script") "\n")
        print
    }' "$page/page.html" >"$work/page"
size=$(stat -c %s "$work/page")
[ "$size" -le 1572864 ] || { echo "the page has $size bytes, more than 1.5 MB" >&2; exit 1; }
mv "$work/page" "$out"
echo "$out: $size bytes"
