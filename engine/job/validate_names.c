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

static void add_path(struct text *pointer, const char *path)
{
    while (path != NULL) {
        const size_t length = strcspn(path, ".");
        path_add(pointer, path, length);
        path = path[length] == '\0' ? NULL : path + length + 1;
    }
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

/* A reference would mean both of them, and the first would be taken unseen. */
static void report_twin(struct validation *check, const struct name_list *list,
                        struct known_name twin)
{
    struct text *pointer = &check->pointer;
    add_path(pointer, list->refers);
    const size_t place = pointer->length;
    path_add_item(pointer, find_name(list, twin.name)->item);
    const char *first = arena_copy(&check->arena, text_string(pointer));
    path_cut(pointer, place);
    path_add_item(pointer, twin.item);
    path_add(pointer, "name", strlen("name"));
    validate_report(check, "%s is already the name of %s", validate_quoted(check, twin.name),
                    first == NULL ? "" : first);
    path_cut(pointer, 0);
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

/* By the words that references give: "decks" is one list for all of them. */
static const struct name_list *find_list(const struct validation *check, const char *refers)
{
    for (const struct name_list *list = check->lists; list != NULL; list = list->next)
        if (strcmp(list->refers, refers) == 0)
            return list;
    return NULL;
}

/* Once a list, however many fields refer to it; one that the job lacks has no names. */
static void add_list(struct validation *check, const cJSON *job, const char *refers)
{
    struct name_list *list = arena_alloc(&check->arena, sizeof(*list));
    if (list == NULL)
        return;
    list->refers = refers;
    list->next = check->lists;
    check->lists = list;
    const cJSON *node = list_at(job, refers);
    if (node == NULL)
        return;
    gather(check, node, list);
    report_twins(check, list);
}

/* Recursion is bounded by FIELDS_DEEPEST. */
static void check_names_under(struct validation *check, const cJSON *job,
                              const struct field *parent)
{
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        if (f->type == FIELD_REFERENCE && find_list(check, f->refers) == NULL)
            add_list(check, job, f->refers);
        check_names_under(check, job, f);
    }
}

void validate_names(struct validation *check, const cJSON *job)
{
    check_names_under(check, job, check->fields->root);
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
    const struct name_list *list = find_list(check, field->refers);
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
