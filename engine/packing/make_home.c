/* make_home.c - the build's own program: lets the engine read the home that is packed into
 * it, and writes what comes of that as a pack of its own (profile/made.h).
 *
 *     make_home OUT
 *
 * What does not load is left out: whoever uses it is told what is wrong with it.
 */
#include "base/home_files.h"
#include "judge/bare_number.h"
#include "judge/fields_made.h"
#include "packing/leave_out.h"
#include "packing/pack_write.h"
#include "profile/made.h"
#include "profile/place_list_made.h"
#include "profile/place_made.h"
#include "profile/places.h"

#include <lauxlib.h>
#include <lua.h>

#include <inttypes.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Here nothing is made yet. */
struct pack home_files_made(void)
{
    return (struct pack){"", 0};
}

static const char FILE_OF_FIELDS[] = "rules/fields.lua";

enum { LAWS_MOST = 4096, DAYS_MOST = 4096, ANY_DAY = 20000101 };

struct making {
    struct pack_write out;
    struct arena arena;
    struct place_cache cache;
    struct sources rules; /* rules/NAME.lua, which every law rests on */
    struct strings ids;
    long days[DAYS_MOST]; /* on which some place changes, each once, in order */
    size_t day_count;
    bool fields_made, failed;
};

struct grown {
    char *bytes;
    size_t length;
};

static int add_bytes(lua_State *lua, const void *bytes, size_t length, void *data)
{
    struct grown *text = data;
    (void)lua;
    char *larger = realloc(text->bytes, text->length + length);
    if (larger == NULL)
        return 1;
    memcpy(larger + text->length, bytes, length);
    *text = (struct grown){larger, text->length + length};
    return 0;
}

static void write_file(struct making *making, const char *folder, const char *path,
                       const char *bytes, size_t length)
{
    char full[512];
    const int n = snprintf(full, sizeof(full), "%s%s%s", folder, *path == '\0' ? "" : "/", path);
    making->failed = making->failed || n < 0 || (size_t)n >= sizeof(full);
    pack_write_file(&making->out, full, bytes, length);
}

static const struct source *read_packed(struct making *making, const char *path,
                                        struct sources *sources)
{
    struct problems problems = {0};
    const struct source *source = home_read(HOME_INSIDE, path, &making->arena, sources, &problems);
    problems_free(&problems);
    return source;
}

/* With its lines and names: messages tell them. False when it does not load. */
static bool compile_text(struct making *making, const struct source *source, const char *text)
{
    struct grown code = {0};
    char name[256];
    snprintf(name, sizeof(name), "@%s", source->path);
    lua_State *lua = luaL_newstate();
    const bool loads = lua != NULL
                       && luaL_loadbufferx(lua, text, source->length, name, "t") == LUA_OK;
    if (loads && lua_dump(lua, add_bytes, &code, 0) == 0)
        write_file(making, MADE_CODE, source->path, code.bytes, code.length);
    else
        making->failed = making->failed || loads || lua == NULL;
    free(code.bytes);
    if (lua != NULL)
        lua_close(lua);
    return loads;
}

/* Without the fields, where they were made. */
static void compile(struct making *making, const struct source *source)
{
    struct bare_number bare;
    char *text = making->fields_made && strcmp(source->path, FILE_OF_FIELDS) == 0
                     ? arena_copy_n(&making->arena, source->text, source->length)
                     : NULL;
    if (bare_number_find(source->text, &bare))
        return;
    if (text != NULL)
        leave_out_fields(text);
    if (text == NULL || !compile_text(making, source, text))
        compile_text(making, source, source->text);
}

static void compile_rules(void *data, const char *path)
{
    struct making *making = data;
    const struct source *source = read_packed(making, path, &making->rules);
    if (source != NULL)
        compile(making, source);
}

/* A place's own rules: of no other law. */
static void compile_own(void *data, const char *path)
{
    struct making *making = data;
    struct sources sources = {0};
    const struct source *source = read_packed(making, path, &sources);
    if (source != NULL)
        compile(making, source);
}

/* What every law has alike. */
static void write_fields(struct making *making)
{
    struct problems problems = {0};
    struct rulebook *book = rulebook_load(HOME_INSIDE, NULL, &problems);
    size_t length = 0;
    char *bytes = book == NULL ? NULL : fields_made_write(&book->fields, FILE_OF_FIELDS, &length);
    if (bytes != NULL)
        write_file(making, MADE_FIELDS, FILE_OF_FIELDS, bytes, length);
    making->fields_made = bytes != NULL;
    free(bytes);
    rulebook_free(book);
    problems_free(&problems);
}

static void add_day(struct making *making, long day)
{
    size_t at = 0;
    while (at < making->day_count && making->days[at] < day)
        at++;
    if (making->day_count == DAYS_MOST || (at < making->day_count && making->days[at] == day))
        return;
    memmove(making->days + at + 1, making->days + at, (making->day_count - at) * sizeof(long));
    making->days[at] = day;
    making->day_count++;
}

static void write_place(struct making *making, const char *id)
{
    struct problems problems = {0};
    struct sources sources = {0};
    const struct place *place = place_cache_get(&making->cache, HOME_INSIDE, id, &making->arena,
                                                &sources, &problems);
    size_t length = 0;
    for (const struct block *b = place == NULL ? NULL : place->blocks; b != NULL; b = b->next)
        add_day(making, b->from == 0 ? ANY_DAY : b->from);
    char *bytes = place == NULL || problems.count > 0 ? NULL : place_made_write(place, &length);
    if (bytes != NULL)
        write_file(making, MADE_PLACE, place->source->path, bytes, length);
    free(bytes);
    problems_free(&problems);
}

static void write_place_list(struct making *making)
{
    struct place_list list;
    size_t length = 0;
    char *bytes = place_list_make(&making->cache, HOME_INSIDE, &list) == 0
                      ? place_made_write_as(&list, &PLACE_LIST_SHAPE, &length)
                      : NULL;
    if (bytes != NULL)
        write_file(making, MADE_PLACES, "", bytes, length);
    making->failed = making->failed || bytes == NULL;
    free(bytes);
    place_list_free(&list);
}

/* Fingerprints ------------------------------------------------------------------------- */

struct laws_seen {
    uint64_t keys[LAWS_MOST];
    char fingerprints[LAWS_MOST][65];
    size_t count;
};

/* Two lists of files under one key would take each other's fingerprint. */
static void note_law(struct making *making, struct laws_seen *seen, uint64_t key,
                     const char *fingerprint)
{
    for (size_t i = 0; i < seen->count; i++)
        if (seen->keys[i] == key) {
            if (strcmp(seen->fingerprints[i], fingerprint) != 0)
                making->failed = true;
            return;
        }
    if (seen->count == LAWS_MOST)
        return;
    seen->keys[seen->count] = key;
    memcpy(seen->fingerprints[seen->count++], fingerprint, 65);
}

/* The files that the law of this profile rests on, as law/law.c lists them. */
static void fingerprint(struct making *making, struct laws_seen *seen,
                        const struct profile *profile)
{
    struct sources all = {0}, own = {0};
    char digits[65];
    for (size_t i = 0; i < profile->rule_file_count; i++)
        read_packed(making, profile->rule_files[i], &own);
    if (!home_sources_add(&all, profile->sources.first, &making->arena)
        || !home_sources_add(&all, own.first, &making->arena)
        || !home_sources_add(&all, making->rules.first, &making->arena))
        return; /* the arena has failed */
    home_fingerprint(&all, digits);
    note_law(making, seen, made_key(&all), digits);
}

static struct profile *resolve(struct making *making, const char *id, long day)
{
    struct problems problems = {0};
    struct profile *profile = profile_resolve_from(&making->cache, HOME_INSIDE, id, day, "",
                                                   &problems);
    problems_free(&problems);
    return profile;
}

/* The law of each stretch of days; on some days there is none. */
static void fingerprint_place(struct making *making, struct laws_seen *seen, const char *id)
{
    long until = 0;
    for (size_t i = 0; i < making->day_count; i++) {
        struct profile *profile = making->days[i] < until ? NULL
                                                          : resolve(making, id, making->days[i]);
        if (profile == NULL)
            continue;
        fingerprint(making, seen, profile);
        until = profile->to == 0 ? LONG_MAX : profile->to;
        profile_free(profile);
    }
}

static void write_fingerprints(struct making *making)
{
    struct laws_seen *seen = calloc(1, sizeof(*seen));
    struct grown lines = {0};
    char line[128];
    if (seen == NULL) {
        making->failed = true;
        return;
    }
    for (size_t i = 0; i < making->ids.count; i++)
        fingerprint_place(making, seen, making->ids.items[i]);
    for (size_t i = 0; i < seen->count; i++) {
        const int n = snprintf(line, sizeof(line), "%016" PRIx64 " %s\n", seen->keys[i],
                               seen->fingerprints[i]);
        making->failed = add_bytes(NULL, line, (size_t)n, &lines) != 0 || making->failed;
    }
    write_file(making, MADE_FINGERPRINTS, "", lines.bytes, lines.length);
    free(lines.bytes);
    free(seen);
}

int main(int argc, char **argv)
{
    if (argc != 2) {
        fputs("usage: make_home OUT\n", stderr);
        return 2;
    }
    static struct making making;
    making.out.file = fopen(argv[1], "wb");
    if (making.out.file == NULL) {
        perror(argv[1]);
        return 1;
    }
    write_file(&making, MADE_BY, "", lua_ident, strlen(lua_ident));
    write_fields(&making);
    home_each(HOME_INSIDE, "rules", ".lua", 0, compile_rules, &making);
    home_each(HOME_INSIDE, "jurisdictions", ".rules.lua", 6, compile_own, &making);
    places_ids(HOME_INSIDE, &making.ids, &making.arena);
    for (size_t i = 0; i < making.ids.count; i++)
        write_place(&making, making.ids.items[i]);
    write_place_list(&making);
    write_fingerprints(&making);
    making.failed = making.failed || making.arena.failed;
    place_cache_free(&making.cache);
    arena_free(&making.arena);
    if (!pack_write_end(&making.out) || making.failed) {
        remove(argv[1]);
        return 1;
    }
    return 0;
}
