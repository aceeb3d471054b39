/* The counts of a part of the jobs, read back from the JSON of report/trial_json.c. */
#include "prove/trial.h"

#include "job/json.h"

#include <cjson/cJSON.h>
#include <math.h>
#include <string.h>

/* What is read is looked through whole before anything is added: a part is taken as it
 * is or not at all. */
static bool is_count(const cJSON *group, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(group, key);
    return cJSON_IsNumber(item) && item->valuedouble >= 0 && item->valuedouble < 1e15
           && floor(item->valuedouble) == item->valuedouble;
}

static bool is_text(const cJSON *group, const char *key)
{
    return cJSON_IsString(cJSON_GetObjectItemCaseSensitive(group, key));
}

static bool are_names(const cJSON *group, const char *key)
{
    const cJSON *list = cJSON_GetObjectItemCaseSensitive(group, key), *name = NULL;
    if (!cJSON_IsArray(list) || cJSON_GetArraySize(list) > TRIAL_NAMED)
        return false;
    cJSON_ArrayForEach(name, list)
        if (!cJSON_IsString(name))
            return false;
    return true;
}

static const char *text_of(const cJSON *group, const char *key)
{
    return cJSON_GetObjectItemCaseSensitive(group, key)->valuestring;
}

static int outcome_named(const char *word)
{
    for (int i = 0; i < TRIAL_OUT_COUNT; i++)
        if (strcmp(trial_outcome_word((enum trial_outcome)i), word) == 0)
            return i;
    return -1;
}

static bool is_move(const cJSON *move)
{
    const cJSON *causes = cJSON_GetObjectItemCaseSensitive(move, "figures"), *cause = NULL;
    if (!is_text(move, "rule") || !is_text(move, "from") || !is_text(move, "to")
        || !is_count(move, "jobs") || !is_count(move, "findings") || !are_names(move, "named")
        || !cJSON_IsArray(causes))
        return false;
    cJSON_ArrayForEach(cause, causes)
        if (!is_text(cause, "figure") || !is_count(cause, "findings"))
            return false;
    return outcome_named(text_of(move, "from")) >= 0 && outcome_named(text_of(move, "to")) >= 0;
}

static bool is_side(const cJSON *part, const char *key)
{
    const cJSON *side = cJSON_GetObjectItemCaseSensitive(part, key), *book = NULL;
    const cJSON *books = cJSON_GetObjectItemCaseSensitive(side, "books");
    if (!is_text(side, "law") || !cJSON_IsArray(books))
        return false;
    cJSON_ArrayForEach(book, books)
        if (!is_text(book, "place") || !is_text(book, "edition") || !is_text(book, "fingerprint"))
            return false;
    return true;
}

static bool is_part(const cJSON *part)
{
    static const char *const COUNTS[] = {"jobs",    "not_judged", "broken",
                                         "changed", "newly_fail", "fail_no_more"};
    static const char *const NAMES[] = {"refused", "changed_jobs", "newly_failing",
                                        "failing_no_more"};
    if (!is_text(part, "format") || strcmp(text_of(part, "format"), TRIAL_FORMAT) != 0
        || !is_side(part, "before") || !is_side(part, "after"))
        return false;
    for (size_t i = 0; i < sizeof(COUNTS) / sizeof(COUNTS[0]); i++)
        if (!is_count(part, COUNTS[i]))
            return false;
    for (size_t i = 0; i < sizeof(NAMES) / sizeof(NAMES[0]); i++)
        if (!are_names(part, NAMES[i]))
            return false;
    const cJSON *moves = cJSON_GetObjectItemCaseSensitive(part, "moves"), *move = NULL;
    if (!cJSON_IsArray(moves))
        return false;
    cJSON_ArrayForEach(move, moves)
        if (!is_move(move))
            return false;
    return true;
}

/* One edition of a place that was read from other files is another law. */
static const char *other_files(const struct trial *trial, int side, const cJSON *books)
{
    const cJSON *book = NULL;
    cJSON_ArrayForEach(book, books)
        for (size_t i = 0; i < trial->sides[side].book_count; i++) {
            const struct trial_book *held = &trial->sides[side].books[i];
            if (strcmp(held->place, text_of(book, "place")) == 0
                && strcmp(held->edition, text_of(book, "edition")) == 0
                && strcmp(held->fingerprint, text_of(book, "fingerprint")) != 0)
                return held->place;
        }
    return NULL;
}

static const cJSON *side_of(const cJSON *part, int side)
{
    return cJSON_GetObjectItemCaseSensitive(part, side == 0 ? "before" : "after");
}

/* False, with a problem, for a part of another trial. */
static bool is_of_this(struct trial *trial, const cJSON *part, const char *name,
                       struct problems *problems)
{
    for (int side = 0; side < 2; side++) {
        const char *law = text_of(side_of(part, side), "law");
        const char *place = other_files(
            trial, side, cJSON_GetObjectItemCaseSensitive(side_of(part, side), "books"));
        if (trial->sides[side].law != NULL && strcmp(law, trial->sides[side].law) != 0) {
            problem_at_line(problems, PROBLEM_JOB, name, 0, 0,
                            "is of another trial: %s \"%s\", not \"%s\"",
                            side == 0 ? "before" : "after", law, trial->sides[side].law);
            return false;
        }
        if (place != NULL) {
            problem_at_line(problems, PROBLEM_JOB, name, 0, 0,
                            "was judged by other files of %s than the parts before it", place);
            return false;
        }
    }
    return true;
}

static void merge_names(struct trial_named *named, const cJSON *group, const char *key)
{
    const cJSON *name = NULL;
    cJSON_ArrayForEach(name, cJSON_GetObjectItemCaseSensitive(group, key))
        trial_add_name(named, name->valuestring);
}

static size_t count_of(const cJSON *group, const char *key)
{
    return (size_t)cJSON_GetObjectItemCaseSensitive(group, key)->valuedouble;
}

static void merge_move(struct trial *trial, const cJSON *from)
{
    const cJSON *cause = NULL;
    struct trial_move *move = trial_move_of(
        trial, text_of(from, "rule"), (enum trial_outcome)outcome_named(text_of(from, "from")),
        (enum trial_outcome)outcome_named(text_of(from, "to")));
    if (move == NULL)
        return;
    move->jobs += count_of(from, "jobs");
    move->findings += count_of(from, "findings");
    merge_names(&move->named, from, "named");
    cJSON_ArrayForEach(cause, cJSON_GetObjectItemCaseSensitive(from, "figures"))
        trial_add_cause(trial, move, text_of(cause, "figure"), count_of(cause, "findings"));
}

static void merge_part(struct trial *trial, const cJSON *part)
{
    const cJSON *item = NULL;
    for (int side = 0; side < 2; side++) {
        const cJSON *from = side_of(part, side);
        if (trial->sides[side].law == NULL)
            trial->sides[side].law = arena_copy(&trial->arena, text_of(from, "law"));
        cJSON_ArrayForEach(item, cJSON_GetObjectItemCaseSensitive(from, "books"))
            trial_add_book(trial, side, text_of(item, "place"), text_of(item, "edition"),
                           text_of(item, "fingerprint"));
    }
    trial->jobs += count_of(part, "jobs");
    trial->not_judged += count_of(part, "not_judged");
    trial->broken += count_of(part, "broken");
    trial->changed += count_of(part, "changed");
    trial->newly_fail += count_of(part, "newly_fail");
    trial->fail_no_more += count_of(part, "fail_no_more");
    merge_names(&trial->refused, part, "refused");
    merge_names(&trial->changed_jobs, part, "changed_jobs");
    merge_names(&trial->newly_failing, part, "newly_failing");
    merge_names(&trial->failing_no_more, part, "failing_no_more");
    cJSON_ArrayForEach(item, cJSON_GetObjectItemCaseSensitive(part, "moves"))
        merge_move(trial, item);
}

bool trial_part_merge(struct trial *trial, const char *text, size_t length, const char *name,
                      struct problems *problems)
{
    cJSON *part = NULL;
    json_read(&part, text, length, name, problems);
    if (part == NULL)
        return false;
    const bool whole = is_part(part);
    if (!whole)
        problem_at_line(problems, PROBLEM_JOB, name, 0, 0,
                        "is no part of a trial (trial --part writes them)");
    const bool fits = whole && is_of_this(trial, part, name, problems);
    if (fits)
        merge_part(trial, part);
    cJSON_Delete(part);
    return fits;
}
