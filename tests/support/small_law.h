/* small_law.h - a field catalogue, a model code and a job small enough to be
 * seen whole, for tests of the engine that should not move with the rules. */
#ifndef EAVEMARK_TESTS_SMALL_LAW_H
#define EAVEMARK_TESTS_SMALL_LAW_H

#include "support/temporary_home.h"

/* Writes rules/fields.lua and jurisdictions/model/test.lua. The code gives a
 * figure of each status: "test.seen" and so on, each 3 layers at most, and
 * "test.most", the same as "test.seen". */
void small_law_write(const struct temporary_home *home);

/* For rules of tests: all that they may read of it. */
#define SMALL_FACTS                                                                            \
    "{ 'job', 'existing.layers', 'existing.condition', 'existing.kinds', "                     \
    "'existing.slippery', 'roof.slopes[].name', 'roof.slopes[].pitch', 'roof.slopes[].deck', " \
    "'decks[].name', 'decks[].spacing_in', 'decks[].measured_spacing_in', 'attics[].name', "   \
    "'attics[].vents[].name', 'attics[].vents[].count' }"
#define SMALL_READS "reads = { facts = " SMALL_FACTS ", figures = { 'test.*' } },"

/* The same, of figures only those that the two texts name: figure "x". Returns `reads`. */
const char *small_reads(const char *keys, const char *lines, char reads[1000]);

/* A valid job at stage permit: 1 layer, planes "front" and "back" on the deck
 * "panels", attics "main" (vents "ridge" and "soffit") and "porch" (none). */
extern const char SMALL_JOB[];

/* A copy of text with the one place that reads `old` replaced; to be freed. */
char *text_with(const char *text, const char *old, const char *new_text);

#endif
