/* scan_tree.c - the tree of what was scanned, as cJSON itself would build it. */
#include "job/scan.h"

#include <limits.h>
#include <string.h>

/* After the first problem nobody will see the tree. */
static bool is_wanted(const struct scan *scan)
{
    return scan->found == 0 && !scan->stopped;
}

/* A text or key. Those of the arena are marked so that cJSON does not free them. */
static char *keep_text(struct scan *scan, const char *text, size_t length)
{
    if (scan->texts != NULL)
        return arena_copy_n(scan->texts, text, length);
    char *copy = cJSON_malloc(length + 1);
    if (copy == NULL)
        return NULL;
    memcpy(copy, text, length);
    copy[length] = '\0';
    return copy;
}

static bool name_last_key(struct scan *scan, cJSON *node)
{
    const struct scan_key *key = &scan->keys[scan->key_count - 1];
    node->string = keep_text(scan, key->text, key->length);
    if (scan->texts != NULL)
        node->type |= cJSON_StringIsConst;
    return node->string != NULL;
}

/* A node of the type in its place in the tree; NULL when none is wanted, or no memory is
 * left, which ends the scan. */
static cJSON *add(struct scan *scan, int type)
{
    if (!is_wanted(scan))
        return NULL;
    cJSON *node = cJSON_CreateNull();
    struct scan_level *level = scan->depth == 0 ? NULL : &scan->levels[scan->depth - 1];
    if (node == NULL) {
        scan_out_of_memory(scan);
        return NULL;
    }
    node->type = type;
    if (level == NULL)
        scan->tree = node;
    else
        cJSON_AddItemToArray(level->node, node); /* of an object too: its key follows */
    if (level == NULL || !level->object || name_last_key(scan, node))
        return node;
    scan_out_of_memory(scan);
    return NULL;
}

cJSON *scan_tree_level(struct scan *scan, bool object)
{
    return add(scan, object ? cJSON_Object : cJSON_Array);
}

void scan_tree_number(struct scan *scan, double value)
{
    cJSON *node = add(scan, cJSON_Number);
    if (node == NULL)
        return;
    /* -0 is 0: a rule that divides must not meet the other one. */
    node->valuedouble = value == 0 ? 0 : value;
    node->valueint = value >= INT_MAX ? INT_MAX : value <= INT_MIN ? INT_MIN : (int)value;
}

void scan_tree_word(struct scan *scan, char first)
{
    cJSON *node = add(scan, first == 't' ? cJSON_True : first == 'f' ? cJSON_False : cJSON_NULL);
    if (node != NULL && first == 't')
        node->valueint = 1;
}

void scan_tree_text(struct scan *scan, size_t from, size_t to)
{
    size_t length = to - from;
    const char *text = scan->text + from;
    cJSON *node = add(scan, cJSON_String);
    if (node == NULL)
        return;
    if (memchr(text, '\\', length) != NULL)
        text = scan_decode(scan, text, &length);
    node->valuestring = text == NULL ? NULL : keep_text(scan, text, length);
    if (scan->texts != NULL)
        node->type |= cJSON_IsReference;
    if (node->valuestring == NULL)
        scan_out_of_memory(scan);
}
