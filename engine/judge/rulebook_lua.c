#include "judge/rulebook.h"

#include "base/nearest.h"
#include "base/strings.h"
#include "judge/judging.h"
#include "sandbox/keys.h"

#include <lauxlib.h>
#include <lua.h>

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct reading {
    struct rulebook *book;
    const char *home;
    struct problems *problems;
    const char *file; /* being run */
    struct strings files;
    size_t field_count, quantities, impossibles, cautions, abouts, card_parts, card_names;
    bool fields_only; /* of every place, for a job whose place is not known */
};

static struct reading *reading_of(lua_State *lua)
{
    if (!sandbox_of(lua)->loading)
        luaL_error(lua, "this may be used only while the file is loaded");
    return sandbox_of(lua)->user;
}

static struct arena *arena_of(lua_State *lua)
{
    return &reading_of(lua)->book->arena;
}

/* Declarations read "word 'name' { ... }": two calls. The first keeps the
 * name and the line, the second does the work (upvalue 1: name, 2: line). */
static int passed_over(lua_State *lua)
{
    (void)lua;
    return 0;
}

static int finish_field(lua_State *lua);

static int start(lua_State *lua, lua_CFunction finish)
{
    luaL_checkstring(lua, 1);
    if (reading_of(lua)->fields_only && finish != finish_field)
        finish = passed_over;
    lua_settop(lua, 1);
    lua_Debug about;
    lua_Integer line = 0;
    if (lua_getstack(lua, 1, &about) && lua_getinfo(lua, "l", &about))
        line = about.currentline;
    lua_pushinteger(lua, line);
    lua_pushcclosure(lua, finish, 2);
    return 1;
}

static const char *declared_name(lua_State *lua)
{
    return lua_tostring(lua, lua_upvalueindex(1));
}

/* Raises "FILE:LINE: word 'name': message" at the declaration. */
static int refuse(lua_State *lua, const char *format, const char *a, const char *b)
{
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wformat-nonliteral"
    char message[400];
    snprintf(message, sizeof(message), format, a, b);
#pragma GCC diagnostic pop
    lua_pushfstring(lua, "%s:%d: \"%s\": %s", reading_of(lua)->file,
                    (int)lua_tointeger(lua, lua_upvalueindex(2)), declared_name(lua), message);
    return lua_error(lua);
}

static void closed_keys(lua_State *lua, const char *const *known)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    const struct keys *keys = keys_push(lua, 1);
    if (keys->others)
        refuse(lua, "every part needs a name%s%s", "", "");
    for (size_t i = 0; i < keys->count; i++) {
        const char *key = keys->names[i];
        const char *const *name = known;
        while (*name != NULL && strcmp(*name, key) != 0)
            name++;
        if (*name != NULL)
            continue;
        struct nearest nearest;
        nearest_start(&nearest, key);
        for (name = known; *name != NULL; name++)
            nearest_offer(&nearest, *name);
        if (nearest.name != NULL)
            refuse(lua, "unknown key \"%s\"; did you mean \"%s\"?", key, nearest.name);
        refuse(lua, "unknown key \"%s\"%s", key, "");
    }
    lua_pop(lua, 1);
}

/* Zeroed memory that outlives the call; raises when out of memory. */
static void *keep(lua_State *lua, size_t count, size_t size)
{
    sandbox_charge_kept(lua, count * size);
    void *kept = arena_array(arena_of(lua), count, size);
    if (kept == NULL)
        luaL_error(lua, "out of memory");
    return kept;
}

/* A copy that does; likewise. */
static const char *keep_text(lua_State *lua, const char *text)
{
    const size_t length = strlen(text);
    return memcpy(keep(lua, length + 1, 1), text, length);
}

/* Raises when the text on top of the stack would be cut short in C. */
static void check_zero(lua_State *lua, const char *key)
{
    if (strlen(lua_tostring(lua, -1)) != lua_rawlen(lua, -1))
        refuse(lua, "%s must not hold a zero byte%s", key, "");
}

static const char *text_of(lua_State *lua, const char *key)
{
    const char *text = NULL;
    lua_getfield(lua, 1, key);
    if (lua_type(lua, -1) == LUA_TSTRING) {
        check_zero(lua, key);
        text = keep_text(lua, lua_tostring(lua, -1));
    } else if (!lua_isnil(lua, -1)) {
        refuse(lua, "%s must be a text%s", key, "");
    }
    lua_pop(lua, 1);
    return text;
}

static const char *need_text(lua_State *lua, const char *key)
{
    const char *text = text_of(lua, key);
    if (text == NULL)
        refuse(lua, "has no %s%s", key, "");
    return text;
}

/* Counts one more of these; raises when there are too many. */
static void count_one(lua_State *lua, size_t *count, size_t most, const char *what)
{
    if (++*count > most)
        luaL_error(lua, "more than %d %s", (int)most, what);
}

static bool flag_of(lua_State *lua, const char *key)
{
    lua_getfield(lua, 1, key);
    const bool set = lua_toboolean(lua, -1);
    lua_pop(lua, 1);
    return set;
}

static int function_of(lua_State *lua, const char *key)
{
    lua_getfield(lua, 1, key);
    if (lua_isnil(lua, -1)) {
        lua_pop(lua, 1);
        return RULE_NO_FUNCTION;
    }
    if (lua_type(lua, -1) != LUA_TFUNCTION)
        refuse(lua, "%s must be a function%s", key, "");
    return luaL_ref(lua, LUA_REGISTRYINDEX);
}

static enum stage stage_of(lua_State *lua, const char *word)
{
    const int stage = stage_by_word(word);
    if (stage < 0)
        refuse(lua, "stage \"%s\" is not one of permit, deck, dry-in, final%s", word, "");
    return (enum stage)stage;
}

/* field "path" { ... } -------------------------------------------------------- */

static const char *const FIELD_KEYS[] = {"type", "unit", "range", "choices", "refers", "stage",
                                         "ask", "required", "measured", NULL};

static void read_range(lua_State *lua, struct field *spec)
{
    lua_getfield(lua, 1, "range");
    if (lua_istable(lua, -1)) {
        lua_rawgeti(lua, -1, 1);
        lua_rawgeti(lua, -2, 2);
        if (!lua_isnumber(lua, -2) || !lua_isnumber(lua, -1))
            refuse(lua, "range is written { least, most }%s%s", "", "");
        spec->has_least = spec->has_most = true;
        spec->least = lua_tonumber(lua, -2);
        spec->most = lua_tonumber(lua, -1);
        lua_pop(lua, 2);
    } else if (!lua_isnil(lua, -1)) {
        refuse(lua, "range is written { least, most }%s%s", "", "");
    }
    lua_pop(lua, 1);
}

static void read_choices(lua_State *lua, struct field *spec)
{
    lua_getfield(lua, 1, "choices");
    if (lua_istable(lua, -1)) {
        spec->choice_count = (size_t)lua_rawlen(lua, -1);
        if (spec->choice_count > CHOICES_MOST)
            refuse(lua, "has more than 200 choices%s%s", "", "");
        spec->choices = keep(lua, spec->choice_count + 1, sizeof(char *));
        for (size_t i = 0; i < spec->choice_count; i++) {
            lua_rawgeti(lua, -1, (lua_Integer)i + 1);
            if (lua_type(lua, -1) != LUA_TSTRING)
                refuse(lua, "choices are texts%s%s", "", "");
            check_zero(lua, "a choice");
            if (lua_rawlen(lua, -1) > CHOICE_LONGEST)
                refuse(lua, "a choice is longer than 200 bytes%s%s", "", "");
            spec->choices[i] = keep_text(lua, lua_tostring(lua, -1));
            lua_pop(lua, 1);
        }
    }
    lua_pop(lua, 1);
}

static int finish_field(lua_State *lua)
{
    struct reading *reading = reading_of(lua);
    struct field spec = {0};
    count_one(lua, &reading->field_count, FIELDS_MOST, "fields");
    closed_keys(lua, FIELD_KEYS);
    const char *type = need_text(lua, "type");
    const int known = field_type_by_word(type);
    if (known < 0)
        return refuse(lua, "type \"%s\" is not known%s", type, "");
    spec.type = (enum field_type)known;
    spec.unit = text_of(lua, "unit");
    spec.refers = text_of(lua, "refers");
    spec.ask = need_text(lua, "ask");
    if (strlen(spec.ask) > ASK_LONGEST)
        return refuse(lua, "the question is longer than 1000 bytes%s%s", "", "");
    spec.stage = stage_word(stage_of(lua, need_text(lua, "stage")));
    spec.file = reading->file;
    spec.required = flag_of(lua, "required");
    spec.measured = flag_of(lua, "measured");
    read_range(lua, &spec);
    read_choices(lua, &spec);
    const char *why = "out of memory";
    sandbox_charge_kept(lua, sizeof(spec) + 2 * strlen(declared_name(lua)) + strlen(spec.file) + 3);
    if (reading->fields_only && fields_find(&reading->book->fields, declared_name(lua)) != NULL)
        return 0; /* two places may ask for the same thing */
    if (fields_add(&reading->book->fields, declared_name(lua), &spec, &why) == NULL)
        return refuse(lua, "%s%s", why, "");
    return 0;
}

static int start_field(lua_State *lua)
{
    return start(lua, finish_field);
}

/* `per` ------------------------------------------------------------------------ */

/* Sets per[] to the lists that path ("attics[].vents") goes through. */
static size_t read_per(lua_State *lua, const struct field *per[RULE_DEEPEST_PER])
{
    const char *path = text_of(lua, "per");
    if (path == NULL)
        return 0;
    const struct field *found = fields_find(&reading_of(lua)->book->fields, path);
    if (found == NULL || found->type != FIELD_LIST) {
        const char *near = fields_nearest_path(&reading_of(lua)->book->fields, path);
        refuse(lua, "per: \"%s\" is not a list of the job (the nearest field: %s)", path,
               near == NULL ? "none" : near);
    }
    size_t depth = 0;
    for (const struct field *f = found; f != NULL; f = f->parent)
        depth += f->type == FIELD_LIST;
    if (depth > RULE_DEEPEST_PER)
        refuse(lua, "per: \"%s\" is too deep%s", path, "");
    size_t at = depth;
    for (const struct field *f = found; f != NULL; f = f->parent)
        if (f->type == FIELD_LIST)
            per[--at] = f;
    return depth;
}

/* rule "topic.thing" { ... } ---------------------------------------------------- */

static const char *const RULE_KEYS[] = {"title", "stage", "per", "applies", "judge", "mend",
                                        "caution", "asks_only", "advice", NULL};

static void check_rule_id(lua_State *lua, const char *id)
{
    const char *dot = strchr(id, '.');
    if (dot == NULL || dot == id || dot[1] == '\0' || strlen(id) > 80)
        refuse(lua, "a rule is named topic.thing%s%s", "", "");
    if (strspn(id, "abcdefghijklmnopqrstuvwxyz0123456789_.") != lua_rawlen(lua, lua_upvalueindex(1))
        || strchr(dot + 1, '.') != NULL)
        refuse(lua, "a rule's name holds a-z, 0-9, _ and one dot%s%s", "", "");
    for (const struct rule *r = reading_of(lua)->book->rules; r != NULL; r = r->next)
        if (strcmp(r->id, id) == 0)
            refuse(lua, "is already a rule, in %s%s", r->file, "");
}

static void rule_insert(struct rulebook *book, struct rule *rule)
{
    struct rule **at = &book->rules;
    while (*at != NULL && strcmp((*at)->id, rule->id) < 0)
        at = &(*at)->next;
    rule->next = *at;
    *at = rule;
    book->rule_count++;
}

static int finish_rule(lua_State *lua)
{
    struct reading *reading = reading_of(lua);
    const char *id = declared_name(lua);
    closed_keys(lua, RULE_KEYS);
    check_rule_id(lua, id);
    if (reading->book->rule_count == RULES_MOST)
        return luaL_error(lua, "more than %d rules", RULES_MOST);
    struct rule *rule = keep(lua, 1, sizeof(*rule));
    rule->id = keep_text(lua, id);
    rule->title = need_text(lua, "title");
    rule->stage = stage_of(lua, need_text(lua, "stage"));
    rule->caution = text_of(lua, "caution");
    rule->asks_only = flag_of(lua, "asks_only");
    rule->advice = flag_of(lua, "advice");
    rule->per_depth = read_per(lua, rule->per);
    rule->applies = function_of(lua, "applies");
    rule->judge = function_of(lua, "judge");
    rule->mend_function = RULE_NO_FUNCTION;
    lua_getfield(lua, 1, "mend");
    const bool computed = lua_isfunction(lua, -1);
    lua_pop(lua, 1);
    if (computed)
        rule->mend_function = function_of(lua, "mend");
    else
        rule->mend = text_of(lua, "mend");
    if (rule->judge == RULE_NO_FUNCTION)
        return refuse(lua, "has no judge function%s%s", "", "");
    if (!computed && rule->mend == NULL)
        return refuse(lua, "has no mend: say what would put it right%s%s", "", "");
    rule->file = reading->file;
    rule->line = (int)lua_tointeger(lua, lua_upvalueindex(2));
    rule_insert(reading->book, rule);
    return 0;
}

static int start_rule(lua_State *lua)
{
    return start(lua, finish_rule);
}

/* quantity "..." { ... } ---------------------------------------------------------- */

static const char *const QUANTITY_KEYS[] = {"title", "per", "applies", "amount", NULL};

static int finish_quantity(lua_State *lua)
{
    struct reading *reading = reading_of(lua);
    closed_keys(lua, QUANTITY_KEYS);
    struct quantity **at = &reading->book->quantities;
    for (; *at != NULL; at = &(*at)->next)
        if (strcmp((*at)->name, declared_name(lua)) == 0)
            return refuse(lua, "is already a quantity, in %s%s", (*at)->file, "");
    count_one(lua, &reading->quantities, QUANTITIES_MOST, "quantities");
    struct quantity *quantity = keep(lua, 1, sizeof(*quantity));
    quantity->name = keep_text(lua, declared_name(lua));
    quantity->title = need_text(lua, "title");
    quantity->per_depth = read_per(lua, quantity->per);
    quantity->applies = function_of(lua, "applies");
    quantity->amount = function_of(lua, "amount");
    if (quantity->amount == RULE_NO_FUNCTION)
        return refuse(lua, "has no amount function%s%s", "", "");
    quantity->file = reading->file;
    quantity->line = (int)lua_tointeger(lua, lua_upvalueindex(2));
    *at = quantity;
    return 0;
}

static int start_quantity(lua_State *lua)
{
    return start(lua, finish_quantity);
}

/* impossible "..." { ... } -------------------------------------------------------- */

static const char *const IMPOSSIBLE_KEYS[] = {"at", "per", "when", NULL};

static int finish_impossible(lua_State *lua)
{
    closed_keys(lua, IMPOSSIBLE_KEYS);
    count_one(lua, &reading_of(lua)->impossibles, IMPOSSIBLES_MOST, "impossible");
    struct impossible *check = keep(lua, 1, sizeof(*check));
    check->name = keep_text(lua, declared_name(lua));
    check->file = reading_of(lua)->file;
    check->line = (int)lua_tointeger(lua, lua_upvalueindex(2));
    check->at = need_text(lua, "at");
    check->per_depth = read_per(lua, check->per);
    check->when = function_of(lua, "when");
    if (check->when == RULE_NO_FUNCTION)
        return refuse(lua, "has no when function%s%s", "", "");
    const struct rulebook *book = reading_of(lua)->book;
    char path[256];
    snprintf(path, sizeof(path), "%s%s%s",
             check->per_depth > 0 ? check->per[check->per_depth - 1]->path : "",
             check->per_depth > 0 ? "[]." : "", check->at);
    if (fields_find(&book->fields, path) == NULL)
        return refuse(lua, "at: there is no field \"%s\"%s", path, "");
    struct impossible **at = &reading_of(lua)->book->impossibles;
    while (*at != NULL)
        at = &(*at)->next;
    *at = check;
    return 0;
}

static int start_impossible(lua_State *lua)
{
    return start(lua, finish_impossible);
}

/* caution "..." { ... } ------------------------------------------------------------ */

static const char *const CAUTION_KEYS[] = {"stages", "when", "says", "cite", NULL};

static void read_stages(lua_State *lua, bool stages[STAGE_COUNT])
{
    lua_getfield(lua, 1, "stages");
    if (!lua_istable(lua, -1))
        refuse(lua, "stages is a list of stages%s%s", "", "");
    const size_t count = (size_t)lua_rawlen(lua, -1);
    if (count > STAGE_COUNT)
        refuse(lua, "stages is a list of stages, each once%s%s", "", "");
    for (size_t i = 1; i <= count; i++) {
        lua_rawgeti(lua, -1, (lua_Integer)i);
        stages[stage_of(lua, luaL_checkstring(lua, -1))] = true;
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}

static const char *cite_part(lua_State *lua, const char *key)
{
    lua_getfield(lua, -1, key);
    if (lua_type(lua, -1) != LUA_TSTRING)
        refuse(lua, "cite has no %s%s", key, "");
    const char *text = keep_text(lua, lua_tostring(lua, -1));
    lua_pop(lua, 1);
    return text;
}

static void read_cite(lua_State *lua, struct cite *cite)
{
    lua_getfield(lua, 1, "cite");
    if (!lua_istable(lua, -1))
        refuse(lua, "cite is a table of code, section, status and source%s%s", "", "");
    cite->code = cite_part(lua, "code");
    cite->section = cite_part(lua, "section");
    cite->status = cite_part(lua, "status");
    cite->source = cite_part(lua, "source");
    lua_pop(lua, 1);
}

static int finish_caution(lua_State *lua)
{
    closed_keys(lua, CAUTION_KEYS);
    count_one(lua, &reading_of(lua)->cautions, CAUTIONS_MOST, "cautions");
    struct caution *caution = keep(lua, 1, sizeof(*caution));
    caution->name = keep_text(lua, declared_name(lua));
    read_stages(lua, caution->stages);
    read_cite(lua, &caution->cite);
    caution->when = function_of(lua, "when");
    caution->says_function = RULE_NO_FUNCTION;
    lua_getfield(lua, 1, "says");
    const bool computed = lua_isfunction(lua, -1);
    lua_pop(lua, 1);
    if (computed)
        caution->says_function = function_of(lua, "says");
    else
        caution->says = need_text(lua, "says");
    struct caution **at = &reading_of(lua)->book->cautions;
    while (*at != NULL)
        at = &(*at)->next;
    *at = caution;
    return 0;
}

static int start_caution(lua_State *lua)
{
    return start(lua, finish_caution);
}

/* about "..." { ... } -------------------------------------------------------------- */

static const char *const ABOUT_KEYS[] = {"says", NULL};

static int finish_about(lua_State *lua)
{
    closed_keys(lua, ABOUT_KEYS);
    count_one(lua, &reading_of(lua)->abouts, ABOUTS_MOST, "lines about the house");
    struct about *about = keep(lua, 1, sizeof(*about));
    about->label = keep_text(lua, declared_name(lua));
    about->says = function_of(lua, "says");
    if (about->says == RULE_NO_FUNCTION)
        return refuse(lua, "has no says function%s%s", "", "");
    struct about **at = &reading_of(lua)->book->abouts;
    while (*at != NULL)
        at = &(*at)->next;
    *at = about;
    return 0;
}

static int start_about(lua_State *lua)
{
    return start(lua, finish_about);
}

/* card "stage" { { title = ..., "rule", "topic" ... } ... } -------------------------- */

static void read_card_names(lua_State *lua, struct card_part *part)
{
    const size_t count = (size_t)lua_rawlen(lua, -1);
    for (size_t i = 1; i <= count; i++) {
        count_one(lua, &reading_of(lua)->card_names, CARD_NAMES_MOST, "names on cards");
        lua_rawgeti(lua, -1, (lua_Integer)i);
        if (lua_type(lua, -1) != LUA_TSTRING)
            refuse(lua, "a part lists rules and topics by name%s%s", "", "");
        strings_add(&part->names, arena_of(lua), keep_text(lua, lua_tostring(lua, -1)));
        lua_pop(lua, 1);
    }
    if (count == 0)
        refuse(lua, "the part \"%s\" lists nothing%s", part->title, "");
}

static struct card_part *read_card_part(lua_State *lua)
{
    if (!lua_istable(lua, -1))
        refuse(lua, "each part is a table: a title, and rules or topics%s%s", "", "");
    struct card_part *part = keep(lua, 1, sizeof(*part));
    lua_getfield(lua, -1, "title");
    if (lua_type(lua, -1) != LUA_TSTRING)
        refuse(lua, "a part has no title%s%s", "", "");
    part->title = keep_text(lua, lua_tostring(lua, -1));
    lua_pop(lua, 1);
    part->file = reading_of(lua)->file;
    part->line = (int)lua_tointeger(lua, lua_upvalueindex(2));
    read_card_names(lua, part);
    return part;
}

static int finish_card(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    struct card_part **at =
        &reading_of(lua)->book->cards[stage_of(lua, declared_name(lua))];
    if (*at != NULL)
        return refuse(lua, "is laid out twice%s%s", "", "");
    const size_t count = (size_t)lua_rawlen(lua, 1);
    for (size_t i = 1; i <= count; i++) {
        count_one(lua, &reading_of(lua)->card_parts, CARD_PARTS_MOST, "parts of cards");
        lua_rawgeti(lua, 1, (lua_Integer)i);
        *at = read_card_part(lua);
        at = &(*at)->next;
        lua_pop(lua, 1);
    }
    return 0;
}

static int start_card(lua_State *lua)
{
    return start(lua, finish_card);
}

/* drawing "..." { stages = ..., rules = ..., figures = ... } ------------------------------ */

static const char *const DRAWING_KEYS[] = {"stages", "rules", "figures", "numbers", NULL};

/* How many names the table under this key has. */
static size_t count_parts(lua_State *lua, const char *key)
{
    lua_getfield(lua, 1, key);
    size_t count = 0;
    if (lua_istable(lua, -1)) {
        count = keys_push(lua, -1)->count;
        lua_pop(lua, 1);
    } else if (!lua_isnil(lua, -1)) {
        refuse(lua, "%s is a table: dimension = \"name\"%s", key, "");
    }
    lua_pop(lua, 1);
    return count;
}

static void check_dimension(lua_State *lua, const char *drawing, const char *dimension)
{
    struct nearest nearest;
    nearest_start(&nearest, dimension);
    for (const char *const *at = drawing_dimensions(drawing); *at != NULL; at++) {
        if (strcmp(*at, dimension) == 0)
            return;
        nearest_offer(&nearest, *at);
    }
    refuse(lua, "it has no dimension \"%s\"; the nearest is %s", dimension,
           nearest.name == NULL ? "none" : nearest.name);
}

static void read_parts(lua_State *lua, struct drawing *drawing, const char *key)
{
    lua_getfield(lua, 1, key);
    if (lua_isnil(lua, -1)) {
        lua_pop(lua, 1);
        return;
    }
    const struct keys *keys = keys_push(lua, -1);
    for (size_t i = 0; i < keys->count; i++) {
        check_dimension(lua, drawing->name, keys->names[i]);
        struct drawing_part *part = &drawing->parts[drawing->part_count++];
        lua_getfield(lua, -2, keys->names[i]);
        const bool number = strcmp(key, "numbers") == 0;
        if (lua_type(lua, -1) != (number ? LUA_TNUMBER : LUA_TSTRING))
            refuse(lua, number ? "%s: %s must be a number" : "%s: %s must be a name", key,
                   keys->names[i]);
        part->dimension = keep_text(lua, keys->names[i]);
        if (number)
            part->number = lua_tonumber(lua, -1);
        else if (strcmp(key, "figures") == 0)
            part->figure = keep_text(lua, lua_tostring(lua, -1));
        else
            part->rule = keep_text(lua, lua_tostring(lua, -1));
        lua_pop(lua, 1);
    }
    lua_pop(lua, 2);
}

static int finish_drawing(lua_State *lua)
{
    closed_keys(lua, DRAWING_KEYS);
    if (drawing_dimensions(declared_name(lua)) == NULL)
        return refuse(lua, "there is no such drawing%s%s", "", "");
    struct drawing **at = &reading_of(lua)->book->drawings;
    for (; *at != NULL; at = &(*at)->next)
        if (strcmp((*at)->name, declared_name(lua)) == 0)
            return refuse(lua, "is already a drawing, in %s%s", (*at)->file, "");
    struct drawing *drawing = keep(lua, 1, sizeof(*drawing));
    const size_t count = count_parts(lua, "rules") + count_parts(lua, "figures")
                         + count_parts(lua, "numbers");
    drawing->parts = keep(lua, count + 1, sizeof(*drawing->parts));
    drawing->name = keep_text(lua, declared_name(lua));
    drawing->file = reading_of(lua)->file;
    drawing->line = (int)lua_tointeger(lua, lua_upvalueindex(2));
    read_stages(lua, drawing->stages);
    read_parts(lua, drawing, "rules");
    read_parts(lua, drawing, "figures");
    read_parts(lua, drawing, "numbers");
    *at = drawing;
    return 0;
}

static int start_drawing(lua_State *lua)
{
    return start(lua, finish_drawing);
}

/* Loading --------------------------------------------------------------------------- */

static int define(lua_State *lua)
{
    static const struct luaL_Reg names[] = {
        {"field", start_field},
        {"rule", start_rule},
        {"quantity", start_quantity},
        {"impossible", start_impossible},
        {"caution", start_caution},
        {"about", start_about},
        {"card", start_card},
        {"drawing", start_drawing},
        {NULL, NULL},
    };
    for (const struct luaL_Reg *reg = names; reg->name != NULL; reg++) {
        lua_pushcfunction(lua, reg->func);
        sandbox_define(lua, reg->name);
    }
    bind_job(lua);
    bind_figure(lua);
    bind_compare(lua);
    bind_plain(lua);
    bind_trade(lua);
    bind_amount(lua);
    return 0;
}

static void say_stop(struct reading *reading, enum sandbox_stop stop)
{
    struct sandbox *sandbox = reading->book->sandbox;
    if (reading->book->arena.failed || reading->book->fields.arena.failed)
        problem_out_of_memory(reading->problems);
    else
        problem_at_line(reading->problems, PROBLEM_RULES,
                        sandbox_place(sandbox, stop, reading->file), 0, 0, "%s",
                        sandbox_message(sandbox, stop));
}

static void run_file(struct reading *reading, const char *path)
{
    struct rulebook *book = reading->book;
    const struct source *source =
        home_read(reading->home, path, &book->arena, &book->sources, reading->problems);
    if (source == NULL)
        return;
    reading->file = source->path;
    const enum sandbox_stop stop =
        sandbox_run(book->sandbox, source->text, source->length, source->path);
    if (stop != SANDBOX_DONE)
        say_stop(reading, stop);
    else if (sandbox_overfull(book->sandbox)) /* each file had that much */
        say_stop(reading, SANDBOX_MEMORY);
}

static void note_file(void *data, const char *path)
{
    struct reading *reading = data;
    if (strcmp(path, "rules/fields.lua") != 0)
        strings_add(&reading->files, &reading->book->arena,
                    arena_copy(&reading->book->arena, path));
}

static void load_rules(struct reading *reading)
{
    const struct profile *profile = reading->book->profile;
    for (size_t i = 0; i < profile->rule_file_count; i++)
        run_file(reading, profile->rule_files[i]);
    const int listed = home_each(reading->home, "rules", ".lua", 0, note_file, reading);
    if (listed != 0 && errno == ENOMEM)
        problem_out_of_memory(reading->problems);
    else if (listed != 0)
        problem_at_line(reading->problems, PROBLEM_RULES, "rules", 0, 0,
                        "cannot be read as a folder");
    for (size_t i = 0; i < reading->files.count && !reading->book->arena.failed; i++)
        run_file(reading, reading->files.items[i]);
}

static void check_references(struct reading *reading)
{
    const char *why = "out of memory";
    const struct field *dangling = fields_dangling(&reading->book->fields, &why);
    if (dangling != NULL)
        problem_at_line(reading->problems, PROBLEM_RULES, dangling->file, 0, 0, "\"%s\": %s",
                        dangling->path, why);
}

/* Runs a file for its fields alone, and puts the heap back: what one county takes of
 * it must not be lacking for the next. */
static void run_for_fields(struct reading *reading, const char *path)
{
    struct sandbox *sandbox = reading->book->sandbox;
    const size_t kept = sandbox->kept;
    reading->field_count = 0;
    run_file(reading, path);
    sandbox->kept = kept;
    sandbox_reset(sandbox);
}

/* Without a place: the fields of every place, so that any real name is known.
 * A place whose file does not run leaves the catalogue partial; whoever asks
 * about that place will be told. */
static void load_every_field(struct reading *reading)
{
    struct problems *told = reading->problems;
    struct problems untold = {0};
    reading->fields_only = true;
    reading->problems = &untold;
    if (home_each(reading->home, "jurisdictions", ".rules.lua", 6, note_file, reading) != 0)
        reading->book->fields.partial = true;
    if (sandbox_keep(reading->book->sandbox) != 0)
        reading->book->arena.failed = true;
    for (size_t i = 0; i < reading->files.count && !reading->book->arena.failed; i++)
        run_for_fields(reading, reading->files.items[i]);
    if (untold.count > 0)
        reading->book->fields.partial = true;
    if (untold.out_of_memory)
        problem_out_of_memory(told);
    problems_free(&untold);
    reading->problems = told;
}

static void check_drops(const struct reading *reading)
{
    const struct profile *profile = reading->book->profile;
    for (size_t i = 0; i < profile->drop_count; i++) {
        const struct drop *drop = &profile->drops[i];
        struct nearest nearest;
        nearest_start(&nearest, drop->rule);
        bool found = false;
        for (const struct rule *r = reading->book->rules; r != NULL; r = r->next) {
            found = found || strcmp(r->id, drop->rule) == 0;
            nearest_offer(&nearest, r->id);
        }
        if (!found)
            problem_at_line(reading->problems, PROBLEM_RULES, drop->file, drop->line, 0,
                            "drops \"%s\", which is no rule; the nearest is %s", drop->rule,
                            nearest.name == NULL ? "none" : nearest.name);
    }
}

static bool names_a_rule(const struct rulebook *book, const char *name)
{
    const size_t length = strlen(name);
    for (const struct rule *r = book->rules; r != NULL; r = r->next)
        if (strncmp(r->id, name, length) == 0 && (r->id[length] == '\0' || r->id[length] == '.'))
            return true;
    return false;
}

/* A name on a card that no rule answers to would leave a rule out of its place. */
static void check_cards(const struct reading *reading)
{
    for (int stage = 0; stage < STAGE_COUNT; stage++)
        for (const struct card_part *p = reading->book->cards[stage]; p != NULL; p = p->next)
            for (size_t i = 0; i < p->names.count; i++)
                if (!names_a_rule(reading->book, p->names.items[i]))
                    problem_at_line(reading->problems, PROBLEM_RULES, p->file, p->line, 0,
                                    "the card \"%s\" lists \"%s\", which is no rule and no "
                                    "topic", stage_word((enum stage)stage), p->names.items[i]);
}

/* Likewise a drawing that takes a demand from no rule would never show it. */
static void check_drawings(const struct reading *reading)
{
    for (const struct drawing *d = reading->book->drawings; d != NULL; d = d->next)
        for (size_t i = 0; i < d->part_count; i++) {
            const struct drawing_part *part = &d->parts[i];
            if (part->rule != NULL
                && (strchr(part->rule, '.') == NULL || !names_a_rule(reading->book, part->rule)))
                problem_at_line(reading->problems, PROBLEM_RULES, d->file, d->line, 0,
                                "the drawing \"%s\" takes \"%s\" from \"%s\", which is no rule",
                                d->name, part->dimension, part->rule);
            if (part->figure != NULL
                && profile_figure(reading->book->profile, part->figure) == NULL)
                problem_at_line(reading->problems, PROBLEM_RULES, d->file, d->line, 0,
                                "the drawing \"%s\" takes \"%s\" from \"%s\", which is no figure",
                                d->name, part->dimension, part->figure);
        }
}

struct rulebook *rulebook_load(const char *home, const struct profile *profile,
                               struct problems *problems)
{
    const size_t before = problems->count;
    struct rulebook *book = calloc(1, sizeof(*book));
    struct reading reading = {.book = book, .home = home, .problems = problems};
    if (book == NULL || fields_start(&book->fields) != 0
        || (book->sandbox = sandbox_open()) == NULL) {
        problem_out_of_memory(problems);
        rulebook_free(book);
        return NULL;
    }
    book->profile = profile;
    book->sandbox->user = &reading;
    if (sandbox_setup(book->sandbox, define, NULL) == SANDBOX_DONE)
        run_file(&reading, "rules/fields.lua");
    else /* our own names: no file is at fault */
        problem_out_of_memory(problems);
    if (profile != NULL && problems->count == before && !problems->out_of_memory) {
        load_rules(&reading);
    } else if (profile == NULL && problems->count == before && !problems->out_of_memory) {
        load_every_field(&reading);
    }
    if (profile != NULL && problems->count == before && !problems->out_of_memory
        && !book->arena.failed) {
        check_drops(&reading);
        check_cards(&reading);
        check_drawings(&reading);
    }
    if (problems->count == before)
        check_references(&reading);
    book->sandbox->user = NULL;
    if (book->arena.failed || sandbox_keep(book->sandbox) != 0)
        problem_out_of_memory(problems);
    if (problems->count != before || problems->out_of_memory) {
        rulebook_free(book);
        return NULL;
    }
    return book;
}

void rulebook_free(struct rulebook *book)
{
    if (book == NULL)
        return;
    sandbox_close(book->sandbox);
    fields_free(&book->fields);
    arena_free(&book->arena);
    free(book);
}
