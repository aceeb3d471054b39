#!/usr/bin/env bash
# Compiles the engine for WebAssembly: engine.wasm in the folder OUT. Lua, cJSON and libmd
# are compiled in from Debian's source packages of the versions installed here, fetched
# into OUT when they are not there yet.
#
# usage: build_wasm.sh SOURCE_DIR OUT
set -euo pipefail
source=$(realpath "$1")
mkdir -p "$2"
out=$(realpath "$2")
page=$source/engine/page/wasm

# The source of a package, of the version that its development files are installed in.
fetch() { # PACKAGE INSTALLED
    local version folder=$out/sources/$1
    version=$(dpkg-query -W -f='${source:Version}' "$2")
    [ "$(cat "$folder/.version" 2>/dev/null)" != "$version" ] || return 0
    rm -rf "$folder" "$out/fetch"
    mkdir -p "$out/fetch/lists/partial" "$out/sources"
    local suites="bookworm bookworm-updates"
    printf 'deb-src http://deb.debian.org/debian %s main\n' $suites >"$out/fetch/sources.list"
    printf 'deb-src http://deb.debian.org/debian-security bookworm-security main\n' \
        >>"$out/fetch/sources.list"
    local options=(-qq -o "Dir::Etc::SourceList=$out/fetch/sources.list"
        -o Dir::Etc::SourceParts=/dev/null -o "Dir::State::Lists=$out/fetch/lists"
        -o Dir::Cache::pkgcache= -o Dir::Cache::srcpkgcache= -o APT::Sandbox::User=root)
    (cd "$out/fetch" && apt-get "${options[@]}" update \
        && apt-get "${options[@]}" source "$1=$version" >fetched 2>&1) \
        || { cat "$out/fetch/fetched" >&2; exit 1; }
    mv "$(find "$out/fetch" -maxdepth 1 -type d -name "$1-*")" "$folder"
    echo "$version" >"$folder/.version"
    rm -rf "$out/fetch"
}
fetch lua5.4 liblua5.4-dev
fetch cjson libcjson-dev
fetch libmd libmd-dev
lua=$out/sources/lua5.4/src cjson=$out/sources/cjson md=$out/sources/libmd
mkdir -p "$out/headers/cjson" "$out/objects"
cp "$cjson/cJSON.h" "$out/headers/cjson/"

flags=(--target=wasm32-wasi -Os -std=c11 -D_DEFAULT_SOURCE -DNDEBUG -DEAVEMARK_HEAP_MB=32
    -mexception-handling -mllvm -wasm-enable-sjlj -mllvm -exception-model=wasm
    -D_WASI_EMULATED_SIGNAL -D_WASI_EMULATED_PROCESS_CLOCKS
    -I"$source/engine" -isystem "$page/include" -isystem "$lua" -isystem "$out/headers"
    -isystem "$md/include")
ours=("$page"/*.c)
for room in interface base job profile sandbox trade draw judge law ask check prove report; do
    ours+=("$source/engine/$room"/*.c)
done
theirs=("$cjson/cJSON.c" "$md/src/sha2.c")
# Of Lua the machine and the libraries that the sandbox takes in.
for unit in lapi lauxlib lbaselib lcode lctype ldebug ldo ldump lfunc lgc llex lmathlib lmem \
    lobject lopcodes lparser lstate lstring lstrlib ltable ltablib ltm lundump lvm lzio; do
    theirs+=("$lua/$unit.c")
done

# An object for each unit, made anew when it or any header is newer.
newest=$(find "$source/engine" -name '*.h' -newer "$out/engine.wasm" -print -quit 2>/dev/null || echo all)
jobs=()
objects=()
for unit in "${ours[@]}" "${theirs[@]}"; do
    case $unit in
    */base/big_pages.c | */base/home_folder.c | */base/folder_walk.c | */base/part.c) continue ;; # no_system.c stands in for them
    esac
    object=$out/objects/$(echo "${unit#"$source"/}" | tr '/' '_').o
    objects+=("$object")
    [ -z "$newest" ] && [ "$object" -nt "$unit" ] || jobs+=("$unit" "$object")
done
[ ${#jobs[@]} -eq 0 ] || printf '%s\0' "${jobs[@]}" | xargs -0 -P"$(nproc)" -n2 bash -c '
    unit=$1 object=$2; shift 2
    clang '"$(printf '%q ' "${flags[@]}")"' -Wno-unused-command-line-argument -c "$unit" -o "$object"' _

clang --target=wasm32-wasi -mexec-model=reactor -Os "${objects[@]}" -o "$out/engine.wasm" \
    -lwasi-emulated-signal -lwasi-emulated-process-clocks \
    -Wl,--strip-all -Wl,--gc-sections -Wl,-z,stack-size=1048576 \
    -Wl,--initial-memory=469762048 -Wl,--max-memory=469762048
