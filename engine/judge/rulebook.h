/* rulebook.h - the rules and the field catalogue of one place and day, loaded
 * and ready to judge.
 *
 * The rules' functions live in a sandbox, of which a copy is kept right after
 * loading; every job starts from that copy. Everything C needs to know of a
 * rule is here.
 */
#ifndef EAVEMARK_JUDGE_RULEBOOK_H
#define EAVEMARK_JUDGE_RULEBOOK_H

#include "base/arena.h"
#include "base/problem.h"
#include "base/strings.h"
#include "job/fields.h"
#include "job/stage.h"
#include "judge/drawing.h"
#include "judge/figure_slot.h"
#include "profile/profile.h"
#include "sandbox/sandbox.h"

#include <stdbool.h>
#include <stddef.h>

enum {
    RULE_DEEPEST_PER = 3, /* lists within lists */
    RULE_NO_FUNCTION = -1,
    RULES_MOST = 2000,
    FIELDS_MOST = 2000, /* without a place: of one file */
    CONDITIONS_MOST = 20000,
    CHOICES_MOST = 200,
    CHOICE_LONGEST = 200,
    ASK_LONGEST = 1000, /* bytes: they are shown to people */
    QUANTITIES_MOST = 500,
    IMPOSSIBLES_MOST = 500,
    CAUTIONS_MOST = 200,
    ABOUTS_MOST = 50,
    CARD_PARTS_MOST = 200,
    CARD_NAMES_MOST = 1000, /* of all cards together */
};

struct row;
struct condition;
struct memory;
struct survey;
struct reads;

struct rule {
    const char *id, *title;
    enum stage stage;
    const struct field *per[RULE_DEEPEST_PER]; /* lists, outermost first */
    size_t per_depth;                          /* 0: once for the house */
    const struct row *row;                     /* one comparison (row.h), or NULL: */
    const struct condition *when;              /* of a rule with a judge: as of a row; or NULL */
    int applies, judge, mend_function;         /* registry references */
    const struct reads *reads;                 /* all that it may read (reads.h) */
    const char *mend, *caution;
    const char *cause; /* not met, told together with the others of this cause; or NULL */
    bool advice;       /* not met, it warns: nobody has to do it */
    bool asks_only;    /* is met or stays open: it asks for facts others need */
    const char *file;
    int line;
    struct rule *next;
};

/* Something to be bought or reckoned with: `eavemark takeoff`. */
struct quantity {
    const char *name, *title;
    const char *heading;  /* on the order; NULL for what no supplier sells */
    const char **serves;  /* rules whose demands it meets, ended by NULL; never NULL */
    const char *by_habit; /* why it is bought where no rule asks for it, or NULL */
    const struct field *per[RULE_DEEPEST_PER]; /* as a rule's */
    size_t per_depth;
    int applies, amount; /* registry references */
    const struct reads *reads;
    const char *file;
    int line;
    struct quantity *next;
};

/* A combination of facts that cannot be; or one that hardly can, and is asked back
 * until the job says under /as_meant that it is meant. */
struct impossible {
    const char *name;
    bool asks_back;
    const char *at; /* path below the item, or below the job */
    const struct field *per[RULE_DEEPEST_PER];
    size_t per_depth;
    int when;
    const char *file;
    int line;
    struct impossible *next;
};

struct caution {
    const char *name;
    bool stages[STAGE_COUNT];
    int when, says_function, brief_function;
    const struct reads *reads;
    const char *says;
    const char *brief; /* the same in one line, or NULL */
    struct cite cite;
    const char *file;
    int line;
    struct caution *next;
};

/* A line about the house, on cards and reports. */
struct about {
    const char *label;
    int says; /* registry reference */
    const char *file;
    int line;
    struct about *next;
};

/* A heading of a stage's card, and the rules or topics under it, in the order
 * in which they are looked at. */
struct card_part {
    const char *title;
    struct strings names; /* "deck.sound", or "deck" for the rest of the topic */
    const char *file;
    int line;
    struct card_part *next;
};

/* What a run looks at of each rule, for every job: side by side, for mostly it is all. Beside
 * what the rule itself says, what of the law of a place and day bears on it. */
struct bearing {
    const char *id, *title;
    enum stage stage;
    unsigned short topic;    /* rules of one topic have the same number */
    unsigned char per_depth; /* as the rule's */
    const struct field *per[RULE_DEEPEST_PER];
    const struct law_gap *gap; /* what is not carried, or NULL */
    const struct drop *drop;   /* by whom it is dropped, or NULL */
};

struct rulebook {
    struct arena arena;
    struct sandbox *sandbox;
    struct fields fields;
    const struct profile *profile; /* or NULL: fields only; not owned */
    struct figure_slots slots;     /* what of it the files name */
    const struct field **facts;    /* the field of each of its facts */
    struct rule *rules;            /* by id */
    struct rule **by_id;           /* the same, to be halved */
    size_t rule_count, rule_capacity;
    struct quantity *quantities; /* as declared */
    struct impossible *impossibles;
    struct caution *cautions;
    struct about *abouts; /* as declared */
    struct card_part *cards[STAGE_COUNT];
    struct drawing *drawings;       /* as declared */
    const struct bearing *bearings; /* by the rules' order */
    struct memory *memory;          /* of what was judged (memory.h), or NULL */
    struct survey *survey;          /* and of the last job (survey.h), or NULL */
    size_t judged;                  /* jobs so far */
    size_t finding_count;           /* to make room for in the next one */
    struct sources sources;         /* the files loaded, the profile's not included */
    struct rulebook *whole; /* whose rules, fields and sandbox these are; itself, where loaded */
    size_t holders;         /* of the whole one: rulebooks with its rules, itself counted */
};

/* What the slot stands for under the law of this book; NULL for no slot. */
static inline const struct figure *rulebook_figure(const struct rulebook *book,
                                                   const struct figure_slot *slot)
{
    return slot == NULL ? NULL : book->slots.figures[slot->number];
}

/* Rules have numbers by their order, and after them functions by the registry's. */
static inline size_t rulebook_function_number(const struct rulebook *book, int function)
{
    return book->rule_count + (size_t)function;
}

/* Loads rules/fields.lua, the profile's own rule files and rules/ *.lua. With
 * no profile only the fields. NULL with problems (PROBLEM_RULES) when a file
 * does not run, or declares what makes no sense, or the profile drops a rule
 * that does not exist. */
struct rulebook *rulebook_load(const char *home, const struct profile *profile,
                               struct problems *problems);

/* The rule of this id, or NULL. */
const struct rule *rulebook_rule(const struct rulebook *book, const char *id);

/* Is it a rule's id, or the topic of one? */
bool rulebook_names(const struct rulebook *book, const char *name);

/* Adds one whose id no rule has, in its order. False when out of memory. */
bool rulebook_add(struct rulebook *book, struct rule *rule);

/* Bytes that packs made it take, its part of those that it shares, and what it remembers of
 * jobs. */
size_t rulebook_bytes(const struct rulebook *book);

void rulebook_free(struct rulebook *book);

#endif
