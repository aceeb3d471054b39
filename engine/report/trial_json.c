#include "report/trial_report.h"

#include "include/eavemark.h"

#include <cjson/cJSON.h>

static void add_names(cJSON *group, const char *key, const struct trial_named *named)
{
    cJSON *list = cJSON_AddArrayToObject(group, key);
    for (size_t i = 0; i < named->count; i++)
        cJSON_AddItemToArray(list, cJSON_CreateString(named->names[i]));
}

static void add_count(cJSON *group, const char *key, size_t count)
{
    cJSON_AddNumberToObject(group, key, (double)count);
}

static void add_side(cJSON *part, const char *key, const struct trial_side *side)
{
    cJSON *group = cJSON_AddObjectToObject(part, key);
    cJSON_AddStringToObject(group, "law", side->law);
    cJSON *books = cJSON_AddArrayToObject(group, "books");
    for (size_t i = 0; i < side->book_count; i++) {
        cJSON *book = cJSON_CreateObject();
        cJSON_AddStringToObject(book, "place", side->books[i].place);
        cJSON_AddStringToObject(book, "edition", side->books[i].edition);
        cJSON_AddStringToObject(book, "fingerprint", side->books[i].fingerprint);
        cJSON_AddItemToArray(books, book);
    }
}

static void add_move(cJSON *moves, const struct trial_move *move)
{
    cJSON *group = cJSON_CreateObject();
    cJSON_AddStringToObject(group, "rule", move->rule);
    cJSON_AddStringToObject(group, "from", trial_outcome_word(move->from));
    cJSON_AddStringToObject(group, "to", trial_outcome_word(move->to));
    add_count(group, "jobs", move->jobs);
    add_count(group, "findings", move->findings);
    cJSON *causes = cJSON_AddObjectToObject(group, "figures");
    for (size_t i = 0; i < move->cause_count; i++)
        add_count(causes, move->causes[i].figure, move->causes[i].findings);
    add_names(group, "named", &move->named);
    cJSON_AddItemToArray(moves, group);
}

void report_trial_json(const struct trial *trial, bool indented, struct text *out)
{
    cJSON *part = cJSON_CreateObject();
    cJSON_AddStringToObject(part, "eavemark", EAVEMARK_VERSION);
    cJSON_AddStringToObject(part, "format", TRIAL_FORMAT);
    add_side(part, "before", &trial->sides[0]);
    add_side(part, "after", &trial->sides[1]);
    add_count(part, "jobs", trial->jobs);
    add_count(part, "not_judged", trial->not_judged);
    add_count(part, "changed", trial->changed);
    add_count(part, "newly_fail", trial->newly_fail);
    add_count(part, "fail_no_more", trial->fail_no_more);
    add_names(part, "refused", &trial->refused);
    add_names(part, "changed_jobs", &trial->changed_jobs);
    add_names(part, "newly_failing", &trial->newly_failing);
    add_names(part, "failing_no_more", &trial->failing_no_more);
    cJSON *moves = cJSON_AddArrayToObject(part, "moves");
    for (size_t i = 0; i < trial->move_count; i++)
        add_move(moves, &trial->moves[i]);
    char *line = indented ? cJSON_Print(part) : cJSON_PrintUnformatted(part);
    if (line == NULL)
        out->failed = true;
    else
        text_addf(out, "%s\n", line);
    cJSON_free(line);
    cJSON_Delete(part);
}
