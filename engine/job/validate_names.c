#include "job/validate_check.h"

#include "base/nearest.h"
#include "job/path.h"

#include <stdlib.h>
#include <string.h>

/* More names than any job has are not searched for near ones. */
enum { NAMES_TO_COMPARE = 1000 };

/* The list at a path of groups, such as "roof.slopes"; NULL when it is absent, or no list,
 * which the walk through the job reports. */
static const cJSON *list_at(const cJSON *job, const char *path)
{
    char name[NEAREST_LONGEST + 1];
    for (;;) {
        const size_t length = strcspn(path, ".");
        if (!cJSON_IsObject(job) || length > NEAREST_LONGEST)
            return NULL;
        memcpy(name, path, length);
        name[length] = '\0';
        job = cJSON_GetObjectItemCaseSensitive(job, name);
        if (path[length] == '\0')
            return cJSON_IsArray(job) ? job : NULL;
        path += length + 1;
    }
}

/* By name, then place: of two alike the earlier is the first. */
static int by_name(const void *a, const void *b)
{
    const struct known_name *left = a, *right = b;
    const int order = strcmp(left->name, right->name);
    return order != 0 ? order : (left->item > right->item) - (left->item < right->item);
}

static int by_item(const void *a, const void *b)
{
    const struct known_name *left = a, *right = b;
    return (left->item > right->item) - (left->item < right->item);
}

/* Sorted, so that twins stand side by side and find_name can halve. Items that are no
 * objects keep their numbers but give no name. */
static void gather(struct validation *check, const cJSON *list, struct name_list *into)
{
    const size_t items = (size_t)cJSON_GetArraySize(list);
    into->names = arena_array(&check->arena, items, sizeof(*into->names));
    if (into->names == NULL)
        return;
    size_t index = 0;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        const cJSON *name = cJSON_IsObject(item) ? cJSON_GetObjectItemCaseSensitive(item, "name")
                                                 : NULL;
        if (cJSON_IsString(name))
            into->names[into->count++] = (struct known_name){name->valuestring, index};
        index++;
    }
    if (into->count > 1)
        qsort(into->names, into->count, sizeof(*into->names), by_name);
}

/* The first item of this name, or NULL. */
static const struct known_name *find_name(const struct name_list *list, const char *name)
{
    size_t low = 0, high = list->count;
    while (low < high) {
        const size_t middle = low + (high - low) / 2;
        if (strcmp(list->names[middle].name, name) < 0)
            low = middle + 1;
        else
            high = middle;
    }
    return low < list->count && strcmp(list->names[low].name, name) == 0 ? &list->names[low] : NULL;
}

/* The way to the list at such a path, its last step given back. */
static const struct validate_step *way_to(const char *path,
                                          struct validate_step way[FIELDS_DEEPEST])
{
    size_t depth = 0;
    for (const char *at = path; depth < FIELDS_DEEPEST; at++, depth++) {
        way[depth] = (struct validate_step){
            .above = depth == 0 ? NULL : &way[depth - 1], .name = at, .length = strcspn(at, ".")};
        at += way[depth].length;
        if (*at == '\0')
            break;
    }
    return &way[depth];
}

/* A reference would mean both of them, and the first would be taken unseen. */
static void report_twin(struct validation *check, const struct name_list *list,
                        struct known_name twin)
{
    struct validate_step way[FIELDS_DEEPEST];
    const struct validate_step first = {.above = way_to(list->refers, way),
                                        .item = find_name(list, twin.name)->item};
    const struct validate_step again = {.above = first.above, .item = twin.item};
    const struct validate_step name = {.above = &again, .name = "name", .length = strlen("name")};
    check->at = &name;
    validate_report(check, "%s is already the name of %s", validate_quoted(check, twin.name),
                    validate_pointer(check, &first));
    check->at = NULL;
}

/* In the order of the job. */
static void report_twins(struct validation *check, const struct name_list *list)
{
    struct known_name *twins = arena_array(&check->arena, list->count, sizeof(*twins));
    size_t count = 0;
    for (size_t i = 1; twins != NULL && i < list->count; i++)
        if (strcmp(list->names[i - 1].name, list->names[i].name) == 0)
            twins[count++] = list->names[i];
    if (count > 1)
        qsort(twins, count, sizeof(*twins), by_item);
    for (size_t i = 0; i < count && !validate_full(check); i++)
        report_twin(check, list, twins[i]);
}

/* Once a list, however many fields refer to it; one that the job lacks has no names. */
void validate_names(struct validation *check, const cJSON *job)
{
    const struct fields *fields = check->fields;
    check->lists = arena_array(&check->arena, fields->referred_count, sizeof(*check->lists));
    for (size_t i = 0; check->lists != NULL && i < fields->referred_count; i++) {
        struct name_list *list = &check->lists[i];
        const cJSON *node = list_at(job, fields->referred[i]);
        list->refers = fields->referred[i];
        if (node == NULL)
            continue;
        gather(check, node, list);
        report_twins(check, list);
    }
}

/* "deck" for "decks", "slope" for "roof.slopes". */
static const char *item_said(struct validation *check, const char *refers)
{
    const char *dot = strrchr(refers, '.');
    const char *last = dot == NULL ? refers : dot + 1;
    const size_t length = strlen(last);
    /* Lists are named in the plural: "roof.slopes" for many of what is a slope. */
    const bool plural = length > 1 && last[length - 1] == 's';
    const char *said = arena_copy_n(&check->arena, last, plural ? length - 1 : length);
    return said == NULL ? "" : said;
}

void validate_reference(struct validation *check, const char *name, const struct field *field)
{
    const struct name_list *list = check->lists == NULL ? NULL : &check->lists[field->referred];
    if (list == NULL || find_name(list, name) != NULL)
        return; /* no list only when out of memory */
    const char *item = item_said(check, field->refers);
    if (list->count == 0) {
        validate_report(check, "no %s is named %s: the job names no %s", item,
                        validate_quoted(check, name), item);
        return;
    }
    struct nearest nearest;
    nearest_start(&nearest, name);
    for (size_t i = 0; i < list->count && i < NAMES_TO_COMPARE; i++)
        nearest_offer(&nearest, list->names[i].name);
    const bool near = nearest.name != NULL && fields_plausible(name, nearest.distance);
    validate_report(check, "no %s is named %s%s", item, validate_quoted(check, name),
                    validate_hint(check, near ? nearest.name : NULL));
}
