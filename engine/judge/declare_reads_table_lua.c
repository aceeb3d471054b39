/* declare_reads_table_lua.c - one table of reads: its helpers, facts and figures. */
#include "judge/declare_reads.h"

#include "base/nearest.h"

#include <lauxlib.h>

#include <stdio.h>
#include <string.h>

enum { READS_MOST = 400 };

/* One table of reads being read. */
struct reading {
    bool of_helper;             /* else of the declaration at hand */
    bool lenient;               /* figures may lack */
    const struct lever *levers; /* and where one is off: nothing is ever looked at */
    struct reads_part *part;
    struct reads_fact facts[READS_MOST];
    size_t fact_count;
    const char *of_places[READS_MOST];
    size_t of_place_count;
    struct reads_figure figures[READS_MOST];
    size_t figure_count;
    const char *elsewhere[READS_MOST];
    size_t elsewhere_count;
};

/* The lists are left as they are: thousands of entries, of which few are ever filled. */
static void begin(struct reading *reading, struct reads_part *part, bool of_helper, bool lenient,
                  const struct lever *levers)
{
    reading->of_helper = of_helper;
    reading->lenient = lenient;
    reading->levers = levers;
    reading->part = part;
    reading->fact_count = reading->of_place_count = 0;
    reading->figure_count = reading->elsewhere_count = 0;
}

static int refuse(lua_State *lua, const struct reading *reading, const char *what)
{
    if (reading->of_helper)
        return luaL_error(lua, "reads: %s", what);
    return declare_refuse(lua, "reads: %s", what);
}

/* The list of reads holds functions by number; what has a name is facts or figures. */
static void read_helpers(lua_State *lua, const struct reading *reading)
{
    struct reads_part *part = reading->part;
    const size_t count = (size_t)lua_rawlen(lua, -1);
    if (count > READS_MOST)
        refuse(lua, reading, "too many helpers");
    const struct reads_part **helpers = count == 0 ? NULL
                                                   : declare_keep(lua, count, sizeof(*helpers));
    for (size_t i = 0; i < count; i++) {
        lua_rawgeti(lua, -1, (lua_Integer)i + 1);
        helpers[i] = lua_isfunction(lua, -1) ? declare_reads_of(lua, -1) : NULL;
        if (helpers[i] == NULL)
            refuse(lua, reading,
                   "what is listed without a name is a helper that declares what it reads: "
                   "local helper = reads({ facts = { ... } }, function(...) ... end)");
        lua_pop(lua, 1);
    }
    part->helpers = helpers;
    part->helper_count = count;
}

/* Facts ------------------------------------------------------------------------------------ */

static const char *text_at(lua_State *lua, const struct reading *reading, size_t at)
{
    if (lua_rawgeti(lua, -1, (lua_Integer)at) != LUA_TSTRING)
        refuse(lua, reading, "facts and figures are lists of names: { \"house.year_built\" }");
    const char *text = lua_tostring(lua, -1);
    lua_pop(lua, 1); /* the list holds it */
    return text;
}

static void add_fact(lua_State *lua, struct reading *reading, const struct field *field, bool led)
{
    for (size_t i = 0; i < reading->fact_count; i++)
        if (reading->facts[i].field == field) {
            reading->facts[i].led &= led;
            return;
        }
    if (reading->fact_count == READS_MOST)
        refuse(lua, reading, "too many facts");
    reading->facts[reading->fact_count++] = (struct reads_fact){field, led};
}

static int no_such_fact(lua_State *lua, const struct reading *reading, const char *path)
{
    const char *near = fields_nearest_path(&declaring_of(lua)->book->fields, path);
    if (near == NULL)
        return refuse(lua, reading, lua_pushfstring(lua, "there is no field \"%s\"", path));
    return refuse(
        lua, reading,
        lua_pushfstring(lua, "there is no field \"%s\" (did you mean \"%s\"?)", path, near));
}

/* A fact, with the lists gone through and the references that lead to it. */
static void read_fact(lua_State *lua, struct reading *reading, const char *path)
{
    const struct fields *fields = &declaring_of(lua)->book->fields;
    const struct field *at = fields->root;
    for (const char *rest = path; *rest != '\0';) {
        const struct field *step = at == NULL ? NULL : fields_step(at, &rest);
        if (step == NULL)
            no_such_fact(lua, reading, path);
        if (step->type != FIELD_GROUP || *rest == '\0')
            add_fact(lua, reading, step, *rest != '\0');
        at = step->type == FIELD_REFERENCE ? fields_find(fields, step->refers) : step;
    }
    if (at == fields->root)
        no_such_fact(lua, reading, path);
}

/* A fact that only some places have is found where they have it: here at least what it
 * belongs to must be there. */
static void read_of_place(lua_State *lua, struct reading *reading, const char *path)
{
    const struct field *at = declaring_of(lua)->book->fields.root;
    const char *rest = path;
    while (at != NULL && strchr(rest, '.') != NULL)
        at = fields_step(at, &rest);
    if (at == NULL || *rest == '\0')
        no_such_fact(lua, reading, path);
    reading->of_places[reading->of_place_count++] = declare_keep_text(lua, path);
}

/* Calls `each` for every text of the list under the key. */
static void read_list(lua_State *lua, struct reading *reading, const char *key,
                      void (*each)(lua_State *, struct reading *, const char *))
{
    if (lua_getfield(lua, -1, key) == LUA_TTABLE) {
        const size_t count = (size_t)lua_rawlen(lua, -1);
        if (count > READS_MOST)
            refuse(lua, reading, "too many names");
        for (size_t i = 1; i <= count; i++)
            each(lua, reading, text_at(lua, reading, i));
    } else if (!lua_isnil(lua, -1)) {
        refuse(lua, reading, "facts and figures are lists of names: { \"house.year_built\" }");
    }
    lua_pop(lua, 1);
}

/* Figures ---------------------------------------------------------------------------------- */

static void add_figure(lua_State *lua, struct reading *reading, const struct figure_slot *figure,
                       bool optional)
{
    if (figure == NULL)
        luaL_error(lua, "out of memory");
    if (reading->figure_count == READS_MOST)
        refuse(lua, reading, "too many figures");
    reading->figures[reading->figure_count++] = (struct reads_figure){figure, optional,
                                                                      reading->levers};
}

/* One that this place has no need of. */
static void add_elsewhere(lua_State *lua, struct reading *reading, const char *name)
{
    if (reading->elsewhere_count == READS_MOST)
        refuse(lua, reading, "too many figures");
    reading->elsewhere[reading->elsewhere_count++] = declare_keep_text(lua, name);
}

/* "topic.table.*": all rows of a table. */
static size_t add_table(lua_State *lua, struct reading *reading, const char *name, size_t length)
{
    struct rulebook *book = declaring_of(lua)->book;
    size_t place;
    const size_t count = figure_slot_table(book, name, length, &place);
    for (size_t i = 0; i < count; i++)
        add_figure(lua, reading, figure_slot_at(book, place + i, false), true);
    return count;
}

static bool may_lack(struct rulebook *book, const struct reading *reading)
{
    return reading->lenient || figure_slot_excused(book, reading->levers);
}

static void read_figure(lua_State *lua, struct reading *reading, const char *name)
{
    struct rulebook *book = declaring_of(lua)->book;
    const struct profile *profile = book->profile;
    const size_t length = strlen(name);
    struct nearest nearest;
    if (profile == NULL) /* fields alone are wanted */
        return;
    if (length > 2 && strcmp(name + length - 2, ".*") == 0) {
        if (add_table(lua, reading, name, length - 1) > 0)
            return;
        if (!may_lack(book, reading))
            refuse(lua, reading,
                   lua_pushfstring(lua, "no figure's name begins as \"%s\" does", name));
        add_elsewhere(lua, reading, name);
        return;
    }
    const struct figure_slot *figure = figure_slot_find(book, name, false);
    if (figure != NULL) {
        add_figure(lua, reading, figure, reading->lenient);
        return;
    }
    if (may_lack(book, reading)) {
        add_elsewhere(lua, reading, name);
        return;
    }
    nearest_start(&nearest, name);
    for (size_t i = 0; i < profile->figure_count; i++)
        nearest_offer(&nearest, profile->figures[i].name);
    if (nearest.name == NULL)
        refuse(lua, reading, lua_pushfstring(lua, "no figure is named \"%s\"", name));
    else
        refuse(lua, reading,
               lua_pushfstring(lua, "no figure is named \"%s\" (did you mean \"%s\"?)", name,
                               nearest.name));
}

/* Past the switch of this name, and those before it. */
static const struct lever *past(lua_State *lua, const struct lever *before, const char *name)
{
    struct rulebook *book = declaring_of(lua)->book;
    return book->profile == NULL ? before
                                 : declare_lever(lua, before, figure_slot_find(book, name, false));
}

/* behind = { { "switch", "figure", ... } }: as of a row, figures that stand only with places
 * that have the switch on. The switch is read as well. */
static void read_behind(lua_State *lua, struct reading *reading)
{
    const struct lever *levers = reading->levers;
    const int type = lua_getfield(lua, -1, "behind");
    if (type != LUA_TNIL && type != LUA_TTABLE)
        refuse(lua, reading, "behind is a list: { { \"switch\", \"figure\", ... } }");
    const size_t count = type == LUA_TNIL ? 0 : (size_t)lua_rawlen(lua, -1);
    if (count > READS_MOST)
        refuse(lua, reading, "too many names");
    for (size_t i = 1; i <= count; i++) {
        if (lua_rawgeti(lua, -1, (lua_Integer)i) != LUA_TTABLE)
            refuse(lua, reading, "behind is a list: { { \"switch\", \"figure\", ... } }");
        const size_t names = (size_t)lua_rawlen(lua, -1);
        if (names > READS_MOST)
            refuse(lua, reading, "too many names");
        for (size_t j = 1; j <= names; j++) {
            read_figure(lua, reading, text_at(lua, reading, j));
            if (j == 1)
                reading->levers = past(lua, levers, text_at(lua, reading, 1));
        }
        reading->levers = levers;
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}

/* A table of reads ------------------------------------------------------------------------- */

enum { FACTS, FIGURES, OF_SOME_PLACES, BEHIND };
static const char *const KEYS[] = {"facts", "figures", "facts_of_some_places", "behind", NULL};

/* Which of them are there, a bit each. */
static unsigned check_keys(lua_State *lua, const struct reading *reading)
{
    unsigned there = 0;
    lua_pushnil(lua);
    while (lua_next(lua, -2) != 0) {
        const char *key = lua_type(lua, -2) == LUA_TSTRING ? lua_tostring(lua, -2) : NULL;
        size_t k = 0;
        while (key != NULL && KEYS[k] != NULL && strcmp(KEYS[k], key) != 0)
            k++;
        if (key != NULL && KEYS[k] == NULL)
            refuse(lua, reading,
                   lua_pushfstring(lua,
                                   "unknown key \"%s\": it holds helpers, facts = { }, "
                                   "figures = { }, facts_of_some_places = { } and behind = "
                                   "{ }",
                                   key));
        there |= key == NULL ? 0 : 1U << k;
        lua_pop(lua, 1);
    }
    return there;
}

/* What was read into the list, kept; NULL for nothing. */
static void *kept(lua_State *lua, const void *list, size_t count, size_t size)
{
    return count == 0 ? NULL : memcpy(declare_keep(lua, count, size), list, count * size);
}

/* The table on top of the stack. */
struct reads_part *declare_reads_table(lua_State *lua, bool of_helper, const struct lever *levers,
                                       int line)
{
    const struct profile *profile = declaring_of(lua)->book->profile;
    /* What several editions have in common need not have all their figures. */
    const bool part_of_law = profile != NULL && profile->base_only;
    struct reading reading;
    struct reads_part *part = declare_keep(lua, 1, sizeof(*part));
    begin(&reading, part, of_helper, part_of_law, levers);
    part->file = declaring_of(lua)->file;
    part->line = line;
    const unsigned there = check_keys(lua, &reading);
    read_helpers(lua, &reading);
    if (there & 1U << FACTS)
        read_list(lua, &reading, "facts", read_fact);
    if (there & 1U << OF_SOME_PLACES)
        read_list(lua, &reading, "facts_of_some_places", read_of_place);
    if (there & 1U << FIGURES)
        read_list(lua, &reading, "figures", read_figure);
    if (there & 1U << BEHIND)
        read_behind(lua, &reading);
    part->facts = kept(lua, reading.facts, reading.fact_count, sizeof(*reading.facts));
    part->fact_count = reading.fact_count;
    part->elsewhere = kept(lua, reading.elsewhere, reading.elsewhere_count,
                           sizeof(*reading.elsewhere));
    part->elsewhere_count = reading.elsewhere_count;
    part->of_places = kept(lua, reading.of_places, reading.of_place_count,
                           sizeof(*reading.of_places));
    part->of_place_count = reading.of_place_count;
    part->figures = kept(lua, reading.figures, reading.figure_count, sizeof(*reading.figures));
    part->figure_count = reading.figure_count;
    if (!reads_part_close(declare_arena(lua), part))
        luaL_error(lua, "out of memory");
    return part;
}
