/* judging.h - what the binders share while one job is being judged.
 *
 * Internal to the judge room. A struct judging is the sandbox's `user` during
 * a call; binders record in it what a rule read, which figures it asked for,
 * and what it lacked.
 */
#ifndef EAVEMARK_JUDGE_JUDGING_H
#define EAVEMARK_JUDGE_JUDGING_H

#include "base/strings.h"
#include "judge/finding.h"
#include "judge/bind_marks.h"
#include "judge/rulebook.h"
#include "judge/trail.h"

#include <cjson/cJSON.h>
#include <lua.h>

/* A place in the job: a group, a list, an item of a list. */
struct node {
    const cJSON *json; /* NULL: the job does not have it */
    const struct field *field;
    bool item;           /* an item of the list `field` */
    const char *pointer; /* JSON pointer, in the judging arena */
    struct spot *spot;
    unsigned known; /* of the trail's spots, the one it is */
};

/* What a comparison came to. */
struct judgement {
    bool met;
    struct value required, found;
    enum sense sense;
    struct value also; /* the other bound of two, or VALUE_NONE */
    enum sense also_sense;
    const struct figure **makers; /* the figures that made the demanded value */
    size_t maker_count;
    const char *warn; /* met, but risky: why; or NULL */
    const char *say;  /* sentences added by the rule; or NULL */
    const char *duty; /* what must be shown; or NULL */
};

/* What is recorded while one rule judges one thing. */
struct record {
    struct spot **reads;  /* each once, in the order first read */
    unsigned *read_known; /* the same among the trail's */
    size_t read_count, read_capacity;
    size_t number; /* among the judging's records; 0: it read nothing */
    struct strings work;
    const struct figure **figures;
    size_t figure_count, figure_capacity;
    const struct figure **held; /* of them, those whose further demands a comparison looked at */
    size_t held_count;
    const struct field *missing; /* the fact that was lacking, or NULL */
    const char *missing_pointer;
    bool said;                  /* a fact that the job has was read */
    const struct field *unsaid; /* the first that was asked for with known() and is not
                                      there, or NULL */
    const char *unsaid_pointer;
    const char *cannot_tell;  /* the rule's own words for it, or NULL */
    bool ask_place;           /* cannot_tell is for the building department to say */
    struct judgement *demand; /* what the missing fact must meet (row_demand.h), or NULL */
};

/* What the sandbox and the findings are charged: charged again when it is recalled, so
 * that limits are met as if it had been judged. */
struct charge {
    long steps;
    size_t output, output_of_rule;
};

/* What is said of a fact that is missing: many findings of a job wait for one. */
struct lacking {
    const char *missing;       /* its very pointer, of its spot; NULL: nothing is kept here */
    const struct field *field; /* it is one of this, */
    const char *lacks;         /* but this is to be asked for, */
    const struct field *asked; /* which is one of this */
    const char *says;
};

enum { LACKING_KEPT = 32 };

struct judging {
    struct arena *arena;     /* of the result */
    struct arena *spots;     /* of the job's places: the same, or the survey's */
    struct survey *survey;   /* of the law, by which findings are carried over; or NULL */
    struct carried *carried; /* what is being judged is to be kept there (carry.h); or NULL */
    const struct rulebook *book;
    const cJSON *job;
    struct spot *root;         /* of the job; NULL: not asked for yet */
    enum wanted wanted;        /* of the result */
    enum stage reached;        /* the stage the work has come to */
    bool inspecting;           /* the stage of the rule has been reached */
    const char *reading;       /* figures disputed in these words are given as their rival
                                  source has them; NULL: all as the profile has them */
    bool touched;              /* a call changed what outlasts it: all is judged again ... */
    bool apart;                /* ... each call with the heap as it was loaded */
    bool mending;              /* the outcome is known; what would mend it is being said */
    size_t output_of_rule;     /* bytes that this rule left in the findings */
    size_t output;             /* and all rules of this job */
    const struct probe *probe; /* what whoever tries the rules wants (judge.h), or NULL */
    struct record record;
    size_t records;            /* and trails, begun so far */
    const struct reads *reads; /* what the running function may read; NULL: any fact */
    struct given given;        /* to the running function */
    struct marks *marks;       /* numbers are given marked; NULL: as they are */
    struct trail trail;
    struct charge charged;                /* before the trail */
    struct charge cost;                   /* of what was judged or recalled last */
    bool entered;                         /* a call was made */
    struct lacking lacking[LACKING_KEPT]; /* by their pointers */
    const char **denied;                  /* of the place's facts, in words; or NULL */
};

/* More is wanted of a finding than its outcome: of what does not apply, that there is one may be
 * enough. */
static inline bool judging_tells(const struct judging *judging, enum outcome outcome)
{
    return judging->wanted < WANTED_APPLYING
           || (judging->wanted == WANTED_APPLYING && outcome != OUTCOME_NOT_APPLICABLE);
}

/* Raises. */
struct judging *judging_lacks_job(lua_State *lua);
void judging_lacks_memory(lua_State *lua);

/* Raises while a file is loaded: there is no job then. */
static inline struct judging *judging_of(lua_State *lua)
{
    const struct sandbox *sandbox = sandbox_of(lua);
    return sandbox->loading ? judging_lacks_job(lua) : sandbox->user;
}

/* What rules put into findings outlives the sandbox and its limits. Counts
 * bytes about to be kept; raises when one rule keeps too many. After too many
 * in all, the rules left are not run. Pointers of facts read count in all only:
 * a rule may well go over many. */
enum { OUTPUT_OF_RULE_MOST = 1024 * 1024, OUTPUT_MOST = 256 * 1024 * 1024 };
void bind_charge_output(lua_State *lua, size_t bytes);

/* Steps that a rule is charged for a text it has kept. */
enum { TEXT_STEPS = 100 };

/* "a", with an item's name or its place: what `where` says. NULL for none. */
const char *node_name(const struct judging *judging, const struct node *node);

/* The child of a group or item: its JSON (NULL when absent, null, or not of
 * the field's type; always absent below an absent group) and pointer. */
struct node node_child(struct judging *judging, const struct node *parent,
                       const struct field *child);

/* What it holds is about to be looked at. */
void node_reads_value(struct judging *judging, const struct node *node);

/* Tells the probe of the figure by which a derived value that is read was filled in. */
void ask_figure_derived(const struct judging *judging, const struct node *node);

/* The job itself; an item of a list. */
struct node node_root(struct judging *judging);
struct node node_item(struct judging *judging, const struct node *list, size_t number);

/* How many items a list has. */
size_t node_count(struct judging *judging, const struct node *list);

/* The item that a reference names; false when there is none of that name. */
bool node_referred(struct judging *judging, const struct node *reference, struct node *out);

/* Records that the fact there was read, once. */
void record_read(struct judging *judging, const struct node *node);

/* Records that the list, which was to be gone through, is missing. */
void record_missing(struct judging *judging, const struct node *list);

/* Records that it was asked whether the job says this. */
void record_known(struct judging *judging, const struct node *node);

/* A figure that a rule asks for: recorded, and its value as it is to be read now. */
const struct value *ask_figure(struct judging *judging, const struct figure *figure);

/* The same of the one that a row names. */
const struct value *ask_figure_of(struct judging *judging, const struct figure_slot *slot);

/* Binders: each defines its names in a fresh sandbox. */
void bind_job(lua_State *lua);
void bind_figure(lua_State *lua);
void bind_compare(lua_State *lua);
void bind_judgement(lua_State *lua);
void bind_plain(lua_State *lua);
void bind_trade(lua_State *lua);
void bind_amount(lua_State *lua);

/* Adds the functions of loads, fasteners, ice barrier and purchases to the table
 * of trade functions on top of the stack. */
void bind_trade_takeoff(lua_State *lua);

/* And those of roof geometry, wind pressure and nail strength. */
void bind_trade_wind(lua_State *lua);

/* Adds the arithmetic of flashing to the table on top of the stack. */
void bind_trade_flashing(lua_State *lua);

/* Pushes a node; a judgement; the figure function. */
void bind_push_node(lua_State *lua, struct node node);
void bind_push_judgement(lua_State *lua, struct judgement *judgement);
void bind_push_figure_function(lua_State *lua);

/* Pushes a judgement held to what the place demands beyond its figure (judgement_held_to).
 * numbers: the measured list it was made of, or NULL. */
void bind_push_held(lua_State *lua, struct judgement *judgement, const double *numbers,
                    size_t count);

/* A text argument, charged for; raises for another, and for one too long for a finding. */
const char *bind_checked_text(lua_State *lua, int index);

/* The judgement at index, or NULL. */
struct judgement *bind_to_judgement(lua_State *lua, int index);

/* Names the figures that made the demanded value: called once it is set. */
void maker_find(struct judging *judging, struct judgement *judgement);

/* Adds a line of arithmetic to the record. */
void record_work(lua_State *lua, const char *format, ...) __attribute__((format(printf, 2, 3)));

/* The same without Lua and its limits. */
void record_work_line(struct judging *judging, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* Fails the call when the arena ran out. */
static inline void bind_check_arena(lua_State *lua)
{
    if (judging_of(lua)->arena->failed)
        judging_lacks_memory(lua);
}

#endif
