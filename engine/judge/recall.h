/* recall.h - findings, and what functions said, taken from the memory of the law instead
 * of being judged. Internal to the room.
 *
 * Each recall_ either finds it, or begins to note what is asked; the recall_keep_ that
 * belongs to it ends that, and remembers what came of it if it follows from the answers.
 */
#ifndef EAVEMARK_JUDGE_RECALL_H
#define EAVEMARK_JUDGE_RECALL_H

#include "judge/memory.h"
#include "judge/run.h"

/* How a remembered finding is told. */
struct kept_telling {
    const struct finding *finding; /* without its reads; NULL: only as it is written */
    const unsigned *reads;         /* which of the known spots */
    size_t read_count;
    bool open;   /* its words name places of the job, and are made anew of these: */
    int missing; /* which of the known spots is lacking */
    const struct field *lacking;
    bool ask_place;
    struct kept_json json;
};

/* A remembered finding. Most are only counted. */
struct kept_finding {
    struct charge charge;
    enum outcome outcome;
    enum met met;
    unsigned why;
    bool measured;
    struct kept_telling *telling; /* NULL: nothing more was wanted of it */
};

/* Begins a trail of what is judged: known to it are the job and these items. */
void recall_begin(struct judging *judging, const struct node *items, size_t depth,
                  struct trail *trail);

/* Other than the facts, what a finding hangs on: how far the work has come. */
unsigned recall_stage(const struct judging *judging);

/* Where what the function says is remembered. */
struct memory_key recall_key_of_call(const struct judging *judging, const struct call *call);

/* Charges what judging it cost. False when that does not fit in what is left: it is then
 * judged, and stopped. */
bool recall_charge(struct judging *judging, const struct charge *charge);

/* What was charged up to now; of that, what was charged since. */
struct charge recall_charged(const struct judging *judging);
struct charge recall_charged_since(const struct judging *judging, const struct charge *before);

/* What the rule of this number finds of what the walk has come to, its cost charged; NULL when
 * that is not known. */
const struct kept_finding *recall_finding(struct judging *judging, size_t rule,
                                          const struct walk *walk);

/* A new finding of the run's rule, filled as far as it is wanted: all but where and which item,
 * which is for the caller to say. NULL when out of memory. */
struct finding *recall_tell(struct run *run, const struct kept_finding *kept);

/* Remembers it, with what a report will write of it. */
void recall_keep_finding(struct judging *judging, size_t rule, struct finding *finding);

/* What call->function says: its text, whether it is present, and how it ended; for calls
 * whose record nobody looks at. */
bool recall_call(struct judging *judging, struct call *call, enum sandbox_stop *stop);
void recall_keep_call(struct judging *judging, const struct call *call, enum sandbox_stop stop);

#endif
