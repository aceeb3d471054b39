/* scan_known.c - members whose keys are fields of the catalogue that the job is probably held
 * against: no key is noted, compared with those before it or looked up again later. What is not as
 * nearly all are is left to the grammar (scan.c). */
#include "job/scan.h"

#include "job/scan_plain.h"
#include "job/spoken.h"

/* Names of fields hold nothing that would be escaped (fields_spec_sound). */
static bool is_named(const struct field *field, const char *text, const char *end)
{
    return field->length < (size_t)(end - text) && text[field->length] == '"'
           && memcmp(text, field->name, field->length) == 0;
}

/* Jobs are mostly written in the catalogue's order: those after the one found last are tried
 * first. */
static const struct field *find(const struct scan_level *level, const char *text, const char *end)
{
    const struct field *const first = level->field->first_child;
    const struct field *f = level->last == NULL ? first : level->last->next;
    while (f != NULL && !is_named(f, text, end))
        f = f->next;
    if (f == NULL && level->last != NULL)
        for (f = first; f != NULL && !is_named(f, text, end);)
            f = f->next;
    return f;
}

const struct field *scan_known_field(struct scan *scan)
{
    const struct field *field = scan_field(scan);
    if (field == NULL || field->child_count <= SCAN_KNOWN_MOST)
        return field;
    scan->spoken = true;
    return NULL;
}

/* The key whose opening quote stands there; false when it is of no field. Given again it is left
 * to a scan that knows where the first stood. */
static bool read_key(struct scan *scan, struct scan_level *level, char *at)
{
    const struct field *field = find(level, at + 1, scan->text + scan->length);
    scan->field = field;
    scan->known = field == NULL ? NULL : at + 1;
    if (field == NULL)
        return false;
    const uint64_t bit = UINT64_C(1) << (field->index % 64);
    if (level->given[field->index / 64] & bit)
        scan_again(scan);
    level->given[field->index / 64] |= bit;
    level->last = field;
    at[1 + field->length] = '\0';
    return true;
}

/* In its place in the tree. */
static cJSON *add(struct scan *scan, const struct scan_level *level, int type)
{
    cJSON *node = scan_tree_node(scan, type);
    if (node == NULL)
        return NULL;
    tree_append(level->node, node);
    tree_note(node, level->field, scan->field);
    node->string = scan->known;
    return node;
}

/* What stands after a plain text, number or word there, which is put into the tree; NULL for
 * anything else, and when out of memory. */
static char *read_value(struct scan *scan, const struct scan_level *level, char *at)
{
    const char *const end = scan->text + scan->length;
    double value;
    size_t length;
    cJSON *node;
    if (*at == '"') {
        char *text = at + 1;
        uint64_t special;
        for (at = text; (special = scan_special(at)) == 0;)
            at += 8;
        at += __builtin_ctzll(special) / 8;
        if (*at != '"' || (node = add(scan, level, cJSON_String)) == NULL)
            return NULL;
        *at = '\0';
        node->valuestring = text;
        scan->spoken |= spoken_may_stand(scan->field);
        return at + 1;
    }
    if ((length = scan_plain_number(at, end, &value)) > 0) {
        node = add(scan, level, cJSON_Number);
        if (node != NULL)
            scan_tree_write(node, value);
    } else if ((length = scan_plain_word(at, end)) > 0) {
        node = add(scan, level, *at == 't' ? cJSON_True : *at == 'f' ? cJSON_False : cJSON_NULL);
        if (node != NULL)
            node->valueint = *at == 't';
    } else {
        return NULL;
    }
    return node == NULL ? NULL : at + length;
}

/* Between members and within them many programs write a space. */
static char *past_space(char *at)
{
    return at + (*at == ' ');
}

/* Reads on until something is otherwise; `expect` then says what. */
bool scan_known_members(struct scan *scan)
{
    struct scan_level *level = &scan->levels[scan->depth - 1];
    scan->known = NULL;
    scan->field = NULL;
    /* Without a tree there is no copy either. */
    if (level->field == NULL)
        return false;
    char *at = scan->copy + scan->at, *after;
    if (!read_key(scan, level, at))
        return false;
    do {
        at += scan->field->length + 2;
        scan->expect = SCAN_COLON;
        if (*at != ':' || scan->stopped)
            break;
        at = past_space(at + 1);
        scan->expect = SCAN_VALUE;
        after = read_value(scan, level, at);
        if (after == NULL)
            break;
        at = after;
        scan->expect = SCAN_COMMA;
        if (*at != ',')
            break;
        at = past_space(at + 1);
        scan->expect = SCAN_NEXT_KEY;
    } while (*at == '"' && read_key(scan, level, at));
    scan->at = (size_t)(at - scan->text);
    return true;
}
