#include "job/footprint_facts.h"

#include "job/validate.h"
#include "job/slope.h"

#include <string.h>

/* Overhangs are stated in inches, as they are measured; the arithmetic is in feet. */
static const double IN_PER_FT = 12;

static const char *const FORMS[] = {
    [ROOF_GABLE] = "gable",
    [ROOF_HIP] = "hip",
    [ROOF_GABLE_PORCH] = "gable_porch",
    [ROOF_SHED] = "shed",
    [ROOF_CROSS_GABLE] = "cross_gable",
};

/* A group of the footprint as it is read: what was found so far, the group (NULL when it
 * is not there) and its field in the catalogue. */
struct reading {
    struct footprint_facts *out;
    const cJSON *group;
    const struct field *field;
};

/* What validation will refuse must not be laid out first: the same range is looked at
 * here. */
static bool in_range(double value, const struct field *field)
{
    return (!field->has_least || value >= field->least)
           && (!field->has_most || value <= field->most);
}

bool footprint_value_holds(const cJSON *node, const struct field *field)
{
    double rise = 0;
    if (node == NULL || cJSON_IsNull(node) || !validate_value_fits(node, field))
        return false;
    if (cJSON_IsNumber(node))
        return in_range(node->valuedouble, field);
    if (field->type == FIELD_SLOPE)
        return slope_parse(node->valuestring, &rise) && in_range(rise, field);
    return true;
}

const char *footprint_form_word(enum roof_form form)
{
    return FORMS[form];
}

/* The value of a fact, or NULL; pointer is its place, kept when it lacks. */
static const cJSON *value_of(const struct reading *from, const char *name, const char *pointer)
{
    const struct field *field = from->field == NULL ? NULL : fields_child(from->field, name);
    const cJSON *node = cJSON_GetObjectItemCaseSensitive(from->group, name);
    if (node == NULL || cJSON_IsNull(node)) {
        if (from->out->lacking == NULL)
            from->out->lacking = pointer;
        return NULL;
    }
    if (field != NULL && footprint_value_holds(node, field))
        return node;
    from->out->wrong = true;
    return NULL;
}

/* 0 when it lacks or does not hold; `lacking` and `wrong` tell that from a 0 that is meant. */
static double number_of(const struct reading *from, const char *name, const char *pointer)
{
    const cJSON *node = value_of(from, name, pointer);
    return cJSON_IsNumber(node) ? node->valuedouble : 0;
}

/* The words as the job has them go into the planes; *rise is for the arithmetic. */
static const char *slope_of(const struct reading *from, const char *name, const char *pointer,
                            double *rise)
{
    const cJSON *node = value_of(from, name, pointer);
    return node != NULL && slope_parse(node->valuestring, rise) ? node->valuestring : NULL;
}

static void read_form(const struct reading *from)
{
    const cJSON *node = value_of(from, "form", "/roof/footprint/form");
    for (size_t i = 0; node != NULL && i < sizeof(FORMS) / sizeof(FORMS[0]); i++)
        if (strcmp(FORMS[i], node->valuestring) == 0) {
            from->out->roof.form = (enum roof_form)i;
            from->out->form_known = true;
        }
}

/* A group within the footprint; one that is not there lacks all its facts. */
static struct reading part_of(const struct reading *from, const char *name)
{
    const cJSON *group = cJSON_GetObjectItemCaseSensitive(from->group, name);
    if (group != NULL && !cJSON_IsNull(group) && !cJSON_IsObject(group))
        from->out->wrong = true;
    return (struct reading){.out = from->out,
                            .group = cJSON_IsObject(group) ? group : NULL,
                            .field = from->field == NULL ? NULL : fields_child(from->field, name)};
}

static void read_porch(const struct reading *from)
{
    const struct reading porch = part_of(from, "porch");
    struct footprint *roof = &from->out->roof;
    roof->porch_length_ft = number_of(&porch, "length_ft", "/roof/footprint/porch/length_ft");
    roof->porch_depth_ft = number_of(&porch, "depth_ft", "/roof/footprint/porch/depth_ft");
    from->out->porch_pitch = slope_of(&porch, "pitch", "/roof/footprint/porch/pitch",
                                      &roof->porch_pitch);
}

/* From the left end of the main roof's eave to the wing (left), how far it stands out, and its
 * width. */
static void read_wing(const struct reading *from)
{
    const struct reading wing = part_of(from, "wing");
    struct footprint *roof = &from->out->roof;
    roof->wing_width_ft = number_of(&wing, "width_ft", "/roof/footprint/wing/width_ft");
    roof->wing_out_ft = number_of(&wing, "out_ft", "/roof/footprint/wing/out_ft");
    from->out->wing_left_ft = number_of(&wing, "left_ft", "/roof/footprint/wing/left_ft");
}

/* A hip roof has no rakes: it need not say that they do not overhang. */
static void read_rakes(const struct reading *from)
{
    const cJSON *node = cJSON_GetObjectItemCaseSensitive(from->group, "rake_overhang_in");
    if (from->out->roof.form == ROOF_HIP && (node == NULL || cJSON_IsNull(node)))
        return;
    from->out->roof.rake_overhang_ft = number_of(from, "rake_overhang_in",
                                                 "/roof/footprint/rake_overhang_in")
                                       / IN_PER_FT;
}

static void read_all(const struct reading *from)
{
    struct footprint *roof = &from->out->roof;
    read_form(from);
    roof->length_ft = number_of(from, "length_ft", "/roof/footprint/length_ft");
    roof->width_ft = number_of(from, "width_ft", "/roof/footprint/width_ft");
    from->out->pitch = slope_of(from, "pitch", "/roof/footprint/pitch", &roof->pitch);
    roof->eave_overhang_ft = number_of(from, "eave_overhang_in", "/roof/footprint/eave_overhang_in")
                             / IN_PER_FT;
    read_rakes(from);
    if (roof->form == ROOF_GABLE_PORCH)
        read_porch(from);
    if (roof->form == ROOF_CROSS_GABLE)
        read_wing(from);
}

void footprint_facts_read(const cJSON *job, const struct fields *fields,
                          struct footprint_facts *out)
{
    *out = (struct footprint_facts){0};
    const cJSON *roof = cJSON_GetObjectItemCaseSensitive(job, "roof");
    const cJSON *group = cJSON_GetObjectItemCaseSensitive(roof, "footprint");
    if (!cJSON_IsObject(group))
        return;
    out->group = group;
    out->field = fields_find(fields, "roof.footprint");
    const struct reading from = {.out = out, .group = group, .field = out->field};
    read_all(&from);
    if (out->field == NULL)
        out->group = NULL; /* a place whose catalogue knows no footprints */
}

bool footprint_floor_sqft(const struct footprint_facts *facts, double *area)
{
    const struct footprint *roof = &facts->roof;
    const bool wing = roof->form == ROOF_CROSS_GABLE;
    if (facts->group == NULL || facts->wrong || !facts->form_known || facts->lacking != NULL)
        return false;
    /* Length and width are those of the walls: overhangs are stated for themselves. */
    *area = roof->length_ft * roof->width_ft + (wing ? roof->wing_width_ft * roof->wing_out_ft : 0);
    return *area > 0;
}
