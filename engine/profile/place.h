/* place.h - one profile file as written: its blocks, before they are laid
 * over one another.
 *
 * Everything lives in the arena given to place_load.
 */
#ifndef EAVEMARK_PROFILE_PLACE_H
#define EAVEMARK_PROFILE_PLACE_H

#include "base/arena.h"
#include "base/problem.h"
#include "base/value.h"
#include "profile/home.h"
#include "profile/profile.h"

#include <stdbool.h>

/* Of one place, its parts included. */
enum {
    PLACE_FIGURES_MOST = 2000,
    PLACE_EDITIONS_MOST = 200,
    PLACE_PARTS_MOST = 100,
    PLACE_DROPS_MOST = 2000,
    PLACE_SET_MOST = 200, /* members */
    PLACE_PROBLEMS_MOST = 200,
    PLACE_NUMBER_MOST = 1000 * 1000 * 1000, /* of any figure; days are 99991231 at most */
};

/* A figure as one place gives it; parts left out are NULL, or none. */
struct entry {
    const char *name;
    struct value value; /* VALUE_NONE: only the citation is restated; VALUE_TEXT: a number in
                           words, until its unit is known (figure_value.h) */
    struct value adds, without; /* sets: what it has beside the set followed, and what not */
    bool advice;                /* a number advised beside the law, which fails nobody */
    bool instead;               /* a set: it is meant to hold nothing of the one followed */
    enum sense sense;
    enum status status;
    const char *cite, *source, *disputed;
    const char *book;      /* the book the section stands in, if not the place's own; or NULL */
    struct value rival;    /* what another source says, where sources disagree; or VALUE_NONE */
    const char *pages;     /* which pages of a place would tell it; or NULL */
    struct value also;     /* the other bound of a limit: a number, or VALUE_NONE */
    enum sense also_sense; /* at_least or at_most; with also */
    const char *by, *row;  /* of a row of a table: the field they go by, and which; or NULL */
    const char *at_figure; /* the figure that says whether exactly this much counts; or NULL */
    enum at_counts at;
    struct value read_in; /* a set: the editions in whose text it was read; or VALUE_NONE */
    const char *file;
    int line;
    struct entry *next;
};

/* What is said of a figure beside its value: which of yes and no asks for more, and the
 * switch that it stands behind. */
struct entry_way {
    const char *name;
    enum stricter stricter; /* STRICTER_UNSAID: of the switch alone */
    const char *behind;     /* or NULL */
    const char *words;      /* the field whose choices its members are; or NULL */
    const char *file;
    int line;
    struct entry_way *next;
};

/* What is one all over the place: a value, bounds, or one of several. */
struct entry_fact {
    const char *name;
    struct value value; /* or VALUE_NONE */
    bool has_least, has_most;
    double least, most;
    struct value one_of; /* a set; of none where set_count is 0 */
    const char *unit, *cite, *book, *source;
    enum status status;
    int line;
    struct entry_fact *next;
};

/* What the place's own map divides it into, by a field of its jobs. */
struct entry_zone {
    const char *name, *ask; /* "site.local_wind_zone", and the question */
    struct value words;     /* a set: the choices there are */
    int line;
    struct entry_zone *next;
};

struct entry_drop {
    const char *rule, *reason;
    int line;
    struct entry_drop *next;
};

struct entry_gap {
    const char *fact, *why;
    struct value rules, but, orders;
    int line;
    struct entry_gap *next;
};

/* A book that the place has read for itself, or topics of it. */
struct entry_adopt {
    const char *book, *cite, *as_seen;
    struct value topics; /* a set; VALUE_NONE: all of it */
    int line;
    struct entry_adopt *next;
};

/* One edition of a place. */
struct block {
    const char *id, *title, *follows, *code, *edition, *as_seen, *rules;
    const char *borrowed; /* why what it follows does not bind here; or NULL */
    const char *unsure;   /* why it is not certain that it does; or NULL */
    struct value read;    /* a set: which of the place's own pages were read whole; or VALUE_NONE */
    struct value covers;  /* a set: cities and towns it is the department of; or VALUE_NONE */
    const char *draft;    /* why its own figures are not law yet, or ever; or NULL */
    bool invented, model, base_only;
    long from, to;      /* 0: no beginning, no end */
    const char **parts; /* files beside this one with more of its figures */
    size_t part_count;
    const char *part_folder; /* or all files of this folder beside it; or NULL */
    const char *column;      /* of their figures only what they say of this edition; or NULL */
    struct value columns;    /* a set: the editions they may speak of; or VALUE_NONE */
    struct entry *entries;
    struct entry_way *ways;
    struct entry_drop *drops;
    struct entry_gap *gaps;
    struct entry_adopt *adopts;
    struct entry_fact *facts;
    struct entry_zone *zones;
    int line;
    struct block *next;
};

struct place {
    const struct source *source;
    struct block *blocks; /* sorted by from */
};

/* Reads home/jurisdictions/ID.lua. NULL with problems (PROBLEM_RULES) when
 * the file is missing, does not run, or says something a profile cannot. */
struct place *place_load(const char *home, const char *id, struct arena *arena,
                         struct sources *sources, struct problems *problems);

#endif
