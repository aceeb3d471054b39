#include "job/lay_out.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/text.h"
#include "job/footprint_facts.h"
#include "job/json.h"
#include "job/origin.h"
#include "job/path.h"
#include "job/slope.h"
#include "trade/layout.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

/* Tolerance between two measurements of one length. */
static const double AGREE_FT = 0.1, AGREE_IN = 1;
static const double IN_PER_FT = 12;

/* Laid out where facts are lacking: only the names of its planes and edges are used. */
static const struct footprint PLACEHOLDER_ROOF = {
    .length_ft = 60,
    .width_ft = 30,
    .pitch = 4,
    .porch_length_ft = 10,
    .porch_depth_ft = 6,
    .porch_pitch = 4,
    .wing_width_ft = 20,
    .wing_out_ft = 10,
};
static const double PLACEHOLDER_WING_LEFT_FT = 20;

struct laying {
    cJSON *job, *roof;
    const struct footprint_facts *facts;
    const struct layout *layout;
    bool whole; /* lengths are known, not names only */
    const char *file;
    struct problems *problems;
};

/* null counts as absent everywhere in a job. */
static bool is_absent(const cJSON *node)
{
    return node == NULL || cJSON_IsNull(node);
}

/* Facts ------------------------------------------------------------------------ */

/* Marked as the plan's, so that reports can tell it from what the job says. */
static void set_fact(struct laying *laying, cJSON *group, const char *key, cJSON *value)
{
    origin_mark(value, ORIGIN_PLAN);
    if (!json_set(group, key, value))
        problem_out_of_memory(laying->problems);
}

/* The same thing said twice, differently: which one is meant only the writer knows. */
static void disagree(struct laying *laying, const char *pointer, const char *key, const char *said,
                     const char *laid)
{
    struct text at = TEXT_EMPTY;
    text_addf(&at, "%s/%s", pointer, key);
    problem_at(laying->problems, PROBLEM_JOB, laying->file, text_string(&at),
               "says %s, but the roof laid out from /roof/footprint has %s here; leave one of "
               "the two out",
               said, laid);
    if (at.failed)
        problem_out_of_memory(laying->problems);
    text_free(&at);
}

/* What the plan shows goes into the group, or must agree with what is there; where
 * it does not, once that is said, the plan holds, so that nothing else is said
 * of it. A value of the wrong type is left to validation. */
static void put_number(struct laying *laying, cJSON *group, const char *pointer, const char *key,
                       double value, const char *unit)
{
    const cJSON *there = cJSON_GetObjectItemCaseSensitive(group, key);
    const double slack = strcmp(unit, "in") == 0 ? AGREE_IN : AGREE_FT;
    if (is_absent(there)) {
        set_fact(laying, group, key, cJSON_CreateNumber(value));
    } else if (cJSON_IsNumber(there) && !(fabs(there->valuedouble - value) <= slack)) {
        char said[96], laid[96];
        number_write_unit(there->valuedouble, unit, said);
        number_write_unit(value, unit, laid);
        disagree(laying, pointer, key, said, laid);
        set_fact(laying, group, key, cJSON_CreateNumber(value));
    }
}

/* "6:12" and "6/12" are one slope. */
static bool same_words(const char *a, const char *b)
{
    double first = 0, second = 0;
    return strcmp(a, b) == 0
           || (slope_parse(a, &first) && slope_parse(b, &second)
               && number_equals(first, second, "rise_in_12"));
}

static void put_words(struct laying *laying, cJSON *group, const char *pointer, const char *key,
                      const char *words)
{
    const cJSON *there = cJSON_GetObjectItemCaseSensitive(group, key);
    if (is_absent(there)) {
        set_fact(laying, group, key, cJSON_CreateString(words));
    } else if (cJSON_IsString(there) && !same_words(there->valuestring, words)) {
        char said[64] = "", laid[64] = "";
        const char *text = there->valuestring;
        snprintf(said, sizeof(said), "\"%.*s\"", (int)path_quotable(text, strlen(text), 60), text);
        snprintf(laid, sizeof(laid), "\"%s\"", words);
        disagree(laying, pointer, key, said, laid);
        set_fact(laying, group, key, cJSON_CreateString(words));
    }
}

/* Lists ------------------------------------------------------------------------ */

/* The list of this name in the roof, made when there is none; NULL for what is
 * no list (validation says so). */
static cJSON *list_of(struct laying *laying, const char *name)
{
    cJSON *list = cJSON_GetObjectItemCaseSensitive(laying->roof, name);
    if (is_absent(list)) {
        set_fact(laying, laying->roof, name, cJSON_CreateArray());
        list = cJSON_GetObjectItemCaseSensitive(laying->roof, name);
    }
    return cJSON_IsArray(list) ? list : NULL;
}

static const char *name_of(const cJSON *item)
{
    return cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "name"));
}

/* The item of this name, which is added when there is none. */
static cJSON *item_of(struct laying *laying, cJSON *list, const char *name, struct text *pointer)
{
    size_t index = 0;
    cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        if (name_of(item) != NULL && strcmp(name_of(item), name) == 0)
            break;
        index++;
    }
    if (item == NULL) {
        item = cJSON_CreateObject();
        if (item == NULL || cJSON_AddStringToObject(item, "name", name) == NULL
            || !cJSON_AddItemToArray(list, item)) {
            cJSON_Delete(item);
            problem_out_of_memory(laying->problems);
            return NULL;
        }
        origin_mark(item, ORIGIN_PLAN);
    }
    path_add_item(pointer, index);
    return item;
}

/* An item beside the footprint may only tell more of a plane, edge or valley that the
 * form has. */
static void report_name(struct laying *laying, const char *list, size_t index, const char *name,
                        const char *const names[], size_t count)
{
    struct text pointer = TEXT_EMPTY, known = TEXT_EMPTY;
    struct nearest nearest;
    nearest_start(&nearest, name == NULL ? "" : name);
    for (size_t i = 0; i < count; i++) {
        text_addf(&known, "%s\"%s\"", i == 0 ? "" : ", ", names[i]);
        nearest_offer(&nearest, names[i]);
    }
    text_addf(&pointer, "/roof/%s/%zu/name", list, index);
    if (name == NULL)
        problem_at(laying->problems, PROBLEM_JOB, laying->file, text_string(&pointer),
                   "is missing: beside /roof/footprint, an item of this list tells more of one of "
                   "%s",
                   count == 0 ? "none" : text_string(&known));
    else
        problem_at(laying->problems, PROBLEM_JOB, laying->file, text_string(&pointer),
                   "\"%.*s\" is none of those that the roof laid out from /roof/footprint has "
                   "(%s)%s%s%s",
                   (int)path_quotable(name, strlen(name), 60), name,
                   count == 0 ? "none" : text_string(&known),
                   nearest.name == NULL ? "" : "; did you mean \"",
                   nearest.name == NULL ? "" : nearest.name, nearest.name == NULL ? "" : "\"?");
    if (pointer.failed || known.failed)
        problem_out_of_memory(laying->problems);
    text_free(&pointer);
    text_free(&known);
}

/* Every item must be one of those that there are. */
static void check_names(struct laying *laying, const cJSON *list, const char *what,
                        const char *const names[], size_t count)
{
    const cJSON *item = NULL;
    size_t index = 0;
    cJSON_ArrayForEach(item, list) {
        const char *name = name_of(item);
        bool known = !cJSON_IsObject(item);
        for (size_t i = 0; i < count; i++)
            known = known || (name != NULL && strcmp(name, names[i]) == 0);
        if (!known)
            report_name(laying, what, index, name, names, count);
        index++;
    }
}

/* What is said once for all ----------------------------------------------------- */

/* A reference said once for all counts only if the job names what it refers to. */
static bool is_named(const cJSON *job, const char *refers, const char *name)
{
    const cJSON *item = NULL; /* of a list of the job itself: "decks" */
    cJSON_ArrayForEach(item, cJSON_GetObjectItemCaseSensitive(job, refers))
        if (name_of(item) != NULL && strcmp(name_of(item), name) == 0)
            return true;
    return false;
}

/* What does not hold is reported where it stands, and nowhere else. */
static void fill_from(struct laying *laying, cJSON *item, const char *group)
{
    const cJSON *shared = cJSON_GetObjectItemCaseSensitive(laying->facts->group, group);
    const struct field *field = fields_child(laying->facts->field, group);
    const cJSON *fact = NULL;
    if (field == NULL || !cJSON_IsObject(shared))
        return;
    cJSON_ArrayForEach(fact, shared) {
        const struct field *what = fields_child(field, fact->string);
        if (what == NULL || !footprint_value_holds(fact, what)
            || !is_absent(cJSON_GetObjectItemCaseSensitive(item, fact->string))
            || (what->refers != NULL && !is_named(laying->job, what->refers, fact->valuestring)))
            continue;
        cJSON *copy = cJSON_Duplicate(fact, true);
        /* Said once by the shop sheet, it is the shop's for each. */
        if (origin_of(fact) == ORIGIN_JOB)
            set_fact(laying, item, fact->string, copy);
        else if (!json_set(item, fact->string, copy))
            problem_out_of_memory(laying->problems);
    }
}

/* The parts of the roof --------------------------------------------------------- */

static const char *const KINDS[] = {
    [LAYOUT_EAVE] = "eave",
    [LAYOUT_RAKE] = "rake",
    [LAYOUT_HIP] = "hip",
    [LAYOUT_VALLEY] = "valley",
};
/* What is said once for all of a kind; of hips and valleys there is nothing. */
static const char *const SHARED[] = {
    [LAYOUT_EAVE] = "eaves", [LAYOUT_RAKE] = "rakes", [LAYOUT_HIP] = NULL, [LAYOUT_VALLEY] = NULL};

static void write_plane(struct laying *laying, cJSON *list, const struct layout_plane *plane)
{
    struct text pointer = TEXT_EMPTY;
    text_add(&pointer, "/roof/slopes");
    cJSON *item = item_of(laying, list, plane->name, &pointer);
    const char *at = text_string(&pointer);
    const char *pitch = plane->porch ? laying->facts->porch_pitch : laying->facts->pitch;
    if (item != NULL) {
        if (pitch != NULL)
            put_words(laying, item, at, "pitch", pitch);
        if (laying->whole) {
            put_number(laying, item, at, "eave_ft", plane->eave_ft, "ft");
            put_number(laying, item, at, "ridge_ft", plane->ridge_ft, "ft");
            put_number(laying, item, at, "run_ft", plane->run_ft, "ft");
            if (plane->odd)
                put_number(laying, item, at, "plan_sqft", plane->plan_sqft, "sqft");
        }
        fill_from(laying, item, "planes");
    }
    text_free(&pointer);
}

static void write_edge(struct laying *laying, cJSON *list, const struct layout_edge *edge)
{
    const struct layout_plane *plane = &laying->layout->planes[edge->plane];
    struct text pointer = TEXT_EMPTY;
    text_add(&pointer, "/roof/edges");
    cJSON *item = item_of(laying, list, edge->name, &pointer);
    const char *at = text_string(&pointer);
    if (item != NULL) {
        put_words(laying, item, at, "kind", KINDS[edge->kind]);
        put_words(laying, item, at, "slope", plane->name);
        if (laying->whole)
            put_number(laying, item, at, "length_ft", edge->length_ft, "ft");
        /* What stands under a porch's eave, and how far in, no plan shows. */
        if (laying->whole && edge->kind == LAYOUT_EAVE && !plane->porch)
            put_number(laying, item, at, "overhang_in",
                       laying->facts->roof.eave_overhang_ft * IN_PER_FT, "in");
        if (laying->whole && edge->kind == LAYOUT_RAKE)
            put_number(laying, item, at, "overhang_in",
                       laying->facts->roof.rake_overhang_ft * IN_PER_FT, "in");
        if (SHARED[edge->kind] != NULL)
            fill_from(laying, item, SHARED[edge->kind]);
    }
    text_free(&pointer);
}

static void write_planes(struct laying *laying)
{
    const struct layout *layout = laying->layout;
    const char *names[LAYOUT_PLANES_MOST];
    cJSON *list = list_of(laying, "slopes");
    if (list == NULL)
        return;
    for (size_t i = 0; i < layout->plane_count; i++)
        names[i] = layout->planes[i].name;
    check_names(laying, list, "slopes", names, layout->plane_count);
    for (size_t i = 0; i < layout->plane_count; i++)
        write_plane(laying, list, &layout->planes[i]);
}

static void write_edges(struct laying *laying)
{
    const struct layout *layout = laying->layout;
    const char *names[LAYOUT_EDGES_MOST];
    cJSON *list = list_of(laying, "edges");
    if (list == NULL)
        return;
    for (size_t i = 0; i < layout->edge_count; i++)
        names[i] = layout->edges[i].name;
    check_names(laying, list, "edges", names, layout->edge_count);
    for (size_t i = 0; i < layout->edge_count; i++)
        write_edge(laying, list, &layout->edges[i]);
}

static void write_valleys(struct laying *laying)
{
    const struct layout *layout = laying->layout;
    struct text pointer = TEXT_EMPTY;
    cJSON *list = list_of(laying, "valleys");
    if (list == NULL)
        return;
    check_names(laying, list, "valleys", layout->valleys, layout->valley_count);
    for (size_t i = 0; i < layout->valley_count; i++)
        item_of(laying, list, layout->valleys[i], &pointer);
    text_free(&pointer);
}

/* As /roof/form has it: hips all round, a gable, or other. */
static const char *form_said(enum roof_form form)
{
    return form == ROOF_HIP ? "hip" : form == ROOF_SHED ? "other" : "gable";
}

/* The narrower side of the roof's plan, unless the job says it. */
static void write_least_width(struct laying *laying)
{
    cJSON *house = cJSON_GetObjectItemCaseSensitive(laying->job, "house");
    if (!isfinite(laying->layout->least_width_ft))
        return;
    if (is_absent(house)) {
        set_fact(laying, laying->job, "house", cJSON_CreateObject());
        house = cJSON_GetObjectItemCaseSensitive(laying->job, "house");
    }
    if (cJSON_IsObject(house)
        && is_absent(cJSON_GetObjectItemCaseSensitive(house, "least_width_ft")))
        set_fact(laying, house, "least_width_ft",
                 cJSON_CreateNumber(laying->layout->least_width_ft));
}

static void write_roof(struct laying *laying)
{
    write_planes(laying);
    write_edges(laying);
    write_valleys(laying);
    put_words(laying, laying->roof, "/roof", "form", form_said(laying->facts->roof.form));
    if (!laying->whole)
        return;
    /* Totals for the takeoff: those of the whole roof, not of one side of each edge. */
    put_number(laying, laying->roof, "/roof", "ridge_ft", laying->layout->ridge_ft, "ft");
    put_number(laying, laying->roof, "/roof", "hip_ft", laying->layout->hip_ft, "ft");
    put_number(laying, laying->roof, "/roof", "valley_ft", laying->layout->valley_ft, "ft");
    write_least_width(laying);
}

/* Without its form the roof has no planes yet that could be told more of, nor
 * referred to: what the job says of them waits. */
static void set_aside(cJSON *job)
{
    static const char *const LISTS[] = {"slopes", "edges", "valleys"};
    cJSON *roof = cJSON_GetObjectItemCaseSensitive(job, "roof"), *chimney = NULL;
    for (size_t i = 0; i < sizeof(LISTS) / sizeof(LISTS[0]); i++)
        cJSON_DeleteItemFromObjectCaseSensitive(roof, LISTS[i]);
    cJSON_ArrayForEach(chimney, cJSON_GetObjectItemCaseSensitive(roof, "chimneys"))
        cJSON_DeleteItemFromObjectCaseSensitive(chimney, "slope");
}

/* Lays out the roof that the facts describe, or when they do not, any of that
 * form, for its names. True when the lengths are the roof's own. */
static bool find_layout(const struct footprint_facts *facts, struct layout *layout,
                        const char *file, struct problems *problems)
{
    struct footprint roof = PLACEHOLDER_ROOF;
    const char *why = NULL;
    if (!facts->wrong && facts->lacking == NULL) {
        if (trade_layout(layout, &facts->roof, facts->wing_left_ft, &why) == 0)
            return true;
        problem_at(problems, PROBLEM_JOB, file, "/roof/footprint", "there is no such roof: %s",
                   why);
    }
    roof.form = facts->roof.form;
    trade_layout(layout, &roof, PLACEHOLDER_WING_LEFT_FT, &why);
    return false;
}

/* A porch or a wing that the form has no place for would be left out unseen. */
static void refuse_part(const struct footprint_facts *facts, enum roof_form with, const char *part,
                        const char *file, struct problems *problems)
{
    char pointer[64];
    if (facts->roof.form == with || is_absent(cJSON_GetObjectItemCaseSensitive(facts->group, part)))
        return;
    snprintf(pointer, sizeof(pointer), "/roof/footprint/%s", part);
    problem_at(problems, PROBLEM_JOB, file, pointer,
               "a roof of the form \"%s\" has no %s; the form that has is \"%s\"",
               footprint_form_word(facts->roof.form), part, footprint_form_word(with));
}

void lay_out(cJSON *job, const struct fields *fields, const char *file, struct problems *problems)
{
    struct footprint_facts facts;
    struct layout layout = {0};
    footprint_facts_read(job, fields, &facts);
    if (facts.group == NULL)
        return;
    /* Nothing can be laid out without the form, not even names. */
    if (!facts.form_known) {
        set_aside(job);
        return;
    }
    struct laying laying = {.job = job,
                            .roof = cJSON_GetObjectItemCaseSensitive(job, "roof"),
                            .facts = &facts,
                            .layout = &layout,
                            .file = file,
                            .problems = problems};
    refuse_part(&facts, ROOF_GABLE_PORCH, "porch", file, problems);
    refuse_part(&facts, ROOF_CROSS_GABLE, "wing", file, problems);
    laying.whole = find_layout(&facts, &layout, file, problems);
    write_roof(&laying);
}
