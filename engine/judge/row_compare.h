/* row_compare.h - what one comparison of a row comes to: its fact, or what it reckons, held
 * against its limit; or a duty. Internal to the judge room.
 */
#ifndef EAVEMARK_JUDGE_ROW_COMPARE_H
#define EAVEMARK_JUDGE_ROW_COMPARE_H

#include "judge/judgement.h"
#include "judge/row.h"

/* NULL when it is open, or *stop or *why says what is wrong. before: the comparison that
 * this one stands instead of, whose numbers a duty's words may name; or NULL. */
struct judgement *row_compare(struct call *call, const struct row *row,
                              const struct judgement *before, enum sandbox_stop *stop,
                              const char **why);

#endif
