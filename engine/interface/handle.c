#include "interface/handle.h"

#include "interface/inner.h"

#include <stdlib.h>
#include <string.h>

/* Laws that a handle keeps: a batch under many places and days goes on with those of the
 * last. Each takes 7 MB, but a county's rules may make it take twenty times that. */
enum { LAWS_MOST = 64, LAWS_BYTES_MOST = 256 * 1024 * 1024 };

eavemark *inner_open(const char *home)
{
    eavemark *handle = calloc(1, sizeof(*handle));
    if (handle == NULL)
        return NULL;
    /* A copy: the host may free its own when the call returns. */
    const size_t size = strlen(home) + 1;
    handle->home = malloc(size);
    if (handle->home == NULL) {
        free(handle);
        return NULL;
    }
    memcpy(handle->home, home, size);
    handle->laws.home = handle->home;
    return handle;
}

/* The laws point into the home's name: it goes last. */
void inner_close(eavemark *handle)
{
    laws_free(&handle->laws);
    free(handle->home);
    free(handle);
}

/* For tests: nothing else shows whether a handle grows without end. */
size_t inner_law_count(const eavemark *handle)
{
    size_t bytes;
    return laws_count(&handle->laws, &bytes);
}

/* Never while a result or interview holds them: both name rules and fields of their laws. */
void handle_make_room(eavemark *handle)
{
    size_t bytes;
    const size_t count = laws_count(&handle->laws, &bytes);
    if (handle->laws.holders == 0 && (count >= LAWS_MOST || bytes >= LAWS_BYTES_MOST))
        laws_free(&handle->laws);
}

void handle_say_out_of_memory(eavemark *handle, struct problems *problems)
{
    if (handle->laws.out_of_memory)
        problem_out_of_memory(problems);
    handle->laws.out_of_memory = false;
}
