#include "judge/verdict.h"

#include "base/number.h"
#include "base/text.h"
#include "job/spot.h"
#include "job/lay_out.h"
#include "job/spot.h"

#include <stdio.h>
#include <string.h>

/* How well a figure is known, from best to worst. */
static bool is_status(const struct figure *figure, const char *status)
{
    return figure->cite.status != NULL && strcmp(figure->cite.status, status) == 0;
}

static bool is_well_known(const struct figure *figure)
{
    return is_status(figure, "seen") || is_status(figure, "invented");
}

static bool same_text(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

static bool same_cite(const struct cite *a, const struct cite *b)
{
    return same_text(a->code, b->code) && same_text(a->section, b->section)
        && same_text(a->status, b->status) && same_text(a->source, b->source);
}

/* Copies what the record holds into the finding. */
static void take_record(struct finding *finding, struct judging *judging)
{
    const struct record *record = &judging->record;
    finding->reads = record->reads.items;
    finding->read_count = record->reads.count;
    finding->work = record->work.items;
    finding->work_count = record->work.count;
    finding->figures = record->figures;
    finding->figure_count = record->figure_count;
    struct cite *cites = arena_array(judging->arena, record->figure_count + 1, sizeof(*cites));
    if (cites == NULL)
        return;
    for (size_t i = 0; i < record->figure_count; i++) {
        const struct figure *figure = record->figures[i];
        bool told = false;
        for (size_t j = 0; j < finding->cite_count; j++)
            told = told || same_cite(&cites[j], &figure->cite);
        if (!told)
            cites[finding->cite_count++] = figure->cite;
        if (figure->moved && finding->amended == NULL)
            finding->amended = &figure->amended;
    }
    finding->cites = cites;
}

/* "wood_shake" is a word for the job file; people say "wood shake". */
static void add_plain(struct text *out, const char *word)
{
    for (; *word != '\0'; word++)
        text_add_n(out, *word == '_' ? " " : word, 1);
}

static void add_value(struct text *out, const struct value *value)
{
    char number[96];
    switch (value->kind) {
    case VALUE_NONE:
        text_add(out, "nothing");
        break;
    case VALUE_NUMBER:
        number_write_unit(value->number, value->unit, number);
        text_add(out, number);
        break;
    case VALUE_YES_NO:
        text_add(out, value->yes ? "yes" : "no");
        break;
    case VALUE_TEXT:
        add_plain(out, value->text);
        break;
    case VALUE_SET:
        for (size_t i = 0; i < value->set_count; i++) {
            text_add(out, i == 0 ? "" : ", ");
            add_plain(out, value->set[i]);
        }
        if (value->set_count == 0)
            text_add(out, "none");
        break;
    }
}

static const char *sense_words(const char *sense)
{
    return strcmp(sense, "at_least") == 0 ? "at least "
        : strcmp(sense, "at_most") == 0   ? "at most "
        : strcmp(sense, "one_of") == 0    ? "one of "
                                          : "";
}

static void say_comparison(struct text *out, const struct judgement *judgement)
{
    text_add(out, "Found ");
    add_value(out, &judgement->found);
    text_add(out, "; demanded ");
    text_add(out, sense_words(judgement->sense));
    add_value(out, &judgement->required);
    text_add(out, ".");
}

/* How the figures weaken a comparison: one sentence per kind of weakness. */
static void say_weakness(struct text *out, const struct record *record)
{
    bool memory = false, parallel = false, practice = false;
    for (size_t i = 0; i < record->figure_count; i++) {
        const struct figure *figure = record->figures[i];
        memory = memory || is_status(figure, "memory");
        parallel = parallel || is_status(figure, "parallel");
        practice = practice || is_status(figure, "practice");
    }
    if (memory)
        text_add(out, " The figure is recalled from memory, not read: confirm it.");
    if (parallel)
        text_add(out, " The figure was read in a sister code, not in this one: confirm it.");
    if (practice)
        text_add(out, " This is common practice, not code.");
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i]->disputed != NULL)
            text_addf(out, " Sources disagree: %s.", record->figures[i]->disputed);
    const char *unsure = NULL;
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i]->unsure != NULL)
            unsure = record->figures[i]->unsure;
    if (unsure != NULL)
        text_addf(out, " Not certain that this binds here: %s.", unsure);
}

/* The first figure asked for that is not this place's law, or NULL. */
static const struct figure *borrowed_of(const struct record *record)
{
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i]->borrowed != NULL)
            return record->figures[i];
    return NULL;
}

/* A duty left off: no says so little that nobody's law is needed for it. */
static bool is_off(const struct value *value)
{
    return (value->kind == VALUE_YES_NO && !value->yes)
        || (value->kind == VALUE_SET && value->set_count == 0);
}

/* Was the job let off by a figure of somebody else's law, not by a duty it leaves off? */
static bool let_off_by_borrowed(const struct record *record)
{
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i]->borrowed != NULL && !is_off(&record->figures[i]->value))
            return true;
    return false;
}

static bool all_practice(const struct record *record)
{
    for (size_t i = 0; i < record->figure_count; i++)
        if (!is_status(record->figures[i], "practice"))
            return false;
    return record->figure_count > 0;
}

static bool any_weak(const struct record *record)
{
    for (size_t i = 0; i < record->figure_count; i++)
        if (!is_well_known(record->figures[i]) || record->figures[i]->disputed != NULL
            || record->figures[i]->unsure != NULL)
            return true;
    return false;
}

static enum outcome outcome_of(const struct judgement *judgement, const struct record *record)
{
    if (!judgement->met)
        return all_practice(record) ? OUTCOME_WARN : OUTCOME_FAIL;
    return judgement->warn != NULL || any_weak(record) ? OUTCOME_WARN : OUTCOME_PASS;
}

static const char *finish_text(struct judging *judging, struct text *text)
{
    const char *kept = text->failed ? NULL : arena_copy(judging->arena, text_string(text));
    if (text->failed)
        judging->arena->failed = true;
    text_free(text);
    return kept == NULL ? "" : kept;
}

/* What goes beyond the comparison itself; NULL when there is nothing. */
static const char *note_of(struct judging *judging, const struct judgement *judgement)
{
    struct text note = TEXT_EMPTY;
    if (judgement->say != NULL)
        text_addf(&note, " %s", judgement->say);
    if (judgement->warn != NULL)
        text_addf(&note, " %s", judgement->warn);
    say_weakness(&note, &judging->record);
    const char *text = finish_text(judging, &note);
    return text[0] == '\0' ? NULL : text + 1;
}

/* What another's law says of the job is not told: it would read like a verdict. */
static void verdict_borrowed(struct finding *finding, struct judging *judging,
                             const struct figure *figure)
{
    take_record(finding, judging);
    finding->outcome = OUTCOME_OPEN;
    finding->says = arena_format(judging->arena, "What is asked for here was not established: %s. "
                                 "Ask the building department.", figure->borrowed);
    if (finding->says == NULL)
        finding->says = "";
}

static bool is_measured(const struct judging *judging, const struct finding *finding)
{
    for (size_t i = 0; i < finding->read_count; i++) {
        const struct field *field = spot_field(&judging->book->fields, finding->reads[i]);
        if (field != NULL && field->measured)
            return true;
    }
    return false;
}

void verdict_judged(struct finding *finding, struct judging *judging,
                    const struct judgement *judgement)
{
    const struct figure *borrowed = borrowed_of(&judging->record);
    if (borrowed != NULL) {
        verdict_borrowed(finding, judging, borrowed);
        return;
    }
    struct text says = TEXT_EMPTY;
    take_record(finding, judging);
    finding->outcome = outcome_of(judgement, &judging->record);
    finding->compared = true;
    finding->measured = is_measured(judging, finding);
    finding->required = judgement->required;
    finding->found = judgement->found;
    finding->sense = judgement->sense;
    finding->note = note_of(judging, judgement);
    finding->duty = judgement->duty;
    /* A duty's own words say it better than "found yes". */
    if (judgement->required.kind != VALUE_YES_NO || finding->note == NULL)
        say_comparison(&says, judgement);
    if (finding->note != NULL)
        text_addf(&says, "%s%s", says.length == 0 ? "" : " ", finding->note);
    finding->says = finish_text(judging, &says);
}

/* The pointer of the missing fact, or of what a roof laid out from its footprint
 * lacks in its place; *field is that of the missing one before, of this after. */
static const char *asked_for(const struct judging *judging, const struct field **field)
{
    const struct fields *fields = &judging->book->fields;
    const char *missing = judging->record.missing_pointer;
    const char *asked = lay_out_asks(judging->job, fields, missing, judging->arena);
    const struct field *instead = asked == NULL ? NULL : spot_field(fields, asked);
    if (instead == NULL)
        return missing;
    *field = instead;
    return asked;
}

void verdict_open(struct finding *finding, struct judging *judging)
{
    const struct record *record = &judging->record;
    take_record(finding, judging);
    finding->outcome = OUTCOME_OPEN;
    const struct field *field = record->missing;
    if (field != NULL)
        finding->lacks = asked_for(judging, &field);
    if (field != NULL)
        finding->says = arena_format(judging->arena, "The job does not say %s: %s",
                                     finding->lacks, field->ask);
    else if (record->cannot_tell != NULL)
        finding->says = record->cannot_tell;
    else
        finding->says = "The rule could not tell.";
    if (finding->says == NULL)
        finding->says = "";
}

void verdict_not_applicable(struct finding *finding, struct judging *judging, const char *reason)
{
    const struct figure *borrowed = borrowed_of(&judging->record);
    if (let_off_by_borrowed(&judging->record)) {
        verdict_borrowed(finding, judging, borrowed);
        return;
    }
    take_record(finding, judging);
    finding->outcome = OUTCOME_NOT_APPLICABLE;
    finding->says = reason != NULL ? reason : "Does not apply to this job.";
    if (borrowed == NULL)
        return;
    finding->says = arena_format(judging->arena, "No such duty was found: %s.", borrowed->borrowed);
    if (finding->says == NULL)
        finding->says = "";
}

void verdict_dropped(struct finding *finding, struct judging *judging, const struct drop *drop)
{
    finding->outcome = OUTCOME_NOT_APPLICABLE;
    finding->says = arena_format(judging->arena, "Dropped by %s: %s.", drop->by, drop->reason);
    struct amended *amended = arena_alloc(judging->arena, sizeof(*amended));
    if (amended != NULL) {
        amended->by = drop->by;
        amended->from = (struct value){.kind = VALUE_TEXT, .text = "demanded"};
        amended->to = (struct value){.kind = VALUE_TEXT, .text = "not demanded"};
        finding->amended = amended;
    }
    if (finding->says == NULL)
        finding->says = "";
}

void verdict_given(struct finding *finding, struct judging *judging, const char *says)
{
    take_record(finding, judging);
    finding->outcome = OUTCOME_PASS;
    finding->says = says != NULL ? says : "";
}

void verdict_broken(struct finding *finding, struct judging *judging, const struct rule *rule,
                    const char *message)
{
    char place[32];
    take_record(finding, judging);
    finding->outcome = OUTCOME_BROKEN;
    snprintf(place, sizeof(place), ":%d", rule->line);
    finding->says = arena_format(judging->arena, "The rule itself erred (%s%s): %s", rule->file,
                                 place,
                                 message);
    if (finding->says == NULL)
        finding->says = "";
}
