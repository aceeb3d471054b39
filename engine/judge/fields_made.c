#include "judge/fields_made.h"

#include "base/arena.h"
#include "profile/made.h"
#include "profile/place_made.h"

#include <string.h>

_Static_assert(sizeof(enum field_type) == sizeof(int) && sizeof(enum stage) == sizeof(int)
                   && sizeof(enum habit) == sizeof(int),
               "an enum is as large as an int");

struct field_list {
    struct field *first;
};

static const struct part FIELD_PARTS[] = {
    PART(TEXT, struct field, path),
    PART(WORD, struct field, type),
    PART(TEXT, struct field, ask),
    PART(TEXT, struct field, answer),
    PART(WORD, struct field, stage),
    PART(TEXT, struct field, unit),
    PART(FLAG, struct field, has_least),
    PART(FLAG, struct field, has_most),
    PART(NUMBER, struct field, least),
    PART(NUMBER, struct field, most),
    PART_TEXTS(struct field, choices, choice_count),
    PART(TEXT, struct field, refers),
    PART(FLAG, struct field, required),
    PART(FLAG, struct field, measured),
    PART(WORD, struct field, habit),
    PART(FLAG, struct field, stays),
    PART(FLAG, struct field, of_place),
};
static const struct shape FIELD_SHAPE = SHAPE_LISTED(struct field, FIELD_PARTS);
static const struct part LIST_PARTS[] = {PART_OF(LIST, struct field_list, first, FIELD_SHAPE)};
static const struct shape LIST_SHAPE = SHAPE(struct field_list, LIST_PARTS);

/* By their numbers, which are those of the declarations. */
static void copy_below(const struct field *parent, const char *file, struct field *by_number)
{
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        if (strcmp(f->file, file) == 0)
            by_number[f->number] = *f;
        copy_below(f, file, by_number);
    }
}

char *fields_made_write(const struct fields *fields, const char *file, size_t *length)
{
    struct arena arena = {0};
    struct field_list list = {NULL};
    struct field **at = &list.first;
    struct field *copies = arena_array(&arena, fields->count + 1, sizeof(*copies));
    if (copies != NULL)
        copy_below(fields->root, file, copies);
    for (size_t i = 1; copies != NULL && i <= fields->count; i++)
        if (copies[i].path != NULL) {
            *at = &copies[i];
            at = &copies[i].next;
        }
    *at = NULL;
    char *bytes = list.first == NULL ? NULL : place_made_write_as(&list, &LIST_SHAPE, length);
    arena_free(&arena);
    return bytes;
}

/* What they take counts as that of fields that are read. */
bool fields_made_begin(struct declaring *declaring, const struct source *source)
{
    struct packed_file made;
    struct field_list list = {NULL};
    struct fields *fields = &declaring->book->fields;
    declaring->made = made_find(source, MADE_FIELDS, &made);
    if (declaring->made
        && !place_made_take_as(made.bytes, &declaring->book->arena, &list, &LIST_SHAPE))
        return false;
    for (struct field *field = list.first, *next; field != NULL; field = next) {
        next = field->next;
        field->next = NULL;
        field->file = declaring->file;
        declaring->field_count++;
        declaring->book->sandbox->kept += sizeof(*field) + strlen(field->path) + strlen(field->ask);
        if (!fields_add_sound(fields, field))
            return false;
    }
    return true;
}

bool fields_made_has(lua_State *lua)
{
    const struct declaring *declaring = declaring_of(lua);
    const struct field *field = declaring->made
                                    ? fields_find(&declaring->book->fields, declare_name(lua))
                                    : NULL;
    return field != NULL && field->file == declaring->file
           && strcmp(field->path, declare_name(lua)) == 0;
}
