#include "job/write.h"

#include <stddef.h>

enum { COLUMNS = 96, INDENT = 2 };

/* Recursion here is bounded by JSON_DEEPEST. */
static void add_flat(struct text *out, const cJSON *node);

/* cJSON knows how numbers and texts are escaped. */
static void add_printed(struct text *out, const cJSON *node)
{
    char *printed = cJSON_PrintUnformatted(node);
    if (printed == NULL)
        out->failed = true;
    else
        text_add(out, printed);
    cJSON_free(printed);
}

static void add_key(struct text *out, const cJSON *node)
{
    cJSON *key = cJSON_CreateString(node->string);
    if (key == NULL)
        out->failed = true;
    else
        add_printed(out, key);
    cJSON_Delete(key);
    text_add(out, ": ");
}

/* An empty list or group stands in one line: there is nothing to indent. */
static bool holds_things(const cJSON *node)
{
    return node->child != NULL && (cJSON_IsObject(node) || cJSON_IsArray(node));
}

static void add_flat(struct text *out, const cJSON *node)
{
    if (!holds_things(node)) {
        add_printed(out, node);
        return;
    }
    const bool object = cJSON_IsObject(node);
    text_add(out, object ? "{ " : "[");
    for (const cJSON *child = node->child; child != NULL; child = child->next) {
        if (object)
            add_key(out, child);
        add_flat(out, child);
        text_add(out, child->next != NULL ? ", " : "");
    }
    text_add(out, object ? " }" : "]");
}

/* Of a list the first item tells: lists are of one kind. */
static bool is_plain(const cJSON *node)
{
    if (cJSON_IsObject(node))
        return node->child == NULL;
    return !cJSON_IsArray(node) || node->child == NULL || !holds_things(node->child);
}

/* A group of facts only, or a list of them. */
static bool holds_plain_only(const cJSON *node)
{
    for (const cJSON *child = node->child; child != NULL; child = child->next)
        if (!is_plain(child))
            return false;
    return true;
}

/* A line break, and the indent of the next. */
static void add_line(struct text *out, int depth)
{
    text_addf(out, "\n%*s", depth * INDENT, "");
}

static void add_node(struct text *out, const cJSON *node, int depth, size_t column);

/* Each on a line of its own. */
static void add_rows(struct text *out, const cJSON *node, int depth)
{
    for (const cJSON *child = node->child; child != NULL; child = child->next) {
        add_line(out, depth + 1);
        const size_t start = out->length;
        if (cJSON_IsObject(node))
            add_key(out, child);
        add_node(out, child, depth + 1, (size_t)(depth + 1) * INDENT + out->length - start);
        text_add(out, child->next != NULL ? "," : "");
    }
}

/* As many to a line as fit. */
static void add_filled(struct text *out, const cJSON *node, int depth)
{
    const size_t indent = (size_t)(depth + 1) * INDENT;
    /* Past the end, so that the first piece begins a line. */
    size_t column = COLUMNS + 1;
    for (const cJSON *child = node->child; child != NULL; child = child->next) {
        struct text piece = TEXT_EMPTY;
        if (cJSON_IsObject(node))
            add_key(&piece, child);
        add_flat(&piece, child);
        text_add(&piece, child->next != NULL ? "," : "");
        if (column + 1 + piece.length > COLUMNS) {
            add_line(out, depth + 1);
            column = indent;
        } else {
            text_add(out, " ");
            column++;
        }
        text_add(out, text_string(&piece));
        column += piece.length;
        out->failed |= piece.failed;
        text_free(&piece);
    }
}

/* `column` is where it begins, after its key. What is plain and fits stands in one line,
 * but never at the top. */
static void add_node(struct text *out, const cJSON *node, int depth, size_t column)
{
    struct text flat = TEXT_EMPTY;
    add_flat(&flat, node);
    const bool plain = holds_plain_only(node);
    const bool fits = column + flat.length + 1 <= COLUMNS && depth > 0 && plain;
    if (fits || !holds_things(node)) {
        text_add(out, text_string(&flat));
    } else {
        const bool object = cJSON_IsObject(node);
        text_add(out, object ? "{" : "[");
        if (plain && depth > 0)
            add_filled(out, node, depth);
        else
            add_rows(out, node, depth);
        add_line(out, depth);
        text_add(out, object ? "}" : "]");
    }
    out->failed |= flat.failed;
    text_free(&flat);
}

/* The order is the tree's: a job comes out as its writer had it, with what was answered
 * behind. */
void write_job_text(const cJSON *job, struct text *out)
{
    add_node(out, job, 0, 0);
    text_add(out, "\n");
}
