/* verdict.c - see verdict.h. */
#include "judge/verdict.h"

#include "judge/judgement.h"
#include "judge/verdict_parts.h"

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

/* Is what lets the job off taken from a code that is not adopted here? A duty that such a
 * code leaves off is told apart: see verdict_not_applicable. */
static bool let_off_by_borrowed(const struct record *record)
{
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i]->borrowed != NULL && !is_off(&record->figures[i]->value))
            return true;
    return false;
}

/* What another's law says of the job is not told: it would read like a verdict. */
static void verdict_borrowed(struct finding *finding, struct judging *judging,
                             const struct figure *figure)
{
    verdict_take_record(finding, judging);
    finding->outcome = OUTCOME_OPEN;
    finding->ask = ASK_PLACE;
    finding->why |= WHY_PLACE;
    finding->says = arena_format(judging->arena,
                                 "What is asked for here was not established: %s. "
                                 "Ask the building department.",
                                 figure->borrowed);
    if (finding->says == NULL)
        finding->says = "";
}

/* Who would have to be asked whether this is asked for: the pages that tell it were
 * not read. NULL when what lets the job off is known. */
static const struct figure *let_off_by_unread(const struct record *record)
{
    for (size_t i = record->figure_count; i-- > 0;)
        if (record->figures[i]->unread && is_off(&record->figures[i]->value))
            return record->figures[i];
    return NULL;
}

static void verdict_unread(struct finding *finding, struct judging *judging,
                           const struct figure *figure)
{
    verdict_take_record(finding, judging);
    finding->outcome = OUTCOME_OPEN;
    finding->ask = ASK_PLACE;
    finding->why |= WHY_PLACE;
    finding->says = arena_format(judging->arena,
                                 "What this place asks was not read: its pages on "
                                 "%s. Ask the building department.",
                                 figure->pages);
    if (finding->says == NULL)
        finding->says = "";
}

/* A demand that no comparison looked at is not met by silence. */
static void verdict_not_held(struct finding *finding, struct judging *judging,
                             const struct figure *figure)
{
    verdict_take_record(finding, judging);
    finding->outcome = OUTCOME_OPEN;
    finding->ask = ASK_PLACE;
    finding->why |= WHY_PLACE;
    finding->says = arena_format(judging->arena,
                                 "%s demands more here than this rule looks at: "
                                 "hold the job against %s %s, or ask the building department.",
                                 figure->name, figure->cite.code, figure->cite.section);
    if (finding->says == NULL)
        finding->says = "";
}

void verdict_judged(struct finding *finding, struct judging *judging, const struct rule *rule,
                    const struct judgement *judgement, const struct dispute *dispute)
{
    const struct figure *borrowed = borrowed_of(&judging->record);
    if (borrowed != NULL) {
        verdict_borrowed(finding, judging, borrowed);
        return;
    }
    const struct figure *not_held = judgement_not_held(&judging->record);
    if (judgement->met && not_held != NULL) {
        verdict_not_held(finding, judging, not_held);
        return;
    }
    const struct surety surety = verdict_surety(judgement);
    struct text says = TEXT_EMPTY;
    verdict_take_record(finding, judging);
    verdict_take_judgement(finding, judging, judgement, dispute);
    if (judgement->met)
        verdict_decide_met(finding, judgement, &surety, dispute->disputed);
    else
        verdict_decide_unmet(finding, rule, &judging->record, &surety);
    verdict_by_place(finding);
    verdict_take_words(finding, judging, rule, judgement);
    finding->note = verdict_note(judging, finding, judgement, &surety, dispute);
    /* A duty's own words say it better than "found yes". */
    if (judgement->required.kind != VALUE_YES_NO || finding->note == NULL)
        verdict_say_comparison(&says, judgement);
    if (finding->note != NULL)
        /* note stands alone in reports that show the comparison as a table; says is the
         * whole in words. */
        text_addf(&says, "%s%s", says.length == 0 ? "" : " ", finding->note);
    finding->says = text_keep(&says, judging->arena);
}

void verdict_not_applicable(struct finding *finding, struct judging *judging, const char *reason)
{
    const struct figure *borrowed = borrowed_of(&judging->record);
    if (let_off_by_borrowed(&judging->record)) {
        verdict_borrowed(finding, judging, borrowed);
        return;
    }
    const struct figure *unread = let_off_by_unread(&judging->record);
    if (unread != NULL) {
        verdict_unread(finding, judging, unread);
        return;
    }
    verdict_take_record(finding, judging);
    if (verdict_open_by_place(finding, judging))
        return;
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
        /* A rule has no value: that it is demanded is what the ordinance changes. */
        amended->from = (struct value){.kind = VALUE_TEXT, .text = "demanded"};
        amended->to = (struct value){.kind = VALUE_TEXT, .text = "not demanded"};
        finding->amended = amended;
    }
    if (finding->says == NULL)
        finding->says = "";
}

void verdict_given(struct finding *finding, struct judging *judging, const char *says)
{
    verdict_take_record(finding, judging);
    finding->outcome = OUTCOME_PASS;
    finding->says = says != NULL ? says : "";
}

void verdict_broken(struct finding *finding, struct judging *judging, const char *what,
                    const char *file, int line, const char *message)
{
    verdict_take_record(finding, judging);
    finding->outcome = OUTCOME_BROKEN;
    finding->file = file;
    finding->line = line;
    finding->says = arena_format(judging->arena, "%s (%s:%d): %s", what, file, line, message);
    if (finding->says == NULL)
        finding->says = "";
}
