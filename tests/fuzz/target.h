/* target.h - what is fuzzed: each target takes any bytes and stops the process
 * when what it calls breaks a promise.
 *
 * The same targets run under libFuzzer (libfuzzer.c), which makes up bytes, and
 * under ctest (unit/test_fuzz_regressions.c), which plays known ones.
 */
#ifndef EAVEMARK_TESTS_FUZZ_TARGET_H
#define EAVEMARK_TESTS_FUZZ_TARGET_H

#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>

struct fuzz_target {
    const char *name;
    void *(*start)(void); /* what run needs; made once */
    void (*run)(void *state, const char *bytes, size_t length);
    void (*end)(void *state);
};

extern const struct fuzz_target fuzz_cases, fuzz_draft, fuzz_interview, fuzz_job, fuzz_lines,
    fuzz_page, fuzz_profile, fuzz_rules, fuzz_shop, fuzz_words;

/* A promise; unlike assert, it is kept in every build. */
#define FUZZ_REQUIRE(promise)                                                             \
    do {                                                                                  \
        if (!(promise)) {                                                                 \
            fprintf(stderr, "%s:%d: broken promise: %s\n", __FILE__, __LINE__, #promise); \
            abort();                                                                      \
        }                                                                                 \
    } while (0)

#endif
