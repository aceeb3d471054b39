/* place_zones_lua.c - zones = { }: the parts that a place's own map divides it into, in its
 * own words, read from its file. */
#include "profile/place_reading.h"

#include "sandbox/sandbox.h"

#include <lauxlib.h>

#include <stdio.h>
#include <string.h>

/* Shown to people, as questions and their answers are. */
enum { ZONE_WORD_LONGEST = 60, ZONE_ASK_LONGEST = 1000 };

static int line_of(lua_State *lua, const char *name)
{
    const struct loading *loading = place_loading(lua);
    char quoted[160];
    sandbox_charge(lua, loading->source->length / PLACE_BYTES_A_STEP);
    snprintf(quoted, sizeof(quoted), "[\"%s\"]", name);
    const int line = home_source_line(loading->source, quoted, loading->block->line);
    return line > 0 ? line : loading->block->line;
}

/* "site.local_wind_zone": a name by which a rule can ask for it. */
static bool is_zone_name(const char *name)
{
    static const char BEGINS[] = "site.local_", ENDS[] = "_zone";
    const size_t length = strlen(name), least = strlen(BEGINS) + strlen(ENDS);
    return length > least && length < 100 && strncmp(name, BEGINS, strlen(BEGINS)) == 0
           && strcmp(name + length - strlen(ENDS), ENDS) == 0
           && strspn(name, "abcdefghijklmnopqrstuvwxyz_.") == length
           && strchr(name + strlen("site."), '.') == NULL;
}

static void check_words(lua_State *lua, const struct entry_zone *zone)
{
    if (zone->words.set_count < 2)
        place_say(lua, zone->line,
                  "zone \"%s\" has fewer than two words: a map of one part "
                  "divides nothing",
                  zone->name);
    for (size_t i = 0; i < zone->words.set_count; i++) {
        const char *word = zone->words.set[i];
        const size_t length = strlen(word);
        if (length == 0 || length > ZONE_WORD_LONGEST
            || strspn(word, "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_")
                   != length)
            place_say(lua, zone->line,
                      "zone \"%s\": \"%.60s\" is no word: write letters, digits and _ for a "
                      "space, no more than %d",
                      zone->name, word, ZONE_WORD_LONGEST);
    }
}

/* The table of one zone may hold nothing beside its words but the question. */
static void check_keys(lua_State *lua, int table, const struct entry_zone *zone)
{
    lua_pushnil(lua);
    while (lua_next(lua, table) != 0) {
        lua_pop(lua, 1);
        if (lua_type(lua, -1) == LUA_TSTRING && strcmp(lua_tostring(lua, -1), "ask") != 0)
            place_say(lua, zone->line,
                      "zone \"%s\": unknown key \"%.40s\"; it has its words and ask", zone->name,
                      lua_tostring(lua, -1));
    }
}

static void read_zone(lua_State *lua, int zones, const char *name)
{
    struct loading *loading = place_loading(lua);
    struct entry_zone *zone = place_keep(lua, 1, sizeof(*zone));
    lua_getfield(lua, zones, name);
    const int table = lua_gettop(lua);
    zone->name = place_keep_text(lua, name);
    zone->line = line_of(lua, name);
    if (!is_zone_name(name))
        place_say(lua, zone->line,
                  "zone \"%.80s\": a zone is called as the rule that asks for it calls it: "
                  "site.local_wind_zone, site.local_fire_zone, site.local_ice_zone",
                  name);
    if (!lua_istable(lua, table)) {
        place_say(lua, zone->line, "zone \"%s\" is written { \"word\", \"word\", ask = \"...\" }",
                  name);
    } else {
        check_keys(lua, table, zone);
        zone->words = place_keep_set(lua, table, name, zone->line);
        zone->ask = place_text(lua, table, "ask", zone->line);
        check_words(lua, zone);
        if (zone->ask == NULL || strlen(zone->ask) > ZONE_ASK_LONGEST)
            place_say(lua, zone->line,
                      zone->ask == NULL
                          ? "zone \"%s\" lacks ask: the question that tells where each begins"
                          : "zone \"%s\": its question is longer than 1000 bytes",
                      name);
    }
    zone->next = loading->block->zones;
    loading->block->zones = zone;
    lua_settop(lua, table - 1);
}

void place_zones_read(lua_State *lua, int index)
{
    static const struct named_entries ZONES = {"zones", "zones: every zone needs a name", "has",
                                               "zones", read_zone};
    place_read_named(lua, index, &ZONES);
}
