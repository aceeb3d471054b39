/* tree.h - a job's tree whose nodes and texts lie in one arena.
 *
 * It reads as any tree of cJSON's, and nodes of cJSON's own may hang in it beside those of
 * the arena. But cJSON_Delete, and whatever calls it, would free what malloc never gave: such
 * a tree is taken apart by the calls below, which serve trees of cJSON's own as well.
 *
 * A node of the arena has cJSON_IsReference set, as nothing else in a job has, and its key is
 * the arena's. cJSON_Duplicate drops the mark: a copy is cJSON's own, but for its keys, and
 * must not outlive the arena.
 */
#ifndef EAVEMARK_JOB_TREE_H
#define EAVEMARK_JOB_TREE_H

#include "base/arena.h"
#include "job/fields.h"

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <string.h>

/* A node of the arena, of this type; NULL when out of memory. */
cJSON *tree_node(struct arena *arena, int type);

/* A copy of the node and all below it, texts and keys too; NULL when out of memory. */
cJSON *tree_copy(struct arena *arena, const cJSON *node);

/* A node, all below it and, as cJSON_Delete does, all after it. NULL is nothing. */
void tree_free(cJSON *node);

/* Takes this member from an object and frees it, where there is one. */
void tree_drop(cJSON *object, const char *key);

/* Puts value where old stood in parent, and frees old. */
void tree_replace(cJSON *parent, cJSON *old, cJSON *value);

struct tree_node {
    cJSON json;
    const struct field *parent, *field; /* what was noted of it */
};

/* A node of this type made of room in an arena. */
static inline cJSON *tree_node_at(struct tree_node *node, int type)
{
    *node = (struct tree_node){.json.type = type | cJSON_IsReference | cJSON_StringIsConst};
    return &node->json;
}

/* Puts a node behind the last that is below parent, whose first child's prev is the last. */
static inline void tree_append(cJSON *parent, cJSON *node)
{
    cJSON *const first = parent->child;
    node->next = NULL;
    node->prev = first == NULL ? node : first->prev;
    if (first == NULL)
        parent->child = node;
    else
        first->prev->next = node, first->prev = node;
}

static inline bool tree_is_of_arena(const cJSON *node)
{
    return (node->type & cJSON_IsReference) != 0;
}

/* Notes which field of parent a member is (NULL: none), so that it is looked up once; the
 * next catalogue that the job is held against notes its own. */
static inline void tree_note(cJSON *member, const struct field *parent, const struct field *field)
{
    struct tree_node *node = (struct tree_node *)(void *)member;
    if (tree_is_of_arena(member))
        node->parent = parent, node->field = field;
}

/* Notes at a tree's top that all its members were noted by this catalogue, and that no figure
 * in it is spoken (spoken.h); cJSON's own trees cannot be told so. */
static inline void tree_note_all(cJSON *job, const struct fields *fields)
{
    tree_note(job, NULL, fields->root);
}

static inline bool tree_all_noted(const cJSON *job, const struct fields *fields)
{
    const struct tree_node *node = (const struct tree_node *)(const void *)job;
    return tree_is_of_arena(job) && node->parent == NULL && node->field == fields->root;
}

/* The field of parent that a member is, or NULL; last: as of fields_child_after. */
static inline const struct field *tree_field(const cJSON *member, const struct field *parent,
                                             const struct field *last)
{
    const struct tree_node *node = (const struct tree_node *)(const void *)member;
    if (tree_is_of_arena(member) && node->parent == parent)
        return node->field;
    return fields_child_after(parent, last, member->string);
}

/* The member of an object that bears this field's name, or NULL; also of what is no object. */
static inline cJSON *tree_member(const cJSON *object, const struct field *field)
{
    for (cJSON *member = object == NULL ? NULL : object->child; member != NULL;
         member = member->next) {
        const struct tree_node *node = (const struct tree_node *)(const void *)member;
        if (tree_is_of_arena(member) && node->parent == field->parent) {
            if (node->field == field)
                return member;
        } else if (member->string != NULL && strcmp(member->string, field->name) == 0) {
            return member;
        }
    }
    return NULL;
}

/* What stands at a field that lies in groups only; NULL for nothing. The root is the job. */
const cJSON *tree_at(const cJSON *job, const struct field *field);

#endif
