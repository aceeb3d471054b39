/* place_reading.h - what the files that read a place share while it is being read.
 * Internal to the room; every function may raise.
 */
#ifndef EAVEMARK_PROFILE_PLACE_READING_H
#define EAVEMARK_PROFILE_PLACE_READING_H

#include "base/strings.h"
#include "profile/place.h"

#include <lua.h>

/* Charges for looking through the file: C's own search is quick, but not free. */
enum { PLACE_BYTES_A_STEP = 256 };

/* What the functions of a place's file find through sandbox_of(): everything read so far,
 * and where the next goes. */
struct loading {
    struct arena *arena;
    struct problems *problems;
    struct place *place;
    const char *id;
    struct block *block; /* being read */
    struct entry **last; /* where its next entry goes */
    struct entry_way **last_way;
    const struct source *source;   /* the file being run: the place's own, or a part */
    const char *row;               /* the figure being read is this row of a table; or NULL */
    int line;                      /* where the figure being read is written; 0: to be looked for */
    struct strings looked_through; /* files that were, for traps */
    int editions;
    size_t figures, parts, drops, said;
};

struct loading *place_loading(lua_State *lua);

/* Adds a problem at this line of the file being run; raises when there were too many. */
void place_say(lua_State *lua, int line, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

/* Reads the figure on top of the stack, a table as it stands in figures { }. */
void place_figure_read(lua_State *lua, const char *name);

/* Reads `figures` of the block whose table is at index; figures { ... } of a part. */
void place_figures_read(lua_State *lua, int index);
int place_figures_of_part(lua_State *lua);

/* Reads the block whose table is at index. */
void place_block_read(lua_State *lua, int index);

/* Has the text at index nothing in it but blanks? */
bool place_is_blank(lua_State *lua, int index);

/* Memory of the place, zeroed; a text copied into it; what a table holds under a key: a
 * text or NULL, a status; the list at index as a set. What does not fit is a problem. */
void *place_keep(lua_State *lua, size_t count, size_t size);
const char *place_keep_text(lua_State *lua, const char *text);
const char *place_text(lua_State *lua, int index, const char *key, int line);
enum status place_status(lua_State *lua, int table, int line);
const char *place_copied(lua_State *lua, int index);
bool place_flag(lua_State *lua, int index, const char *key);
long place_date(lua_State *lua, int index, const char *key);
enum sense place_sense(lua_State *lua, int table, int line);

/* Says which keys of the table at index are not known; the line to report for a name. */
void place_closed_keys(lua_State *lua, int index, const char *const *known, int line);
int place_line_of(lua_State *lua, const char *name);
struct value place_keep_set(lua_State *lua, int index, const char *name, int line);

/* A table of a block whose entries have names: what it is called, what is said of one
 * without a name (NULL: nothing), and of more than PLACE_DROPS_MOST together ("states",
 * "things"). read gets the table's index and a name; each entry goes in front of those
 * read before it, so they are read from the last: the list ends in the order of names. */
struct named_entries {
    const char *key, *nameless, *verb, *things;
    void (*read)(lua_State *lua, int table, const char *name);
};
void place_read_named(lua_State *lua, int index, const struct named_entries *entries);

/* Reads `facts` of the block whose table is at index. */
void place_read_facts(lua_State *lua, int index);

/* Reads `zones` of the block whose table is at index. */
void place_zones_read(lua_State *lua, int index);

/* Reads `adopts` of the block whose table is at index. */
void place_adopts_read(lua_State *lua, int index);

/* Defines `figure` for the file being run. */
void figure_columns_define(lua_State *lua);

#endif
