/* nearest.h - "did you mean": the closest real name to a mistyped one. */
#ifndef EAVEMARK_BASE_NEAREST_H
#define EAVEMARK_BASE_NEAREST_H

#include <stdbool.h>
#include <stddef.h>

/* Fewest single-character insertions, deletions, substitutions and swaps of
 * neighbours that turn a into b, ignoring case and the difference between
 * '-', '_' and ' ' (optimal string alignment distance). Texts longer than
 * NEAREST_LONGEST are never near: the result is then SIZE_MAX. */
size_t nearest_distance(const char *a, const char *b);

enum { NEAREST_LONGEST = 120 };

/* Follows the closest of the names offered one at a time. */
struct nearest {
    const char *wanted;
    const char *name; /* best so far, or NULL when none is near enough */
    size_t distance;
};

void nearest_start(struct nearest *nearest, const char *wanted);

/* Offers a name; it is kept when closer than the best so far and near enough
 * to be a plausible slip: at most a third of the wanted length, at least 2. */
void nearest_offer(struct nearest *nearest, const char *name);

/* Is the word one of a list that ends in NULL? If not, nearest holds what comes nearest. */
bool nearest_among(struct nearest *nearest, const char *word, const char *const *list);

#endif
