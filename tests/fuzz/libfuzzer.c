/* libfuzzer.c - the entry points clang's fuzzer calls, for the target named by
 * FUZZ_TARGET. */
#include "fuzz/target.h"

#include <stdint.h>

int LLVMFuzzerInitialize(int *argc, char ***argv);
int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

/* The fuzzer has no other place to keep it. */
static void *state;

static void finish(void)
{
    FUZZ_TARGET.end(state);
    state = NULL;
}

int LLVMFuzzerInitialize(int *argc, char ***argv)
{
    (void)argc;
    (void)argv;
    state = FUZZ_TARGET.start();
    return atexit(finish);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    FUZZ_TARGET.run(state, length == 0 ? "" : (const char *)bytes, length);
    return 0;
}
