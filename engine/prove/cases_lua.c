#include "prove/case_list.h"

#include "prove/case_job.h"
#include "base/nearest.h"
#include "sandbox/keys.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>
#include <lua.h>

#include <string.h>

struct reading {
    const char *home;
    struct problems *problems;
    struct case_list *list;
    const char *file;              /* being read */
    size_t count;                  /* of its cases */
    struct case_building building; /* the case; here, so that a file that is stopped in the
                                      midst of it leaves nothing behind */
    struct case_bases *bases;
    const char *rule;  /* only its cases; or NULL: all */
    const char *topic; /* of a place's cases only those of this topic; NULL: all */
    const char *under; /* only those under this place; NULL: all */
};

static struct reading *reading_of(lua_State *lua)
{
    return sandbox_of(lua)->user;
}

int case_out_of_memory(lua_State *lua)
{
    reading_of(lua)->list->arena.failed = true;
    return luaL_error(lua, "out of memory");
}

/* A copy in the list's arena of the text on top of the stack; raises when out of memory. */
static const char *keep_text(lua_State *lua, const char *key)
{
    const char *text = lua_tostring(lua, -1);
    const size_t length = lua_rawlen(lua, -1);
    if (strlen(text) != length)
        luaL_error(lua, "%s must not hold a zero byte", key);
    sandbox_charge_kept(lua, length + 1);
    const char *copy = arena_copy_n(&reading_of(lua)->list->arena, text, length);
    if (copy == NULL)
        case_out_of_memory(lua);
    return copy;
}

/* The text under key, or NULL. */
static const char *text_of(lua_State *lua, int index, const char *key)
{
    lua_getfield(lua, index, key);
    if (!lua_isnil(lua, -1) && lua_type(lua, -1) != LUA_TSTRING)
        luaL_error(lua, "%s must be a text", key);
    const char *text = lua_isnil(lua, -1) ? NULL : keep_text(lua, key);
    lua_pop(lua, 1);
    return text;
}

/* Of the case, or of its group. */
static const char *text_of_either(lua_State *lua, int one, int group, const char *key)
{
    const char *text = text_of(lua, one, key);
    return text != NULL ? text : text_of(lua, group, key);
}

/* The line of the pack that is being run. */
static int line_of(lua_State *lua)
{
    lua_Debug about;
    return lua_getstack(lua, 1, &about) && lua_getinfo(lua, "l", &about) ? about.currentline : 0;
}

/* A number, text, or true or false that a finding must show. */
static struct value value_of(lua_State *lua, int index, const char *key)
{
    struct value value = {.kind = VALUE_NONE};
    lua_getfield(lua, index, key);
    if (lua_type(lua, -1) == LUA_TNUMBER)
        value = (struct value){.kind = VALUE_NUMBER, .number = lua_tonumber(lua, -1)};
    else if (lua_isboolean(lua, -1))
        value = (struct value){.kind = VALUE_YES_NO, .yes = lua_toboolean(lua, -1)};
    else if (lua_type(lua, -1) == LUA_TSTRING)
        value = (struct value){.kind = VALUE_TEXT, .text = keep_text(lua, key)};
    else if (!lua_isnil(lua, -1))
        luaL_error(lua, "%s must be a number, a text, or true or false", key);
    lua_pop(lua, 1);
    return value;
}

/* Reading the base job and writing the case's is work done in C. */
enum { BYTES_A_STEP = 8 };

/* The base job that a case starts from. */
static const struct case_base *base_of(lua_State *lua, const char *from)
{
    const struct case_base *base = case_base_find(reading_of(lua)->bases, reading_of(lua)->home,
                                                  from, reading_of(lua)->problems);
    if (base == NULL)
        luaL_error(lua, "the base job rules/cases/%s.json cannot be used",
                   from == NULL ? "base" : from);
    return base;
}

/* A place's cases under the place of the base job would prove another law than its own. The
 * tables of the group and of the case are at 2 and 3. */
static void need_place(lua_State *lua)
{
    static const char BESIDE[] = "jurisdictions/", ENDING[] = ".cases.lua";
    const char *file = reading_of(lua)->file;
    const size_t length = strlen(file);
    if (strncmp(file, BESIDE, strlen(BESIDE)) != 0 || length < strlen(BESIDE) + strlen(ENDING))
        return;
    for (int table = 2; table <= 3; table++) {
        lua_getfield(lua, table, "under");
        const bool said = !lua_isnil(lua, -1);
        lua_pop(lua, 1);
        if (said)
            return;
    }
    luaL_error(
        lua,
        "says no place, and would be judged under that of the base job: write "
        "under = \"%s\"",
        lua_pushlstring(lua, file + strlen(BESIDE), length - strlen(BESIDE) - strlen(ENDING)));
}

/* What the job says there, "" for nothing. */
static const char *keep_said(lua_State *lua, const cJSON *job, const char *key)
{
    const cJSON *said = cJSON_GetObjectItemCaseSensitive(job, key);
    lua_pushstring(lua, cJSON_IsString(said) ? said->valuestring : "");
    const char *kept = keep_text(lua, key);
    lua_pop(lua, 1);
    return kept;
}

/* Puts the job of the case at 1 together from the tables of its group, at 2, and its
 * own, at 3. */
static int build_job(lua_State *lua)
{
    enum { GROUP = 2, ONE = 3 };
    struct rule_case *c = lua_touserdata(lua, 1);
    struct case_building *building = &reading_of(lua)->building;
    const struct case_base *base = base_of(lua, text_of_either(lua, ONE, GROUP, "from"));
    building->last = &building->first;
    building->job = cJSON_Duplicate(base->job, true);
    if (building->job == NULL)
        case_out_of_memory(lua);
    /* What a case calls these three, and what a job does. */
    const char *shared[] = {"jurisdiction", "date", "stage"};
    const char *keys[] = {"under", "date", "stage"};
    for (int i = 0; i < 3; i++) {
        const char *value = text_of_either(lua, ONE, GROUP, keys[i]);
        if (value != NULL) {
            lua_pushstring(lua, value);
            case_job_set(lua, building, shared[i]);
        }
    }
    case_job_with(lua, building, GROUP);
    case_job_with(lua, building, ONE);
    /* As much as if the job itself were kept: it is made again when the case is run. */
    sandbox_charge(lua, (base->length + building->bytes) / BYTES_A_STEP);
    sandbox_charge_kept(lua, base->length);
    reading_of(lua)->list->bytes += sizeof(*c) + building->bytes;
    need_place(lua); /* last: what cannot be built is told first */
    c->under = keep_said(lua, building->job, "jurisdiction");
    c->date = keep_said(lua, building->job, "date");
    c->changes = building->first;
    c->base = base->job;
    return 0;
}

static void drop_building(struct reading *reading)
{
    cJSON_Delete(reading->building.job);
    cJSON_free(reading->building.json);
    reading->building = (struct case_building){.arena = &reading->list->arena};
}

/* Absent is false. */
static bool flag_of(lua_State *lua, int table, const char *key)
{
    lua_getfield(lua, table, key);
    if (!lua_isnil(lua, -1) && !lua_isboolean(lua, -1))
        luaL_error(lua, "%s must be true or false", key);
    const bool set = lua_toboolean(lua, -1);
    lua_pop(lua, 1);
    return set;
}

/* The place of a case that names none. */
static bool base_is_under(lua_State *lua, int group, int one, const char *wanted)
{
    if (lua_getfield(lua, one, "from") == LUA_TNIL) {
        lua_pop(lua, 1);
        lua_getfield(lua, group, "from");
    }
    const struct case_base *base = case_base_find(reading_of(lua)->bases, reading_of(lua)->home,
                                                  lua_tostring(lua, -1), reading_of(lua)->problems);
    const cJSON *there = base == NULL ? NULL
                                      : cJSON_GetObjectItemCaseSensitive(base->job, "jurisdiction");
    lua_pop(lua, 1);
    return cJSON_IsString(there) && strcmp(there->valuestring, wanted) == 0;
}

/* Under the one place that is looked for, if one is. */
static bool is_under(lua_State *lua, int group, int one)
{
    const char *wanted = reading_of(lua)->under;
    const int tables[] = {one, group};
    for (int i = 0; wanted != NULL && i < 2; i++) {
        const bool said = lua_getfield(lua, tables[i], "under") == LUA_TSTRING;
        const bool there = said && strcmp(lua_tostring(lua, -1), wanted) == 0;
        lua_pop(lua, 1);
        if (said)
            return there;
    }
    return wanted == NULL || base_is_under(lua, group, one, wanted);
}

/* What is passed over in silence may have been meant: another day, another found. */
static void need_known(lua_State *lua, int table, const char *const *known)
{
    const struct keys *keys = keys_push(lua, table);
    struct nearest nearest;
    for (size_t i = 0; i < keys->count; i++)
        if (!nearest_among(&nearest, keys->names[i], known))
            luaL_error(lua, "unknown key \"%s\"%s%s%s", keys->names[i],
                       nearest.name == NULL ? "" : "; did you mean \"",
                       nearest.name == NULL ? "" : nearest.name, nearest.name == NULL ? "" : "\"?");
    lua_pop(lua, 1);
}

static const char *const GROUP_KEYS[] = {"under", "date",    "stage",    "from", "where",
                                         "with",  "without", "by_place", NULL};
static const char *const CASE_KEYS[] = {"under",    "date",     "stage",  "from",  "with",
                                        "without",  "by_place", "expect", "where", "says",
                                        "required", "found",    NULL};

/* The case in the table at `one`; `group` holds what its cases share. */
static void read_case(lua_State *lua, int group, int one, const char *rule)
{
    struct reading *reading = reading_of(lua);
    if (++reading->count > CASES_MOST)
        luaL_error(lua, "more than %d cases in one file", CASES_MOST);
    sandbox_charge_kept(lua, sizeof(struct rule_case));
    struct rule_case *c = arena_alloc(&reading->list->arena, sizeof(*c));
    if (c == NULL)
        case_out_of_memory(lua);
    need_known(lua, one, CASE_KEYS);
    lua_rawgeti(lua, one, 1);
    luaL_checkstring(lua, -1);
    c->title = keep_text(lua, "the title");
    lua_pop(lua, 1);
    c->file = reading->file;
    c->line = line_of(lua);
    c->rule = rule;
    c->by_place = flag_of(lua, one, "by_place") || flag_of(lua, group, "by_place");
    c->expect = text_of(lua, one, "expect");
    c->where = text_of_either(lua, one, group, "where");
    c->says = text_of(lua, one, "says");
    c->required = value_of(lua, one, "required");
    c->found = value_of(lua, one, "found");
    if (c->expect == NULL)
        luaL_error(lua, "case \"%s\" expects nothing", c->title);
    *reading->list->last = c;
    reading->list->last = &c->next;
    lua_pushcfunction(lua, build_job);
    lua_pushlightuserdata(lua, c);
    lua_pushvalue(lua, group);
    lua_pushvalue(lua, one);
    /* A case that cannot be built is one wrong case, not the end of its file. */
    const int built = sandbox_try(lua, 3);
    drop_building(reading);
    if (built == 0)
        return;
    sandbox_charge_kept(lua, lua_rawlen(lua, -1));
    c->fault = arena_copy(&reading->list->arena, lua_tostring(lua, -1));
    if (c->fault == NULL)
        case_out_of_memory(lua);
}

static bool is_left_out(const struct reading *reading, const char *rule)
{
    const size_t length = reading->topic == NULL ? 0 : strlen(reading->topic);
    if (reading->rule != NULL && strcmp(rule, reading->rule) != 0)
        return true;
    return length > 0 && (strncmp(rule, reading->topic, length) != 0 || rule[length] != '.');
}

/* cases "rule" { ... }: the second call, with the table. */
static int finish_cases(lua_State *lua)
{
    struct reading *reading = reading_of(lua);
    luaL_checktype(lua, 1, LUA_TTABLE);
    if (is_left_out(reading, lua_tostring(lua, lua_upvalueindex(1))))
        return 0;
    lua_pushvalue(lua, lua_upvalueindex(1));
    const char *rule = keep_text(lua, "a rule's name");
    lua_pop(lua, 1);
    const size_t count = (size_t)lua_rawlen(lua, 1);
    need_known(lua, 1, GROUP_KEYS);
    if (count == 0)
        return luaL_error(lua, "cases \"%s\" has no cases", rule);
    for (size_t i = 1; i <= count; i++) {
        lua_rawgeti(lua, 1, (lua_Integer)i);
        luaL_checktype(lua, -1, LUA_TTABLE);
        if (is_under(lua, 1, lua_gettop(lua)))
            read_case(lua, 1, lua_gettop(lua), rule);
        lua_settop(lua, 1);
    }
    return 0;
}

/* The first call, with the rule's name. */
static int start_cases(lua_State *lua)
{
    luaL_checkstring(lua, 1);
    lua_settop(lua, 1);
    lua_pushcclosure(lua, finish_cases, 1);
    return 1;
}

static int define(lua_State *lua)
{
    lua_pushcfunction(lua, start_cases);
    sandbox_define(lua, "cases");
    return 0;
}

/* A sandbox a file: none sees what another defined. */
static void read_file(struct reading *reading, const char *path)
{
    const struct source *source = home_read(reading->home, path, &reading->list->arena,
                                            &reading->list->sources, reading->problems);
    struct sandbox *sandbox = source == NULL ? NULL : sandbox_open();
    if (sandbox == NULL) {
        if (source != NULL)
            problem_out_of_memory(reading->problems);
        return;
    }
    reading->file = path;
    reading->count = 0;
    sandbox->user = reading;
    enum sandbox_stop stop = sandbox_setup(sandbox, define, NULL);
    if (stop != SANDBOX_DONE) /* our own names: no file is at fault */
        problem_out_of_memory(reading->problems);
    else
        stop = sandbox_run(sandbox, source->text, source->length, source->path);
    if (stop != SANDBOX_DONE)
        problem_at_line(reading->problems, PROBLEM_RULES, sandbox_place(sandbox, stop, path), 0, 0,
                        "%s", sandbox_message(sandbox, stop));
    drop_building(reading);
    sandbox_close(sandbox);
}

void case_file_read(const struct case_file *file, struct case_list *list, struct problems *problems)
{
    struct reading reading = {.home = file->home,
                              .problems = problems,
                              .list = list,
                              .bases = file->bases,
                              .building = {.arena = &list->arena},
                              .rule = file->rule,
                              .topic = file->topic,
                              .under = file->under};
    read_file(&reading, file->path);
}

cJSON *case_job(const struct rule_case *c)
{
    return case_change_all(c->base, c->changes);
}

void case_list_free(struct case_list *list)
{
    arena_free(&list->arena);
    *list = (struct case_list){0};
}
