#include "fuzz/result.h"

#include "fuzz/target.h"

#include <cjson/cJSON.h>

#include <stdbool.h>
#include <string.h>

/* Only newlines steer: everything else below a space is written out. */
static bool is_harmless(const char *text)
{
    for (const char *at = text; *at != '\0'; at++)
        if (((unsigned char)*at < 0x20 && *at != '\n') || *at == 0x7f)
            return false;
    return true;
}

static void look_at_reports(const eavemark_result *result, enum eavemark_status status)
{
    char *text = eavemark_result_report(result, EAVEMARK_TEXT, 0);
    char *json = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    FUZZ_REQUIRE((text == NULL) == (json == NULL));
    if (json == NULL) {
        FUZZ_REQUIRE(status == EAVEMARK_UNUSABLE || status == EAVEMARK_BROKEN);
        FUZZ_REQUIRE(eavemark_result_problems(result)[0] != '\0');
        return;
    }
    cJSON *tree = cJSON_Parse(json);
    FUZZ_REQUIRE(tree != NULL);
    cJSON_Delete(tree);
    FUZZ_REQUIRE(status != EAVEMARK_UNUSABLE);
    FUZZ_REQUIRE(strchr(json, '\n') == json + strlen(json) - 1);
    FUZZ_REQUIRE(is_harmless(text));
    free(text);
    free(json);
}

enum eavemark_status fuzz_result(eavemark_result *result)
{
    FUZZ_REQUIRE(result != NULL);
    const enum eavemark_status status = eavemark_result_status(result, false);
    FUZZ_REQUIRE(is_harmless(eavemark_result_problems(result)));
    look_at_reports(result, status);
    eavemark_result_free(result);
    return status;
}
