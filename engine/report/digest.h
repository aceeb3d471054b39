/* digest.h - a result sorted for one screen: what to fix, what to look at, what waits
 * for an answer, and of what is met only how much. The same for every form that people
 * read. Internal to the room.
 *
 * Every finding that applies stands in one part and in one only: what is not met in
 * fix or look, with nothing left out; what is open in ask, later or unknown.
 */
#ifndef EAVEMARK_REPORT_DIGEST_H
#define EAVEMARK_REPORT_DIGEST_H

#include "base/arena.h"
#include "judge/finding.h"

#include <stddef.h>

/* Where a finding stands on a screen, the most urgent first. */
enum part {
    PART_BROKEN,
    PART_FIX,
    PART_LOOK,
    PART_ASKED,   /* a question of the result stands for it */
    PART_UNASKED, /* none does */
    PART_UNKNOWN, /* for the department to say */
    PART_LATER,
    PART_MET,
    PART_NONE, /* does not apply */
    PART_COUNT,
};
enum part digest_part(const struct finding *finding);

/* Findings of one rule that differ in nothing but their place and the value found. */
struct paragraph {
    const struct finding **findings;
    size_t count;
};
bool digest_is_alike(const struct finding *a, const struct finding *b);

/* What is told together: not met for one cause in one place, or in one dispute. */
struct finding_block {
    struct paragraph *paragraphs;
    size_t count;
};

/* Why to look at what does not fail, the worst first. */
enum look_why { LOOK_NOT_MET, LOOK_DISPUTED, LOOK_REMARK, LOOK_COUNT };

struct finding_blocks {
    struct finding_block *items;
    size_t count;
    size_t findings;           /* in all of them */
    size_t ranked[LOOK_COUNT]; /* and for which reason */
};

/* Open findings of which the same is said. */
struct pending {
    const char *says;
    const struct finding **findings;
    size_t count;
};

struct pendings {
    struct pending *items;
    size_t count;
    size_t findings;
};

/* How much of a topic is met. */
struct topic {
    const char *name; /* of the first of its rules, "deck.solid": only up to the dot */
    size_t length;
    size_t met, unconfirmed, unmeasured;
};

/* A figure that was not read, and made a demand that is met. */
struct doubtful {
    const struct maker *maker;
    size_t findings;
};

struct digest {
    struct arena arena;
    struct pendings broken;
    struct finding_blocks fix;  /* what fails */
    struct finding_blocks look; /* no fail, but not met, or disputed, or met with a remark */
    size_t asked;               /* findings that the result's questions decide */
    struct pendings unasked;    /* open, without a question of its own */
    struct pendings unknown;    /* for the department to say */
    size_t later, later_by_stage[STAGE_COUNT];
    struct topic *topics; /* of what is met and stands in no part above */
    size_t topic_count;
    size_t met, met_unconfirmed, met_unmeasured;
    struct doubtful *confirm; /* recalled before those of sister texts; most needed first */
    size_t confirm_count;
};

/* result must outlive the digest. digest_free releases it; arena.failed when out of
 * memory. */
void digest_make(const struct result *result, struct digest *digest);
void digest_free(struct digest *digest);

#endif
