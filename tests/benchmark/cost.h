/* cost.h - what running a program costs: processor time, not the clock on the wall. */
#ifndef EAVEMARK_TESTS_BENCHMARK_COST_H
#define EAVEMARK_TESTS_BENCHMARK_COST_H

struct cost {
    double seconds; /* of the processor, user and system */
    double wall;    /* by the clock; to be looked at for several workers only */
    long peak_kb;   /* resident memory at its most */
    int status;     /* of the program; -1: it did not end by itself */
};

/* Runs it (argv ends with NULL), its output going to the file named, or nowhere (NULL).
 * The median of so many runs; of memory the most. */
struct cost cost_of_program(const char *const *argv, const char *output, int runs);

/* Processor time of cJSON_Parse alone over the lines of a file, the median of runs. */
double cost_of_parse(const char *path, int runs);

#endif
