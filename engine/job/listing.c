#include "job/schema.h"

#include "base/number.h"
#include "base/utf8.h"
#include "job/spoken.h"

#include <string.h>

enum { WIDTH = 80 };

/* Adds text in lines of at most WIDTH columns, each after the indent; a word
 * wider than that has a line to itself. */
static void add_wrapped(struct text *out, size_t indent, const char *text)
{
    size_t column = 0;
    while (*text != '\0') {
        const size_t length = strcspn(text, " ");
        struct text word = TEXT_EMPTY;
        text_add_n(&word, text, length);
        const size_t wide = utf8_columns(text_string(&word));
        if (column > 0 && column + 1 + wide > WIDTH) {
            text_add(out, "\n");
            column = 0;
        }
        if (column == 0)
            text_addf(out, "%*s", (int)indent, "");
        column = column == 0 ? indent + wide : column + 1 + wide;
        text_addf(out, "%s%s", column == indent + wide ? "" : " ", text_string(&word));
        out->failed |= word.failed;
        text_free(&word);
        text += length;
        text += strspn(text, " ");
    }
    text_add(out, "\n");
}

/* Of texts and lists the range is a length; of a slope, rise in 12. */
static void add_range(struct text *out, const struct field *field)
{
    const bool lengths = field->type == FIELD_TEXT || field->type == FIELD_LIST
                         || field->type == FIELD_CHOICES;
    const char *unit = lengths ? "count" : field->type == FIELD_SLOPE ? "rise_in_12" : field->unit;
    const char *of = field->type == FIELD_TEXT ? " characters" : lengths ? " items" : "";
    char least[96], most[96];
    number_write_unit(field->least, unit, least);
    number_write_unit(field->most, unit, most);
    if (field->has_least && field->has_most && field->least == field->most)
        text_addf(out, ", %s%s", most, of);
    else if (field->has_least && field->has_most)
        text_addf(out, ", %s to %s%s", least, most, of);
    else if (field->has_least)
        text_addf(out, ", at least %s%s", least, of);
    else if (field->has_most)
        text_addf(out, ", at most %s%s", most, of);
    else if (field->unit != NULL)
        text_addf(out, " in %s", field->unit);
}

/* ": a, b"; nothing for a field without choices. */
static void add_choices(struct text *out, const struct field *field)
{
    for (size_t i = 0; i < field->choice_count; i++)
        text_addf(out, "%s%s", i == 0 ? ": " : ", ", field->choices[i]);
}

/* A fact: path, type and range, when it is known or measured, and its question. */
static void add_field(struct text *out, const struct field *field)
{
    struct text about = TEXT_EMPTY;
    text_add(&about, field_type_said(field->type));
    add_choices(&about, field);
    add_range(&about, field);
    if (field->refers != NULL)
        text_addf(&about, " to an item of %s, by its name", field->refers);
    text_addf(&about, "; %s at %s", field->measured ? "measured" : "known",
              stage_word(field->stage));
    if (field->required)
        text_add(&about, "; required");
    if (field->habit != HABIT_NONE)
        text_add(&about, "; a shop sheet may say it");
    if (field->of_place)
        text_add(&about, "; the place may state it");
    text_addf(out, "  %s%s\n", field->path, field->type == FIELD_LIST ? "[]" : "");
    add_wrapped(out, 6, text_string(&about));
    if (field->ask != NULL)
        add_wrapped(out, 6, field->ask);
    out->failed |= about.failed;
    text_free(&about);
}

/* Those that a reader looks up for what is in them. */
static bool holds_fields(const struct field *field)
{
    return field->type == FIELD_GROUP || field->type == FIELD_LIST;
}

/* Plain groups need no entry of their own. Recursion is bounded by
 * FIELDS_DEEPEST. */
static void add_under(struct text *out, const struct field *parent)
{
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        if (f->type != FIELD_GROUP)
            add_field(out, f);
        add_under(out, f);
    }
}

/* A top-level group with all that is in it, under the group's own question. */
static void add_topic(struct text *out, const struct field *topic)
{
    if (out->length > 0)
        text_add(out, "\n");
    if (!holds_fields(topic)) {
        add_field(out, topic);
        return;
    }
    add_wrapped(out, 0, topic->ask == NULL ? topic->name : topic->ask);
    if (topic->type == FIELD_LIST)
        add_field(out, topic);
    add_under(out, topic);
}

/* Facts at the top first, under one heading: each is too short for one of its own. */
static void add_all(struct text *out, const struct field *root)
{
    text_add(out, "The job itself\n");
    for (const struct field *f = root->first_child; f != NULL; f = f->next)
        if (!holds_fields(f))
            add_field(out, f);
    for (const struct field *f = root->first_child; f != NULL; f = f->next)
        if (holds_fields(f))
            add_topic(out, f);
    text_add(out, "\n");
    spoken_add_table(out);
}

/* A place's own words may hold anything: line by line, nothing in them steers a terminal. */
static void add_harmless(struct text *out, const struct text *listing)
{
    out->failed |= listing->failed;
    for (const char *at = text_string(listing); *at != '\0';) {
        const size_t length = strcspn(at, "\n");
        struct text line = TEXT_EMPTY;
        text_add_n(&line, at, length);
        utf8_add_printable(out, text_string(&line));
        text_add(out, "\n");
        out->failed |= line.failed;
        text_free(&line);
        at += length + (at[length] == '\n');
    }
}

/* 0, or -1 when out of memory; 1 when there is no such topic. */
int listing_of_fields(const struct fields *fields, const char *topic, struct text *out)
{
    struct text listing = TEXT_EMPTY;
    const struct field *only = topic == NULL ? NULL : fields_child(fields->root, topic);
    /* Not a topic of the job, but asked for like one. */
    if (only == NULL && topic != NULL && strcmp(topic, "spoken") == 0) {
        spoken_add_table(out);
        return out->failed ? -1 : 0;
    }
    if (topic != NULL && only == NULL)
        return 1;
    if (only == NULL)
        add_all(&listing, fields->root);
    else
        add_topic(&listing, only);
    add_harmless(out, &listing);
    text_free(&listing);
    return out->failed ? -1 : 0;
}
