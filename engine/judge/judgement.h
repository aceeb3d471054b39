/* judgement.h - the comparisons a rule may make, from values: what rows are judged by
 * in C, and what the functions of bind_compare.c are made of. Internal to the room.
 *
 * Each gives a judgement in the judging arena, or NULL when that is out of memory,
 * and adds its arithmetic to the record.
 */
#ifndef EAVEMARK_JUDGE_JUDGEMENT_H
#define EAVEMARK_JUDGE_JUDGEMENT_H

#include "judge/judging.h"

/* What an empty list of measurements shows. */
#define JUDGEMENT_NOTHING_MEASURED "Nothing was measured: the list is empty."
#define JUDGEMENT_NOTHING_LISTED "The list is empty, so nothing on it is shown to be in order."

struct judgement *judgement_new(struct judging *judging, enum sense sense);

/* found against required, by the sense: numbers at_least, at_most, equals, in the unit
 * of required; texts one_of, none_of, equals; a set of texts none_of (none of them)
 * and one_of (each of them); yes or no equals. NULL too when the sense does not suit
 * the kinds. */
struct judgement *judgement_of_values(struct judging *judging, const struct value *found,
                                      enum sense sense, const struct value *required);

/* A duty: what must be shown, in words (or NULL), is shown or not. */
struct judgement *judgement_of_duty(struct judging *judging, bool met, const char *what);

/* A duty to have all of a set; what is lacking is named. */
struct judgement *judgement_of_all(struct judging *judging, const struct value *found,
                                   const struct value *required, const char *what);

/* Measured spacings: the widest within the limit; or at most share percent of them
 * wider, none by more than over. count > 0. */
struct judgement *judgement_of_spread(struct judging *judging, const double *numbers, size_t count,
                                      const struct value *limit, double share, double over);

/* The worst of what was measured against the limit. count > 0. */
struct judgement *judgement_of_each(struct judging *judging, const double *numbers, size_t count,
                                    const struct value *limit, bool least);

/* Holds it to what the figures that made the demanded value demand besides: another
 * bound, or that exactly as much is not enough. numbers: what was measured, if a list
 * was (else NULL, and the value found counts). Call it once the makers are named. */
struct judgement *judgement_held_to(struct judging *judging, struct judgement *judgement,
                                    const double *numbers, size_t count);

/* A comparison looked at what this figure demands further. */
void judgement_note_held(struct judging *judging, const struct figure *figure);

/* The first figure asked for whose further demands no comparison looked at, or NULL. */
const struct figure *judgement_not_held(const struct record *record);

/* Both must be met: the first that is not, or else the second, with the warning and
 * the makers of both, and with both bounds where they hold one number. */
struct judgement *judgement_of_both(struct judging *judging, struct judgement *first,
                                    struct judgement *second);

/* Names the figures that made the demanded value; then nothing is guessed. */
void judgement_made_by(struct judging *judging, struct judgement *judgement,
                       const struct figure *const *figures, size_t count);

#endif
