/* sort.h - the order of a list, the same each time.
 *
 * Lua's own sort picks where to part a lopsided list by the clock: what it makes of items
 * that come equal, and how often it compares, changes from run to run. This one merges:
 * items that come equal stay in the order they had.
 */
#ifndef EAVEMARK_SANDBOX_SORT_H
#define EAVEMARK_SANDBOX_SORT_H

#include <lua.h>
#include <stddef.h>

/* Inside a call: the list at index (a plain table) holds its items 1 to count in order.
 * comes_before: the index of a function that says of two items whether the first comes
 * before the second; 0: numbers before texts, each in their own
 * order, texts byte by byte. The caller charges.
 * Raises what the function raises, and where it says of two items that each comes before
 * the other; the list is then as it was. */
void sort_list(lua_State *lua, int index, size_t count, int comes_before);

#endif
