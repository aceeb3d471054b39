/* scan.h - the strict scanner behind json_read, which builds the tree as it goes; private
 * to this room.
 *
 * One pass over the text with an explicit stack of JSON_DEEPEST levels: no
 * recursion, whatever the text. A slip inside a text or a number is reported
 * and the scan goes on; a slip of structure ends it. scan.c is the grammar,
 * scan_token.c texts and numbers, scan_keys.c repeated keys, scan_known.c keys of a catalogue,
 * scan_tree.c the tree.
 */
#ifndef EAVEMARK_JOB_SCAN_H
#define EAVEMARK_JOB_SCAN_H

#include "base/arena.h"
#include "base/problem.h"
#include "job/json.h"
#include "job/tree.h"

#include <limits.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* A key of an object still open. */
struct scan_key {
    const char *text; /* escapes decoded; in the job text or the scan's arena */
    size_t length;
    size_t at;
    int line;
    int first_line; /* of the same key given before; 0 when it was not */
};

enum { SCAN_KNOWN_MOST = 256 }; /* fields of one object */

struct scan_level {
    bool object;               /* else a list */
    bool twice;                /* of an object: a key was given again */
    int line;                  /* where it was opened */
    size_t first_key;          /* of an object: its first in scan.keys */
    size_t item;               /* of a list: the item being read, from 0 */
    uint64_t seen[4];          /* of an object: a bit for what its keys look like */
    cJSON *node;               /* its own; NULL once a problem was found */
    const struct field *field; /* whose members an object's are, or those of a list's items; NULL:
                                  of no field */
    const struct field *last;  /* of an object: its member found last */
    uint64_t given[SCAN_KNOWN_MOST / 64]; /* and a bit for each found, by its index */
};

enum scan_expect {
    SCAN_VALUE,
    SCAN_FIRST_KEY, /* or the end of the object */
    SCAN_NEXT_KEY,
    SCAN_COLON,
    SCAN_FIRST_ITEM, /* or the end of the list */
    SCAN_NEXT_ITEM,
    SCAN_COMMA, /* or the end of the object or list */
    SCAN_END,
};

struct scan {
    const char *text;
    size_t length, at;
    int line;
    size_t line_start;
    enum scan_expect expect;
    bool stopped; /* no sense in reading on */
    const char *file;
    struct problems *problems;
    size_t found; /* problems added by this scan */
    struct scan_level levels[JSON_DEEPEST];
    size_t depth;
    struct scan_key *keys; /* of all open objects, outermost first */
    size_t key_count, key_capacity;
    struct arena arena;
    struct arena *into; /* that the tree lies in; NULL: it is cJSON's own */
    char *copy;         /* of the text, in that arena: the tree's texts and keys lie in it */
    const struct fields *likely; /* that the job is probably held against; NULL: none */
    bool again;                  /* to be scanned without it */
    bool spoken;                 /* not all figures are numbers, or not all members noted */
    char *known;                 /* the key read last, when it is one of a field: in the copy */
    const struct field *field;   /* that it is; NULL for another */
    struct tree_node *nodes;     /* room for so many more in that arena */
    size_t node_count;
    cJSON *tree;
};

/* Scans the whole text and gives the tree: NULL when any problems were added, or memory ran
 * out (one of them says so). It lies in the arena `into` (tree.h), or, that being NULL, is
 * to be freed with cJSON_Delete. likely: as of json_read_likely; NULL without an arena. */
cJSON *scan_text(const char *text, size_t length, const char *file, const struct fields *likely,
                 struct arena *into, struct problems *problems);

/* For the parts of the scanner among themselves. ---------------------------- */

/* Adds a problem at a byte of the current line; past JSON_MOST_PROBLEMS the
 * scan stops, and says so. */
void scan_report(struct scan *scan, size_t at, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

/* Counts one more problem; false when it is one too many to be listed. */
bool scan_counts(struct scan *scan);

/* Ends the scan for want of memory. */
void scan_out_of_memory(struct scan *scan);

/* Reads the text whose opening quote is next; true when it was sound. */
bool scan_string(struct scan *scan);

/* Reads the number or word (true, false, null) that is next. */
void scan_word(struct scan *scan);

/* Decodes the sound escapes of a text; in the scan's arena. NULL when out of memory. */
const char *scan_decode(struct scan *scan, const char *from, size_t *length);

/* What numbers and bare words are made of; enough is taken to quote a wrong one whole. */
static inline bool scan_is_word(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || c == '+'
           || c == '-' || c == '.' || c == '_';
}

/* Adds what was just read to the tree, unless a problem was found before: an object or list
 * that opens, a number, true, false or null by its first letter, the text between two
 * bytes. */
cJSON *scan_tree_level(struct scan *scan, bool object);
void scan_tree_number(struct scan *scan, double value);
void scan_tree_word(struct scan *scan, char first);
void scan_tree_text(struct scan *scan, size_t from, size_t to);

/* A node of this type in room of the scan's arena; NULL when out of memory, which ends the
 * scan. */
cJSON *scan_tree_node(struct scan *scan, int type);

/* Writes a number into its node. */
static inline void scan_tree_write(cJSON *node, double value)
{
    /* -0 is 0: a rule that divides must not meet the other one. */
    node->valuedouble = value == 0 ? 0 : value;
    node->valueint = value >= INT_MAX ? INT_MAX : value <= INT_MIN ? INT_MIN : (int)value;
}

/* Notes the key between the bytes from and to (quotes left out). */
void scan_key_add(struct scan *scan, size_t from, size_t to, bool sound);

/* Reads the members that come next in the innermost object, the first of whose quotes is next, as
 * long as their keys are fields of it. The last may be read in part. False when there is none:
 * nothing is read then. */
bool scan_known_members(struct scan *scan);

/* The field of what stands at the current place; NULL: of none that is known. */
static inline const struct field *scan_field(const struct scan *scan)
{
    if (scan->depth == 0)
        return scan->likely == NULL ? NULL : scan->likely->root;
    const struct scan_level *level = &scan->levels[scan->depth - 1];
    return level->object ? scan->field : level->field;
}

/* The same for an object or list that opens there; none if it has more fields than are kept
 * apart. */
const struct field *scan_known_field(struct scan *scan);

/* Ends a scan that a catalogue was likely for: what is out of the common is left to one
 * without. */
static inline void scan_again(struct scan *scan)
{
    scan->again = scan->stopped = true;
}

/* Reports the repeated keys of the innermost object and forgets its keys. */
void scan_keys_close(struct scan *scan);

#endif
