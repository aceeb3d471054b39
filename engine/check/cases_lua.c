#include "check/cases.h"

#include "base/number.h"
#include "base/strings.h"
#include "check/case_job.h"
#include "check/check.h"
#include "job/json.h"

#include <lauxlib.h>
#include <lua.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* One case as read: what job, and what must come out. */
struct rule_case {
    const char *file, *rule, *title;
    int line;
    cJSON *job;
    const char *expect, *where, *says;
    struct value required, found; /* VALUE_NONE: not looked at */
    struct rule_case *next;
};

/* What the cases have shown of a rule. */
struct seen {
    const char *rule;
    bool met, unmet, lacking;
    struct seen *next;
};

struct running {
    struct laws *laws;
    struct problems *problems;
    struct arena arena;
    struct sources sources;
    const char *file;
    struct rule_case *first, **last;
    struct seen *seen;
    struct strings files;
};

static struct running *running_of(lua_State *lua)
{
    return sandbox_of(lua)->user;
}

static const char *text_of(lua_State *lua, int index, const char *key)
{
    lua_getfield(lua, index, key);
    if (!lua_isnil(lua, -1) && lua_type(lua, -1) != LUA_TSTRING)
        luaL_error(lua, "%s must be a text", key);
    const char *text = arena_copy(&running_of(lua)->arena, lua_tostring(lua, -1));
    lua_pop(lua, 1);
    return text;
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
        value = (struct value){.kind = VALUE_TEXT,
                               .text = arena_copy(&running_of(lua)->arena, lua_tostring(lua, -1))};
    else if (!lua_isnil(lua, -1))
        luaL_error(lua, "%s must be a number, a text, or true or false", key);
    lua_pop(lua, 1);
    return value;
}

/* The base job a case starts from, parsed afresh. */
static cJSON *base_job(lua_State *lua, const char *from)
{
    struct running *running = running_of(lua);
    char path[160];
    snprintf(path, sizeof(path), "rules/cases/%.80s.json", from == NULL ? "base" : from);
    const size_t before = running->problems->count;
    const struct source *source = home_read(running->laws->home, path, &running->arena,
                                            &running->sources, running->problems);
    cJSON *job = NULL;
    if (source != NULL)
        json_read(&job, source->text, source->length, path, running->problems);
    if (job == NULL || running->problems->count != before)
        luaL_error(lua, "the base job %s cannot be used", path);
    return job;
}

/* The case in the table at `one`; `group` holds what its cases share. The
 * job is built last, so that an error before it leaks nothing. */
static void read_case(lua_State *lua, int group, int one, const char *rule)
{
    struct running *running = running_of(lua);
    struct rule_case *c = arena_alloc(&running->arena, sizeof(*c));
    if (c == NULL)
        luaL_error(lua, "out of memory");
    lua_rawgeti(lua, one, 1);
    c->title = arena_copy(&running->arena, luaL_checkstring(lua, -1));
    lua_pop(lua, 1);
    c->file = running->file;
    c->rule = rule;
    c->expect = text_of(lua, one, "expect");
    c->where = text_of(lua, one, "where");
    c->says = text_of(lua, one, "says");
    c->required = value_of(lua, one, "required");
    c->found = value_of(lua, one, "found");
    if (c->expect == NULL)
        luaL_error(lua, "case \"%s\" expects nothing", c->title);
    *running->last = c;
    running->last = &c->next;
    c->job = base_job(lua, text_of(lua, group, "from"));
    const char *shared[] = {"jurisdiction", "date", "stage"};
    const char *keys[] = {"under", "date", "stage"};
    for (int i = 0; i < 3; i++) {
        const char *value = text_of(lua, one, keys[i]);
        if (value == NULL)
            value = text_of(lua, group, keys[i]);
        if (value != NULL) {
            lua_pushstring(lua, value);
            case_job_set(lua, c->job, shared[i]);
        }
    }
    case_job_with(lua, c->job, group);
    case_job_with(lua, c->job, one);
}

static int finish_cases(lua_State *lua)
{
    struct running *running = running_of(lua);
    luaL_checktype(lua, 1, LUA_TTABLE);
    const char *rule = arena_copy(&running->arena, lua_tostring(lua, lua_upvalueindex(1)));
    const size_t count = (size_t)lua_rawlen(lua, 1);
    if (count == 0)
        return luaL_error(lua, "cases \"%s\" has no cases", rule);
    for (size_t i = 1; i <= count; i++) {
        lua_rawgeti(lua, 1, (lua_Integer)i);
        luaL_checktype(lua, -1, LUA_TTABLE);
        read_case(lua, 1, lua_gettop(lua), rule);
        lua_settop(lua, 1);
    }
    return 0;
}

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

static void read_file(struct running *running, const char *path)
{
    const struct source *source = home_read(running->laws->home, path, &running->arena,
                                            &running->sources, running->problems);
    struct sandbox *sandbox = source == NULL ? NULL : sandbox_open();
    if (sandbox == NULL) {
        if (source != NULL)
            problem_out_of_memory(running->problems);
        return;
    }
    running->file = path;
    sandbox->user = running;
    enum sandbox_stop stop = sandbox_setup(sandbox, define, NULL);
    if (stop == SANDBOX_DONE)
        stop = sandbox_run(sandbox, source->text, source->length, source->path);
    if (stop != SANDBOX_DONE)
        problem_at_line(running->problems, PROBLEM_RULES, stop == SANDBOX_ERROR ? NULL : path, 0, 0,
                        "%s", sandbox_message(sandbox, stop));
    sandbox_close(sandbox);
}

/* Running --------------------------------------------------------------------------- */

static struct seen *seen_of(struct running *running, const char *rule)
{
    for (struct seen *s = running->seen; s != NULL; s = s->next)
        if (strcmp(s->rule, rule) == 0)
            return s;
    struct seen *seen = arena_alloc(&running->arena, sizeof(*seen));
    if (seen == NULL)
        return NULL;
    seen->rule = arena_copy(&running->arena, rule);
    seen->next = running->seen;
    running->seen = seen;
    return seen;
}

static void note_seen(struct running *running, const struct finding *finding)
{
    struct seen *seen = seen_of(running, finding->rule);
    if (seen == NULL)
        return;
    /* A finding with a mend compared and was not met. */
    const bool compared = finding->outcome == OUTCOME_PASS || finding->outcome == OUTCOME_WARN
        || finding->outcome == OUTCOME_FAIL;
    seen->met = seen->met || (compared && finding->mend == NULL);
    seen->unmet = seen->unmet || (compared && finding->mend != NULL);
    seen->lacking = seen->lacking || finding->outcome == OUTCOME_OPEN;
}

static void wrong(struct text *out, const struct rule_case *c, const char *what)
{
    text_addf(out, "%s: %s: \"%s\"%s%s: %s\n", c->file, c->rule, c->title,
              c->where == NULL ? "" : " at ", c->where == NULL ? "" : c->where, what);
}

static bool value_is(const struct value *value, const struct value *wanted)
{
    if (wanted->kind == VALUE_NONE)
        return true;
    if (value->kind != wanted->kind)
        return false;
    if (value->kind == VALUE_NUMBER)
        return number_equals(value->number, wanted->number, value->unit);
    return value->kind == VALUE_TEXT ? strcmp(value->text, wanted->text) == 0
                                     : value->yes == wanted->yes;
}

static bool finding_holds(const struct rule_case *c, const struct finding *finding,
                          struct text *out)
{
    char what[700];
    const char *word = outcome_word(finding->outcome);
    if (strcmp(word, c->expect) != 0)
        snprintf(what, sizeof(what), "expected %s, got %s: %.400s", c->expect, word, finding->says);
    else if (c->says != NULL && strstr(finding->says, c->says) == NULL)
        snprintf(what, sizeof(what), "does not say \"%s\": %.400s", c->says, finding->says);
    else if (!value_is(&finding->required, &c->required))
        snprintf(what, sizeof(what), "demands something else than expected: %.400s", finding->says);
    else if (!value_is(&finding->found, &c->found))
        snprintf(what, sizeof(what), "found something else than expected: %.400s", finding->says);
    else
        return true;
    wrong(out, c, what);
    return false;
}

/* Without `where` every finding of the rule must come out as expected. */
static bool findings_hold(struct running *running, const struct rule_case *c,
                          const struct result *result, struct text *out)
{
    size_t matched = 0;
    bool held = true;
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (strcmp(finding->rule, c->rule) != 0)
            continue;
        if (c->where != NULL && (finding->where == NULL || strcmp(finding->where, c->where) != 0))
            continue;
        matched++;
        if (finding_holds(c, finding, out))
            note_seen(running, finding);
        else
            held = false;
    }
    if (matched == 0)
        wrong(out, c, "the rule has no finding there");
    return held && matched > 0;
}

static bool refusal_holds(const struct rule_case *c, const struct checked *checked,
                          struct text *out)
{
    struct text said = TEXT_EMPTY;
    problems_write(&checked->problems, &said);
    const bool refused = strcmp(c->expect, "refused") == 0
        && (c->says == NULL || strstr(text_string(&said), c->says) != NULL);
    if (!refused) {
        char what[700];
        snprintf(what, sizeof(what), "expected %s, but the job was refused: %.500s", c->expect,
                 text_string(&said));
        wrong(out, c, what);
    }
    text_free(&said);
    return refused;
}

static bool run_case(struct running *running, struct rule_case *c, struct text *out)
{
    const struct overrides none = {0};
    struct checked checked = {0};
    bool held;
    check_job(running->laws, c->job, &none, c->file, &checked);
    if (!checked.judged) {
        held = refusal_holds(c, &checked, out);
    } else if (strcmp(c->expect, "refused") == 0) {
        wrong(out, c, "expected the job to be refused; it was judged");
        held = false;
    } else {
        held = findings_hold(running, c, &checked.result, out);
    }
    checked_free(&checked);
    return held;
}

static bool of_topic(const char *rule, const char *topic)
{
    const size_t length = topic == NULL ? 0 : strlen(topic);
    return topic == NULL || (strncmp(rule, topic, length) == 0 && rule[length] == '.');
}

/* A rule that no case shows met, not met and lacking a fact is not tested. */
static size_t untested(struct running *running, const char *topic, struct text *out)
{
    size_t count = 0;
    for (const struct law *law = running->laws->first; law != NULL; law = law->next) {
        for (const struct rule *r = law->book->rules; r != NULL; r = r->next) {
            struct seen *seen = of_topic(r->id, topic) ? seen_of(running, r->id) : NULL;
            if (seen == NULL || (seen->met && seen->unmet && seen->lacking))
                continue;
            text_addf(out, "%s:%d: rule \"%s\" has no case that is%s%s%s\n", r->file, r->line, r->id,
                      seen->met ? "" : " met", seen->unmet ? "" : " not-met",
                      seen->lacking ? "" : " lacking-a-fact");
            seen->met = seen->unmet = seen->lacking = true;
            count++;
        }
    }
    return count;
}

static void note_file(void *data, const char *path)
{
    struct running *running = data;
    strings_add(&running->files, &running->arena, arena_copy(&running->arena, path));
}

static void list_files(struct running *running, const char *topic)
{
    if (topic != NULL) {
        char *path = arena_format(&running->arena, "rules/cases/%s.lua", topic);
        strings_add(&running->files, &running->arena, path);
        return;
    }
    home_each(running->laws->home, "rules/cases", ".lua", 0, note_file, running);
    home_each(running->laws->home, "jurisdictions", ".cases.lua", 6, note_file, running);
}

static void tally_rules(struct running *running, struct tally *tally)
{
    for (const struct seen *s = running->seen; s != NULL; s = s->next)
        tally->rules++;
}

int cases_run(struct laws *laws, const char *topic, struct tally *tally, struct text *out,
              struct problems *problems)
{
    struct running running = {.laws = laws, .problems = problems};
    running.last = &running.first;
    list_files(&running, topic);
    for (size_t i = 0; i < running.files.count && !running.arena.failed; i++)
        read_file(&running, running.files.items[i]);
    for (struct rule_case *c = running.first; c != NULL; c = c->next) {
        if (c->job != NULL && problems->count == 0 && run_case(&running, c, out))
            tally->held++;
        else
            tally->failed++;
        cJSON_Delete(c->job);
    }
    tally_rules(&running, tally);
    if (problems->count == 0)
        tally->failed += untested(&running, topic, out);
    if (running.arena.failed)
        problem_out_of_memory(problems);
    arena_free(&running.arena);
    return tally->failed > 0 || problems->count > 0 || problems->out_of_memory ? -1 : 0;
}
