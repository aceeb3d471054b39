#include "report/question_report.h"

#include "ask/item.h"
#include "base/number.h"
#include "job/field_words.h"
#include "report/page.h"
#include "report/value_words.h"
#include "report/wrap.h"

#include <string.h>

enum { HANG = 4 };

/* The part of the job: the topmost group, or NULL for what is in none. */
static const struct field *part_of(const struct field *field)
{
    const struct field *at = field;
    while (at->parent != NULL && at->parent->parent != NULL)
        at = at->parent;
    return at->type == FIELD_GROUP || at->type == FIELD_LIST ? at : NULL;
}

/* Without a space between the number and its choice, so that no line parts them. */
static void add_numbered(struct text *out, const char *const *items, size_t count)
{
    for (size_t i = 0; i < count; i++)
        text_addf(out, "%s%zu:%s", i == 0 ? "" : ", ", i + 1, items[i]);
}

/* "0 to 6 layers", "in feet" ...: what a figure may be. */
static void add_range(struct text *out, const struct field *field, const char *unit)
{
    char least[96], most[96];
    number_write_unit(field->least, unit, least);
    number_write_unit(field->most, unit, most);
    if (field->has_least && field->has_most)
        text_addf(out, "%s to %s", least, most);
    else if (field->has_least)
        text_addf(out, "at least %s", least);
    else if (field->has_most)
        text_addf(out, "at most %s", most);
    else if (unit != NULL)
        text_addf(out, "in %s", unit);
}

/* Those that people write with marks and fractions. */
static bool is_length(const struct field *field)
{
    return field->unit != NULL
           && (strcmp(field->unit, "ft") == 0 || strcmp(field->unit, "in") == 0);
}

/* What may be typed, with an example where fractions and feet are usual. */
static void add_figure(struct text *out, const struct field *field)
{
    text_add(out, field->type == FIELD_INTEGER ? "a whole number" : "a number");
    if (field->type == FIELD_NUMBERS)
        text_add(out, " or several, with commas");
    struct text range = TEXT_EMPTY;
    add_range(&range, field, field->unit);
    if (range.length > 0)
        text_addf(out, ", %s", text_string(&range));
    if (is_length(field))
        text_addf(out, "; %s", strcmp(field->unit, "ft") == 0 ? "12'6\" will do" : "1 1/4 will do");
    out->failed |= range.failed;
    text_free(&range);
}

/* A few names by number; of many one as an example, since part of a name finds it. */
static void add_named(struct text *out, const struct question *question)
{
    if (question->name_count == 0)
        text_add(out, question->field->type == FIELD_TEXT ? "a few words" : "its name");
    else if (question->numbered)
        add_numbered(out, question->names, question->name_count);
    else
        text_addf(out, "one of %zu, such as %s; part of a name shows those that hold it",
                  question->name_count, question->names[0]);
}

/* Items told apart by a kind may be listed by it. */
static void add_kinds(struct text *out, const struct field *list)
{
    const struct field *kind = item_kind(list);
    if (kind == NULL)
        return;
    text_add(out, "; or which, with commas: ");
    for (size_t i = 0; i < kind->choice_count; i++)
        text_addf(out, "%s%s", i == 0 ? "" : ", ", kind->choices[i]);
}

/* Below the question: how it may be answered. */
static void add_expected(struct text *out, const struct question *question)
{
    const struct field *field = question->field;
    switch (field->type) {
    case FIELD_YES_NO:
        text_add(out, "y or n");
        break;
    case FIELD_CHOICE:
        add_numbered(out, field->choices, field->choice_count);
        break;
    case FIELD_CHOICES:
        text_add(out, "one or more, with commas:  ");
        add_numbered(out, field->choices, field->choice_count);
        break;
    case FIELD_SLOPE:
        text_add(out, "such as 5:12, 5/12 or 22.6 deg; ");
        add_range(out, field, "rise_in_12");
        break;
    case FIELD_DATE:
        text_add(out, "a day such as 2026-03-31");
        break;
    case FIELD_NUMBER:
    case FIELD_INTEGER:
    case FIELD_NUMBERS:
        add_figure(out, field);
        break;
    case FIELD_LIST:
        text_add(out, "how many are there? ");
        add_range(out, field, "count");
        add_kinds(out, field);
        break;
    case FIELD_TEXT:
    case FIELD_REFERENCE:
        add_named(out, question);
        break;
    case FIELD_GROUP:
        break;
    }
}

/* "=" takes the answer of the item before. */
static void add_same(struct text *out, const struct question *question)
{
    if (question->same == NULL)
        return;
    text_add(out, ";  = for ");
    field_words_add(out, question->same, question->field);
    if (question->same_where != NULL)
        text_addf(out, ", as %s", question->same_where);
}

/* The facts of one line, each with how it may be answered. */
static void add_line(struct text *out, const struct question *question)
{
    for (size_t i = 0; i < question->part_count; i++) {
        /* No names and no item before: the parts of a line are plain facts. */
        const struct question one = {.field = question->parts[i].field};
        struct text part = TEXT_EMPTY;
        text_addf(&part, "%s  ",
                  question->those_waiting && one.field->ask != NULL ? one.field->ask
                                                                    : one.field->name);
        add_expected(&part, &one);
        text_addf(out, "%*s", HANG, "");
        page_phrase(out, HANG + 2, &part);
    }
    text_addf(out, "%*sin this order, with commas; - for what is not known\n", HANG, "");
}

void report_question(const struct question *question, bool heading, struct text *out)
{
    struct text words = TEXT_EMPTY, expected = TEXT_EMPTY;
    const struct field *part = part_of(question->field);
    /* A heading where another part of the job begins. */
    if (heading && part != NULL && part->ask != NULL) {
        text_add(out, "\n-- ");
        wrap_add(out, 3, part->ask);
    }
    text_add(out, "\n");
    if (question->where != NULL)
        text_addf(&words, "%s: ", question->where);
    text_add(&words, question->ask != NULL          ? question->ask
                     : question->field->ask != NULL ? question->field->ask
                                                    : question->field->name);
    page_phrase(out, 0, &words);
    if (question->part_count > 0) {
        add_line(out, question);
        return;
    }
    /* A text in other words than its own is answered as those say. */
    if (question->ask != NULL && question->field->type == FIELD_TEXT)
        return;
    add_expected(&expected, question);
    add_same(&expected, question);
    text_addf(out, "%*s", HANG, "");
    page_phrase(out, HANG, &expected);
}

/* What fails by the answers so far. */
void report_question_fails(const struct finding *finding, struct text *out)
{
    struct text words = TEXT_EMPTY;
    text_addf(&words, "%s%s%s: %s", finding->title, finding->where == NULL ? "" : ", ",
              finding->where == NULL ? "" : finding->where, finding->says);
    text_add(out, "  fails ");
    page_phrase(out, 8, &words);
}

/* One finding's rule; not when the one before it is of the same rule. */
static void add_waiting(struct text *out, const struct finding *finding)
{
    struct text line = TEXT_EMPTY;
    text_addf(&line, "%s [%s]", finding->title, finding->rule);
    /* Two sections show what it is about; `explain` has them all. */
    for (size_t i = 0; i < finding->cite_count && i < 2; i++) {
        text_add(&line, i == 0 ? ": " : "; ");
        value_add_cite(&line, &finding->cites[i]);
    }
    text_addf(out, "%*s", HANG, "");
    page_phrase(out, HANG, &line);
    if (finding->caution == NULL)
        return;
    text_addf(out, "%*s", HANG + 2, "");
    wrap_add(out, HANG + 2, finding->caution);
}

void report_question_help(const struct question *question, struct text *out)
{
    struct text line = TEXT_EMPTY;
    text_addf(&line, "This is %s in the job, a %s known at the %s stage.", question->pointer,
              field_type_said(question->field->type), stage_word(question->field->stage));
    page_phrase(out, 0, &line);
    for (size_t i = 1; i < question->part_count; i++)
        text_addf(out, "With it %s\n", question->parts[i].pointer);
    if (question->waiting_count > 0)
        text_add(out, "Needed by:\n");
    else
        /* Nothing waits for it, and still it is asked: say why. */
        text_add(out, question->field->required
                          ? "Every job says it: it decides which rules there are.\n"
                          : "It names what other questions are about.\n");
    for (size_t i = 0; i < question->waiting_count; i++)
        if (i == 0 || strcmp(question->waiting[i - 1]->rule, question->waiting[i]->rule) != 0)
            add_waiting(out, question->waiting[i]);
    text_add(out, "Enter alone: not known yet. back: the answer before. stop: write the job.\n");
}

void report_questions_text(const struct questions *questions, struct text *out)
{
    const struct field *part = NULL;
    for (size_t i = 0; i < questions->count; i++) {
        const struct field *own = part_of(questions->items[i].field);
        report_question(&questions->items[i], own != part, out);
        part = own;
    }
    struct text line = TEXT_EMPTY;
    if (questions->count == 0)
        text_add(&line, "No question is open.");
    else
        text_addf(&line, "%zu question%s open; more may follow from the answers.", questions->count,
                  questions->count == 1 ? " is" : "s are");
    text_add(out, questions->count == 0 ? "" : "\n");
    page_phrase(out, 0, &line);
}
