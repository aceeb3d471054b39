/* story.h - which findings are told together, and which in brief: the same for
 * every form that people read. Internal to the room. */
#ifndef EAVEMARK_REPORT_STORY_H
#define EAVEMARK_REPORT_STORY_H

#include "base/text.h"
#include "judge/finding.h"

#include <stdbool.h>
#include <stddef.h>

/* Several figures may stand in one section; it is named once. with_source:
 * sections read in different sources count as different. */
bool story_cited_before(const struct finding *finding, size_t index, bool with_source);

/* Nothing to mend: the rule's sentence says enough. */
bool story_is_brief(const struct finding *finding);

/* How many findings from this one on, of one rule, say the same of different
 * places. */
size_t story_group_size(const struct result *result, size_t start);

/* Does an earlier open finding ask the same? */
bool story_asked_before(const struct result *result, size_t index);

/* Not applicable, and it would be so under the model law too. */
bool story_is_inapplicable(const struct finding *finding);

/* Met by what the job says alone, though the visit has come: nothing was measured. */
bool story_is_unmeasured(const struct result *result, const struct finding *finding);

/* "21 of these by what the job says alone: ..." beside the passes; "" for none. */
struct text story_unmeasured(const struct result *result);

/* "deck 4, drip_edge 2": of the inapplicable findings, how many rules of each topic. */
void story_count_inapplicable(const struct result *result, struct text *counts);

#endif
