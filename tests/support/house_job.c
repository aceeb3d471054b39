#include "support/house_job.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>

#include <cmocka.h>

cJSON *house_job(const char *name)
{
    static char text[64 * 1024];
    char path[512];
    snprintf(path, sizeof(path), EAVEMARK_HOME_DIR "/%s.json", name);
    FILE *file = fopen(path, "r");
    assert_non_null(file);
    const size_t length = fread(text, 1, sizeof(text), file);
    fclose(file);
    cJSON *job = cJSON_ParseWithLength(text, length);
    assert_non_null(job);
    return job;
}
