#include "profile/place.h"
#include "profile/place_made.h"
#include "profile/place_reading.h"
#include "profile/place_traps.h"

#include "base/date.h"
#include "base/strings.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>
#include <lua.h>

#include <stdlib.h>
#include <string.h>

/* New entries go after those the block has: its parts come one by one. */
static void start_block(struct loading *loading, struct block *block)
{
    loading->block = block;
    loading->last = &block->entries;
    while (*loading->last != NULL)
        loading->last = &(*loading->last)->next;
    loading->last_way = &block->ways;
    while (*loading->last_way != NULL)
        loading->last_way = &(*loading->last_way)->next;
}

/* jurisdiction "id" { ... }: the second call, with the table. Upvalue: line. */
static int take_block(lua_State *lua)
{
    struct loading *loading = place_loading(lua);
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_settop(lua, 1);
    if (++loading->editions > PLACE_EDITIONS_MOST)
        return luaL_error(lua, "more than %d editions", PLACE_EDITIONS_MOST);
    struct block *block = place_keep(lua, 1, sizeof(*block));
    block->id = loading->id;
    block->line = (int)lua_tointeger(lua, lua_upvalueindex(1));
    start_block(loading, block);
    place_block_read(lua, 1);
    struct block **at = &loading->place->blocks;
    /* Blocks are kept by their first day, whatever their order in the file. */
    while (*at != NULL && (*at)->from <= block->from)
        at = &(*at)->next;
    block->next = *at;
    *at = block;
    return 0;
}

/* The first call, with the id; the line is asked for here, as the second may stand many
 * lines on. */
static int jurisdiction(lua_State *lua)
{
    struct loading *loading = place_loading(lua);
    const char *id = luaL_checkstring(lua, 1);
    if (strcmp(id, loading->id) != 0)
        return luaL_error(lua, "this file is \"%s\", but it says jurisdiction \"%s\"", loading->id,
                          id);
    lua_Debug about;
    lua_Integer line = 0;
    if (lua_getstack(lua, 1, &about) && lua_getinfo(lua, "l", &about))
        line = about.currentline;
    lua_pushinteger(lua, line);
    lua_pushcclosure(lua, take_block, 1);
    return 1;
}

/* All that a place's file may call. The same four words serve blocks' files and parts. */
static int define(lua_State *lua)
{
    lua_pushcfunction(lua, jurisdiction);
    sandbox_define(lua, "jurisdiction");
    lua_pushcfunction(lua, place_figures_of_part);
    sandbox_define(lua, "figures");
    figure_columns_define(lua);
    return 0;
}

/* By name, then file, so that a double is reported at the same place each time. */
static int entry_order(const void *a, const void *b)
{
    const struct entry *left = *(struct entry *const *)a, *right = *(struct entry *const *)b;
    const int order = strcmp(left->name, right->name);
    return order != 0 ? order : strcmp(left->file, right->file);
}

/* A table cannot name a figure twice, but a block and its parts may. */
static void find_doubles(struct loading *loading, const struct block *block)
{
    size_t count = 0;
    for (const struct entry *e = block->entries; e != NULL; e = e->next)
        count++;
    struct entry **sorted = arena_array(loading->arena, count + 1, sizeof(struct entry *));
    if (sorted == NULL)
        return;
    count = 0;
    for (struct entry *e = block->entries; e != NULL; e = e->next)
        sorted[count++] = e;
    qsort(sorted, count, sizeof(struct entry *), entry_order);
    for (size_t i = 1; i < count; i++)
        if (strcmp(sorted[i - 1]->name, sorted[i]->name) == 0)
            problem_at_line(loading->problems, PROBLEM_RULES, sorted[i]->file, sorted[i]->line, 0,
                            "figure \"%s\" is given twice; the other is in %s", sorted[i]->name,
                            sorted[i - 1]->file);
}

/* A block without an end runs to where the next begins; two that cover one
 * day have no answer for it. */
static void settle_dates(struct loading *loading)
{
    for (struct block *b = loading->place->blocks; b != NULL && b->next != NULL; b = b->next) {
        if (b->to == 0)
            b->to = b->next->from;
        if (b->next->from < b->to || b->next->from == b->from) {
            char day[16] = "every day";
            if (b->next->from != 0)
                date_write(b->next->from, day);
            problem_at_line(loading->problems, PROBLEM_RULES, loading->source->path, b->next->line,
                            0,
                            "jurisdiction \"%s\": two editions both cover %s; give the "
                            "earlier one a `to`, the first day it no longer binds",
                            b->id, day);
        }
    }
}

static bool run_source(struct loading *loading, struct sandbox *sandbox,
                       const struct source *source)
{
    loading->source = source;
    const enum sandbox_stop stop = sandbox_run(sandbox, source->text, source->length, source->path);
    if (stop != SANDBOX_DONE)
        problem_at_line(loading->problems, PROBLEM_RULES,
                        sandbox_place(sandbox, stop, source->path), 0, 0, "%s",
                        sandbox_message(sandbox, stop));
    /* A model's parts are many, long, and read for every edition: the proof looks through
     * those. */
    else if ((loading->block == NULL || !loading->block->model)
             && !strings_have(&loading->looked_through, source->path)) {
        strings_add(&loading->looked_through, loading->arena, source->path);
        place_traps(source, loading->problems);
    }
    return stop == SANDBOX_DONE;
}

struct part_paths {
    struct strings paths;
    struct arena *arena;
};

static void take_path(void *data, const char *path)
{
    struct part_paths *parts = data;
    strings_add(&parts->paths, parts->arena, arena_copy(parts->arena, path));
}

/* Every file of the folder that a block names, by name. */
static void list_folder(struct loading *loading, struct block *block, const char *home,
                        const char *own)
{
    struct part_paths parts = {.arena = loading->arena};
    const char *folder = arena_format(loading->arena, "%.*s/%s", (int)(strrchr(own, '/') - own),
                                      own, block->part_folder);
    if (folder == NULL || home_each(home, folder, ".lua", 0, take_path, &parts) != 0
        || parts.paths.count == 0 || parts.paths.count > PLACE_PARTS_MOST) {
        problem_at_line(loading->problems, PROBLEM_RULES, own, block->line, 0,
                        "parts: \"%s\" is no folder beside this file with 1 to %d .lua files",
                        block->part_folder, PLACE_PARTS_MOST);
        return;
    }
    block->parts = arena_array(loading->arena, parts.paths.count, sizeof(char *));
    const size_t beside = (size_t)(strrchr(own, '/') - own) + 1;
    for (size_t i = 0; block->parts != NULL && i < parts.paths.count; i++)
        block->parts[block->part_count++] = parts.paths.items[i] + beside;
}

/* The parts a block names lie beside its own file. */
static void run_parts(struct loading *loading, struct sandbox *sandbox, const char *home,
                      struct sources *sources)
{
    const char *own = loading->place->source->path;
    for (struct block *b = loading->place->blocks; b != NULL; b = b->next) {
        if (b->part_folder != NULL)
            list_folder(loading, b, home, own);
        for (size_t i = 0; i < b->part_count; i++) {
            const char *path = arena_format(loading->arena, "%.*s/%s",
                                            (int)(strrchr(own, '/') - own), own, b->parts[i]);
            const struct source *source = path == NULL ? NULL
                                                       : home_read_part(home, path, loading->arena,
                                                                        sources, loading->problems);
            start_block(loading, b);
            if (source == NULL || !run_source(loading, sandbox, source))
                return;
        }
    }
    loading->source = loading->place->source;
}

/* One sandbox for the file and its parts, closed before anybody looks at what was read:
 * all of it was copied. */
static void run_files(struct loading *loading, const char *home, struct sources *sources)
{
    struct sandbox *sandbox = sandbox_open();
    if (sandbox == NULL) {
        problem_out_of_memory(loading->problems);
        return;
    }
    sandbox->user = loading;
    if (sandbox_setup(sandbox, define, NULL) != SANDBOX_DONE)
        problem_out_of_memory(loading->problems);
    else if (run_source(loading, sandbox, loading->place->source))
        run_parts(loading, sandbox, home, sources);
    if (loading->arena->failed)
        problem_out_of_memory(loading->problems);
    sandbox_close(sandbox);
}

struct place *place_load(const char *home, const char *id, struct arena *arena,
                         struct sources *sources, struct problems *problems)
{
    /* Problems of other files may be in the list already. */
    const size_t before = problems->count;
    char *path = arena_format(arena, "jurisdictions/%s.lua", id);
    struct place *place = arena_alloc(arena, sizeof(*place));
    if (path == NULL || place == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    place->source = home_read(home, path, arena, sources, problems);
    if (place->source == NULL)
        return NULL;
    if (place_made_read(place, home, arena, sources))
        return place;
    struct loading loading = {
        .arena = arena, .problems = problems, .place = place, .id = id, .source = place->source};
    run_files(&loading, home, sources);
    loading.source = place->source;
    for (const struct block *b = place->blocks; b != NULL; b = b->next)
        if (b->part_count > 0)
            find_doubles(&loading, b);
    settle_dates(&loading);
    if (place->blocks == NULL && problems->count == before && !problems->out_of_memory)
        problem_at_line(problems, PROBLEM_RULES, path, 1, 0, "declares no jurisdiction");
    return problems->count == before && !problems->out_of_memory ? place : NULL;
}
