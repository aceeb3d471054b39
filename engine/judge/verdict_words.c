/* verdict_words.c - a finding in words. */
#include "base/number.h"
#include "base/text.h"
#include "judge/verdict_parts.h"

/* With a blank behind, to stand before the value; none for equals. */
static const char *sense_words(enum sense sense)
{
    return sense == SENSE_AT_LEAST  ? "at least "
           : sense == SENSE_AT_MOST ? "at most "
           : sense == SENSE_ONE_OF  ? "one of "
           : sense == SENSE_NONE_OF ? "none of "
                                    : "";
}

void verdict_say_comparison(struct text *out, const struct judgement *judgement)
{
    text_add(out, "Found ");
    value_add(out, &judgement->found);
    text_add(out, "; demanded ");
    text_add(out, sense_words(judgement->sense));
    value_add(out, &judgement->required);
    if (judgement->also.kind != VALUE_NONE) {
        text_addf(out, " and %s", sense_words(judgement->also_sense));
        value_add(out, &judgement->also);
    }
    text_add(out, ".");
}

/* Of several the first: one doubt is enough to ask. */
static const char *unsure_of(const struct judgement *judgement)
{
    for (size_t i = 0; i < judgement->maker_count; i++)
        if (judgement->makers[i]->unsure != NULL)
            return judgement->makers[i]->unsure;
    return NULL;
}

/* Stands first: whoever reads no further must know that it may not hold. */
static void say_first(struct text *out, const struct finding *finding,
                      const struct judgement *judgement, const struct surety *surety)
{
    if (finding->met != MET_NO || !(finding->why & WHY_UNCONFIRMED))
        return;
    if (surety->unsure)
        text_addf(out, " Not certain that this binds here: %s.", unsure_of(judgement));
    if (surety->memory && !surety->read && !surety->parallel)
        text_add(out, " Unconfirmed: the figure is recalled from memory, not read.");
}

/* The figures by name that were not read: "Unconfirmed: a, b are recalled from memory,
 * not read." */
static void say_unconfirmed(struct text *out, const struct judgement *judgement, enum status status,
                            const char *words)
{
    size_t count = 0;
    for (size_t i = 0; i < judgement->maker_count; i++)
        if (judgement->makers[i]->cite.status == status)
            text_addf(out, "%s%s", count++ == 0 ? " Unconfirmed: " : ", ",
                      judgement->makers[i]->name);
    if (count > 0)
        text_addf(out, " %s %s.", count == 1 ? "is" : "are", words);
}

/* Each way in which the sources disagree, once, as a sentence with this lead. */
static void add_disputes(struct text *out, const struct record *record, const char *lead)
{
    for (size_t i = 0; i < record->figure_count; i++) {
        const char *disputed = record->figures[i]->disputed;
        bool said = disputed == NULL;
        for (size_t j = 0; j < i && !said; j++)
            said = text_same(record->figures[j]->disputed, disputed);
        if (!said)
            text_addf(out, "%s%s%s%s", lead[0] == '\0' && out->length > 0 ? "; " : "", lead,
                      disputed, lead[0] == '\0' ? "" : ".");
    }
}

static void say_dispute(struct text *out, const struct finding *finding,
                        const struct record *record, const struct dispute *dispute)
{
    add_disputes(out, record, " Sources disagree: ");
    if (finding->met != MET_YES || dispute->looked == 0)
        return;
    if (!dispute->disputed) {
        text_add(out, " It is met either way.");
    } else if (dispute->rival.kind != VALUE_NONE) {
        text_addf(out, " The other reading demands %s", sense_words(dispute->sense));
        value_add(out, &dispute->rival);
        text_add(out, ".");
    }
}

const char *verdict_note(struct judging *judging, const struct finding *finding,
                         const struct judgement *judgement, const struct surety *surety,
                         const struct dispute *dispute)
{
    struct text note = TEXT_EMPTY;
    say_first(&note, finding, judgement, surety);
    if (judgement->say != NULL)
        text_addf(&note, " %s", judgement->say);
    if (judgement->warn != NULL)
        text_addf(&note, " %s", judgement->warn);
    if (finding->met == MET_YES) {
        say_unconfirmed(&note, judgement, STATUS_MEMORY, "recalled from memory, not read");
        say_unconfirmed(&note, judgement, STATUS_PARALLEL,
                        "read in a sister code, not in this one");
    }
    if (finding->why & WHY_PRACTICE)
        text_add(&note, " This is common practice, not code.");
    say_dispute(&note, finding, &judging->record, dispute);
    verdict_say_place(&note, finding);
    const char *text = text_keep(&note, judging->arena);
    /* Every sentence begins with a blank: the first one is left off. */
    return text[0] == '\0' ? NULL : text + 1;
}

/* The rule's own sentences, apart from what the engine says of the figures. */
static const char *remark_of(struct judging *judging, const struct judgement *judgement)
{
    if (judgement->say == NULL || judgement->warn == NULL)
        return judgement->say != NULL ? judgement->say : judgement->warn;
    const char *both = arena_format(judging->arena, "%s %s", judgement->say, judgement->warn);
    return both == NULL ? "" : both;
}

void verdict_take_words(struct finding *finding, struct judging *judging, const struct rule *rule,
                        const struct judgement *judgement)
{
    const struct record *record = &judging->record;
    struct text disagree = TEXT_EMPTY;
    add_disputes(&disagree, record, "");
    finding->remark = remark_of(judging, judgement);
    if (verdict_denied(finding) != NULL)
        text_addf(&disagree, "%s%s", disagree.length > 0 ? "; " : "", verdict_denied(finding));
    if (disagree.length > 0 || disagree.failed)
        finding->disagree = text_keep(&disagree, judging->arena);
    if (finding->met != MET_NO)
        return;
    finding->unsure = unsure_of(judgement);
    finding->cause = rule->cause;
    finding->wanting = verdict_wanting(judging, finding);
}
