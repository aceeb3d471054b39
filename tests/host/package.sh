#!/usr/bin/env bash
# What programs find of the library once it is installed: eavemark.pc, a static and a
# shared library with a soname, only eavemark_* in both. A C and a C++ program are built
# against the prefix and print the program's own report. The Debian package installs and
# goes again without leaving anything.
#
# usage: package.sh BUILD_FOLDER SOURCE_FOLDER C_COMPILER
set -euo pipefail
build=$(realpath "$1") source=$(realpath "$2") compiler=$3
folder=$(mktemp -d "${TMPDIR:-/tmp}/eavemark-package-XXXXXX")
trap 'rm -rf "$folder"' EXIT
cd "$folder"
unset EAVEMARK_HOME
flunk() { echo "FAILED: $*"; exit 1; }
version=$(sed -n 's/.*EAVEMARK_VERSION "\(.*\)"/\1/p' "$source/engine/include/eavemark.h")

cmake -S "$source" -B "$folder/configured" -DCMAKE_INSTALL_PREFIX="$folder/prefix" \
    -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=OFF >/dev/null
cmake --build configured --parallel 2 >built 2>&1 || { tail -5 built; flunk "it does not build"; }
cmake --install configured >/dev/null
PKG_CONFIG_PATH=$(dirname "$(find prefix -name eavemark.pc)")
export PKG_CONFIG_PATH
[ "$(pkg-config --modversion eavemark)" = "$version" ] || flunk "eavemark.pc: another version"
[ "$(prefix/bin/eavemark --version)" = "eavemark $version" ] || flunk "the program: another version"

shared=$(find prefix -name libeavemark.so) soname=libeavemark.so.${version%.*}
readelf -d "$shared" | grep -q "soname: \[$soname\]" || flunk "no soname $soname"
nm -D --defined-only "$shared" | awk '{print $3}' | sort -u >exported
grep -q '^eavemark_check$' exported || flunk "eavemark_check is not exported"
grep -v '^eavemark_' exported && flunk "the shared library exports these"

job=$source/examples/cross-gable/job.json status=0
prefix/bin/eavemark check --home "$source" "$job" >wanted || status=$?
program() { # program NAME LINK_FLAGS... -- COMPILER_FLAGS...: builds and runs a host
    local name=$1 own=0
    shift
    # shellcheck disable=SC2046
    "$compiler" $(pkg-config --cflags eavemark) -Wall -Wextra -Werror "${language[@]}" \
        "$source/tests/host/host.c" -x none "$@" -o "$name"
    LD_LIBRARY_PATH=$(dirname "$shared") "./$name" "$source" "$job" >"$name.report" || own=$?
    [ "$own" = "$status" ] && diff wanted "$name.report" || flunk "$name"
}
read -ra dynamic <<<"$(pkg-config --libs eavemark)"
read -ra fixed <<<"$(pkg-config --static --libs eavemark | sed "s|-leavemark|$(find "$folder/prefix" -name libeavemark.a)|")"
language=(-std=c11)
program c_shared "${dynamic[@]}"
program c_static "${fixed[@]}"
language=(-x c++ -std=c++11)
program cpp_shared "${dynamic[@]}"
program cpp_static "${fixed[@]}"
for notice in Lua cJSON libmd; do
    grep -q "^== $notice ==" prefix/share/doc/eavemark/NOTICES || flunk "no notice of $notice"
done

# Into a root of its own, with a package database of its own.
(cd configured && cpack -G DEB >packed 2>&1) || { tail -5 configured/packed; flunk "no package"; }
package=$(find configured -maxdepth 1 -name '*.deb')
mkdir -p root/var/lib/dpkg/{info,updates,triggers}
touch root/var/lib/dpkg/status root/var/lib/dpkg/available
own_dpkg() { dpkg --root="$folder/root" --force-depends --force-not-root --force-script-chrootless --log=/dev/null "$@" >said 2>&1 || { cat said; flunk "dpkg $*"; }; }
own_dpkg -i "$package"
root/usr/bin/eavemark check "$job" >packaged || true
diff wanted packaged || flunk "the packaged program says something else"
[ -e root/usr/share/man/man1/eavemark.1 ] && [ -e root/usr/share/bash-completion/completions/eavemark ] \
    && [ -e root/usr/share/zsh/site-functions/_eavemark ] \
    && [ -e root/usr/share/fish/vendor_completions.d/eavemark.fish ] \
    && [ -e root/usr/share/doc/eavemark/NOTICES ] || flunk "manual, completion or notices lack"
own_dpkg -r eavemark
left=$(find root -path root/var -prune -o \( -type f -o -type l \) -print)
[ -z "$left" ] || flunk "the package leaves $left"
echo "package: $(basename "$package"), $(wc -l <exported) names exported"
