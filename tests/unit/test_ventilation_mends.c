/* What the mend of an attic short of vents says must mend it.
 *
 * Attics with vents of random sizes, under places that read the smaller area each in
 * their own way. Whatever the report tells to add is added to the job, one way at a
 * time, and the job is checked again: the vent area must then be met, and no other
 * rule on vents may have turned unmet. */
#include "include/eavemark.h"
#include "support/random_numbers.h"

#include <cjson/cJSON.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static const char *const PLACES[] = {"model/irc-2021", "model/irc-2012", "us-mn/rosemount",
                                     "example/kettlebend", "example/gullhaven"};
enum { PLACE_COUNT = sizeof(PLACES) / sizeof(PLACES[0]), ATTICS = 160 };

static const char AREA_RULE[] = "ventilation.net_free_area";
static const char MORE[] = " more of ";

struct followed {
    eavemark *handle;
    size_t unmet, ways, pairs;
};

/* The job ----------------------------------------------------------------------------- */

static cJSON *base_job(void)
{
    FILE *file = fopen(EAVEMARK_HOME_DIR "/rules/cases/base.json", "rb");
    assert_non_null(file);
    char *text = calloc(1, 1 << 16);
    assert_non_null(text);
    assert_true(fread(text, 1, (1 << 16) - 1, file) > 0);
    fclose(file);
    cJSON *job = cJSON_Parse(text);
    assert_non_null(job);
    free(text);
    return job;
}

static cJSON *attic_of(cJSON *job)
{
    return cJSON_GetArrayItem(cJSON_GetObjectItemCaseSensitive(job, "attics"), 0);
}

static cJSON *vents_of(cJSON *job)
{
    return cJSON_GetObjectItemCaseSensitive(attic_of(job), "vents");
}

static cJSON *add_vent(cJSON *job, const char *name, const char *kind, bool high,
                       double below_ridge_ft)
{
    cJSON *vent = cJSON_CreateObject();
    cJSON_AddStringToObject(vent, "name", name);
    cJSON_AddStringToObject(vent, "kind", kind);
    cJSON_AddStringToObject(vent, "place", high ? "high" : "low");
    cJSON_AddNumberToObject(vent, "below_ridge_ft", below_ridge_ft);
    cJSON_AddNumberToObject(vent, "opening_in", 0.125);
    cJSON_AddTrueToObject(vent, "screened");
    cJSON_AddNumberToObject(vent, "screen_opening_in", 0.125);
    cJSON_AddTrueToObject(vent, "opens_outdoors");
    cJSON_AddItemToArray(vents_of(job), vent);
    return vent;
}

static void by_foot(cJSON *vent, double feet, double sqin)
{
    cJSON_AddNumberToObject(vent, "length_ft", feet);
    cJSON_AddNumberToObject(vent, "nfa_sqin_per_ft", sqin);
}

static void by_piece(cJSON *vent, double count, double sqin)
{
    cJSON_AddNumberToObject(vent, "count", count);
    cJSON_AddNumberToObject(vent, "nfa_each_sqin", sqin);
}

static void replace_word(cJSON *object, const char *key, const char *word)
{
    cJSON_DeleteItemFromObjectCaseSensitive(object, key);
    cJSON_AddStringToObject(object, key, word);
}

static cJSON *random_job(struct random_numbers *numbers)
{
    static const char *const ZONES[] = {"4A", "5A", "6A", "7"};
    static const char *const CLASSES[] = {"class_I", "class_II", "class_III", "none"};
    cJSON *job = base_job();
    cJSON *site = cJSON_GetObjectItemCaseSensitive(job, "site");
    replace_word(site, "climate_zone", ZONES[(int)random_between(numbers, 0, 4)]);
    replace_word(attic_of(job), "vapor_retarder", CLASSES[(int)random_between(numbers, 0, 4)]);
    cJSON_DeleteItemFromObjectCaseSensitive(attic_of(job), "vents");
    cJSON_AddArrayToObject(attic_of(job), "vents");
    const double high = random_between(numbers, 0, 4), low = random_between(numbers, 0, 4);
    if (high < 1)
        by_foot(add_vent(job, "ridge vent", "ridge", true, 0),
                floor(random_between(numbers, 1, 41)), floor(random_between(numbers, 9, 19)));
    else if (high < 2)
        by_piece(add_vent(job, "exhaust", "box", true, random_between(numbers, 0, 3)),
                 floor(random_between(numbers, 1, 12)), 50);
    else if (high < 3)
        by_piece(add_vent(job, "gable louvers", "gable", true, random_between(numbers, 1, 6)), 2,
                 floor(random_between(numbers, 40, 300)));
    if (low < 2)
        by_foot(add_vent(job, "soffit strip", "soffit_strip", false, 6),
                floor(random_between(numbers, 4, 70)), 9);
    else if (low < 3)
        by_piece(add_vent(job, "eave blocks", "eave_block", false, 6),
                 floor(random_between(numbers, 2, 60)), 4);
    return job;
}

/* The report -------------------------------------------------------------------------- */

static cJSON *report_of(struct followed *followed, const cJSON *job, const char *place)
{
    char *text = cJSON_PrintUnformatted(job);
    assert_non_null(text);
    const struct eavemark_request request = {.name = "job",
                                             .text = text,
                                             .length = strlen(text),
                                             .jurisdiction = place,
                                             .date = "2026-03-02"};
    eavemark_result *result = eavemark_check(followed->handle, &request);
    assert_non_null(result);
    char *report = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    if (report == NULL)
        fail_msg("refused: %s: %s", place, text);
    cJSON *tree = cJSON_Parse(report);
    assert_non_null(tree);
    free(report);
    eavemark_result_free(result);
    cJSON_free(text);
    return tree;
}

static const char *word(const cJSON *finding, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(finding, key);
    return cJSON_IsString(item) ? item->valuestring : "";
}

static const cJSON *finding_of(const cJSON *report, const char *rule, const char *where)
{
    const cJSON *finding = NULL;
    cJSON_ArrayForEach(finding, cJSON_GetObjectItemCaseSensitive(report, "findings")) {
        if (strcmp(word(finding, "rule"), rule) == 0 && strcmp(word(finding, "where"), where) == 0)
            return finding;
    }
    return NULL;
}

static bool is_unmet(const cJSON *finding)
{
    return cJSON_IsFalse(cJSON_GetObjectItemCaseSensitive(finding, "met"));
}

/* Following it ------------------------------------------------------------------------- */

/* One thing to add: "12 ft more of ridge vent at its 18 sq in per ft". */
struct addition {
    double amount;
    char unit[8], name[64];
};

/* Reads the addition around `more`, which points at " more of "; its end. */
static const char *read_addition(const char *text, const char *more, struct addition *out)
{
    const char *start = more;
    while (start > text && strchr(":;", start[-1]) == NULL && strncmp(start, " and ", 5) != 0)
        start--;
    while (*start == ' ')
        start++;
    if (strncmp(start, "and ", 4) == 0)
        start += 4;
    else if (strncmp(start, "or ", 3) == 0)
        start += 3;
    char digits[32] = "";
    size_t length = 0;
    for (; start < more && strchr("0123456789.,", *start) != NULL; start++)
        if (*start != ',' && length < sizeof(digits) - 1)
            digits[length++] = *start;
    assert_true(length > 0);
    out->amount = strtod(digits, NULL);
    while (start < more && *start == ' ')
        start++;
    snprintf(out->unit, sizeof(out->unit), "%.*s", (int)(more - start), start);
    const char *name = more + sizeof(MORE) - 1;
    const char *end = strstr(name, " at ");
    assert_non_null(end);
    snprintf(out->name, sizeof(out->name), "%.*s", (int)(end - name), name);
    return end;
}

static void add_to_number(cJSON *vent, const char *key, double amount)
{
    cJSON *number = cJSON_GetObjectItemCaseSensitive(vent, key);
    assert_true(cJSON_IsNumber(number));
    cJSON_SetNumberHelper(number, number->valuedouble + amount);
}

static void apply(cJSON *job, const struct addition *addition)
{
    if (strcmp(addition->unit, "sq in") == 0) {
        assert_string_equal(addition->name, "new vents");
        by_piece(add_vent(job, "new vents", "soffit_unit", false, 6), 1, addition->amount);
        return;
    }
    cJSON *vent = NULL;
    cJSON_ArrayForEach(vent, vents_of(job)) {
        if (strcmp(word(vent, "name"), addition->name) != 0)
            continue;
        add_to_number(vent, addition->unit[0] == '\0' ? "count" : "length_ft", addition->amount);
        return;
    }
    fail_msg("no vent is called %s", addition->name);
}

static void check_again(struct followed *followed, const cJSON *before, const cJSON *job,
                        const char *place, const char *mend)
{
    cJSON *after = report_of(followed, job, place);
    const cJSON *finding = NULL;
    cJSON_ArrayForEach(finding, cJSON_GetObjectItemCaseSensitive(after, "findings")) {
        const char *rule = word(finding, "rule");
        if (strncmp(rule, "ventilation.", 12) != 0 || !is_unmet(finding))
            continue;
        if (strcmp(rule, AREA_RULE) != 0
            && is_unmet(finding_of(before, rule, word(finding, "where"))))
            continue;
        fail_msg("%s, under %s, after: %s\n%s\n%s", rule, place, mend, word(finding, "says"),
                 cJSON_PrintUnformatted(vents_of((cJSON *)(uintptr_t)job)));
    }
    cJSON_Delete(after);
}

/* Each way that the mend names, in turn: ways are parted by ";" or a sentence, and
 * what must be added together by "and". */
static void follow(struct followed *followed, const cJSON *before, const cJSON *job,
                   const char *place, const char *mend)
{
    const char *more = strstr(mend, MORE);
    while (more != NULL) {
        cJSON *changed = cJSON_Duplicate(job, true);
        bool together = false;
        do {
            struct addition addition;
            const char *end = read_addition(mend, more, &addition);
            apply(changed, &addition);
            more = strstr(end, MORE);
            const char *stop = strpbrk(end, ";:");
            const char *joined = strstr(end, " and ");
            together = more != NULL && joined != NULL && joined < more
                       && (stop == NULL || stop > more);
            followed->pairs += together;
        } while (together);
        check_again(followed, before, changed, place, mend);
        followed->ways++;
        cJSON_Delete(changed);
    }
}

static void a_mend_that_is_followed_is_met(void **state)
{
    (void)state;
    struct followed followed = {.handle = eavemark_open(EAVEMARK_HOME_DIR)};
    assert_non_null(followed.handle);
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < ATTICS; i++) {
        cJSON *job = random_job(&numbers);
        const char *place = PLACES[i % PLACE_COUNT];
        cJSON *report = report_of(&followed, job, place);
        const cJSON *finding = finding_of(report, AREA_RULE, "attic");
        assert_non_null(finding);
        if (is_unmet(finding)) {
            followed.unmet++;
            if (strstr(word(finding, "mend"), MORE) == NULL)
                fail_msg("names nothing to add: %s\n%s", word(finding, "mend"),
                         cJSON_PrintUnformatted(vents_of(job)));
            follow(&followed, report, job, place, word(finding, "mend"));
        }
        cJSON_Delete(report);
        cJSON_Delete(job);
    }
    /* The numbers are the same on every run: enough of each kind was met. */
    assert_true(followed.unmet > ATTICS / 2);
    assert_true(followed.ways > followed.unmet);
    assert_true(followed.pairs >= 10);
    eavemark_close(followed.handle);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_mend_that_is_followed_is_met),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
