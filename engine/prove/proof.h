/* proof.h - what can be said of a place without a job: whether its files make
 * sense, whether its cases hold, and how it differs from what it follows.
 *
 * A proof owns its texts, but the values and citations in it belong to the
 * laws it was made with: keep those as long.
 */
#ifndef EAVEMARK_PROVE_PROOF_H
#define EAVEMARK_PROVE_PROOF_H

#include "base/strings.h"
#include "prove/cases.h"
#include "law/law.h"
#include "profile/place.h"

enum difference_of {
    DIFFERENCE_FIGURE,
    DIFFERENCE_RULE,
    DIFFERENCE_FIELD,
    DIFFERENCE_DUTY,  /* a rule of both that a switch lets speak, or silences */
    DIFFERENCE_ADVICE /* a value that the place, or its draft, names beside the law's */
};

/* Which way a difference goes, where the figure's sense says it. */
enum difference_kind {
    DIFFERENCE_STRICTER,
    DIFFERENCE_LOOSER,
    DIFFERENCE_BOTH_WAYS, /* for some jobs the one, for others the other */
    DIFFERENCE_CHANGED,   /* neither, or not to be told */
    DIFFERENCE_REMOVED,
    DIFFERENCE_ADDED,
    DIFFERENCE_ENDED, /* the place's edition before gave it, and this one leaves it */
    DIFFERENCE_KIND_COUNT
};

const char *proof_difference_word(enum difference_kind kind);

struct difference {
    enum difference_of of;
    enum difference_kind kind;
    const char *name;
    const char *says;      /* a rule's title, a field's question, why a rule was dropped; of a
                              figure left as it was, the switch that was turned; or NULL */
    struct value from, to; /* figures only; VALUE_NONE: did not exist */
    enum sense sense;      /* figures only */
    const struct figure *was, *is; /* figures only; NULL: did not exist */
    const struct cite *cite;       /* or NULL */
    const char *caution;           /* or NULL */
    struct difference *next;
};

/* Something to say about a line of a file. */
struct remark {
    const char *file; /* or NULL */
    int line;         /* 0: not known */
    bool error;       /* else a warning */
    const char *says;
    struct remark *next;
};

/* An edition of a place, as long as what it follows stays the same. */
struct proof_block {
    long from, to;       /* 0: no beginning, no end */
    const char *follows; /* title of the parent, or NULL */
    const char *file;    /* of the place */
    const struct block *block;
    const struct law *law; /* NULL: could not be loaded */
    struct difference *differences;
    struct remark *remarks;
    const struct profile *parent; /* that the differences are from; or NULL */
    size_t moved, shown; /* figures of the block given otherwise than the parent gives them,
                            and of these such as a case under the place judges by */
    struct proof_block *next;
};

struct place_proof {
    const char *id, *title;
    const char *cases_file;
    bool invented;
    bool proved; /* all but its cases */
    bool broken; /* a file of it cannot be loaded */
    size_t errors, warnings;
    struct strings own_rules;
    struct proof_block *blocks;
    struct tally cases;
    struct strings lines; /* what the cases said */
    struct place_proof *next;
};

/* The figures of a law that some case of the proof is judged by. */
struct proof_probe {
    const struct law *law;
    struct probe of_case; /* what the case at hand asked for */
    bool *cased;          /* some case judged by it */
    struct proof_probe *next;
};

/* The rules and fields of a law, by name, for those who follow it. */
struct law_digest {
    const struct law *law; /* perhaps at rest: only its profile is to be used */
    const char **rules;
    bool *silent; /* of each: the place's figures keep it from ever speaking there */
    size_t rule_count;
    const char **fields; /* paths */
    size_t field_count;
    struct law_digest *next;
};

/* By the lines of what is declared. */
enum { PROOF_DECLARED_ROWS = 256 };

struct declared_part;

struct proof {
    struct arena arena;
    struct sources sources;
    struct problems problems; /* why nothing was proved: an unknown name, a bad date */
    bool of_places;           /* else of a topic */
    const char *beside;       /* set beforehand: a place to hold one beside instead of what it
                                 follows; then differences only, no cases; or NULL */
    bool of_all;              /* every topic and every place */
    struct laws *laws;
    struct strings ids;         /* of all places to be proved, and */
    struct place_proof **order; /* those that others follow before these */
    long date;                  /* or 0: all editions */
    struct place_proof *places;
    struct proof_probe *probes; /* one per law proved */
    struct law_digest *digests; /* one per law followed */
    struct tally cases;         /* all that were run */
    struct text lines;
    struct declared_part *declared[PROOF_DECLARED_ROWS]; /* of rules that cases judged */
    size_t unread; /* what is declared in rules/ and read in no case: a line each */
};

/* Proves a topic's cases, one place (on one day, or date 0: all its editions),
 * or, with name NULL, everything. */
void proof_run(struct laws *laws, const char *name, long date, struct proof *proof);

void proof_free(struct proof *proof);

/* Before any code: a block without a first day begins here. */
enum { PROOF_FIRST_DAY = 19000101 };

/* Internal to the room: remarks what breaks when the cases' base jobs are judged under the
 * block's law. */
void proof_base(struct proof *proof, struct place_proof *place, struct proof_block *block);

/* The remark that the rule, or another part of the place's files, broke. */
void proof_remark_broken(struct proof *proof, struct place_proof *place, struct proof_block *block,
                         const struct finding *finding);

/* Adds a remark to a block unless the place has made it before. */
void proof_remark(struct proof *proof, struct place_proof *place, struct proof_block *block,
                  struct remark remark);

/* Internal to the room: one more place, not proved yet; and proves all of it but its cases. */
struct place_proof *proof_place_new(struct proof *proof, const char *id);
void proof_place(struct laws *laws, struct proof *proof, struct place_proof *place, long date);

/* Internal to the room: lists all places, and in which order they are proved, so that a law is
 * loaded once; where in it a place stands, ids.count for none. */
void proof_order(struct laws *laws, struct proof *proof);
size_t proof_order_rank(const struct proof *proof, const char *id);

/* Internal to the room: adds what is no place that could be proved, and why. */
void proof_place_unread(struct proof *proof, const char *path, const char *why);

/* Internal to the room: the laws proved, whose cases are watched. */
bool proof_watches(const struct proof *proof, const struct law *law);
void proof_watch(struct proof *proof, const struct law *law);

/* Internal to the room: for a prober of cases, data being the proof; and, once all have run,
 * the figures of a block that none is judged by. */
const struct probe *proof_cover_probe(void *data, const struct law *law);
void proof_cover(struct proof *proof, struct place_proof *place, struct proof_block *block);

/* Internal to the room: a case of a rule was judged, and the probe noted what was read; once all
 * have run, what is declared and was read in none. */
void proof_reads_case(struct proof *proof, const struct law *law, const char *id,
                      const struct probe *probe);
void proof_reads_say(struct proof *proof);

/* Internal to the room: of the law of a place and day, NULL where there is none; has it such a
 * rule, and is that silent; has it such a field? */
const struct law_digest *proof_digest(struct laws *laws, struct proof *proof, const char *id,
                                      long day);
bool proof_digest_rule(const struct law_digest *digest, const char *id, bool *silent);
bool proof_digest_field(const struct law_digest *digest, const char *path);

/* Internal to the room: the differences of a block from what it follows. */
void proof_differences(struct proof *proof, struct proof_block *block,
                       const struct law_digest *parent);

/* Internal to the room: what to say about a block against its parent's law
 * (NULL: it has none). */
void proof_lint(struct proof *proof, struct place_proof *place, struct proof_block *block,
                const struct law *parent);

/* Internal to the room: what an edition says that the one after it leaves to what is followed;
 * files beside the place's own that nothing of it names; of all, files of cases of no place. */
void proof_ends(struct proof *proof, struct place_proof *place);
void proof_files(struct proof *proof, struct place_proof *place, const struct place *written);
void proof_files_of_none(struct proof *proof);

void proof_traps(struct laws *laws, struct proof *proof, struct place_proof *place,
                 struct proof_block *block, const struct law *parent);

#endif
