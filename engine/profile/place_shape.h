/* place_shape.h - what a place is made of, told as data: which members of which structs
 * are texts, numbers, lists. place_made.c and place_made_write.c go by it: a member that is
 * not listed here would be lost on the way.
 */
#ifndef EAVEMARK_PROFILE_PLACE_SHAPE_H
#define EAVEMARK_PROFILE_PLACE_SHAPE_H

#include <stddef.h>

/* WORD is an int or an enum; DAY a long. */
enum part_kind { FLAG, WORD, DAY, NUMBER, TEXT, TEXTS, INSIDE, LIST };

struct shape;

struct part {
    enum part_kind kind;
    size_t at;                 /* in its struct */
    size_t count_at;           /* TEXTS: where their count stands */
    const struct shape *shape; /* INSIDE, LIST: of what */
};

/* Of an INSIDE one there is no next. */
struct shape {
    size_t size, next;
    const struct part *parts;
    size_t part_count;
};

/* For tables of parts. */
#define PART(kind, type, member)              \
    {                                         \
        kind, offsetof(type, member), 0, NULL \
    }
#define PART_TEXTS(type, member, count)                            \
    {                                                              \
        TEXTS, offsetof(type, member), offsetof(type, count), NULL \
    }
#define PART_OF(kind, type, member, shape)        \
    {                                             \
        kind, offsetof(type, member), 0, &(shape) \
    }
#define SHAPE(type, parts)                                         \
    {                                                              \
        sizeof(type), 0, parts, sizeof(parts) / sizeof((parts)[0]) \
    }
#define SHAPE_LISTED(type, parts)                                                     \
    {                                                                                 \
        sizeof(type), offsetof(type, next), parts, sizeof(parts) / sizeof((parts)[0]) \
    }

/* Of struct place, but for its source. */
extern const struct shape PLACE_SHAPE;

#endif
