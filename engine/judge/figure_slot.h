/* figure_slot.h - the figures that rule files name, each looked up once for a rulebook.
 *
 * Rows, conditions and reads hold slots in place of figures: so one rulebook serves every law
 * whose figures look the same to the files (rulebook_share.h). Which figure of the law at hand a
 * slot stands for is asked of that law's rulebook: rulebook_figure. Here is the one way by which
 * declarations look figures up, so that all they looked at is known.
 *
 * All of it lives in the rulebook's arena.
 */
#ifndef EAVEMARK_JUDGE_FIGURE_SLOT_H
#define EAVEMARK_JUDGE_FIGURE_SLOT_H

#include "base/arena.h"
#include "base/strings.h"
#include "profile/profile.h"

struct rulebook;

/* What declarations see of a figure. */
struct figure_slot {
    const char *name;
    enum value_kind kind;
    const char *unit; /* of a number; or NULL */
    enum sense sense;
    size_t number; /* among the rulebook's */
    bool compared; /* its unit and sense are gone by; else it is only named */
};

/* A switch past which figures may lack where it is off; with those before it. */
struct lever {
    const struct figure_slot *figure; /* NULL: the law has none, which is off */
    const struct lever *before;
};

struct figure_slots {
    struct figure_slot **items;
    size_t count;
    const struct figure **figures; /* of the law: what each slot stands for */
    size_t *numbers;               /* by place in the law's profile: its slot, from 1; or 0 */
    struct strings lacking;        /* names looked for in vain, as often as they were */
    struct slot_table *tables;     /* beginnings of names looked for */
    struct slot_excuse *excuses;   /* levers for whose sake something may lack */
    struct slot_whole *wholes;     /* figures of which all was looked at */
    const struct figure **asked;   /* of the law: what functions asked for by name */
};

/* Makes room for the figures of the rulebook's profile. False when out of memory. */
bool figure_slots_begin(struct rulebook *book);

/* While a rule judges: the law's figure of this name, or NULL. */
const struct figure *figure_slots_ask(const struct rulebook *book, const char *name);

/* While files are loaded: the figure of this name. compared: what is read goes by its unit and
 * sense; else it may only be named. NULL when the profile has none, or out
 * of memory, which the arena tells. */
const struct figure_slot *figure_slot_find(struct rulebook *book, const char *name, bool compared);

/* How many there are whose names begin with so many letters of this; they stand together in the
 * profile, the first at *place. The slot of one that stands there. */
size_t figure_slot_table(struct rulebook *book, const char *prefix, size_t length, size_t *place);
const struct figure_slot *figure_slot_at(struct rulebook *book, size_t place, bool compared);

/* The figure itself, for whoever goes by its value and citation already now. */
const struct figure *figure_slot_whole(struct rulebook *book, const struct figure_slot *slot);

/* Is one of them off under this law, with no source that has it on? No levers: never. */
bool figure_slot_off(const struct rulebook *book, const struct lever *levers);

/* The same while files are loaded, to let something lack that would else be an error. */
bool figure_slot_excused(struct rulebook *book, const struct lever *levers);

/* Sets what the slots of `of` stand for under the book's own profile. False when the files would
 * have seen anything otherwise with that; or out of memory. */
bool figure_slots_fit(struct rulebook *book, const struct rulebook *of);

#endif
