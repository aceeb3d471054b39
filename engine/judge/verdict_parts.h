/* verdict_parts.h - what the files of verdict.c share. Internal to them. */
#ifndef EAVEMARK_JUDGE_VERDICT_PARTS_H
#define EAVEMARK_JUDGE_VERDICT_PARTS_H

#include "base/text.h"
#include "judge/verdict.h"

/* How sure the figures are that made the demanded value. */
struct surety {
    bool read;     /* one was read in its own code, or is the invented place's own */
    bool parallel; /* one was read in a sister text only */
    bool memory;   /* one is recalled */
    bool practice; /* one is common practice */
    bool unsure;   /* one is of a book that may not bind here */
    bool draft;    /* all are asked by a draft only */
};
struct surety verdict_surety(const struct judgement *judgement);

void verdict_decide_met(struct finding *finding, const struct judgement *judgement,
                        const struct surety *surety, bool disputed);
void verdict_decide_unmet(struct finding *finding, const struct rule *rule,
                          const struct record *record, const struct surety *surety);

/* A pass is no surer than the facts of the place that it rests on, nor than the job's word
 * on what the place states otherwise. */
void verdict_by_place(struct finding *finding);

/* A silence that rests on such a fact is none. True when the finding is open for it. */
bool verdict_open_by_place(struct finding *finding, struct judging *judging);

/* The first fact read that the place states otherwise, in words; or NULL. */
const char *verdict_denied(const struct finding *finding);

/* Copies what the record holds into the finding; what is demanded, with who made it; and
 * all that the judgement compared. */
void verdict_take_record(struct finding *finding, struct judging *judging);
void verdict_take_demand(struct finding *finding, struct judging *judging,
                         const struct judgement *judgement);
void verdict_take_judgement(struct finding *finding, struct judging *judging,
                            const struct judgement *judgement, const struct dispute *dispute);

/* What reports tell apart from the comparison, and from one another. */
void verdict_take_words(struct finding *finding, struct judging *judging, const struct rule *rule,
                        const struct judgement *judgement);

void verdict_say_comparison(struct text *out, const struct judgement *judgement);
void verdict_say_place(struct text *out, const struct finding *finding);

/* What goes beyond the comparison itself; NULL when there is nothing. */
const char *verdict_note(struct judging *judging, const struct finding *finding,
                         const struct judgement *judgement, const struct surety *surety,
                         const struct dispute *dispute);

#endif
