#include "report/story.h"

#include "base/text.h"

#include <string.h>

/* Several figures may stand in one section; it is named once. with_source:
 * sections read in different sources count as different. */
bool story_cited_before(const struct finding *finding, size_t index, bool with_source)
{
    const struct cite *cite = &finding->cites[index];
    for (const struct cite *old = finding->cites; old < cite; old++)
        if (text_same(old->code, cite->code) && text_same(old->section, cite->section)
            && old->status == cite->status
            && (!with_source || text_same(old->source, cite->source)))
            return true;
    return false;
}

/* Nothing to mend: said in brief, the rule's sentence, which names what was
 * found and demanded, and where that is written. */
bool story_is_brief(const struct finding *finding)
{
    return finding->outcome == OUTCOME_PASS
           || (finding->outcome == OUTCOME_WARN && finding->mend == NULL);
}

static bool same_lines(const char *const *a, size_t a_count, const char *const *b, size_t b_count)
{
    if (a_count != b_count)
        return false;
    for (size_t i = 0; i < a_count; i++)
        if (!text_same(a[i], b[i]))
            return false;
    return true;
}

/* Two places of one rule of which there is nothing different to say. */
static bool same_story(const struct finding *a, const struct finding *b)
{
    return a->outcome == b->outcome && text_same(a->rule, b->rule) && text_same(a->says, b->says)
           && text_same(a->mend, b->mend)
           && same_lines(a->work, a->work_count, b->work, b->work_count);
}

/* How many findings from this one on read the same. */
size_t story_group_size(const struct result *result, size_t start)
{
    size_t count = 1;
    while (start + count < result->finding_count
           && same_story(&result->findings[start], &result->findings[start + count]))
        count++;
    return count;
}

/* True when an earlier open finding asks the same. */
bool story_asked_before(const struct result *result, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (result->findings[i].outcome == OUTCOME_OPEN
            && text_same(result->findings[i].says, result->findings[index].says))
            return true;
    return false;
}

/* Says nothing about this job, and would say nothing under the model either. */
bool story_is_inapplicable(const struct finding *finding)
{
    return finding->outcome == OUTCOME_NOT_APPLICABLE && finding->amended == NULL;
}

/* Characters of the topic a rule belongs to: "deck.solid" is of "deck". */
static size_t topic_length(const struct finding *finding)
{
    return strcspn(finding->rule, ".");
}

static bool same_topic(const struct finding *a, const struct finding *b)
{
    const size_t length = topic_length(a);
    return length == topic_length(b) && strncmp(a->rule, b->rule, length) == 0;
}

/* Counts the rules of each topic, a rule of several places once: findings
 * come sorted by rule. Their names would fill pages; the JSON form has them. */
void story_count_inapplicable(const struct result *result, struct text *counts)
{
    const struct finding *last = NULL;
    size_t rules = 0;
    for (size_t i = 0; i <= result->finding_count; i++) {
        const struct finding *finding = i < result->finding_count ? &result->findings[i] : NULL;
        if (finding != NULL
            && (!story_is_inapplicable(finding)
                || (last != NULL && strcmp(last->rule, finding->rule) == 0)))
            continue;
        if (last != NULL && (finding == NULL || !same_topic(last, finding))) {
            text_addf(counts, "%s%.*s %zu", counts->length > 0 ? ", " : "", (int)topic_length(last),
                      last->rule, rules);
            rules = 0;
        }
        last = finding;
        rules++;
    }
}

bool story_is_unmeasured(const struct result *result, const struct finding *finding)
{
    return finding->met == MET_YES && finding->outcome == OUTCOME_PASS && !finding->measured
           && result->reached >= finding->stage && finding->stage != STAGE_PERMIT;
}

struct text story_unmeasured(const struct result *result)
{
    struct text words = TEXT_EMPTY;
    if (result->unmeasured_passes > 0)
        text_addf(&words,
                  "%zu of these by what the job says alone: nothing was measured for %s. "
                  "Look at %s before the inspector does.",
                  result->unmeasured_passes, result->unmeasured_passes == 1 ? "it" : "them",
                  result->unmeasured_passes == 1 ? "it" : "each");
    return words;
}
