/* proof_json.c - a proof to pass on. */
#include "report/proof_report.h"

#include "base/date.h"
#include "judge/place_fact.h"
#include "include/eavemark.h"
#include "report/json_part.h"
#include "report/proof_vouch.h"
#include "report/value_words.h"

#include <string.h>

/* null: from the beginning, or without end. */
static bool add_day(cJSON *object, const char *key, long day)
{
    char text[16];
    if (day == 0)
        return json_add_text(object, key, NULL);
    date_write(day, text);
    return json_add_text(object, key, text);
}

static bool add_cite(cJSON *object, const struct cite *cite)
{
    struct text words = TEXT_EMPTY;
    if (cite != NULL)
        value_add_cite(&words, cite);
    const bool added = !words.failed
                       && json_add_text(object, "cite", cite == NULL ? NULL : text_string(&words));
    text_free(&words);
    return added;
}

/* Keyed by what differs: "figure", "rule", "field", "duty" or "advice". */
static bool add_difference(cJSON *array, const struct difference *d)
{
    static const char *const OF[] = {[DIFFERENCE_FIGURE] = "figure",
                                     [DIFFERENCE_RULE] = "rule",
                                     [DIFFERENCE_FIELD] = "field",
                                     [DIFFERENCE_DUTY] = "duty",
                                     [DIFFERENCE_ADVICE] = "advice"};
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(array, object) && json_add_text(object, OF[d->of], d->name)
           && json_add_text(object, "kind", proof_difference_word(d->kind))
           && json_add_value(object, "from", &d->from) && json_add_value(object, "to", &d->to)
           && json_add_text(object, "unit", d->to.unit)
           && json_add_text(object, "sense", sense_word(d->sense)) && add_cite(object, d->cite)
           && json_add_text(object, "says", d->says)
           && json_add_text(object, "caution", d->caution);
}

/* The line is null where a file as a whole is meant. */
static bool add_remark(cJSON *array, const char *file, int line, bool error, const char *says)
{
    cJSON *object = cJSON_CreateObject();
    if (!cJSON_AddItemToArray(array, object) || !json_add_text(object, "file", file))
        return false;
    const bool known = line > 0 ? cJSON_AddNumberToObject(object, "line", line) != NULL
                                : cJSON_AddNullToObject(object, "line") != NULL;
    return known && json_add_text(object, "level", error ? "error" : "warning")
           && json_add_text(object, "says", says);
}

/* What the place states for all jobs, in words. */
static bool add_fact(cJSON *array, const struct place_fact *fact)
{
    struct text says = TEXT_EMPTY;
    cJSON *object = cJSON_CreateObject();
    place_fact_add(&says, fact);
    const bool added = cJSON_AddItemToArray(array, object)
                       && json_add_text(object, "name", fact->name)
                       && json_add_text(object, "says", text_string(&says))
                       && json_add_text(object, "status", status_word(fact->cite.status))
                       && add_cite(object, &fact->cite) && !says.failed;
    text_free(&says);
    return added;
}

/* One stretch of days over which a place says one thing. */
static bool add_block(cJSON *array, const struct proof_block *block, bool alone)
{
    cJSON *object = cJSON_CreateObject();
    if (!cJSON_AddItemToArray(array, object) || !add_day(object, "from", block->from)
        || !add_day(object, "to", block->to) || !json_add_text(object, "follows", block->follows))
        return false;
    /* NULL is looked at when there is something to add, and at the end. */
    cJSON *differences = cJSON_AddArrayToObject(object, "differences");
    for (const struct difference *d = block->differences; d != NULL; d = d->next)
        if (differences == NULL || !add_difference(differences, d))
            return false;
    cJSON *facts = cJSON_AddArrayToObject(object, "facts");
    for (size_t i = 0; block->law != NULL && i < block->law->profile->fact_count; i++)
        if (facts == NULL || !add_fact(facts, &block->law->profile->facts[i]))
            return false;
    cJSON *messages = cJSON_AddArrayToObject(object, "messages");
    for (const struct remark *r = block->remarks; r != NULL; r = r->next)
        if (messages == NULL || !add_remark(messages, r->file, r->line, r->error, r->says))
            return false;
    if (cJSON_AddNumberToObject(object, "moved", (double)block->moved) == NULL
        || cJSON_AddNumberToObject(object, "judged", (double)block->shown) == NULL)
        return false;
    /* Of many places that would be most of the text. */
    if (alone && block->law != NULL && !block->law->profile->model
        && !report_unvouched_json(object, block->law->profile))
        return false;
    return differences != NULL && facts != NULL && messages != NULL;
}

/* The cases; NULL when out of memory. */
static cJSON *add_cases(cJSON *object, const struct tally *tally)
{
    cJSON *cases = cJSON_AddObjectToObject(object, "cases");
    const bool added = cases != NULL
                       && cJSON_AddNumberToObject(cases, "passed", (double)tally->held) != NULL
                       && cJSON_AddNumberToObject(cases, "failed", (double)tally->failed) != NULL;
    return added ? cases : NULL;
}

/* alone: the only place asked for, which is then told in full. */
static bool add_place(cJSON *array, const struct place_proof *place, bool alone)
{
    cJSON *object = cJSON_CreateObject();
    if (!cJSON_AddItemToArray(array, object) || !json_add_text(object, "id", place->id)
        || !json_add_text(object, "title", place->title)
        || cJSON_AddBoolToObject(object, "invented", place->invented) == NULL)
        return false;
    cJSON *blocks = cJSON_AddArrayToObject(object, "blocks");
    for (const struct proof_block *b = place->blocks; b != NULL; b = b->next)
        if (blocks == NULL || !add_block(blocks, b, alone))
            return false;
    cJSON *cases = add_cases(object, &place->cases);
    return blocks != NULL && cases != NULL
           && json_add_texts(cases, "lines", place->lines.items, place->lines.count);
}

/* A text of lines, each an item. */
static bool add_lines(cJSON *object, const char *key, const char *lines)
{
    cJSON *array = cJSON_AddArrayToObject(object, key);
    if (array == NULL)
        return false;
    while (*lines != '\0') {
        const size_t length = strcspn(lines, "\n");
        struct text line = TEXT_EMPTY;
        text_add_n(&line, lines, length);
        const bool added = !line.failed
                           && (length == 0
                               || cJSON_AddItemToArray(array,
                                                       cJSON_CreateString(text_string(&line))));
        text_free(&line);
        if (!added)
            return false;
        lines += length + (lines[length] == '\n');
    }
    return true;
}

/* Places, then the cases of all; messages are what is wrong with the call or with files
 * of no place. */
static bool add_proof(cJSON *root, const struct proof *proof)
{
    if (root == NULL || !json_add_text(root, "eavemark", EAVEMARK_VERSION))
        return false;
    cJSON *places = cJSON_AddArrayToObject(root, "places");
    for (const struct place_proof *place = proof->places; place != NULL; place = place->next)
        if (places == NULL || !add_place(places, place, proof->places->next == NULL))
            return false;
    cJSON *cases = add_cases(root, &proof->cases);
    cJSON *messages = cJSON_AddArrayToObject(root, "messages");
    if (places == NULL || cases == NULL || messages == NULL || proof->lines.failed
        || !add_lines(cases, "lines", text_string(&proof->lines)))
        return false;
    for (const struct problem *p = proof->problems.first; p != NULL; p = p->next)
        if (!add_remark(messages, p->file, p->line, true, p->message))
            return false;
    return true;
}

void report_proof_json(const struct proof *proof, bool pretty, struct text *out)
{
    cJSON *root = cJSON_CreateObject();
    json_finish(root, add_proof(root, proof), pretty, out);
}
