#include "report/digest.h"

#include "base/text.h"
#include "report/story.h"

#include <stdlib.h>
#include <string.h>

/* Which part a finding stands in --------------------------------------------------- */

/* By who can close it: the place, a later visit, or whoever answers. */
static enum part part_of_open(const struct finding *finding)
{
    if (finding->ask == ASK_PLACE)
        return PART_UNKNOWN;
    if (finding->ask == ASK_LATER)
        return PART_LATER;
    return finding->asked ? PART_ASKED : PART_UNASKED;
}

enum part digest_part(const struct finding *finding)
{
    switch (finding->outcome) {
    case OUTCOME_BROKEN:
        return PART_BROKEN;
    case OUTCOME_FAIL:
        return PART_FIX;
    case OUTCOME_WARN: /* met, and only the figure is unconfirmed: nothing to look at */
        return finding->met != MET_YES || (finding->why & (WHY_DISPUTED | WHY_ADVICE)) != 0
                   ? PART_LOOK
                   : PART_MET;
    case OUTCOME_OPEN:
        return part_of_open(finding);
    case OUTCOME_PASS:
        return PART_MET;
    case OUTCOME_NOT_APPLICABLE:
    case OUTCOME_COUNT:
        break;
    }
    return PART_NONE;
}

/* How much room a part needs at most: paragraphs are fewer than findings. */
static size_t count_of(const struct result *result, enum part part)
{
    size_t count = 0;
    for (size_t i = 0; i < result->finding_count; i++)
        count += digest_part(&result->findings[i]) == part;
    return count;
}

/* What is told together ------------------------------------------------------------- */

/* In order too: sets come from figures and jobs as they were written. */
static bool same_set(const struct value *a, const struct value *b)
{
    bool same = a->set_count == b->set_count;
    for (size_t i = 0; same && i < a->set_count; i++)
        same = text_same(a->set[i], b->set[i]);
    return same;
}

/* Exactly: what prints alike but differs is two values here. */
static bool same_value(const struct value *a, const struct value *b)
{
    if (a->kind != b->kind || !text_same(a->unit, b->unit))
        return false;
    switch (a->kind) {
    case VALUE_NUMBER:
        return !(a->number < b->number) && !(a->number > b->number);
    case VALUE_YES_NO:
        return a->yes == b->yes;
    case VALUE_TEXT:
        return text_same(a->text, b->text);
    case VALUE_SET:
        return same_set(a, b);
    case VALUE_NONE:
        break;
    }
    return true;
}

/* Under every reading: a second bound or a rival source that differs is another demand. */
static bool same_demand(const struct finding *a, const struct finding *b)
{
    return a->compared == b->compared && a->sense == b->sense
           && same_value(&a->required, &b->required) && a->also_sense == b->also_sense
           && same_value(&a->also, &b->also) && same_value(&a->rival, &b->rival);
}

/* Nothing different but the place and what was found there. */
bool digest_is_alike(const struct finding *a, const struct finding *b)
{
    return text_same(a->rule, b->rule) && a->outcome == b->outcome && a->why == b->why
           && same_demand(a, b) && text_same(a->mend, b->mend) && text_same(a->remark, b->remark)
           && text_same(a->disagree, b->disagree) && text_same(a->unsure, b->unsure)
           && (a->compared || text_same(a->says, b->says));
}

/* Not met in the same place, and for the same reason: the rules say so, or it is the
 * same fact. Or disputed in the same words. */
static bool is_of_one_cause(const struct finding *a, const struct finding *b)
{
    if (a->met == MET_YES && b->met == MET_YES)
        return (a->why & b->why & WHY_DISPUTED) != 0 && a->disagree != NULL
               && text_same(a->disagree, b->disagree);
    if (a->met != MET_NO || b->met != MET_NO || !text_same(a->where, b->where))
        return false;
    return (a->cause != NULL && text_same(a->cause, b->cause))
           || (a->wanting != NULL && text_same(a->wanting, b->wanting));
}

/* Any of the paragraph's findings may share the cause. */
static bool is_of_paragraph(const struct paragraph *paragraph, const struct finding *finding)
{
    for (size_t i = 0; i < paragraph->count; i++)
        if (is_of_one_cause(paragraph->findings[i], finding))
            return true;
    return false;
}

/* A list that holds count items, with room for one more; NULL when out of memory.
 * Lists double: the room runs out when the count is a power of two. */
static void *room_for_one(struct arena *arena, void *items, size_t count, size_t size)
{
    if (count != 0 && (count & (count - 1)) != 0)
        return items;
    void *bigger = arena_array(arena, count == 0 ? 1 : 2 * count, size);
    if (bigger != NULL && count > 0)
        memcpy(bigger, items, count * size);
    return bigger;
}

/* Out of memory leaves the list as it was; the arena remembers it. */
static void add_finding(struct arena *arena, const struct finding ***list, size_t *count,
                        const struct finding *finding)
{
    const struct finding **bigger = room_for_one(arena, *list, *count, sizeof(*bigger));
    if (bigger == NULL)
        return;
    *list = bigger;
    (*list)[(*count)++] = finding;
}

/* The finding's own paragraph, or NULL for a new one. */
static struct paragraph *paragraph_for(struct finding_blocks *blocks, const struct finding *finding)
{
    for (size_t i = 0; i < blocks->count; i++)
        for (size_t j = 0; j < blocks->items[i].count; j++)
            if (digest_is_alike(blocks->items[i].paragraphs[j].findings[0], finding))
                return &blocks->items[i].paragraphs[j];
    return NULL;
}

/* A block holds paragraphs of one cause. A finding joins the first block that shares a
 * cause with it. */
static struct finding_block *block_for(struct finding_blocks *blocks, const struct finding *finding)
{
    for (size_t i = 0; i < blocks->count; i++)
        for (size_t j = 0; j < blocks->items[i].count; j++)
            if (is_of_paragraph(&blocks->items[i].paragraphs[j], finding))
                return &blocks->items[i];
    return &blocks->items[blocks->count++];
}

/* NULL when out of memory; the block stays as it was. */
static struct paragraph *new_paragraph(struct arena *arena, struct finding_block *block)
{
    struct paragraph *bigger = room_for_one(arena, block->paragraphs, block->count,
                                            sizeof(*bigger));
    if (bigger == NULL)
        return NULL;
    block->paragraphs = bigger;
    block->paragraphs[block->count] = (struct paragraph){0};
    return &block->paragraphs[block->count++];
}

static void add_to_blocks(struct arena *arena, struct finding_blocks *blocks,
                          const struct finding *finding)
{
    struct paragraph *paragraph = paragraph_for(blocks, finding);
    if (paragraph == NULL)
        paragraph = new_paragraph(arena, block_for(blocks, finding));
    if (paragraph != NULL)
        add_finding(arena, &paragraph->findings, &paragraph->count, finding);
    blocks->findings++;
}

/* The worst first: what is not met, then what sources dispute, then what is only remarked. */
static enum look_why rank_of(const struct finding *finding)
{
    return finding->met != MET_YES              ? LOOK_NOT_MET
           : (finding->why & WHY_DISPUTED) != 0 ? LOOK_DISPUTED
                                                : LOOK_REMARK;
}

static void sort_blocks(const struct result *result, struct digest *digest,
                        struct finding_blocks *blocks, enum part part)
{
    blocks->items = arena_array(&digest->arena, count_of(result, part) + 1, sizeof(*blocks->items));
    if (blocks->items == NULL)
        return;
    /* By rank, then as the findings stand. */
    for (enum look_why rank = 0; rank < LOOK_COUNT; rank++)
        for (size_t i = 0; i < result->finding_count && !digest->arena.failed; i++) {
            const struct finding *finding = &result->findings[i];
            if (digest_part(finding) != part || rank_of(finding) != rank)
                continue;
            add_to_blocks(&digest->arena, blocks, finding);
            blocks->ranked[rank]++;
        }
}

/* What is open or broken --------------------------------------------------------------- */

/* Those that say the same wait for the same. */
static struct pending *pending_for(struct pendings *pendings, const struct finding *finding)
{
    for (size_t i = 0; i < pendings->count; i++)
        if (text_same(pendings->items[i].says, finding->says))
            return &pendings->items[i];
    struct pending *fresh = &pendings->items[pendings->count++];
    fresh->says = finding->says;
    return fresh;
}

static void sort_pendings(const struct result *result, struct digest *digest,
                          struct pendings *pendings, enum part part)
{
    pendings->items = arena_array(&digest->arena, count_of(result, part) + 1,
                                  sizeof(*pendings->items));
    for (size_t i = 0; i < result->finding_count && !digest->arena.failed; i++) {
        const struct finding *finding = &result->findings[i];
        if (digest_part(finding) != part)
            continue;
        struct pending *pending = pending_for(pendings, finding);
        add_finding(&digest->arena, &pending->findings, &pending->count, finding);
        pendings->findings++;
    }
}

/* Questions are told by the result itself (asked.h), what is later only by its number. */
static void count_open(const struct result *result, struct digest *digest)
{
    digest->asked = count_of(result, PART_ASKED);
    digest->later = count_of(result, PART_LATER);
    for (size_t i = 0; i < result->finding_count; i++)
        if (digest_part(&result->findings[i]) == PART_LATER)
            digest->later_by_stage[result->findings[i].stage]++;
}

/* What is met ---------------------------------------------------------------------------- */

/* In the order in which findings first speak of them. */
static struct topic *topic_for(struct digest *digest, const struct finding *finding)
{
    const size_t length = strcspn(finding->rule, ".");
    for (size_t i = 0; i < digest->topic_count; i++)
        if (digest->topics[i].length == length
            && strncmp(digest->topics[i].name, finding->rule, length) == 0)
            return &digest->topics[i];
    struct topic *fresh = &digest->topics[digest->topic_count++];
    *fresh = (struct topic){.name = finding->rule, .length = length};
    return fresh;
}

static void count_met(const struct result *result, struct digest *digest)
{
    digest->topics = arena_array(&digest->arena, result->finding_count + 1,
                                 sizeof(*digest->topics));
    for (size_t i = 0; digest->topics != NULL && i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (digest_part(finding) != PART_MET)
            continue;
        struct topic *topic = topic_for(digest, finding);
        const bool unconfirmed = (finding->why & WHY_UNCONFIRMED) != 0;
        const bool unmeasured = story_is_unmeasured(result, finding);
        topic->met++, digest->met++;
        topic->unconfirmed += unconfirmed, digest->met_unconfirmed += unconfirmed;
        topic->unmeasured += unmeasured, digest->met_unmeasured += unmeasured;
    }
}

/* What is to be confirmed ------------------------------------------------------------------ */

/* What was seen, is practice or invented needs no confirming. */
static bool is_unread(const struct maker *maker)
{
    return maker->cite->status == STATUS_NONE || maker->cite->status == STATUS_MEMORY
           || maker->cite->status == STATUS_PARALLEL;
}

/* A figure once, with the number of findings that rest on it. */
static void add_doubtful(struct digest *digest, const struct maker *maker)
{
    size_t at = 0;
    while (at < digest->confirm_count
           && strcmp(digest->confirm[at].maker->figure, maker->figure) != 0)
        at++;
    if (at == digest->confirm_count)
        digest->confirm[digest->confirm_count++].maker = maker;
    digest->confirm[at].findings++;
}

/* Figures nobody read before those read in a sister text; of these, what most rests on. */
static int by_need(const void *a, const void *b)
{
    const struct doubtful *first = a, *second = b;
    const bool parallel = first->maker->cite->status == STATUS_PARALLEL;
    if (parallel != (second->maker->cite->status == STATUS_PARALLEL))
        return parallel ? 1 : -1;
    if (first->findings != second->findings)
        return first->findings > second->findings ? -1 : 1;
    return strcmp(first->maker->figure, second->maker->figure);
}

/* What is not met is told with its figure anyway. */
static bool needs_confirming(const struct finding *finding)
{
    return finding->met == MET_YES && (finding->why & WHY_UNCONFIRMED) != 0;
}

static void list_doubtful(const struct result *result, struct digest *digest)
{
    size_t most = 0;
    for (size_t i = 0; i < result->finding_count; i++)
        if (needs_confirming(&result->findings[i]))
            most += result->findings[i].maker_count;
    digest->confirm = arena_array(&digest->arena, most + 1, sizeof(*digest->confirm));
    if (digest->confirm == NULL)
        return;
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        for (size_t j = 0; needs_confirming(finding) && j < finding->maker_count; j++)
            if (is_unread(&finding->makers[j]))
                add_doubtful(digest, &finding->makers[j]);
    }
    qsort(digest->confirm, digest->confirm_count, sizeof(*digest->confirm), by_need);
}

void digest_make(const struct result *result, struct digest *digest)
{
    *digest = (struct digest){0};
    sort_pendings(result, digest, &digest->broken, PART_BROKEN);
    sort_blocks(result, digest, &digest->fix, PART_FIX);
    sort_blocks(result, digest, &digest->look, PART_LOOK);
    sort_pendings(result, digest, &digest->unasked, PART_UNASKED);
    sort_pendings(result, digest, &digest->unknown, PART_UNKNOWN);
    count_open(result, digest);
    count_met(result, digest);
    list_doubtful(result, digest);
}

void digest_free(struct digest *digest)
{
    arena_free(&digest->arena);
}
