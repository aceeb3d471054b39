#include "report/trial_report.h"

#include "include/eavemark.h"
#include "report/json_part.h"

#include <cjson/cJSON.h>

/* False when out of memory, as every function of this file. */
static bool add_count(cJSON *group, const char *key, size_t count)
{
    return cJSON_AddNumberToObject(group, key, (double)count) != NULL;
}

static bool add_names(cJSON *group, const char *key, const struct trial_named *named)
{
    /* As many as a trial keeps, which bounds named->count. */
    const char *names[TRIAL_NAMED];
    for (size_t i = 0; i < named->count; i++)
        names[i] = named->names[i];
    return json_add_texts(group, key, names, named->count);
}

/* The fingerprint tells two editions of one book apart: it is that of the files. */
static bool add_book(cJSON *books, const struct trial_book *book)
{
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(books, object) && json_add_text(object, "place", book->place)
           && json_add_text(object, "edition", book->edition)
           && json_add_text(object, "fingerprint", book->fingerprint);
}

/* A side without a book has judged nothing yet; the list is there all the same. */
static bool add_side(cJSON *part, const char *key, const struct trial_side *side)
{
    cJSON *group = cJSON_AddObjectToObject(part, key);
    cJSON *books = cJSON_AddArrayToObject(group, "books");
    bool added = books != NULL && json_add_text(group, "law", side->law);
    for (size_t i = 0; added && i < side->book_count; i++)
        added = add_book(books, &side->books[i]);
    return added;
}

static bool add_cause(cJSON *causes, const struct trial_cause *cause)
{
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(causes, object) && json_add_text(object, "figure", cause->figure)
           && add_count(object, "findings", cause->findings);
}

static bool add_causes(cJSON *group, const struct trial_move *move)
{
    cJSON *causes = cJSON_AddArrayToObject(group, "figures");
    bool added = causes != NULL;
    for (size_t i = 0; added && i < move->cause_count; i++)
        added = add_cause(causes, &move->causes[i]);
    return added;
}

static bool add_move(cJSON *moves, const struct trial_move *move)
{
    cJSON *group = cJSON_CreateObject();
    return cJSON_AddItemToArray(moves, group) && json_add_text(group, "rule", move->rule)
           && json_add_text(group, "from", trial_outcome_word(move->from))
           && json_add_text(group, "to", trial_outcome_word(move->to))
           && add_count(group, "jobs", move->jobs) && add_count(group, "findings", move->findings)
           && add_causes(group, move) && add_names(group, "named", &move->named);
}

static bool add_moves(cJSON *part, const struct trial *trial)
{
    cJSON *moves = cJSON_AddArrayToObject(part, "moves");
    bool added = moves != NULL;
    for (size_t i = 0; added && i < trial->move_count; i++)
        added = add_move(moves, &trial->moves[i]);
    return added;
}

/* What trial_part_merge reads again: a key left out here would be lost in a merge. */
void report_trial_json(const struct trial *trial, bool indented, struct text *out)
{
    cJSON *part = cJSON_CreateObject();
    const bool complete = json_add_text(part, "eavemark", EAVEMARK_VERSION)
                          && json_add_text(part, "format", TRIAL_FORMAT)
                          && add_side(part, "before", &trial->sides[0])
                          && add_side(part, "after", &trial->sides[1])
                          && add_count(part, "jobs", trial->jobs)
                          && add_count(part, "not_judged", trial->not_judged)
                          && add_count(part, "broken", trial->broken)
                          && add_count(part, "changed", trial->changed)
                          && add_count(part, "newly_fail", trial->newly_fail)
                          && add_count(part, "fail_no_more", trial->fail_no_more)
                          && add_names(part, "refused", &trial->refused)
                          && add_names(part, "changed_jobs", &trial->changed_jobs)
                          && add_names(part, "newly_failing", &trial->newly_failing)
                          && add_names(part, "failing_no_more", &trial->failing_no_more)
                          && add_moves(part, trial);
    json_finish(part, complete, indented, out);
}
