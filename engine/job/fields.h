/* fields.h - the field catalogue: what a job may say.
 *
 * A tree that mirrors the job: groups and lists hold fields, everything else
 * is a value. It is filled from rules/fields.lua (and from county rule files)
 * through fields_add, which refuses a declaration that makes no sense; the
 * catalogue itself knows no Lua.
 *
 * Paths are written "roof.slopes[].pitch": dots between groups, [] after a
 * list. Units: the unit of a number is also the end of its name
 * ("length_in" is in inches); fields_add refuses a mismatch. Only units that
 * count or date things (nails, layers, plies, year ...) may be left out of it.
 *
 * Ownership: everything lives in fields.arena; fields_free releases it.
 */
#ifndef EAVEMARK_JOB_FIELDS_H
#define EAVEMARK_JOB_FIELDS_H

#include "base/arena.h"
#include "job/stage.h"

#include <stdbool.h>
#include <stddef.h>

enum field_type {
    FIELD_GROUP, /* an object */
    FIELD_LIST,  /* a list of objects; its children are their fields */
    FIELD_TEXT,  /* free text; least/most bound its length in characters */
    FIELD_NUMBER,
    FIELD_INTEGER,
    FIELD_YES_NO,    /* true or false */
    FIELD_CHOICE,    /* one of choices */
    FIELD_SLOPE,     /* "5:12", "5/12", "22.6 deg", "42 %"; held as rise in 12 */
    FIELD_DATE,      /* "2026-03-01" */
    FIELD_NUMBERS,   /* a list of numbers */
    FIELD_CHOICES,   /* a list of choices */
    FIELD_REFERENCE, /* the name of an item of the list `refers` */
};

/* May a shop sheet say it (job/shop.h)? */
enum habit {
    HABIT_NONE,
    HABIT_WAY,     /* how the shop goes about its work */
    HABIT_PRODUCT, /* of what it buys: where one differs, it is another product */
};

struct field {
    const char *name; /* last part of the path, without [] */
    size_t length;    /* of the name */
    const char *path; /* "roof.slopes[].pitch" */
    enum field_type type;
    const char *unit;         /* "in", "ft", "sqft" ... or NULL */
    bool has_least, has_most; /* range of a number (each of a list of numbers), */
    double least, most;       /* of a slope in rise in 12, or length of a text or list */
    const char **choices;
    size_t choice_count;
    size_t choices_of_first; /* without a place: how many of them, in front, the file said that
                                 declared it first; 0: all */
    const char *refers;      /* FIELD_REFERENCE: "underlayments", "roof.slopes" */
    size_t referred;         /* the same, by its place in fields->referred */
    enum stage stage;        /* at which the fact is known */
    const char *ask;         /* the question a person would be asked */
    const char *answer;      /* where its answer is found: a word of FIELD_ANSWERS;
                                 fields_add takes NULL for where its parent's is */
    const char *file;        /* which file declared it */
    bool required;           /* a job without it is refused */
    bool measured;           /* seen on the roof at `stage`, not planned */
    enum habit habit;
    bool stays;           /* yes: what it is a fact of was there before; no habit speaks of that */
    bool of_place;        /* a place may state it for all that stands there (profile.h) */
    struct field *parent; /* NULL for the root */
    struct field *first_child, *last_child, *next;
    size_t index, child_count; /* among its parent's children, from 0; of its own */
    size_t number;             /* in the catalogue, from 1; the root's is 0 */
};

enum { FIELDS_DEEPEST = 8 }; /* parts of a path */

/* Where an answer may be found, in the order in which one would go there; NULL ends
 * them: desk, wrapper (or box, or label), paper, department, roof, attic. */
extern const char *const FIELD_ANSWERS[];

struct follows;
struct together;

struct fields {
    struct arena arena;
    struct field *root;              /* the job itself, a FIELD_GROUP named "" */
    size_t count;                    /* without the root */
    bool partial;                    /* county fields may be missing: see validate.h */
    struct follows *follows;         /* what need not be asked (follows.h), in their order */
    const struct together *together; /* what is asked in one line (together.h) */
    const char *const *referred;     /* each list that references point into, once */
    size_t referred_count;
    const struct field **first; /* parts of the job that are asked for first, in order */
    size_t first_count;
};

/* Starts an empty catalogue; -1 when out of memory. */
int fields_start(struct fields *fields);

/* Adds one field. spec gives everything but name, path, parent and links; its
 * strings are copied. Groups and lists must be added before what they hold.
 * Returns NULL and sets *why (static or arena text) when the declaration is
 * refused: unknown parent (with the nearest), already declared, unit missing
 * from the name, empty range, a range where none belongs, a choice without
 * choices, unknown place of the answer, a reference to something that
 * is not a list, a habit that is none. */
struct field *fields_add(struct fields *fields, const char *path, const struct field *spec,
                         const char **why);

/* The same of a field whose path is set and that was found sound before; it is not copied. False
 * when it has no parent or is there already. */
bool fields_add_sound(struct fields *fields, struct field *field);

/* Once all fields are added: the first reference whose list was never
 * declared, lies inside another list, or has items without a name. Sets *why
 * (arena text) and returns that field, or NULL when there is none. A reference
 * may be declared before its list, so fields_add cannot tell. */
const struct field *fields_dangling(struct fields *fields, const char **why);

/* The child of a group or list with this name, or NULL. */
struct field *fields_child(const struct field *parent, const char *name);

/* The child that the next part of a path names, "slopes[]" of "slopes[].pitch"; *path goes on
 * behind it. NULL where there is none, or brackets stand otherwise than exactly where something
 * follows a list: the last name may be the list itself. */
const struct field *fields_step(const struct field *parent, const char **path);

/* The same, where the field after `last` is likely to be it; last may be NULL. Jobs are
 * mostly written in the catalogue's order. */
const struct field *fields_child_after(const struct field *parent, const struct field *last,
                                       const char *name);

/* The field at a path, or NULL. Both "roof.slopes[].pitch" and
 * "roof.slopes.pitch" find it. */
struct field *fields_find(const struct fields *fields, const char *path);

/* Nearest child name to a mistyped one, or NULL. */
const char *fields_nearest_child(const struct field *parent, const char *name);

/* Nearest full path anywhere in the catalogue, or NULL: each part of the path
 * mended in its place, else a field of that last name elsewhere. */
const char *fields_nearest_path(const struct fields *fields, const char *path);

/* The fields anywhere in the catalogue whose name is nearest to this one: up
 * to FIELDS_NAMESAKES of them in found. 0 when none is near, or so many are
 * equally near that naming them would help nobody. */
enum { FIELDS_NAMESAKES = 3 };
size_t fields_namesakes(const struct fields *fields, const char *name,
                        const struct field *found[FIELDS_NAMESAKES]);

/* True when `distance` is few enough slips for a word this long: a third of its
 * letters, at least one, but none at all in a word of one or two. Stricter than
 * nearest.h, since in a choice such as "B" every slip is another choice. */
bool fields_plausible(const char *wanted, size_t distance);

/* Does a shop sheet say the field, or anything in it? */
bool fields_hold_habits(const struct field *field);

/* Is it a material, of which a shop sheet may hold several by their names? */
bool fields_is_material(const struct field *field);

/* "number", "yes or no" ... as said to a user. */
const char *field_type_said(enum field_type type);

/* Type by the word used in fields.lua ("number", "yes_no"); -1 if unknown. */
int field_type_by_word(const char *word);

void fields_free(struct fields *fields);

#endif
