/* Debian's Lua asks where its libraries lie; in a page there are none. */
#define DEB_HOST_MULTIARCH "wasm32-wasi"
