/* one_line.h - several facts asked for and answered in one line (job/together.h). */
#ifndef EAVEMARK_ASK_ONE_LINE_H
#define EAVEMARK_ASK_ONE_LINE_H

#include "ask/question.h"
#include "base/text.h"

/* The first of the facts that are asked together with this one: where that waits too, all are
 * asked; where it does not, the others are asked one by one. Its pointer, or NULL. */
const char *one_line_leader(const struct question *question, struct arena *arena,
                            const struct fields *fields);

/* Makes the question, which is for such a first fact, one for all of them that the job does
 * not say; nothing where that is only its own. Of those_waiting, for whichever of them: who
 * asks keeps those that wait (one_line_keep). job is as it is judged. */
void one_line_gather(struct question *question, struct arena *arena, const cJSON *job,
                     const struct fields *fields);

/* Keeps the parts that are told of as wanted, `most` at most; one alone is asked for by its own
 * words. */
void one_line_keep(struct question *question, bool (*wanted)(void *, const struct line_part *),
                   void *data, size_t most);

/* Sets what the words say of each fact in the job: in their order, with commas or semicolons
 * between, - for what is not known; fewer leave the rest unknown. False, with why, when one
 * is not taken; empty when out of memory. */
bool one_line_read(cJSON *job, const struct question *question, const char *words,
                   struct text *why);

#endif
