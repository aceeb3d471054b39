/* verdict_take.c - what a finding keeps of the record and of the judgement. */
#include "base/number.h"
#include "base/text.h"
#include "job/follows.h"
#include "judge/place_fact.h"
#include "judge/survey.h"
#include "judge/verdict_parts.h"

static bool same_cite(const struct cite *a, const struct cite *b)
{
    /* The section first: it tells most of them apart. */
    return a->status == b->status && text_same(a->section, b->section)
           && text_same(a->source, b->source) && text_same(a->code, b->code);
}

/* By which figure a fact follows that was read in a sister text only. Which it is goes by the
 * fact beside it, which no rule need have asked for: so this is not to be recalled. */
static void take_telling(struct read *read, struct judging *judging, const struct spot *spot)
{
    if (!origin_is_doubtful(spot->json) || spot->parent == NULL)
        return;
    const int index = follows_figure(&judging->book->fields, spot->field, spot->parent->json);
    judging->trail.unfit = true;
    if (index < 0)
        return;
    const struct figure *figure = &judging->book->profile->figures[index];
    read->known = figure->cite.status;
    read->figure = figure->name;
}

/* Of a batch a report writes once that a fact was read, and that it stands in a place of the
 * code. NULL where it is no use. */
static struct kept_piece *kept_piece_of(struct judging *judging, struct kept_piece **piece)
{
    if (*piece == NULL) {
        *piece = arena_alloc(judging->spots, sizeof(**piece));
        if (*piece != NULL)
            (*piece)->arena = judging->spots;
    }
    return *piece;
}

static struct kept_piece *kept_read_of(struct judging *judging, struct spot *spot)
{
    return judging->survey == NULL ? NULL : kept_piece_of(judging, &spot->told);
}

static struct kept_piece *kept_cite_of(struct judging *judging, const struct figure *figure)
{
    const struct profile *profile = judging->book->profile;
    struct survey *survey = judging->survey;
    if (survey == NULL)
        return NULL;
    if (survey->cites == NULL)
        survey->cites = arena_array(&survey->arena, profile->figure_count,
                                    sizeof(struct kept_piece *));
    return survey->cites == NULL
               ? NULL
               : kept_piece_of(judging, &survey->cites[figure - profile->figures]);
}

/* What the place says and the job denies, in words: the same for all that read it. */
static const char *denied_of(struct judging *judging, const struct place_fact *fact)
{
    const struct profile *profile = judging->book->profile;
    if (judging->denied == NULL)
        judging->denied = arena_array(judging->arena, profile->fact_count, sizeof(const char *));
    if (judging->denied == NULL)
        return NULL;
    const char **told = &judging->denied[fact - profile->facts];
    if (*told == NULL)
        *told = place_fact_told(judging->book, judging->job, fact, judging->arena);
    return *told;
}

/* What it holds is told, whether or not the rule asked for it. */
static void tell_value(struct judging *judging, struct spot *spot, unsigned known)
{
    struct trail *trail = &judging->trail;
    if (trail->on && trail->known[known] == spot)
        trail_note(trail, trail_to(STEP_VALUE, known, NULL, 0), spot);
    else
        trail->unfit |= trail->on;
}

/* With what the place has to do with it. known: among the places of the trail, if steps are
 * noted. */
static struct read read_of(struct judging *judging, struct spot *spot, unsigned known)
{
    const cJSON *node = spot->json;
    struct read read = {.at = spot_pointer(judging->spots, spot),
                        .from = origin_of(node),
                        .kept = kept_read_of(judging, spot)};
    const bool denied = origin_is_denied(node);
    if (denied)
        tell_value(judging, spot, known);
    const struct place_fact *fact = denied || read.from == ORIGIN_PLACE
                                        ? place_fact_of(judging->book, spot->field)
                                        : NULL;
    if (fact != NULL && denied)
        read.denied = denied_of(judging, fact);
    else if (fact != NULL)
        read.known = fact->cite.status;
    take_telling(&read, judging, spot);
    return read;
}

/* The facts read, each with where the job has it from. */
void verdict_take_reads(struct finding *finding, struct judging *judging)
{
    const struct record *record = &judging->record;
    struct read *reads = arena_room(judging->arena, record->read_count + 1, sizeof(*reads));
    if (reads == NULL)
        return;
    for (size_t i = 0; i < record->read_count; i++)
        reads[i] = read_of(judging, record->reads[i],
                           record->read_known == NULL ? 0 : record->read_known[i]);
    finding->reads = reads;
    finding->read_count = record->read_count;
}

void verdict_take_record(struct finding *finding, struct judging *judging)
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
    struct kept_piece **kept = arena_array(judging->arena, record->figure_count + 1, sizeof(*kept));
    if (cites == NULL || kept == NULL)
        return;
    for (size_t i = 0; i < record->figure_count; i++) {
        const struct figure *figure = record->figures[i];
        bool told = false;
        for (size_t j = 0; j < finding->cite_count; j++)
            told = told || same_cite(&cites[j], &figure->cite);
        if (!told) {
            kept[finding->cite_count] = kept_cite_of(judging, figure);
            cites[finding->cite_count++] = figure->cite;
        }
        if (finding->amended == NULL)
            finding->amended = figure->amended;
    }
    finding->cites = cites;
    finding->kept_cites = kept;
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

void verdict_take_demand(struct finding *finding, struct judging *judging,
                         const struct judgement *judgement)
{
    finding->required = judgement->required;
    finding->sense = judgement->sense;
    finding->also = judgement->also;
    finding->also_sense = judgement->also_sense;
    take_makers(finding, judging, judgement);
    finding->duty = judgement->duty;
}

void verdict_take_judgement(struct finding *finding, struct judging *judging,
                            const struct judgement *judgement, const struct dispute *dispute)
{
    verdict_take_demand(finding, judging, judgement);
    finding->compared = true;
    finding->measured = is_measured(judging);
    finding->found = judgement->found;
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
        return cJSON_IsString(fact) && text_same(fact->valuestring, found->text);
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
