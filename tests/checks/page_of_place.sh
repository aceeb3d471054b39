#!/usr/bin/env bash
# `eavemark page`: what a built page is told of a place, and what is refused. A few lines
# stand in for the built page, with the two marks that its build leaves.
#
# usage: page_of_place.sh PROGRAM SOURCE_FOLDER BUILD_FOLDER
set -u
program=$(realpath "$1") source=$(realpath "$2") build=$(realpath "$3")
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 2
failures=0
flunk() { failures=$((failures + 1)); echo "FAILED: $*"; }
version=$("$program" --version | cut -d' ' -f2)
stand_in() { # MARK
    printf '<html>\n<meta name="eavemark-home" content="%s %s">\n' "$version" "$1"
    printf '<script type="application/json" id="county">null</script>\nend\n'
}
stand_in "$(cat "$build/home.pack.mark")" >built.html

# What the page was told, as JSON.
told() { sed -n 's|.*id="county">\(.*\)</script>$|\1|p' "$1"; }
page() { "$program" page --from built.html "$@"; }
refuses() { # WORDS ARGUMENT...
    local words=$1 said
    shift
    rm -f out.html
    said=$(page -o out.html "$@" 2>&1) && flunk "$*: made a page"
    case $said in *"$words"*) ;; *) flunk "$*: says $said" ;; esac
    [ ! -e out.html ] || flunk "$*: left a file"
}

page -o plain.html --home "$source" || flunk "no page"
[ "$(told plain.html)" = '{"places":null,"place":null,"notice":null,"telephone":null,"files":{}}' ] \
    || flunk "a page of no place is told: $(told plain.html | head -c 300)"
[ "$(sed -n '1p;$p' plain.html)" = "$(printf '<html>\nend')" ] || flunk "the rest of the page is another"

page -o county.html --home "$source" --place example/dunmarrow \
    --notice 'Bring "two" copies </script><b>' --telephone '555-0100' || flunk "no page of a county"
told county.html | node -e '
    const told = JSON.parse(require("fs").readFileSync(0, "utf8"));
    if (told.places.places[0].title !== "Dunmarrow County, Harrow" || told.place !== "example/dunmarrow"
        || told.notice !== "Bring \"two\" copies </script><b>" || told.telephone !== "555-0100")
        process.exit(1);' || flunk "a county's page is told: $(told county.html | head -c 600)"
[ "$(grep -c '</script>' county.html)" = 1 ] || flunk "a notice can end its element"

# A home of one's own: what is otherwise goes along, whole, and nothing else.
cp -r "$source/rules" "$source/jurisdictions" . && mkdir home && mv rules jurisdictions home/
sed -i 's/"s. 11"/"s. 12"/' home/jurisdictions/example/dunmarrow.lua
page -o own.html --home home --place example/dunmarrow || flunk "no page of a home"
told own.html | node -e '
    const { readFileSync } = require("fs"), { files } = JSON.parse(readFileSync(0, "utf8"));
    const names = Object.keys(files);
    if (names.join() !== "jurisdictions/example/dunmarrow.lua"
        || files[names[0]] !== readFileSync("home/" + names[0], "utf8")) process.exit(1);' \
    || flunk "what the home says otherwise does not go along"
rm home/rules/wind.lua
refuses 'has no rules/wind.lua' --home home

refuses 'did you mean "example/dunmarrow"' --home "$source" --place example/dunmarow
refuses 'only followed' --home "$source" --place model/irc
refuses 'would overwrite' --home "$source" -o built.html
cp plain.html made.html
refuses 'already made for a place' --home "$source" --from county.html
stand_in 0000000000000000 >other.html
refuses 'build it again' --home "$source" --from other.html
refuses 'cannot be read' --home "$source" --from nowhere.html
"$program" page --from built.html --home "$source" 2>&1 | grep -q 'where to?' || flunk "writes without being told where"

[ $failures = 0 ] && echo "page_of_place: a page is told its place, its notice and what its home says"
exit $((failures > 0))
