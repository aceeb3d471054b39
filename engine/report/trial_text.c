#include "report/trial_report.h"

#include "report/page.h"

#include <stdlib.h>

void trial_text_add_jobs(struct text *out, size_t count)
{
    text_addf(out, count == 1 ? "%zu job" : "%zu jobs", count);
}

/* As reports print outcomes: in capitals what asks to be looked at. */
const char *trial_text_outcome(enum trial_outcome outcome)
{
    static const char *const WORDS[TRIAL_OUT_COUNT] = {
        [TRIAL_OUT_PASS] = "pass",       [TRIAL_OUT_UNCONFIRMED] = "met, in doubt",
        [TRIAL_OUT_NOT_MET] = "not met", [TRIAL_OUT_FAIL] = "FAIL",
        [TRIAL_OUT_OPEN] = "open",       [TRIAL_OUT_IDLE] = "does not apply",
        [TRIAL_OUT_BROKEN] = "BROKEN"};
    return WORDS[outcome];
}

/* By their order in the trial where as many jobs move: qsort alone would leave that to chance. */
static int most_jobs_first(const void *a, const void *b)
{
    const struct trial_move *one = *(const struct trial_move *const *)a;
    const struct trial_move *other = *(const struct trial_move *const *)b;
    if (one->jobs != other->jobs)
        return one->jobs > other->jobs ? -1 : 1;
    return one < other ? -1 : one > other;
}

const struct trial_move **trial_text_by_jobs(const struct trial *trial, bool *failed)
{
    if (trial->move_count == 0)
        return NULL;
    const struct trial_move **list = calloc(trial->move_count, sizeof(struct trial_move *));
    *failed = *failed || list == NULL;
    for (size_t i = 0; list != NULL && i < trial->move_count; i++)
        list[i] = &trial->moves[i];
    if (list != NULL)
        qsort(list, trial->move_count, sizeof(struct trial_move *), most_jobs_first);
    return list;
}

/* The first few names, and how many more there are: a trial keeps no more of them. */
static void add_names(struct text *out, const char *label, const struct trial_named *named,
                      size_t count)
{
    struct text line = TEXT_EMPTY;
    for (size_t i = 0; i < named->count; i++)
        text_addf(&line, "%s%s", i == 0 ? "" : "; ", named->names[i]);
    if (count > named->count)
        text_addf(&line, "; and %zu more", count - named->count);
    if (named->count > 0)
        page_labelled_phrase(out, label, &line);
    else
        text_free(&line);
}

/* Under the law as it was asked for, the books that jobs were judged by: one place may have
 * several. */
static void add_books(const struct trial_side *side, struct text *out)
{
    for (size_t i = 0; i < side->book_count; i++) {
        struct text line = TEXT_EMPTY;
        text_addf(&line, "%s: %s", side->books[i].place, side->books[i].edition);
        page_labelled_phrase(out, i == 0 ? "by" : "", &line);
    }
}

static void add_head(const struct trial *trial, struct text *out)
{
    struct text line = TEXT_EMPTY;
    text_add(out, "Trial: what a change of law does to jobs\n\n");
    page_head(out, "Before", trial->sides[0].law);
    add_books(&trial->sides[0], out);
    page_head(out, "After", trial->sides[1].law);
    add_books(&trial->sides[1], out);
    trial_text_add_jobs(&line, trial->jobs);
    text_addf(&line, " judged under both, %zu not", trial->not_judged);
    page_head(out, "Jobs", text_string(&line));
    text_free(&line);
    line = TEXT_EMPTY;
    text_addf(&line, "%zu come out otherwise; %zu newly fail, %zu fail no more", trial->changed,
              trial->newly_fail, trial->fail_no_more);
    page_head(out, "Count", text_string(&line));
    text_free(&line);
}

static void add_move(const struct trial_move *move, struct text *out)
{
    struct text title = TEXT_EMPTY, by = TEXT_EMPTY;
    text_addf(&title, "%s: %s -> %s, ", move->rule, trial_text_outcome(move->from),
              trial_text_outcome(move->to));
    trial_text_add_jobs(&title, move->jobs);
    /* A rule judged for each plane or edge may move more than once in a job. */
    if (move->findings != move->jobs)
        text_addf(&title, ", %zu findings", move->findings);
    text_add(out, "\n");
    page_phrase(out, 2, &title);
    for (size_t i = 0; i < move->cause_count; i++)
        text_addf(&by, "%s%s (%zu)", i == 0 ? "" : ", ", move->causes[i].figure,
                  move->causes[i].findings);
    if (move->cause_count > 0)
        page_labelled_phrase(out, "moved by", &by);
    else
        text_free(&by);
    add_names(out, "jobs", &move->named, move->jobs);
}

void report_trial_text(const struct trial *trial, struct text *out)
{
    const struct trial_move **moves = trial_text_by_jobs(trial, &out->failed);
    add_head(trial, out);
    if (trial->newly_fail + trial->fail_no_more > 0)
        text_add(out, "\n");
    add_names(out, "newly fail", &trial->newly_failing, trial->newly_fail);
    add_names(out, "fail no more", &trial->failing_no_more, trial->fail_no_more);
    text_add(out, trial->jobs == 0         ? "\nNo job was judged under both laws.\n"
                  : trial->move_count == 0 ? "\nNo finding of any job moves.\n"
                                           : "\nWHAT MOVES, those of most jobs first\n");
    for (size_t i = 0; i < trial->move_count && moves != NULL; i++)
        add_move(moves[i], out);
    if (trial->not_judged > 0)
        text_add(out, "\nNOT JUDGED\n");
    add_names(out, "jobs", &trial->refused, trial->not_judged);
    /* A trial counts what jobs say: a department may have found otherwise. */
    text_add(out, "\nA pre-check of jobs as they are written: not what a department found.\n");
    free(moves);
}
