/* interview_next.c - which question comes next. */
#include "ask/interview_parts.h"

#include "ask/one_line.h"
#include "job/footprint_facts.h"

#include <string.h>

/* A required fact comes before any law is known: it is asked of the catalogue alone. */
void interview_ask_head(struct interview *interview, const struct fields *fields,
                        const struct field *field)
{
    struct arena *arena = &interview->questions.arena;
    const char *pointer = arena_format(arena, "/%s", field->name);
    if (pointer == NULL)
        return;
    interview->head = question_about(arena, interview->job, fields, pointer);
    if (strcmp(field->name, interview_place) == 0)
        interview->head.ask = "Which building department issues the permit? (words of its name)";
    interview->now = &interview->head;
}

/* An answer gone back to may decide nothing any more: it is asked for all the same. */
void interview_ask_again(struct interview *interview, const struct fields *fields)
{
    for (size_t i = 0; i < interview->questions.count; i++)
        if (strcmp(interview->questions.items[i].pointer, interview->again) == 0)
            interview->now = &interview->questions.items[i];
    if (interview->now != NULL)
        return;
    interview->head = question_about(&interview->questions.arena, interview->laid, fields,
                                     interview->again);
    if (interview->head.field != NULL)
        interview->now = &interview->head;
}

/* How early a fact is asked for: the parts that go first in their order, then the rest. */
static size_t rank_of(const struct fields *fields, const struct field *field)
{
    for (size_t i = 0; i < fields->first_count; i++)
        for (const struct field *f = field; f != NULL; f = f->parent)
            if (f == fields->first[i])
                return i;
    return fields->first_count;
}

/* Items to be named go before all; of what has no order of its own, what decides most. */
static bool goes_before(const struct fields *fields, const struct question *a,
                        const struct question *b)
{
    const size_t first = rank_of(fields, a->field), second = rank_of(fields, b->field);
    if ((a->waiting_count == 0) != (b->waiting_count == 0))
        return a->waiting_count == 0;
    if (first != second)
        return first < second;
    return first == fields->first_count && a->waiting_count > b->waiting_count;
}

/* A roof of which nothing is said is asked for by its plan, form first. NULL when it is said
 * plane by plane, the plan is whole, or what it lacks was left out. */
static const char *lacking_of_plan(const struct interview *interview, const struct fields *fields)
{
    const cJSON *roof = cJSON_GetObjectItemCaseSensitive(interview->laid, "roof");
    struct footprint_facts facts;
    if (fields_find(fields, "roof.footprint.form") == NULL)
        return NULL;
    if (!interview_states(roof, "footprint"))
        return interview_states(roof, "slopes") || interview_done(interview, interview_form)
                   ? NULL
                   : interview_form;
    footprint_facts_read(interview->laid, fields, &facts);
    return facts.lacking == NULL || interview_done(interview, facts.lacking) ? NULL : facts.lacking;
}

static void ask_plan(struct interview *interview, const struct fields *fields, const char *lacking)
{
    struct arena *arena = &interview->questions.arena;
    interview->head = question_about(arena, interview->laid, fields, lacking);
    if (interview->head.field == NULL)
        return;
    if (strcmp(lacking, interview_form) == 0)
        interview->head.ask = arena_format(arena, "%s (none of these: write planes)",
                                           interview->head.field->ask);
    interview->now = &interview->head;
}

/* "covering laminated": a material of the sheet, by its name. */
static void add_material(struct text *out, const char *part, const cJSON *material)
{
    const cJSON *item = NULL;
    const char *name = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(material, "name"));
    if (cJSON_IsArray(material))
        cJSON_ArrayForEach(item, material)
            add_material(out, part, item);
    if (name != NULL)
        text_addf(out, "%s%s \"%s\"", out->length == 0 ? "" : ", ", part, name);
}

/* Before the first question about materials the sheet is confirmed, with one key. */
static bool waits_for_sheet(const struct interview *interview, const struct fields *fields,
                            const struct question *next)
{
    const struct field *covering = fields_find(fields, "covering");
    return interview->fresh && interview->shop.tree != NULL
           && !interview_done(interview, interview_sheet) && covering != NULL
           && fields_find(fields, "shop") != NULL
           && rank_of(fields, next->field) >= rank_of(fields, covering);
}

static void ask_sheet(struct interview *interview, const struct fields *fields)
{
    struct arena *arena = &interview->questions.arena;
    struct text materials = TEXT_EMPTY;
    const cJSON *part = NULL;
    cJSON_ArrayForEach(part, interview->shop.tree)
        add_material(&materials, part->string, part);
    interview->head = (struct question){.field = fields_find(fields, "shop"),
                                        .pointer = interview_sheet};
    interview->head.ask = arena_format(
        arena, "Go by the shop sheet %s%s%s? (y: what it says is not asked; n: all is asked)",
        interview->shop.file, materials.length == 0 ? "" : ": ", text_string(&materials));
    arena->failed |= materials.failed;
    text_free(&materials);
    interview->now = &interview->head;
}

/* A habit, or a list of materials that are yet to be named. */
static bool is_habit(const struct field *field)
{
    return field->habit != HABIT_NONE || (field->type == FIELD_LIST && fields_is_material(field));
}

bool interview_waits(const struct interview *interview, const struct question *question)
{
    return !interview_done(interview, question->pointer)
           && (!interview->habits || is_habit(question->field));
}

static bool part_is_habit(void *data, const struct line_part *part)
{
    (void)data;
    return is_habit(part->field);
}

/* The question that waits at this place; NULL: none, or it was dealt with. */
static struct question *waiting_at(struct interview *interview, const char *pointer)
{
    for (size_t i = 0; i < interview->questions.count; i++)
        if (strcmp(interview->questions.items[i].pointer, pointer) == 0
            && interview_waits(interview, &interview->questions.items[i]))
            return &interview->questions.items[i];
    return NULL;
}

static bool part_waits(void *interview, const struct line_part *part)
{
    return waiting_at(interview, part->pointer) != NULL;
}

/* A line is read and typed at one look. */
enum { WAITING_IN_A_LINE = 5 };

/* The first of a line of facts that wait leads it: it is known by that one's place. */
static struct question *led_by_first(struct interview *interview, struct question *question)
{
    struct question *first = question->part_count == 0
                                 ? question
                                 : waiting_at(interview, question->parts[0].pointer);
    if (first == NULL || first == question)
        return question;
    first->ask = question->ask;
    first->parts = question->parts;
    first->part_count = question->part_count;
    first->those_waiting = true;
    question->part_count = 0;
    return first;
}

/* The question, or that which leads those that are asked in one line with it, if it waits. */
static struct question *in_line(struct interview *interview, const struct fields *fields,
                                struct question *question)
{
    struct arena *arena = &interview->questions.arena;
    const char *leader = one_line_leader(question, arena, fields);
    struct question *led = leader == NULL ? NULL : waiting_at(interview, leader);
    question = led == NULL ? question : led;
    one_line_gather(question, arena, interview->laid, fields);
    if (question->part_count > 0 && question->those_waiting) {
        one_line_keep(question, part_waits, interview, WAITING_IN_A_LINE);
        question = led_by_first(interview, question);
    }
    if (interview->habits && question->part_count > 0)
        one_line_keep(question, part_is_habit, NULL, question->part_count);
    return question;
}

void interview_ask_next(struct interview *interview, const struct fields *fields)
{
    struct question *best = NULL;
    const char *lacking = lacking_of_plan(interview, fields);
    for (size_t i = 0; i < interview->questions.count; i++) {
        struct question *question = &interview->questions.items[i];
        if (!interview_waits(interview, question))
            continue;
        if (best == NULL || goes_before(fields, question, best))
            best = question;
    }
    /* Where nothing waits, the plan decides nothing either. */
    if (best != NULL && lacking != NULL) {
        ask_plan(interview, fields, lacking);
        return;
    }
    if (best == NULL && interview_ask_more(interview, fields))
        return;
    if (best != NULL && waits_for_sheet(interview, fields, best))
        ask_sheet(interview, fields);
    else
        interview->now = best == NULL ? NULL : in_line(interview, fields, best);
}
