/* interview.h - a job filled in question by question.
 *
 * After each answer the job is judged again, so only what its place's rules
 * still need is asked. The job is valid at any time, but for required facts
 * not asked yet.
 */
#ifndef EAVEMARK_ASK_INTERVIEW_H
#define EAVEMARK_ASK_INTERVIEW_H

#include "base/problem.h"
#include "base/text.h"
#include "ask/question.h"

#include <cjson/cJSON.h>
#include <stdbool.h>

struct interview;

/* Starts from a job, which is taken over; NULL for a new one. preset: facts
 * given beforehand; a job that says another place or day refuses them. laws and
 * file must outlive the interview. NULL with problems when the job cannot be
 * used. */
struct interview *interview_start(struct laws *laws, cJSON *job, const struct overrides *preset,
                                  const char *file, struct problems *problems);

/* The question that is next; NULL when there is none, or with problems when
 * there is no telling. It is good until the next call. */
const struct question *interview_ask(struct interview *interview, struct problems *problems);

/* Asks for what later stages decide as well, as far as it can be known now. */
void interview_go_ahead(struct interview *interview);

/* Asks for a shop's habits only, and tells of nothing that fails: the job is no house of its
 * (shop_house.h). others, taken over: materials that a draft has put aside, or NULL. */
void interview_of_habits(struct interview *interview, cJSON *others);

/* What a draft calls them. */
#define INTERVIEW_OTHERS "eavemark_others"

/* A shop sheet of the habits that were answered; to be deleted. NULL with problems. */
cJSON *interview_sheet_of(const struct interview *interview, struct problems *problems);

/* How many questions wait now, the present one included; more may follow from answers. */
size_t interview_left(const struct interview *interview);

/* A finding that fails by what was answered and was not given yet; NULL when there is none.
 * Good until the next question. */
const struct finding *interview_fails(struct interview *interview);

/* How the job stands; good until the next answer. */
const struct result *interview_standing(const struct interview *interview);

/* Takes the answer ("=" for what question->same says) and goes on to the next
 * question. False when it is refused; why then says why, or is empty when memory
 * is out. */
bool interview_answer(struct interview *interview, const char *words, struct text *why);

/* Leaves the question open; it is not asked again. False, with why, when the
 * job cannot do without. */
bool interview_skip(struct interview *interview, struct text *why);

/* Takes the last answer, or skip, back, and asks that again. False when there
 * was none. */
bool interview_back(struct interview *interview);

/* How many were answered, and left out. */
struct interview_counts {
    size_t answered, skipped;
};
struct interview_counts interview_count(const struct interview *interview);

/* The job so far. With problems (required facts that are missing) when it is
 * none yet. */
const cJSON *interview_job(const struct interview *interview, struct problems *problems);

/* The job so far, a job or not yet one, with what a shop has put aside; to be deleted. NULL
 * when out of memory. */
cJSON *interview_draft(const struct interview *interview);

void interview_free(struct interview *interview);

#endif
