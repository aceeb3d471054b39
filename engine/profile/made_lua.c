#include "profile/made.h"

#include <lua.h>

#include <inttypes.h>
#include <stdio.h>
#include <string.h>

enum { KEY_DIGITS = 16, DIGEST_DIGITS = 64, LINE_BYTES = KEY_DIGITS + 1 + DIGEST_DIGITS + 1 };

static bool is_by_this_lua(const struct pack *pack)
{
    struct packed_file by;
    return pack_find(pack, MADE_BY, &by) && by.length == strlen(lua_ident)
           && memcmp(by.bytes, lua_ident, by.length) == 0;
}

bool made_find(const struct source *source, const char *folder, struct packed_file *made)
{
    char path[256];
    const struct pack pack = home_files_made();
    const int length = snprintf(path, sizeof(path), "%s/%s", folder, source->path);
    return source->packed && length > 0 && (size_t)length < sizeof(path) && is_by_this_lua(&pack)
           && pack_find(&pack, path, made);
}

bool made_of_home(const char *home, const char *name, struct packed_file *made)
{
    const struct pack pack = home_files_made();
    return home_files_inside(home) && is_by_this_lua(&pack) && pack_find(&pack, name, made);
}

/* FNV-1a. That two lists of one build have two keys is seen to when they are made. */
uint64_t made_key(const struct sources *sources)
{
    uint64_t key = UINT64_C(14695981039346656037);
    for (const struct source *s = sources->first; s != NULL; s = s->next)
        for (const char *c = s->path;; c++) {
            key = (key ^ (unsigned char)*c) * UINT64_C(1099511628211);
            if (*c == '\0')
                break;
        }
    return key;
}

bool made_fingerprint(const struct sources *sources, char out[65])
{
    struct packed_file lines;
    const struct pack pack = home_files_made();
    for (const struct source *s = sources->first; s != NULL; s = s->next)
        if (!s->packed)
            return false;
    if (!pack_find(&pack, MADE_FINGERPRINTS, &lines))
        return false;
    char key[KEY_DIGITS + 1];
    snprintf(key, sizeof(key), "%016" PRIx64, made_key(sources));
    for (size_t at = 0; at + LINE_BYTES <= lines.length; at += LINE_BYTES)
        if (memcmp(lines.bytes + at, key, KEY_DIGITS) == 0) {
            memcpy(out, lines.bytes + at + KEY_DIGITS + 1, DIGEST_DIGITS);
            out[DIGEST_DIGITS] = '\0';
            return true;
        }
    return false;
}
