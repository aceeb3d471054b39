/* scan_tree.c - the tree of what was scanned, as cJSON itself would build it. */
#include "job/scan.h"

#include "job/spoken.h"

#include <string.h>

/* So many nodes of the arena are taken at once. */
enum { NODES_AT_ONCE = 64 };

/* After the first problem nobody will see the tree. */
static bool is_wanted(const struct scan *scan)
{
    return scan->found == 0 && !scan->stopped;
}

/* A text or key that began at a byte of the job's. In the arena it stays where it stands, and
 * ends where its quote was, unless it had to be decoded. */
static char *keep_text(struct scan *scan, size_t at, const char *text, size_t length)
{
    const bool stays = scan->into != NULL && text == scan->copy + at;
    if (scan->into != NULL && !stays)
        return arena_copy_n(scan->into, text, length);
    char *kept = stays ? scan->copy + at : cJSON_malloc(length + 1);
    if (kept == NULL)
        return NULL;
    if (!stays)
        memcpy(kept, text, length);
    kept[length] = '\0';
    return kept;
}

static bool name_last_key(struct scan *scan, cJSON *node)
{
    if (scan->known != NULL) {
        node->string = scan->known;
        return true;
    }
    const struct scan_key *key = &scan->keys[scan->key_count - 1];
    node->string = keep_text(scan, key->at, key->text, key->length);
    return node->string != NULL;
}

cJSON *scan_tree_node(struct scan *scan, int type)
{
    if (scan->node_count == 0) {
        scan->nodes = arena_room(scan->into, NODES_AT_ONCE, sizeof(*scan->nodes));
        scan->node_count = scan->nodes == NULL ? 0 : NODES_AT_ONCE;
    }
    if (scan->nodes == NULL) {
        scan_out_of_memory(scan);
        return NULL;
    }
    scan->node_count--;
    return tree_node_at(scan->nodes++, type);
}

static cJSON *make(struct scan *scan, int type)
{
    if (scan->into != NULL)
        return scan_tree_node(scan, type);
    cJSON *node = cJSON_CreateNull();
    if (node != NULL)
        node->type = type;
    else
        scan_out_of_memory(scan);
    return node;
}

/* A node of the type in its place in the tree; NULL when none is wanted, or no memory is
 * left, which ends the scan. */
static cJSON *add(struct scan *scan, int type)
{
    if (!is_wanted(scan))
        return NULL;
    cJSON *node = make(scan, type);
    const struct scan_level *level = scan->depth == 0 ? NULL : &scan->levels[scan->depth - 1];
    if (node == NULL)
        return NULL;
    if (level == NULL)
        scan->tree = node;
    else
        tree_append(level->node, node); /* of an object too: its key follows */
    if (level == NULL || !level->object)
        return node;
    if (level->field != NULL)
        tree_note(node, level->field, scan->field);
    if (name_last_key(scan, node))
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
    if (node != NULL)
        scan_tree_write(node, value);
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
    const struct field *const field = scan_field(scan);
    cJSON *node = add(scan, cJSON_String);
    if (node == NULL)
        return;
    scan->spoken |= field != NULL && spoken_may_stand(field);
    if (memchr(text, '\\', length) != NULL)
        text = scan_decode(scan, text, &length);
    node->valuestring = text == NULL ? NULL : keep_text(scan, from, text, length);
    if (node->valuestring == NULL)
        scan_out_of_memory(scan);
}
