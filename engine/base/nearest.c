#include "base/nearest.h"

#include <ctype.h>
#include <stdbool.h>
#include <stdint.h>
#include <string.h>

/* Case, and how words are joined, are no difference worth a letter: "Drip-Edge" is
 * drip_edge. */
static int fold(char c)
{
    if (c == '-' || c == ' ')
        return '_';
    return tolower((unsigned char)c);
}

static size_t least(size_t a, size_t b)
{
    return a < b ? a : b;
}

/* Edit distance with swaps of neighbours (optimal string alignment): the usual table, of
 * which only the last three rows are kept. */
size_t nearest_distance(const char *a, const char *b)
{
    const size_t m = strlen(a), n = strlen(b);
    if (m > NEAREST_LONGEST || n > NEAREST_LONGEST)
        return SIZE_MAX;
    size_t rows[3][NEAREST_LONGEST + 1];
    size_t *before = rows[0], *last = rows[1], *row = rows[2];
    for (size_t j = 0; j <= n; j++)
        last[j] = j;
    for (size_t i = 1; i <= m; i++) {
        row[0] = i;
        for (size_t j = 1; j <= n; j++) {
            const size_t cost = fold(a[i - 1]) != fold(b[j - 1]);
            row[j] = least(least(last[j] + 1, row[j - 1] + 1), last[j - 1] + cost);
            /* Two neighbours the wrong way round are one mistake, not two. */
            if (i > 1 && j > 1 && fold(a[i - 1]) == fold(b[j - 2])
                && fold(a[i - 2]) == fold(b[j - 1]))
                row[j] = least(row[j], before[j - 2] + 1);
        }
        size_t *spare = before;
        before = last, last = row, row = spare;
    }
    return last[n];
}

void nearest_start(struct nearest *nearest, const char *wanted)
{
    *nearest = (struct nearest){.wanted = wanted, .distance = SIZE_MAX};
}

void nearest_offer(struct nearest *nearest, const char *name)
{
    const size_t distance = nearest_distance(nearest->wanted, name);
    /* Two letters wrong, or a third of a long word: past that a proposal is a guess, and
     * says nothing. */
    const size_t third = strlen(nearest->wanted) / 3;
    if (distance < nearest->distance && distance <= (third < 2 ? 2 : third)) {
        nearest->name = name;
        nearest->distance = distance;
    }
}

bool nearest_among(struct nearest *nearest, const char *word, const char *const *list)
{
    nearest_start(nearest, word);
    for (const char *const *name = list; *name != NULL; name++)
        if (**name == *word && strcmp(*name, word) == 0)
            return true;
    /* Distances take far longer than all else here: only a wrong word is worth them. */
    for (; *list != NULL; list++)
        nearest_offer(nearest, *list);
    return false;
}
