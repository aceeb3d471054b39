/* jobs.h - jobs for the benchmark, made from the example houses: the same on every run. */
#ifndef EAVEMARK_TESTS_BENCHMARK_JOBS_H
#define EAVEMARK_TESTS_BENCHMARK_JOBS_H

#include <stddef.h>
#include <stdio.h>

enum jobs_kind {
    JOBS_ALIKE,  /* houses of a tract: the cross gable, a tenth of its facts otherwise in each */
    JOBS_VARIED, /* places, days, houses, stages; up to three fifths of the facts missing */
    JOBS_PLANES, /* one job of so many planes */
    JOBS_EDGES,  /* or of so many edges of the roof */
    JOBS_PLACES, /* the cross gable in so many places, one after the other */
};

/* Writes count jobs, a line each; of planes and edges one job of that many. source is the
 * folder with tests/houses/. Ends the program when it cannot. */
void jobs_write(FILE *out, const char *source, enum jobs_kind kind, size_t count);

#endif
