/* shop_names.c - members of a sheet and a job, and materials by their names, see
 * shop_filling.h. */
#include "job/shop_filling.h"

#include "base/nearest.h"
#include "job/json.h"
#include "job/origin.h"
#include "job/path.h"

#include <string.h>

cJSON *shop_member(const cJSON *group, const char *key)
{
    return cJSON_GetObjectItemCaseSensitive(group, key);
}

bool shop_is_named(const cJSON *item, const char *name)
{
    return json_name(item) != NULL && strcmp(json_name(item), name) == 0;
}

const cJSON *shop_find_named(const cJSON *list, const char *name)
{
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        if (shop_is_named(item, name))
            return item;
    }
    return NULL;
}

/* Whatever comes below is the sheet's too: a group copied whole is marked throughout. */
void shop_put(struct shop_filling *filling, cJSON *group, const char *key, cJSON *value)
{
    origin_mark(value, ORIGIN_SHOP);
    if (!json_set(group, key, value))
        problem_out_of_memory(filling->problems);
}

size_t shop_step_in(struct shop_filling *filling, const char *key)
{
    const size_t length = filling->pointer.length;
    path_add(&filling->pointer, key, strlen(key));
    return length;
}

/* Once for the hint, once for the list that a reader chooses from. */
static void offer_name(struct nearest *nearest, struct text *known, const char *name)
{
    if (name == NULL)
        return;
    nearest_offer(nearest, name);
    text_addf(known, "%s\"%.*s\"", known->length == 0 ? "" : ", ",
              (int)path_quotable(name, strlen(name), 60), name);
}

/* Of one material, or of several. */
static void offer_names(struct nearest *nearest, struct text *known, const cJSON *materials)
{
    const cJSON *item = NULL;
    if (cJSON_IsObject(materials))
        offer_name(nearest, known, json_name(materials));
    else
        cJSON_ArrayForEach(item, materials)
            offer_name(nearest, known, json_name(item));
}

/* Both lists are told: a name may be a slip for one of the job's own. */
void shop_report_name(struct shop_filling *filling, const char *name, const cJSON *own,
                      const cJSON *sheet)
{
    struct nearest nearest;
    struct text known = TEXT_EMPTY;
    nearest_start(&nearest, name);
    offer_names(&nearest, &known, own);
    offer_names(&nearest, &known, sheet);
    problem_at(filling->problems, PROBLEM_JOB, filling->file, text_string(&filling->pointer),
               "\"%.*s\" is none of those that the job and its shop sheet %s have (%s)%s%s%s",
               (int)path_quotable(name, strlen(name), 60), name, filling->shop->file,
               known.length == 0 ? "none" : text_string(&known),
               nearest.name == NULL ? "" : "; did you mean \"",
               nearest.name == NULL ? "" : nearest.name, nearest.name == NULL ? "" : "\"?");
    if (known.failed)
        problem_out_of_memory(filling->problems);
    text_free(&known);
}

/* nearest_offer bounds how far a slip may be; what is farther is another name. */
bool shop_has_near(const cJSON *sheet, const char *name)
{
    struct nearest nearest;
    struct text known = TEXT_EMPTY;
    nearest_start(&nearest, name);
    offer_names(&nearest, &known, sheet);
    text_free(&known);
    return nearest.name != NULL;
}
