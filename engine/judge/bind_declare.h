/* bind_declare.h - reading the declarations of rule files: word "name" { ... }.
 *
 * Each kind of declaration is a row of a table: its word, the keys it may have, and
 * what takes it over once they are looked through. That function finds the table of
 * the declaration at index 1; whatever it keeps lives in the rulebook's arena and is
 * charged to the file. All of this may raise: only for use inside the sandbox.
 */
#ifndef EAVEMARK_JUDGE_BIND_DECLARE_H
#define EAVEMARK_JUDGE_BIND_DECLARE_H

#include "judge/judging.h"

#include <lua.h>
#include <stdint.h>

struct condition;
struct fact;
struct scope;
struct reads_part;
struct lever;
struct figure_slot;

enum { DECLARE_PARTS_MOST = 64 };

struct declaring {
    struct rulebook *book;
    const char *home;
    struct problems *problems;
    const char *file; /* being run */
    struct strings files;
    size_t field_count, quantities, impossibles, cautions, abouts, card_parts, card_names;
    size_t conditions;
    const struct reads_part *parts[DECLARE_PARTS_MOST]; /* of functions in the declaration */
    size_t part_count;
    const struct reads_part *quantities_read; /* what the quantities of a file do */
    struct strings elsewhere; /* figures that the row names and this place has no need of */
    bool made;                /* the fields of the file are declared already (fields_made.h) */
    const void *keyed;        /* the table whose keys were looked through last; or NULL */
    uint64_t key_bits;        /* of them, by declare_get; others are not there */
    bool fields_only;         /* of every place, for a job whose place is not known */
};

struct declaration {
    const char *word;
    const char *const *keys; /* the keys it may have; NULL: a list, or any */
    lua_CFunction finish;
    bool is_field; /* of account when only fields are wanted */
};

/* Tables that end with a NULL word. */
extern const struct declaration DECLARE_FIELDS[], DECLARE_RULES[], DECLARE_ROWS[],
    DECLARE_CAUTIONS[], DECLARE_CARDS[], DECLARE_DRAWINGS[], DECLARE_FOLLOWS[];

/* Defines the words of a table for the files to come. */
void declare_words(lua_State *lua, const struct declaration *declarations);

/* Without a place: another has declared this field too, in words of its own; the catalogue then
 * has those of both. False where it is yet to be declared. */
bool declare_beside(struct declaring *reading, const char *name, const struct field *spec);

/* Declares the zones of the place's own map as fields; or, without a place, those of every
 * place, so that any real name is known. */
void declare_zones(struct declaring *reading);
void declare_every_zone(struct declaring *reading);

/* Defines common, by which the file that is run first shares names with the others. */
#define DECLARE_COMMON_FILE "rules/common.lua"
void bind_common(lua_State *lua);

/* Defines the words that conditions of rows are written with. */
void bind_condition(lua_State *lua);

/* Raises unless a file is being loaded. */
struct declaring *declaring_of(lua_State *lua);
struct arena *declare_arena(lua_State *lua);

/* The name and the line of the declaration at hand. */
const char *declare_name(lua_State *lua);
int declare_line(lua_State *lua);

/* Raises "FILE:LINE: "name": message" at the declaration. */
int declare_refuse(lua_State *lua, const char *format, ...)
    __attribute__((format(printf, 2, 3), noreturn));

/* Zeroed memory that outlives the call; a copy of a text that does. */
void *declare_keep(lua_State *lua, size_t count, size_t size);
const char *declare_keep_text(lua_State *lua, const char *text);

/* Raises when the text on top of the stack would be cut short in C. */
void declare_check_zero(lua_State *lua, const char *key);

/* Refuses keys of the table on top of the stack that are not known, naming the nearest;
 * known ends with NULL. */
void declare_keys(lua_State *lua, const char *const *known);

/* Pushes what stands under the key of the table at index 1; gives its type, as lua_getfield
 * does. Of the twenty keys that a declaration may have most are not there: that is known without
 * a look at the table, where declare_keys has been through it. */
int declare_get(lua_State *lua, const char *key);

/* What stands under a key: a text, or NULL (need: refused without one); true or
 * false; a function as a registry reference, or RULE_NO_FUNCTION. */
const char *declare_text(lua_State *lua, const char *key);
const char *declare_need_text(lua_State *lua, const char *key);
bool declare_flag(lua_State *lua, const char *key);
int declare_function(lua_State *lua, const char *key);

/* The same of the table on top of the stack. What is there and no function counts as none. */
int declare_function_within(lua_State *lua, const char *key);

/* What may be written out or worked out: a function, or *text is set; neither where
 * the key is absent. */
int declare_function_or_text(lua_State *lua, const char *key, const char **text);

/* Counts one more of these; raises when there are too many. */
void declare_count(lua_State *lua, size_t *count, size_t most, const char *what);

enum stage declare_stage(lua_State *lua, const char *word);

/* Sets those that the key `stages` lists. */
void declare_stages(lua_State *lua, bool stages[STAGE_COUNT]);

/* A rule with what every rule says; it is added once the rest is read. */
struct rule *declare_new_rule(lua_State *lua);
void declare_add_rule(lua_State *lua, struct rule *rule);

/* Sets what the rule may read, once its row and functions are read. */
void declare_rule_reads(lua_State *lua, struct rule *rule, const struct lever *levers);

/* One more lever, the figure, after those. */
const struct lever *declare_lever(lua_State *lua, const struct lever *before,
                                  const struct figure_slot *figure);

/* The conditions under the key `when`, or NULL. *levers: the switches without which they never
 * hold. */
const struct condition *declare_when(lua_State *lua, const struct rule *rule,
                                     const struct lever **levers);

/* The condition on top of the stack; the fact of this path. Refused where they name what
 * is not there. */
const struct condition *declare_condition(lua_State *lua, const struct scope *scope);
const struct fact *declare_fact(lua_State *lua, const struct scope *scope, const char *path);

/* Sets per[] to the lists that the key `per` ("attics[].vents") goes through; returns
 * how many. */
size_t declare_per(lua_State *lua, const struct field *per[RULE_DEEPEST_PER]);

#endif
