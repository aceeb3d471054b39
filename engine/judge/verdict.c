#include "judge/verdict.h"

#include "base/number.h"
#include "base/text.h"
#include "job/lay_out.h"
#include "job/path.h"
#include "job/shop.h"
#include "job/stage.h"
#include "judge/judgement.h"
#include "judge/place_fact.h"

#include <stdio.h>
#include <string.h>

/* Read in its own code, or the invented place's own: nothing to confirm. */
static bool is_well_known(const struct figure *figure)
{
    return figure->cite.status == STATUS_SEEN || figure->cite.status == STATUS_INVENTED;
}

static bool same_text(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

static bool same_cite(const struct cite *a, const struct cite *b)
{
    return same_text(a->code, b->code) && same_text(a->section, b->section)
           && a->status == b->status && same_text(a->source, b->source);
}

/* With what the place has to do with it. */
static struct read read_of(struct judging *judging, struct spot *spot)
{
    const cJSON *node = spot->json;
    struct read read = {.at = spot_pointer(judging->arena, spot), .from = origin_of(node)};
    const bool denied = origin_is_denied(node);
    judging->trail.unfit |= denied; /* both values are told */
    const struct place_fact *fact = denied || read.from == ORIGIN_PLACE
                                        ? place_fact_at(judging->book, read.at)
                                        : NULL;
    if (fact != NULL && denied)
        read.denied = place_fact_told(judging->book, judging->job, fact, judging->arena);
    else if (fact != NULL)
        read.known = fact->cite.status;
    return read;
}

/* The facts read, each with where the job has it from. */
void verdict_take_reads(struct finding *finding, struct judging *judging)
{
    const struct record *record = &judging->record;
    struct read *reads = arena_array(judging->arena, record->read_count + 1, sizeof(*reads));
    if (reads == NULL)
        return;
    for (size_t i = 0; i < record->read_count; i++)
        reads[i] = read_of(judging, record->reads[i]);
    finding->reads = reads;
    finding->read_count = record->read_count;
}

/* Copies what the record holds into the finding. */
static void take_record(struct finding *finding, struct judging *judging)
{
    const struct record *record = &judging->record;
    verdict_take_reads(finding, judging);
    finding->work = record->work.items;
    finding->work_count = record->work.count;
    finding->figures = record->figures;
    finding->figure_count = record->figure_count;
    /* Figures often stand in one place of the code: it is cited once. The first that an
     * ordinance moved is told of. */
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

/* With a blank behind, to stand before the value; none for equals. */
static const char *sense_words(enum sense sense)
{
    return sense == SENSE_AT_LEAST  ? "at least "
           : sense == SENSE_AT_MOST ? "at most "
           : sense == SENSE_ONE_OF  ? "one of "
           : sense == SENSE_NONE_OF ? "none of "
                                    : "";
}

static void say_comparison(struct text *out, const struct judgement *judgement)
{
    text_add(out, "Found ");
    add_value(out, &judgement->found);
    text_add(out, "; demanded ");
    text_add(out, sense_words(judgement->sense));
    add_value(out, &judgement->required);
    if (judgement->also.kind != VALUE_NONE) {
        text_addf(out, " and %s", sense_words(judgement->also_sense));
        add_value(out, &judgement->also);
    }
    text_add(out, ".");
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

/* Is what lets the job off taken from a code that is not adopted here? A duty that such a
 * code leaves off is told apart: see verdict_not_applicable. */
static bool let_off_by_borrowed(const struct record *record)
{
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i]->borrowed != NULL && !is_off(&record->figures[i]->value))
            return true;
    return false;
}

/* Outcomes ----------------------------------------------------------------------- */

/* How sure the figures are that made the demanded value. */
struct surety {
    bool read;     /* one was read in its own code, or is the invented place's own */
    bool parallel; /* one was read in a sister text only */
    bool memory;   /* one is recalled */
    bool practice; /* one is common practice */
    bool unsure;   /* one is of a book that may not bind here */
    bool draft;    /* all are asked by a draft only */
};

/* A duty that a code has switched on binds, be its measure common practice. */
static bool is_switched_on(const struct record *record)
{
    for (size_t i = 0; i < record->figure_count; i++) {
        const struct figure *figure = record->figures[i];
        if (figure->value.kind == VALUE_YES_NO && figure->value.yes && figure->draft == NULL
            && figure->cite.status != STATUS_PRACTICE)
            return true;
    }
    return false;
}

/* Every maker counts: one that was not read makes the demand unsure. Only a draft must be
 * all there is. */
static struct surety surety_of(const struct judgement *judgement)
{
    struct surety surety = {.draft = judgement->maker_count > 0};
    for (size_t i = 0; i < judgement->maker_count; i++) {
        const struct figure *maker = judgement->makers[i];
        surety.read |= is_well_known(maker);
        surety.parallel |= maker->cite.status == STATUS_PARALLEL;
        /* Without a status nothing is known of where it stands: no better than memory. */
        surety.memory |= maker->cite.status == STATUS_MEMORY || maker->cite.status == STATUS_NONE;
        surety.practice |= maker->cite.status == STATUS_PRACTICE;
        surety.unsure |= maker->unsure != NULL;
        surety.draft &= maker->draft != NULL;
    }
    return surety;
}

/* Met: a pass, unless a figure that made the demand was not read, another source
 * would have it otherwise, or the rule calls it risky. */
static void decide_met(struct finding *finding, const struct judgement *judgement,
                       const struct surety *surety, bool disputed)
{
    finding->met = MET_YES;
    if (surety->practice)
        finding->why |= WHY_PRACTICE;
    if (surety->memory || surety->parallel)
        finding->why |= WHY_UNCONFIRMED;
    if (disputed)
        finding->why |= WHY_DISPUTED;
    if (judgement->warn != NULL)
        finding->why |= WHY_ADVICE;
    /* Practice that is met is no cause for a warning. */
    finding->outcome = (finding->why & ~(unsigned)WHY_PRACTICE) == 0 ? OUTCOME_PASS : OUTCOME_WARN;
}

/* Not met: a fail, unless nothing but practice, a draft or advice asks for it. One
 * whose every code figure is recalled, or whose book may not bind here, says so. */
static void decide_unmet(struct finding *finding, const struct rule *rule,
                         const struct record *record, const struct surety *surety)
{
    const bool code = surety->read || surety->parallel || surety->memory || is_switched_on(record);
    finding->met = MET_NO;
    finding->outcome = OUTCOME_WARN;
    if (rule->advice || surety->draft) {
        finding->why |= WHY_ADVICE;
    } else if (!code) {
        finding->why |= WHY_PRACTICE;
    } else {
        finding->outcome = OUTCOME_FAIL;
        if (surety->unsure || (surety->memory && !surety->read && !surety->parallel))
            finding->why |= WHY_UNCONFIRMED;
    }
}

/* The place's facts ---------------------------------------------------------------- */

/* The first fact read that the place states otherwise, in words; or NULL. */
static const char *denied_of(const struct finding *finding)
{
    const char *denied = NULL;
    for (size_t i = finding->read_count; i-- > 0;)
        if (finding->reads[i].denied != NULL)
            denied = finding->reads[i].denied;
    return denied;
}

/* The first fact of the place that is known like this; or NULL. */
static const struct read *read_known(const struct finding *finding, enum status known)
{
    for (size_t i = 0; i < finding->read_count; i++)
        if (finding->reads[i].from == ORIGIN_PLACE && finding->reads[i].known == known)
            return &finding->reads[i];
    return NULL;
}

/* A pass is no surer than the facts of the place that it rests on, nor than the job's word
 * on what the place states otherwise. */
static void decide_by_place(struct finding *finding)
{
    const bool recalled = read_known(finding, STATUS_MEMORY) != NULL
                          || read_known(finding, STATUS_PARALLEL) != NULL;
    const bool denied = denied_of(finding) != NULL;
    finding->why |= (recalled ? WHY_UNCONFIRMED : 0u) | (denied ? WHY_DISPUTED : 0u);
    if ((recalled || denied) && finding->outcome == OUTCOME_PASS)
        finding->outcome = OUTCOME_WARN;
}

/* A silence that rests on such a fact is none. True when the finding is open for it. */
static bool is_open_by_place(struct finding *finding, struct judging *judging)
{
    const char *denied = denied_of(finding);
    const struct read *recalled = read_known(finding, STATUS_MEMORY);
    if (denied == NULL && recalled == NULL)
        return false;
    finding->outcome = OUTCOME_OPEN;
    finding->ask = ASK_PLACE;
    finding->why |= WHY_PLACE | (denied != NULL ? WHY_DISPUTED : WHY_UNCONFIRMED);
    finding->says = denied != NULL
                        ? arena_format(judging->arena,
                                       "Whether this is asked for depends on which is right: %s. "
                                       "Ask the building department.",
                                       denied)
                        : arena_format(judging->arena,
                                       "What lets this off was recalled of the place, not read: "
                                       "%s. Ask the building department.",
                                       recalled->at);
    if (finding->says == NULL)
        finding->says = "";
    return true;
}

static void say_place(struct text *out, const struct finding *finding)
{
    const struct read *recalled = read_known(finding, STATUS_MEMORY);
    const struct read *parallel = read_known(finding, STATUS_PARALLEL);
    const char *denied = denied_of(finding);
    if (recalled != NULL)
        text_addf(out, " Unconfirmed: the place's %s is recalled from memory, not read.",
                  recalled->at);
    if (parallel != NULL)
        text_addf(out, " Unconfirmed: the place's %s was read in a sister text.", parallel->at);
    if (denied != NULL)
        text_addf(out, " By the job's own word; at %s.", denied);
}

/* Words -------------------------------------------------------------------------- */

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
            said = same_text(record->figures[j]->disputed, disputed);
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
        add_value(out, &dispute->rival);
        text_add(out, ".");
    }
}

/* Takes the text over. "" where memory ran out; the arena then tells. */
static const char *finish_text(struct judging *judging, struct text *text)
{
    const char *kept = text->failed ? NULL : arena_copy(judging->arena, text_string(text));
    if (text->failed)
        judging->arena->failed = true;
    text_free(text);
    return kept == NULL ? "" : kept;
}

/* What goes beyond the comparison itself; NULL when there is nothing. */
static const char *note_of(struct judging *judging, const struct finding *finding,
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
    say_place(&note, finding);
    const char *text = finish_text(judging, &note);
    /* Every sentence begins with a blank: the first one is left off. */
    return text[0] == '\0' ? NULL : text + 1;
}

/* What another's law says of the job is not told: it would read like a verdict. */
static void verdict_borrowed(struct finding *finding, struct judging *judging,
                             const struct figure *figure)
{
    take_record(finding, judging);
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
    take_record(finding, judging);
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
    take_record(finding, judging);
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

/* Was something read that only whoever stands on the roof can know? */
static bool is_measured(const struct judging *judging)
{
    for (size_t i = 0; i < judging->record.read_count; i++)
        if (judging->record.reads[i]->field->measured)
            return true;
    return false;
}

static void take_makers(struct finding *finding, struct judging *judging,
                        const struct judgement *judgement)
{
    struct maker *makers = arena_array(judging->arena, judgement->maker_count + 1, sizeof(*makers));
    if (makers == NULL)
        return;
    for (size_t i = 0; i < judgement->maker_count; i++)
        makers[i] = (struct maker){judgement->makers[i]->name, &judgement->makers[i]->cite,
                                   &judgement->makers[i]->value, judgement->makers[i]->sense};
    finding->makers = makers;
    finding->maker_count = judgement->maker_count;
}

/* What the judgement compared. */
static void take_judgement(struct finding *finding, struct judging *judging,
                           const struct judgement *judgement, const struct dispute *dispute)
{
    finding->compared = true;
    finding->measured = is_measured(judging);
    finding->required = judgement->required;
    finding->found = judgement->found;
    finding->sense = judgement->sense;
    finding->also = judgement->also;
    finding->also_sense = judgement->also_sense;
    take_makers(finding, judging, judgement);
    finding->duty = judgement->duty;
    if (dispute->disputed) {
        finding->rival = dispute->rival;
        finding->rival_sense = dispute->sense;
    }
}

/* Is the value found this fact, or one of its list? */
static bool is_value_at(const struct spot *spot, const struct value *found)
{
    const cJSON *fact = spot->json, *one = NULL;
    if (found->kind == VALUE_TEXT)
        return cJSON_IsString(fact) && same_text(fact->valuestring, found->text);
    if (found->kind != VALUE_NUMBER)
        return false;
    /* Without a unit: the very number, give or take rounding. */
    bool among = cJSON_IsNumber(fact) && number_equals(fact->valuedouble, found->number, NULL);
    cJSON_ArrayForEach(one, fact)
        among = among
                || (cJSON_IsNumber(one) && number_equals(one->valuedouble, found->number, NULL));
    return among;
}

/* What was read and found wanting: the only fact that has the value found. Where two have
 * it neither is named: it could be the wrong one. */
const char *verdict_wanting(const struct judging *judging, const struct finding *finding)
{
    const char *wanting = NULL;
    for (size_t i = 0; i < finding->read_count; i++) {
        if (!is_value_at(judging->record.reads[i], &finding->found))
            continue;
        if (wanting != NULL)
            return NULL;
        wanting = finding->reads[i].at;
    }
    return wanting;
}

/* The rule's own sentences, apart from what the engine says of the figures. */
static const char *remark_of(struct judging *judging, const struct judgement *judgement)
{
    if (judgement->say == NULL || judgement->warn == NULL)
        return judgement->say != NULL ? judgement->say : judgement->warn;
    const char *both = arena_format(judging->arena, "%s %s", judgement->say, judgement->warn);
    return both == NULL ? "" : both;
}

/* What reports tell apart from the comparison, and from one another. */
static void take_words(struct finding *finding, struct judging *judging, const struct rule *rule,
                       const struct judgement *judgement)
{
    const struct record *record = &judging->record;
    struct text disagree = TEXT_EMPTY;
    add_disputes(&disagree, record, "");
    finding->remark = remark_of(judging, judgement);
    if (denied_of(finding) != NULL)
        text_addf(&disagree, "%s%s", disagree.length > 0 ? "; " : "", denied_of(finding));
    if (disagree.length > 0 || disagree.failed)
        finding->disagree = finish_text(judging, &disagree);
    if (finding->met != MET_NO)
        return;
    finding->unsure = unsure_of(judgement);
    finding->cause = rule->cause;
    finding->wanting = verdict_wanting(judging, finding);
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
    const struct surety surety = surety_of(judgement);
    struct text says = TEXT_EMPTY;
    take_record(finding, judging);
    take_judgement(finding, judging, judgement, dispute);
    if (judgement->met)
        decide_met(finding, judgement, &surety, dispute->disputed);
    else
        decide_unmet(finding, rule, &judging->record, &surety);
    decide_by_place(finding);
    take_words(finding, judging, rule, judgement);
    finding->note = note_of(judging, finding, judgement, &surety, dispute);
    /* A duty's own words say it better than "found yes". */
    if (judgement->required.kind != VALUE_YES_NO || finding->note == NULL)
        say_comparison(&says, judgement);
    if (finding->note != NULL)
        /* note stands alone in reports that show the comparison as a table; says is the
         * whole in words. */
        text_addf(&says, "%s%s", says.length == 0 ? "" : " ", finding->note);
    finding->says = finish_text(judging, &says);
}

/* The pointer of the missing fact, or of what a roof laid out from its footprint
 * lacks in its place: there is no plane yet that could be measured. *field is that of
 * the missing one before, of this after. */
static const char *asked_for(const struct judging *judging, const struct field **field)
{
    const struct fields *fields = &judging->book->fields;
    const char *missing = judging->record.missing_pointer;
    const char *asked = shop_asks(judging->job, missing, judging->arena);
    if (asked == NULL)
        asked = lay_out_asks(judging->job, fields, missing, judging->arena);
    const struct field *instead = asked == NULL ? NULL : path_field(fields, asked);
    if (instead == NULL)
        return missing;
    *field = instead;
    return asked;
}

/* The stage at which the fact can be known has not come. */
static bool is_known_later(const struct field *field, enum stage reached)
{
    return field->stage != NULL && stage_by_word(field->stage) > (int)reached;
}

static const struct lacking *lacking_of(struct judging *judging)
{
    const struct record *record = &judging->record;
    const char *missing = record->missing_pointer;
    size_t place = 0;
    for (const char *c = missing; *c != '\0'; c++)
        place = place * 31 + (unsigned char)*c;
    struct lacking *lacking = &judging->lacking[place % LACKING_KEPT];
    if (lacking->missing != NULL && lacking->field == record->missing
        && strcmp(lacking->missing, missing) == 0)
        return lacking;
    const struct field *asked = record->missing;
    const char *lacks = asked_for(judging, &asked);
    *lacking = (struct lacking){
        missing, record->missing, lacks, asked,
        arena_format(judging->arena, "The job does not say %s: %s", lacks, asked->ask)};
    return lacking;
}

void verdict_open(struct finding *finding, struct judging *judging)
{
    const struct record *record = &judging->record;
    take_record(finding, judging);
    finding->outcome = OUTCOME_OPEN;
    const struct lacking *lacking = record->missing == NULL ? NULL : lacking_of(judging);
    const struct field *field = lacking == NULL ? NULL : lacking->asked;
    finding->why |= record->ask_place ? WHY_PLACE : 0u;
    if (lacking != NULL)
        finding->lacks = lacking->lacks;
    finding->ask = record->ask_place ? ASK_PLACE
                   /* Not yet, rather than not at all: nobody need look for it today. */
                   : field != NULL && is_known_later(field, judging->reached) ? ASK_LATER
                                                                              : ASK_JOB;
    if (lacking != NULL)
        finding->says = lacking->says;
    /* A fact that is lacking is worth more than the rule's words: it says what to do. */
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
    const struct figure *unread = let_off_by_unread(&judging->record);
    if (unread != NULL) {
        verdict_unread(finding, judging, unread);
        return;
    }
    take_record(finding, judging);
    if (is_open_by_place(finding, judging))
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
    take_record(finding, judging);
    finding->outcome = OUTCOME_PASS;
    finding->says = says != NULL ? says : "";
}

void verdict_broken(struct finding *finding, struct judging *judging, const char *what,
                    const char *file, int line, const char *message)
{
    take_record(finding, judging);
    finding->outcome = OUTCOME_BROKEN;
    finding->file = file;
    finding->line = line;
    finding->says = arena_format(judging->arena, "%s (%s:%d): %s", what, file, line, message);
    if (finding->says == NULL)
        finding->says = "";
}
