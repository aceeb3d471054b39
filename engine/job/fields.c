#include "job/fields.h"

#include "base/nearest.h"
#include "job/fields_spec.h"

#include <string.h>

/* How rule files write each type, and how messages say it. */
static const struct {
    const char *word, *said;
} TYPES[] = {
    [FIELD_GROUP] = {"group", "group"},
    [FIELD_LIST] = {"list", "list"},
    [FIELD_TEXT] = {"text", "text"},
    [FIELD_NUMBER] = {"number", "number"},
    [FIELD_INTEGER] = {"integer", "whole number"},
    [FIELD_YES_NO] = {"yes_no", "yes or no"},
    [FIELD_CHOICE] = {"choice", "choice"},
    [FIELD_SLOPE] = {"slope", "slope"},
    [FIELD_DATE] = {"date", "date"},
    [FIELD_NUMBERS] = {"numbers", "list of numbers"},
    [FIELD_CHOICES] = {"choices", "list of choices"},
    [FIELD_REFERENCE] = {"reference", "reference"},
};

const char *field_type_said(enum field_type type)
{
    return TYPES[type].said;
}

/* -1 for none, so that the loader can name the choices. */
int field_type_by_word(const char *word)
{
    for (size_t i = 0; i < sizeof(TYPES) / sizeof(TYPES[0]); i++)
        if (strcmp(TYPES[i].word, word) == 0)
            return (int)i;
    return -1;
}

int fields_start(struct fields *fields)
{
    *fields = (struct fields){0};
    fields->root = arena_alloc(&fields->arena, sizeof(*fields->root));
    if (fields->root == NULL)
        return -1;
    fields->root->name = "";
    fields->root->path = "";
    fields->root->type = FIELD_GROUP;
    /* A field that does not say where its answer is has it from here, down through its groups. */
    fields->root->answer = FIELD_ANSWERS[0];
    return 0;
}

void fields_free(struct fields *fields)
{
    arena_free(&fields->arena);
    *fields = (struct fields){0};
}

struct field *fields_child(const struct field *parent, const char *name)
{
    /* The first letter tells most of them apart. */
    for (struct field *child = parent->first_child; child != NULL; child = child->next)
        if (child->name[0] == name[0] && strcmp(child->name, name) == 0)
            return child;
    return NULL;
}

/* Recursion is bounded by FIELDS_DEEPEST. */
bool fields_hold_habits(const struct field *field)
{
    bool holds = field->habit != HABIT_NONE;
    for (const struct field *f = field->first_child; f != NULL && !holds; f = f->next)
        holds = fields_hold_habits(f);
    return holds;
}

/* Materials are lists whose items go by a name that a shop gives them. */
bool fields_is_material(const struct field *field)
{
    const struct field *name = fields_child(field, "name");
    return name != NULL && name->habit != HABIT_NONE;
}

/* Jobs are mostly written in the order of the catalogue: the fields after the last one found
 * are tried first, as many of them may be lacking. */
const struct field *fields_child_after(const struct field *parent, const struct field *last,
                                       const char *name)
{
    for (const struct field *f = last == NULL ? NULL : last->next; f != NULL; f = f->next)
        if (f->name[0] == name[0] && strcmp(f->name, name) == 0)
            return f;
    return fields_child(parent, name);
}

/* Paths ------------------------------------------------------------------- */

/* As fields_child, for a name inside a longer path. */
static struct field *child_n(const struct field *parent, const char *name, size_t length)
{
    for (struct field *child = parent->first_child; child != NULL; child = child->next)
        if (child->name[0] == name[0] && strncmp(child->name, name, length) == 0
            && child->name[length] == '\0')
            return child;
    return NULL;
}

/* The part of a path up to the next dot, its [] left out of length. */
struct part {
    const char *name;
    size_t length;
    bool brackets;
    const char *rest; /* after the dot, or NULL */
};

static struct part part_of(const char *path)
{
    const char *dot = strchr(path, '.');
    struct part part = {path, dot == NULL ? strlen(path) : (size_t)(dot - path), false,
                        dot == NULL ? NULL : dot + 1};
    part.brackets = part.length >= 2 && memcmp(path + part.length - 2, "[]", 2) == 0;
    if (part.brackets)
        part.length -= 2;
    return part;
}

/* NULL when any part of the way is not declared. */
struct field *fields_find(const struct fields *fields, const char *path)
{
    struct field *at = fields->root;
    while (at != NULL && path != NULL) {
        const struct part part = part_of(path);
        at = child_n(at, part.name, part.length);
        path = part.rest;
    }
    return at;
}

const struct field *fields_step(const struct field *parent, const char **path)
{
    const struct part part = part_of(*path);
    const struct field *child = child_n(parent, part.name, part.length);
    *path = part.rest != NULL ? part.rest : part.name + strlen(part.name);
    return child != NULL && part.brackets == (child->type == FIELD_LIST && **path != '\0') ? child
                                                                                           : NULL;
}

/* Near names -------------------------------------------------------------- */

/* Stricter than nearest.h for short names: of two or three letters nearly every word is a
 * near one. */
bool fields_plausible(const char *wanted, size_t distance)
{
    const size_t length = strlen(wanted);
    if (length < 6)
        return distance <= (length > 2);
    return distance <= length / 3;
}

const char *fields_nearest_child(const struct field *parent, const char *name)
{
    struct nearest nearest;
    nearest_start(&nearest, name);
    for (const struct field *child = parent->first_child; child != NULL; child = child->next)
        nearest_offer(&nearest, child->name);
    return fields_plausible(name, nearest.distance) ? nearest.name : NULL;
}

/* The field after this one when the whole tree is read from its root down. */
static const struct field *field_after(const struct field *at)
{
    if (at->first_child != NULL)
        return at->first_child;
    while (at != NULL && at->next == NULL)
        at = at->parent;
    return at == NULL ? NULL : at->next;
}

/* The first pass finds how near the nearest is, the second lists all as near. */
size_t fields_namesakes(const struct fields *fields, const char *name,
                        const struct field *found[FIELDS_NAMESAKES])
{
    struct nearest nearest;
    nearest_start(&nearest, name);
    for (const struct field *at = field_after(fields->root); at != NULL; at = field_after(at))
        nearest_offer(&nearest, at->name);
    if (nearest.name == NULL || !fields_plausible(name, nearest.distance))
        return 0;
    size_t count = 0;
    for (const struct field *at = field_after(fields->root); at != NULL; at = field_after(at)) {
        if (nearest_distance(name, at->name) != nearest.distance)
            continue;
        /* So many alike ("notes", "width_in") help nobody. */
        if (count == FIELDS_NAMESAKES)
            return 0;
        found[count++] = at;
    }
    return count;
}

/* The child a mistyped part most likely means; the part itself when it is right. */
static const struct field *child_meant(const struct field *parent, struct part part)
{
    char name[NEAREST_LONGEST + 1] = "";
    if (part.length > NEAREST_LONGEST)
        return NULL;
    memcpy(name, part.name, part.length);
    const struct field *exact = fields_child(parent, name);
    if (exact != NULL)
        return exact;
    const char *near = fields_nearest_child(parent, name);
    return near == NULL ? NULL : fields_child(parent, near);
}

const char *fields_nearest_path(const struct fields *fields, const char *path)
{
    const struct field *at = fields->root;
    const char *rest = path, *last = path;
    while (at != NULL && rest != NULL) {
        const struct part part = part_of(rest);
        at = child_meant(at, part);
        rest = part.rest;
    }
    if (at != NULL)
        return at->path;
    /* No part-by-part way leads there: the last name alone may still stand elsewhere. */
    for (const char *dot = strchr(path, '.'); dot != NULL; dot = strchr(dot + 1, '.'))
        last = dot + 1;
    const struct field *found[FIELDS_NAMESAKES];
    return fields_namesakes(fields, last, found) == 0 ? NULL : found[0]->path;
}

/* Adding ------------------------------------------------------------------ */

/* The group or list that a new field goes into; *name is then what is left of
 * the path. NULL, with *why set, when there is none. */
static struct field *parent_of(struct fields *fields, const char *path, const char **name,
                               const char **why)
{
    struct field *at = fields->root;
    struct part part = part_of(path);
    for (; part.rest != NULL; part = part_of(part.rest)) {
        const int length = (int)(part.rest - 1 - path);
        at = child_n(at, part.name, part.length);
        if (at == NULL) {
            const char *parent = arena_copy_n(&fields->arena, path, (size_t)length);
            const char *near = parent == NULL ? NULL : fields_nearest_path(fields, parent);
            *why = near == NULL
                       ? arena_format(&fields->arena, "\"%.*s\" is not declared", length, path)
                       : arena_format(&fields->arena,
                                      "\"%.*s\" is not declared; did you mean \"%s\"?", length,
                                      path, near);
            return NULL;
        }
        if (at->type != FIELD_GROUP && at->type != FIELD_LIST) {
            *why = arena_format(&fields->arena, "\"%s\" is a %s and holds no fields", at->path,
                                field_type_said(at->type));
            return NULL;
        }
        /* A list's fields are declared as "roof.slopes[].pitch", so that a path says by
         * itself what repeats. */
        if (part.brackets != (at->type == FIELD_LIST)) {
            *why = arena_format(&fields->arena, "\"%s\" is a %s: write \"%s%s.\" before its fields",
                                at->path, field_type_said(at->type), at->path,
                                at->type == FIELD_LIST ? "[]" : "");
            return NULL;
        }
    }
    *name = part.name;
    return at;
}

/* NULL for none, and when out of memory (the arena remembers that). */
static const char **copy_choices(struct arena *arena, const struct field *spec)
{
    if (spec->choice_count == 0)
        return NULL;
    const char **choices = arena_array(arena, spec->choice_count, sizeof(*choices));
    for (size_t i = 0; choices != NULL && i < spec->choice_count; i++)
        choices[i] = arena_copy(arena, spec->choices[i]);
    return choices;
}

/* Everything is copied into the catalogue's arena: the spec's texts are Lua's, which
 * moves on. */
static struct field *copy_spec(struct fields *fields, const char *path, const char *name,
                               const struct field *spec)
{
    struct arena *arena = &fields->arena;
    struct field *field = arena_alloc(arena, sizeof(*field));
    if (field == NULL)
        return NULL;
    *field = *spec;
    field->path = arena_copy(arena, path);
    field->name = arena_copy(arena, name);
    field->unit = arena_copy(arena, spec->unit);
    field->choices = copy_choices(arena, spec);
    field->refers = arena_copy(arena, spec->refers);
    field->ask = arena_copy(arena, spec->ask);
    field->answer = arena_copy(arena, spec->answer);
    field->file = arena_copy(arena, spec->file);
    /* The spec's own links are nobody's: link_child sets them. */
    field->parent = field->first_child = field->last_child = field->next = NULL;
    field->index = field->child_count = 0;
    return arena->failed ? NULL : field;
}

/* At the end: the order of declaration is the order in which questions are asked. */
static void link_child(struct field *parent, struct field *child)
{
    child->parent = parent;
    child->length = strlen(child->name);
    if (child->answer == NULL)
        child->answer = parent->answer;
    if (parent->last_child == NULL)
        parent->first_child = child;
    else
        parent->last_child->next = child;
    parent->last_child = child;
    child->index = parent->child_count++;
}

/* False when out of memory. */
static bool note_referred(struct fields *fields, struct field *reference)
{
    const size_t count = fields->referred_count;
    size_t at = 0;
    while (at < count && strcmp(fields->referred[at], reference->refers) != 0)
        at++;
    reference->referred = at;
    if (at < count)
        return true;
    /* Few lists are referred to: a longer array for each. */
    const char **longer = arena_array(&fields->arena, count + 1, sizeof(*longer));
    if (longer == NULL)
        return false;
    if (count > 0)
        memcpy(longer, fields->referred, count * sizeof(*longer));
    longer[count] = reference->refers;
    fields->referred = longer;
    fields->referred_count++;
    return true;
}

/* False when out of memory. */
static bool hang(struct fields *fields, struct field *parent, struct field *field)
{
    if (field->type == FIELD_REFERENCE && !note_referred(fields, field))
        return false;
    link_child(parent, field);
    field->number = ++fields->count;
    return true;
}

struct field *fields_add(struct fields *fields, const char *path, const struct field *spec,
                         const char **why)
{
    const char *name = NULL;
    *why = NULL;
    struct field *parent = parent_of(fields, path, &name, why);
    struct field *added = NULL;
    const struct field *there = parent == NULL ? NULL : fields_child(parent, name);
    if (there != NULL)
        *why = there->file == NULL
                   ? "already declared"
                   : arena_format(&fields->arena, "already declared in %s", there->file);
    else if (parent != NULL && fields_spec_sound(fields, path, name, spec, why))
        added = copy_spec(fields, path, name, spec);
    if (added != NULL && !hang(fields, parent, added))
        added = NULL;
    if (added == NULL && *why == NULL)
        *why = "out of memory";
    return added;
}

bool fields_add_sound(struct fields *fields, struct field *field)
{
    const char *why = NULL, *name = NULL;
    struct field *parent = parent_of(fields, field->path, &name, &why);
    if (parent == NULL || fields_child(parent, name) != NULL)
        return false;
    field->name = name;
    return hang(fields, parent, field);
}

/* NULL when references of this field can be followed: to a list outside all lists, whose
 * items have names. */
static const char *why_dangling(struct fields *fields, const struct field *reference)
{
    const struct field *list = fields_find(fields, reference->refers);
    struct arena *arena = &fields->arena;
    if (list == NULL)
        return arena_format(arena, "refers to \"%s\", which is not declared", reference->refers);
    if (list->type != FIELD_LIST)
        return arena_format(arena, "refers to \"%s\", which is not a list", reference->refers);
    for (const struct field *at = list->parent; at != NULL; at = at->parent)
        if (at->type == FIELD_LIST)
            return arena_format(arena, "refers to \"%s\", which lies inside the list \"%s\"",
                                reference->refers, at->path);
    const struct field *name = fields_child(list, "name");
    if (name == NULL || name->type != FIELD_TEXT)
        return arena_format(arena, "refers to \"%s\", whose items have no text \"name\"",
                            reference->refers);
    return NULL;
}

/* Looked for when all files are in, since a list may be declared after what refers to it. */
const struct field *fields_dangling(struct fields *fields, const char **why)
{
    *why = NULL;
    for (const struct field *at = fields->root; at != NULL; at = field_after(at)) {
        if (at->type != FIELD_REFERENCE)
            continue;
        *why = why_dangling(fields, at);
        if (*why == NULL && fields->arena.failed)
            *why = "out of memory";
        if (*why != NULL)
            return at;
    }
    return NULL;
}
