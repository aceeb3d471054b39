/* random_numbers.h - numbers for property tests: the same on every run. */
#ifndef EAVEMARK_TESTS_RANDOM_NUMBERS_H
#define EAVEMARK_TESTS_RANDOM_NUMBERS_H

#include <math.h>
#include <stddef.h>
#include <stdint.h>

enum { RANDOM_SEED = 20260302, RANDOM_ROUNDS = 20000 };

struct random_numbers {
    uint64_t state;
};

/* Between least and most. The generator is the plain 64-bit linear congruence
 * of Knuth's MMIX. */
static inline double random_between(struct random_numbers *numbers, double least, double most)
{
    numbers->state = numbers->state * 6364136223846793005u + 1442695040888963407u;
    return least + (most - least) * ((double)(numbers->state >> 11) / 9007199254740992.0);
}

/* What no function may take. */
static const double IMPOSSIBLE[] = {-1, -1e-300, (double)NAN, (double)INFINITY, -(double)INFINITY};
enum { IMPOSSIBLE_COUNT = sizeof(IMPOSSIBLE) / sizeof(IMPOSSIBLE[0]) };

#endif
