/* verdict_place.c - what the facts of the place, and how well they are known, do to a
 * finding. */
#include "judge/verdict_parts.h"

const char *verdict_denied(const struct finding *finding)
{
    const char *denied = NULL;
    for (size_t i = finding->read_count; i-- > 0;)
        if (finding->reads[i].denied != NULL)
            denied = finding->reads[i].denied;
    return denied;
}

/* The first fact of the place that is known like this, or the first that a figure told; or
 * NULL. */
static const struct read *read_known(const struct finding *finding, enum status known, bool told)
{
    for (size_t i = 0; i < finding->read_count; i++)
        if (finding->reads[i].known == known && (finding->reads[i].figure != NULL) == told)
            return &finding->reads[i];
    return NULL;
}

void verdict_by_place(struct finding *finding)
{
    const bool recalled = read_known(finding, STATUS_MEMORY, false) != NULL
                          || read_known(finding, STATUS_PARALLEL, false) != NULL
                          || read_known(finding, STATUS_PARALLEL, true) != NULL;
    const bool denied = verdict_denied(finding) != NULL;
    finding->why |= (recalled ? WHY_UNCONFIRMED : 0u) | (denied ? WHY_DISPUTED : 0u);
    if ((recalled || denied) && finding->outcome == OUTCOME_PASS)
        finding->outcome = OUTCOME_WARN;
}

bool verdict_open_by_place(struct finding *finding, struct judging *judging)
{
    const char *denied = verdict_denied(finding);
    const struct read *recalled = read_known(finding, STATUS_MEMORY, false);
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

void verdict_say_place(struct text *out, const struct finding *finding)
{
    const struct read *recalled = read_known(finding, STATUS_MEMORY, false);
    const struct read *parallel = read_known(finding, STATUS_PARALLEL, false);
    const struct read *told = read_known(finding, STATUS_PARALLEL, true);
    const char *denied = verdict_denied(finding);
    if (recalled != NULL)
        text_addf(out, " Unconfirmed: the place's %s is recalled from memory, not read.",
                  recalled->at);
    if (parallel != NULL)
        text_addf(out, " Unconfirmed: the place's %s was read in a sister text.", parallel->at);
    if (told != NULL)
        text_addf(out, " Unconfirmed: %s follows from %s, which was read in a sister text.",
                  told->at, told->figure);
    if (denied != NULL)
        text_addf(out, " By the job's own word; at %s.", denied);
}
