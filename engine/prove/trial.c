#include "prove/trial.h"

#include "base/utf8.h"
#include "check/compare.h"
#include "judge/finding.h"
#include "law/law.h"

#include <stdlib.h>
#include <string.h>

const char *trial_outcome_word(enum trial_outcome outcome)
{
    static const char *const WORDS[TRIAL_OUT_COUNT] = {
        [TRIAL_OUT_PASS] = "pass",       [TRIAL_OUT_UNCONFIRMED] = "met_unconfirmed",
        [TRIAL_OUT_NOT_MET] = "not_met", [TRIAL_OUT_FAIL] = "fail",
        [TRIAL_OUT_OPEN] = "open",       [TRIAL_OUT_IDLE] = "not_applicable",
        [TRIAL_OUT_BROKEN] = "broken"};
    return WORDS[outcome];
}

static enum trial_outcome outcome_of(const struct finding *finding)
{
    if (finding == NULL)
        return TRIAL_OUT_IDLE;
    switch (finding->outcome) {
    case OUTCOME_PASS:
        return TRIAL_OUT_PASS;
    case OUTCOME_WARN:
        return finding->met == MET_NO ? TRIAL_OUT_NOT_MET : TRIAL_OUT_UNCONFIRMED;
    case OUTCOME_FAIL:
        return TRIAL_OUT_FAIL;
    case OUTCOME_OPEN:
        return TRIAL_OUT_OPEN;
    case OUTCOME_NOT_APPLICABLE:
    case OUTCOME_COUNT:
        return TRIAL_OUT_IDLE;
    case OUTCOME_BROKEN:
        break;
    }
    return TRIAL_OUT_BROKEN;
}

/* Names ---------------------------------------------------------------------------- */

/* Bytes of the name that fit, whole characters only. */
static size_t fitting(const char *name)
{
    const size_t length = strlen(name);
    size_t at = 0;
    for (size_t step = 0; at < length; at += step) {
        step = utf8_length((const unsigned char *)name + at, length - at);
        step = step == 0 ? 1 : step;
        if (at + step >= TRIAL_NAME_BYTES)
            break;
    }
    return at;
}

void trial_add_name(struct trial_named *named, const char *name)
{
    char cut[TRIAL_NAME_BYTES];
    const size_t length = fitting(name);
    memcpy(cut, name, length);
    cut[length] = '\0';
    size_t at = 0;
    while (at < named->count && strcmp(named->names[at], cut) < 0)
        at++;
    if (at == TRIAL_NAMED || (at < named->count && strcmp(named->names[at], cut) == 0))
        return;
    const size_t kept = named->count < TRIAL_NAMED ? named->count : TRIAL_NAMED - 1;
    memmove(named->names[at + 1], named->names[at], (kept - at) * sizeof(named->names[0]));
    memcpy(named->names[at], cut, length + 1);
    named->count = kept + 1;
}

/* Sorted lists --------------------------------------------------------------------- */

/* Makes room for one more item of `size` bytes at index `at` of a list; NULL when out of
 * memory. Rooms double, the old ones stay in the arena until the end. */
static void *open_gap(struct arena *arena, void *items, size_t *count, size_t size, size_t at)
{
    char *list = items;
    if ((*count & (*count - 1)) == 0) { /* 0, 1, 2, 4 ...: full */
        list = arena_array(arena, *count == 0 ? 1 : *count * 2, size);
        if (list == NULL)
            return NULL;
        if (*count > 0)
            memcpy(list, items, *count * size);
    }
    memmove(list + (at + 1) * size, list + at * size, (*count - at) * size);
    memset(list + at * size, 0, size);
    ++*count;
    return list;
}

static int move_order(const struct trial_move *move, const char *rule, enum trial_outcome from,
                      enum trial_outcome to)
{
    const int by_rule = strcmp(move->rule, rule);
    if (by_rule != 0)
        return by_rule;
    return move->from != from ? (int)move->from - (int)from : (int)move->to - (int)to;
}

struct trial_move *trial_move_of(struct trial *trial, const char *rule, enum trial_outcome from,
                                 enum trial_outcome to)
{
    size_t low = 0, high = trial->move_count;
    while (low < high) {
        const size_t middle = low + (high - low) / 2;
        if (move_order(&trial->moves[middle], rule, from, to) < 0)
            low = middle + 1;
        else
            high = middle;
    }
    if (low < trial->move_count && move_order(&trial->moves[low], rule, from, to) == 0)
        return &trial->moves[low];
    const char *copy = arena_copy(&trial->arena, rule);
    struct trial_move *moves = copy == NULL ? NULL
                                            : open_gap(&trial->arena, trial->moves,
                                                       &trial->move_count, sizeof(*moves), low);
    if (moves == NULL)
        return NULL;
    trial->moves = moves;
    moves[low].rule = copy;
    moves[low].from = from;
    moves[low].to = to;
    return &moves[low];
}

void trial_add_cause(struct trial *trial, struct trial_move *move, const char *figure,
                     size_t findings)
{
    size_t at = 0;
    while (at < move->cause_count && strcmp(move->causes[at].figure, figure) < 0)
        at++;
    if (at == move->cause_count || strcmp(move->causes[at].figure, figure) != 0) {
        const char *copy = arena_copy(&trial->arena, figure);
        struct trial_cause *causes = copy == NULL
                                         ? NULL
                                         : open_gap(&trial->arena, move->causes, &move->cause_count,
                                                    sizeof(*causes), at);
        if (causes == NULL)
            return;
        move->causes = causes;
        causes[at].figure = copy;
    }
    move->causes[at].findings += findings;
}

static int book_order(const struct trial_book *book, const char *place, const char *edition,
                      const char *fingerprint)
{
    const int by_place = strcmp(book->place, place);
    if (by_place != 0)
        return by_place;
    const int by_edition = strcmp(book->edition, edition);
    return by_edition != 0 ? by_edition : strcmp(book->fingerprint, fingerprint);
}

void trial_add_book(struct trial *trial, int side, const char *place, const char *edition,
                    const char *fingerprint)
{
    struct trial_side *of = &trial->sides[side];
    size_t at = 0;
    while (at < of->book_count && book_order(&of->books[at], place, edition, fingerprint) < 0)
        at++;
    if (at < of->book_count && book_order(&of->books[at], place, edition, fingerprint) == 0)
        return;
    struct trial_book book = {arena_copy(&trial->arena, place), arena_copy(&trial->arena, edition),
                              arena_copy(&trial->arena, fingerprint)};
    struct trial_book *books = trial->arena.failed ? NULL
                                                   : open_gap(&trial->arena, of->books,
                                                              &of->book_count, sizeof(*books), at);
    if (books == NULL)
        return;
    of->books = books;
    books[at] = book;
}

/* Counting -------------------------------------------------------------------------- */

void trial_begin(struct trial *trial, const char *before, const char *after)
{
    *trial = (struct trial){0};
    trial->sides[0].law = arena_copy(&trial->arena, before);
    trial->sides[1].law = arena_copy(&trial->arena, after);
}

static const struct figure *figure_of(const struct trial_judged *side, const char *name)
{
    return profile_figure(side->law->profile, name);
}

/* Among the first `count` figures that the finding asked for? */
static bool asked_for(const struct finding *finding, size_t count, const char *name)
{
    for (size_t i = 0; finding != NULL && i < count; i++)
        if (strcmp(finding->figures[i]->name, name) == 0)
            return true;
    return false;
}

static bool has_moved(const struct trial_judged sides[2], const char *name)
{
    const struct figure *was = figure_of(&sides[0], name), *now = figure_of(&sides[1], name);
    return was == NULL || now == NULL || !compare_same_figure(was, now);
}

/* The figures that either finding asked for and that the other law has otherwise, each
 * once. */
static void count_causes(struct trial *trial, struct trial_move *move,
                         const struct finding *const pair[2], const struct trial_judged sides[2])
{
    for (int side = 0; side < 2; side++) {
        const struct finding *finding = pair[side], *first = side == 0 ? NULL : pair[0];
        for (size_t i = 0; finding != NULL && i < finding->figure_count; i++) {
            const char *name = finding->figures[i]->name;
            if (!asked_for(finding, i, name)
                && !asked_for(first, first == NULL ? 0 : first->figure_count, name)
                && has_moved(sides, name))
                trial_add_cause(trial, move, name, 1);
        }
    }
}

/* True when the two stand otherwise. */
static bool count_pair(struct trial *trial, const char *name, const struct finding *const pair[2],
                       const struct trial_judged sides[2])
{
    const enum trial_outcome from = outcome_of(pair[0]), to = outcome_of(pair[1]);
    if (from == to)
        return false;
    const char *rule = pair[0] != NULL ? pair[0]->rule : pair[1]->rule;
    struct trial_move *move = trial_move_of(trial, rule, from, to);
    if (move == NULL)
        return true;
    move->findings++;
    if (move->last_job != trial->jobs) {
        move->last_job = trial->jobs;
        move->jobs++;
        trial_add_name(&move->named, name);
    }
    count_causes(trial, move, pair, sides);
    return true;
}

static bool same_where(const struct finding *a, const struct finding *b)
{
    return a->where == b->where
           || (a->where != NULL && b->where != NULL && strcmp(a->where, b->where) == 0);
}

/* How many findings from `at` on are of its rule. */
static size_t of_one_rule(const struct result *result, size_t at)
{
    size_t count = 0;
    while (at + count < result->finding_count
           && strcmp(result->findings[at + count].rule, result->findings[at].rule) == 0)
        count++;
    return count;
}

enum { TOGETHER_MOST = 64 * 32 }; /* findings of one rule that are told apart by their place */

/* The findings of one rule on both sides: those of one place go together, by their
 * number where there are several; `count` may be 0 on either side. */
static bool count_rule(struct trial *trial, const char *name, const struct finding *was,
                       size_t was_count, const struct finding *now, size_t now_count,
                       const struct trial_judged sides[2])
{
    bool taken[TOGETHER_MOST] = {false};
    bool moved = false;
    for (size_t i = 0; i < was_count; i++) {
        const struct finding *pair[2] = {&was[i], NULL};
        for (size_t j = 0; j < now_count && j < TOGETHER_MOST && pair[1] == NULL; j++)
            if (!taken[j] && same_where(&was[i], &now[j])) {
                taken[j] = true;
                pair[1] = &now[j];
            }
        moved = count_pair(trial, name, pair, sides) || moved;
    }
    for (size_t j = 0; j < now_count; j++) {
        const struct finding *pair[2] = {NULL, &now[j]};
        if (j >= TOGETHER_MOST || !taken[j])
            moved = count_pair(trial, name, pair, sides) || moved;
    }
    return moved;
}

/* Both are sorted by rule. */
static bool count_findings(struct trial *trial, const char *name,
                           const struct trial_judged sides[2])
{
    const struct result *was = &sides[0].checked->result, *now = &sides[1].checked->result;
    bool moved = false;
    for (size_t i = 0, j = 0; i < was->finding_count || j < now->finding_count;) {
        const int order = i == was->finding_count ? 1
                          : j == now->finding_count
                              ? -1
                              : strcmp(was->findings[i].rule, now->findings[j].rule);
        const size_t here = order > 0 ? 0 : of_one_rule(was, i);
        const size_t there = order < 0 ? 0 : of_one_rule(now, j);
        moved = count_rule(trial, name, here == 0 ? NULL : &was->findings[i], here,
                           there == 0 ? NULL : &now->findings[j], there, sides)
                || moved;
        i += here;
        j += there;
    }
    return moved;
}

void trial_refuse(struct trial *trial, const char *name, const char *why)
{
    struct text told = TEXT_EMPTY;
    text_addf(&told, "%s: %.*s", name, (int)strcspn(why, "\n"), why);
    trial->not_judged++;
    trial_add_name(&trial->refused, text_string(&told));
    trial->arena.failed = trial->arena.failed || told.failed;
    text_free(&told);
}

/* The county's own mistake stands at a line of its file. */
static void refuse_by(struct trial *trial, const char *name, const struct problems *problems)
{
    struct text all = TEXT_EMPTY;
    if (problems_any(problems, PROBLEM_RULES)) {
        trial->broken++;
        problems_write(problems, &all);
        trial_refuse(trial, name, text_string(&all));
    } else {
        trial_refuse(trial, name,
                     problems->first == NULL ? "not judged" : problems->first->message);
    }
    trial->arena.failed = trial->arena.failed || all.failed;
    text_free(&all);
}

void trial_count(struct trial *trial, const char *name, const struct trial_judged sides[2])
{
    for (int i = 0; i < 2; i++) {
        const struct problems *problems = &sides[i].checked->problems;
        if (sides[i].checked->judged && sides[i].law != NULL)
            continue;
        refuse_by(trial, name, problems);
        return;
    }
    trial->jobs++;
    for (int i = 0; i < 2; i++) {
        const struct result *result = &sides[i].checked->result;
        /* The law's, not the result's: that counts a job's shop sheet in. */
        trial_add_book(trial, i, result->jurisdiction, result->edition, sides[i].law->fingerprint);
    }
    if (count_findings(trial, name, sides)) {
        trial->changed++;
        trial_add_name(&trial->changed_jobs, name);
    }
    const bool failed = sides[0].checked->result.counts[OUTCOME_FAIL] > 0;
    const bool fails = sides[1].checked->result.counts[OUTCOME_FAIL] > 0;
    if (!failed && fails) {
        trial->newly_fail++;
        trial_add_name(&trial->newly_failing, name);
    } else if (failed && !fails) {
        trial->fail_no_more++;
        trial_add_name(&trial->failing_no_more, name);
    }
}

void trial_free(struct trial *trial)
{
    arena_free(&trial->arena);
    *trial = (struct trial){0};
}
