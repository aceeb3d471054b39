/* row_limit.h - what a row's fact must meet: a figure, another fact of the job, or what
 * is reckoned. Internal to the judge room.
 */
#ifndef EAVEMARK_JUDGE_ROW_LIMIT_H
#define EAVEMARK_JUDGE_ROW_LIMIT_H

#include "judge/judgement.h"
#include "judge/row.h"

struct row_limit {
    const struct figure *figure; /* whose value it is; NULL: a fact's, or reckoned */
    struct value value;          /* without a figure: what it is */
    enum sense sense;
};

/* Those met: one, or two bounds. 0 when there is none to judge by, and *why or *stop says
 * so, or the record what is lacking. Figures are not asked for yet: row_limit_value does. */
size_t row_limit_find(struct call *call, const struct row *row, struct row_limit limits[2],
                      enum sandbox_stop *stop, const char **why);

/* Is it reckoned, or another fact, and no figure as it stands? */
bool row_limit_is_own(const struct row *row);

/* Is it looked for before the fact is? What is reckoned may lack something of its own. */
bool row_limit_is_first(const struct row *row);

const struct value *row_limit_value(struct judging *judging, const struct row_limit *limit);

/* Says which figures made what the judgement demands. */
void row_limit_made(struct judging *judging, const struct row *row, const struct row_limit *limit,
                    struct judgement *judgement);

#endif
