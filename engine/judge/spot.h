/* spot.h - the places of one job, each found once: a fact is then read by its number
 * among its parent's fields, not by its name. Internal to the judge room.
 *
 * A spot is there for every field of the catalogue, whether or not the job has it. Spots
 * are made when they are first asked for, in the arena given, and live as long.
 */
#ifndef EAVEMARK_JUDGE_SPOT_H
#define EAVEMARK_JUDGE_SPOT_H

#include "base/arena.h"
#include "base/text.h"
#include "job/fields.h"

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* What of a place a survey goes by (survey.h); of no account without one. */
struct spot_seen {
    size_t round;   /* in which the job had it */
    size_t changed; /* in which it was last otherwise than the round before */
    size_t touched; /* by which of the things judged it was last touched */
    int type;       /* of its JSON; 0: it was not there */
    char kind;      /* and its value, as of spot_value */
    size_t length, room;
    char *bytes;
    uint64_t *wholes;           /* that rest on it, a bit each (settle.h); NULL: none */
    struct spot *first, *after; /* which came first below it, and which after it */
};

struct kept_piece; /* finding.h */

struct spot {
    const cJSON *json; /* NULL: the job does not have it, or it does not fit the field */
    const struct field *field;
    bool item; /* an item of the list `field` */
    struct spot *parent;
    size_t number;       /* of an item, from 0 */
    const char *pointer; /* JSON pointer; NULL: not asked for yet */
    struct spot *below;  /* its fields by their index, or its items; NULL: not opened yet */
    size_t below_count;
    size_t below_room;       /* of a list: for so many items */
    struct spot *referred;   /* the item that a reference names */
    bool followed;           /* referred was looked for */
    unsigned char stands;    /* 0: json is NULL; else how the job has it */
    unsigned word;           /* the memory's number for its value; 0: not asked for yet */
    struct kept_piece *told; /* as a report writes that it was read; NULL: not yet */
    size_t read_by;          /* the last record that read it; 0: none */
    size_t known_by;         /* the last trail that came to it, */
    unsigned known_as;       /* and as which of its spots it did first */
    struct spot_seen seen;
};

/* What a field holds, as bytes that are equal when it is. */
struct spot_value {
    char kind; /* a letter for the kind */
    const char *bytes;
    size_t length;
};

/* The job itself. NULL when out of memory, as of all that give a spot. */
struct spot *spot_root(struct arena *arena, const cJSON *job, const struct fields *fields);

/* The fields of a group or item, found now; for spot_child. */
struct spot *spot_open(struct arena *arena, struct spot *spot);

/* The field below a group or an item; absent below an absent one. */
static inline struct spot *spot_child(struct arena *arena, struct spot *spot,
                                      const struct field *child)
{
    struct spot *below = spot == NULL          ? NULL
                         : spot->below != NULL ? spot->below
                                               : spot_open(arena, spot);
    return below == NULL ? NULL : &below[child->index];
}

/* How many items a list has, and one of them. */
size_t spot_count(struct arena *arena, struct spot *list);
struct spot *spot_item(struct arena *arena, struct spot *list, size_t number);

/* The item that a reference names, looked for once; NULL for none. */
struct spot *spot_referred(struct arena *arena, struct spot *reference,
                           const struct fields *fields);

/* How the job has it, beyond its value: whether its place has to do with it. */
unsigned char spot_standing(const cJSON *node);

/* Of a text, number, yes or no, or a list of such, which is written into room: its bytes are
 * good until that is used again, and none when it failed. */
struct spot_value spot_value(struct text *room, const cJSON *json);

/* "/roof/slopes/0/pitch"; "" where memory ran out. */
const char *spot_pointer(struct arena *arena, struct spot *spot);

#endif
