/* The planes, edges and valleys of a laid-out roof, written into the job. */
#include "job/lay_out_parts.h"

#include "job/json.h"
#include "job/origin.h"

#include <math.h>
#include <string.h>

static const double IN_PER_FT = 12;

/* What is said once for all ------------------------------------------------- */

/* A reference said once for all counts only if the job names what it refers to. */
static bool is_named(const cJSON *job, const char *refers, const char *name)
{
    const cJSON *item = NULL; /* of a list of the job itself: "decks" */
    cJSON_ArrayForEach(item, cJSON_GetObjectItemCaseSensitive(job, refers))
        if (json_name(item) != NULL && strcmp(json_name(item), name) == 0)
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
            || !json_is_absent(cJSON_GetObjectItemCaseSensitive(item, fact->string))
            || (what->refers != NULL && !is_named(laying->job, what->refers, fact->valuestring)))
            continue;
        cJSON *copy = cJSON_Duplicate(fact, true);
        /* Said once by the shop sheet, it is the shop's for each. */
        if (origin_of(fact) == ORIGIN_JOB)
            lay_out_set(laying, item, fact->string, copy);
        else if (!json_set(item, fact->string, copy))
            problem_out_of_memory(laying->problems);
    }
}

/* The parts of the roof ----------------------------------------------------- */

static const char *const KINDS[] = {
    [LAYOUT_EAVE] = "eave",
    [LAYOUT_RAKE] = "rake",
    [LAYOUT_HIP] = "hip",
    [LAYOUT_VALLEY] = "valley",
};
/* What is said once for all of a kind; of hips and valleys there is nothing. */
static const char *const SHARED[] = {
    [LAYOUT_EAVE] = "eaves", [LAYOUT_RAKE] = "rakes", [LAYOUT_HIP] = NULL, [LAYOUT_VALLEY] = NULL};

/* A plane that the job names keeps its place, and what it says for itself. */
static void write_plane(struct laying *laying, cJSON *list, const struct layout_plane *plane)
{
    struct text pointer = TEXT_EMPTY;
    text_add(&pointer, "/roof/slopes");
    cJSON *item = lay_out_item(laying, list, plane->name, &pointer);
    const char *at = text_string(&pointer);
    const char *pitch = plane->porch ? laying->facts->porch_pitch : laying->facts->pitch;
    if (item != NULL) {
        if (pitch != NULL)
            lay_out_words(laying, item, at, "pitch", pitch);
        if (laying->whole) {
            lay_out_number(laying, item, at, "eave_ft", plane->eave_ft, "ft");
            lay_out_number(laying, item, at, "ridge_ft", plane->ridge_ft, "ft");
            lay_out_number(laying, item, at, "run_ft", plane->run_ft, "ft");
            /* Of a plane with a notch or a cut corner its edges do not give the area. */
            if (plane->odd)
                lay_out_number(laying, item, at, "plan_sqft", plane->plan_sqft, "sqft");
        }
        fill_from(laying, item, "planes");
    }
    text_free(&pointer);
}

/* Its length is the plan's; what it is flashed with, the job's. */
static void write_edge(struct laying *laying, cJSON *list, const struct layout_edge *edge)
{
    const struct layout_plane *plane = &laying->layout->planes[edge->plane];
    struct text pointer = TEXT_EMPTY;
    text_add(&pointer, "/roof/edges");
    cJSON *item = lay_out_item(laying, list, edge->name, &pointer);
    const char *at = text_string(&pointer);
    if (item != NULL) {
        lay_out_words(laying, item, at, "kind", KINDS[edge->kind]);
        lay_out_words(laying, item, at, "slope", plane->name);
        if (laying->whole)
            lay_out_number(laying, item, at, "length_ft", edge->length_ft, "ft");
        /* What stands under a porch's eave, and how far in, no plan shows. */
        if (laying->whole && edge->kind == LAYOUT_EAVE && !plane->porch)
            lay_out_number(laying, item, at, "overhang_in",
                           laying->facts->roof.eave_overhang_ft * IN_PER_FT, "in");
        if (laying->whole && edge->kind == LAYOUT_RAKE)
            lay_out_number(laying, item, at, "overhang_in",
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
    cJSON *list = lay_out_list(laying, "slopes");
    if (list == NULL)
        return;
    for (size_t i = 0; i < layout->plane_count; i++)
        names[i] = layout->planes[i].name;
    lay_out_check_names(laying, list, "slopes", names, layout->plane_count);
    for (size_t i = 0; i < layout->plane_count; i++)
        write_plane(laying, list, &layout->planes[i]);
}

static void write_edges(struct laying *laying)
{
    const struct layout *layout = laying->layout;
    const char *names[LAYOUT_EDGES_MOST];
    cJSON *list = lay_out_list(laying, "edges");
    if (list == NULL)
        return;
    for (size_t i = 0; i < layout->edge_count; i++)
        names[i] = layout->edges[i].name;
    lay_out_check_names(laying, list, "edges", names, layout->edge_count);
    for (size_t i = 0; i < layout->edge_count; i++)
        write_edge(laying, list, &layout->edges[i]);
}

/* Valleys have a name only: how they are lined no plan shows. */
static void write_valleys(struct laying *laying)
{
    const struct layout *layout = laying->layout;
    struct text pointer = TEXT_EMPTY;
    cJSON *list = lay_out_list(laying, "valleys");
    if (list == NULL)
        return;
    lay_out_check_names(laying, list, "valleys", layout->valleys, layout->valley_count);
    for (size_t i = 0; i < layout->valley_count; i++)
        lay_out_item(laying, list, layout->valleys[i], &pointer);
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
    if (json_is_absent(house)) {
        lay_out_set(laying, laying->job, "house", cJSON_CreateObject());
        house = cJSON_GetObjectItemCaseSensitive(laying->job, "house");
    }
    if (cJSON_IsObject(house)
        && json_is_absent(cJSON_GetObjectItemCaseSensitive(house, "least_width_ft")))
        lay_out_set(laying, house, "least_width_ft",
                    cJSON_CreateNumber(laying->layout->least_width_ft));
}

void lay_out_roof(struct laying *laying)
{
    write_planes(laying);
    write_edges(laying);
    write_valleys(laying);
    lay_out_words(laying, laying->roof, "/roof", "form", form_said(laying->facts->roof.form));
    if (!laying->whole)
        return;
    /* Totals for the takeoff: those of the whole roof, not of one side of each edge. */
    lay_out_number(laying, laying->roof, "/roof", "ridge_ft", laying->layout->ridge_ft, "ft");
    lay_out_number(laying, laying->roof, "/roof", "hip_ft", laying->layout->hip_ft, "ft");
    lay_out_number(laying, laying->roof, "/roof", "valley_ft", laying->layout->valley_ft, "ft");
    write_least_width(laying);
}
