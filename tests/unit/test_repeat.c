/* A function of a row that is answered as before is not run again, and what it came to and
 * recorded is told as if it had been. */
#include "judge/judge.h"
#include "support/small_batch.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cjson/cJSON.h>
#include <cmocka.h>

/* It reads facts and a figure, follows a reference, says something, is open, and lacks. */
static const char RULES[] =
    "demand 'test.row' {\n"
    "  title = 'Layers', stage = 'permit', per = 'roof.slopes', mend = 'Take some off.',\n"
    "  when = { function(job, figure, slope)\n"
    "    work 'looked at'\n"
    "    return job.existing.condition == 'sound', 'it is rotted' end },\n"
    "  open = { { says = function(job, figure, slope)\n"
    "    if not known(slope.deck, 'spacing_in') then return 'nobody said how it is nailed' end\n"
    "  end } },\n"
    "  fact = 'existing.layers',\n"
    "  meets = { 'test.most', 'test.seen', unit = 'layers',\n"
    "    limit = function(job, figure, slope)\n"
    "      work(slope.name .. ' is ' .. (slope.pitch > 6 and 'steep' or 'shallow'))\n"
    "      return slope.pitch > 6 and figure 'test.most' or figure 'test.seen' - 1 end },\n"
    "  say = function(job, figure, slope) return 'It lies on ' .. slope.deck.name .. '.' end,\n" SMALL_READS
    "}\n";

static const char FUNCTIONS[] =
    "rule 'test.it' {\n"
    "  title = 'Layers', stage = 'permit', mend = 'Take some off.', " SMALL_READS "\n"
    "  applies = function(job) return job.existing.condition == 'sound', 'it is rotted' end,\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure 'test.most', 'layers') end }\n";

/* All of the findings that a reader may see, in one text; to be freed. */
static char *told(struct rulebook *book, const cJSON *job)
{
    struct result result = {.only_stage = -1};
    struct text text = TEXT_EMPTY;
    judge_begin(book);
    assert_int_equal(judge(book, job, -1, STAGE_PERMIT, NULL, &result), 0);
    for (size_t i = 0; i < result.finding_count; i++) {
        const struct finding *finding = &result.findings[i];
        text_addf(&text, "%s %s: %d %s %s", finding->rule, finding->where, (int)finding->outcome,
                  finding->says, finding->lacks == NULL ? "-" : finding->lacks);
        for (size_t r = 0; r < finding->read_count; r++)
            text_addf(&text, " %s", finding->reads[r].at);
        for (size_t f = 0; f < finding->figure_count; f++)
            text_addf(&text, " %s", finding->figures[f]->name);
        for (size_t w = 0; w < finding->work_count; w++)
            text_addf(&text, " [%s]", finding->work[w]);
        text_add(&text, "\n");
    }
    result_free(&result);
    assert_false(text.failed);
    return text.bytes;
}

static cJSON *at(cJSON *job, const char *group, const char *key)
{
    return cJSON_GetObjectItemCaseSensitive(cJSON_GetObjectItemCaseSensitive(job, group), key);
}

/* The number of layers is another each time: the findings are judged anew. */
static void what_is_answered_as_before_is_not_run_again(void **state)
{
    (void)state;
    struct small_batch batch;
    small_batch_begin(&batch, RULES);
    cJSON *const job = batch.job;
    size_t used = 0;
    for (int layers = 0; layers < 6; layers++) {
        cJSON_SetNumberValue(at(job, "existing", "layers"), layers);
        small_batch_assert_as_alone(&batch, told);
        /* Lua takes room for whatever it is handed. */
        const size_t now = heap_used(&batch.book->sandbox->heap);
        if (layers > 1)
            assert_int_equal(now, used);
        else
            assert_true(now > used);
        used = now;
    }
    small_batch_end(&batch);
}

static void what_is_answered_otherwise_is_run(void **state)
{
    (void)state;
    static const char *const WAYS[] = {"5:12", "7:12", "5:12", "22.6 deg", "7:12"};
    struct small_batch batch;
    small_batch_begin(&batch, RULES);
    cJSON *const job = batch.job;
    cJSON *existing = cJSON_GetObjectItemCaseSensitive(job, "existing");
    cJSON *slope = cJSON_GetArrayItem(at(job, "roof", "slopes"), 0);
    cJSON *deck = cJSON_GetArrayItem(cJSON_GetObjectItemCaseSensitive(job, "decks"), 0);
    for (int turn = 0; turn < 40; turn++) {
        cJSON_SetNumberValue(cJSON_GetObjectItemCaseSensitive(existing, "layers"), (turn % 6));
        cJSON_ReplaceItemInObjectCaseSensitive(slope, "pitch",
                                               cJSON_CreateString(WAYS[turn / 6 % 5]));
        if (turn == 12)
            cJSON_DeleteItemFromObjectCaseSensitive(deck, "spacing_in");
        if (turn == 18)
            cJSON_AddNumberToObject(deck, "spacing_in", 6);
        if (turn == 24)
            cJSON_DeleteItemFromObjectCaseSensitive(slope, "deck");
        if (turn == 28)
            cJSON_AddStringToObject(slope, "deck", "panels");
        if (turn == 32)
            cJSON_ReplaceItemInObjectCaseSensitive(existing, "condition",
                                                   cJSON_CreateString("rotted"));
        if (turn == 36)
            cJSON_DeleteItemFromObjectCaseSensitive(existing, "condition");
        small_batch_assert_as_alone(&batch, told);
    }
    small_batch_end(&batch);
}

/* Of a rule made of functions, whether it applies; what it judges goes by the layers. */
static void whether_a_rule_applies_is_asked_once(void **state)
{
    (void)state;
    struct small_batch batch;
    small_batch_begin(&batch, FUNCTIONS);
    cJSON *const job = batch.job;
    size_t taken[6], used = heap_used(&batch.book->sandbox->heap);
    for (int layers = 0; layers < 6; layers++) {
        cJSON_SetNumberValue(at(job, "existing", "layers"), layers);
        small_batch_assert_as_alone(&batch, told);
        taken[layers] = heap_used(&batch.book->sandbox->heap) - used;
        used += taken[layers];
    }
    assert_true(taken[2] < taken[1]);
    assert_int_equal(taken[5], taken[2]);
    /* Once it is not so, it is told of; and that it is so again. */
    cJSON_ReplaceItemInObjectCaseSensitive(cJSON_GetObjectItemCaseSensitive(job, "existing"),
                                           "condition", cJSON_CreateString("rotted"));
    small_batch_assert_as_alone(&batch, told);
    cJSON_ReplaceItemInObjectCaseSensitive(cJSON_GetObjectItemCaseSensitive(job, "existing"),
                                           "condition", cJSON_CreateString("sound"));
    small_batch_assert_as_alone(&batch, told);
    cJSON_DeleteItemFromObjectCaseSensitive(cJSON_GetObjectItemCaseSensitive(job, "existing"),
                                            "condition");
    small_batch_assert_as_alone(&batch, told);
    small_batch_end(&batch);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(what_is_answered_as_before_is_not_run_again),
        cmocka_unit_test(what_is_answered_otherwise_is_run),
        cmocka_unit_test(whether_a_rule_applies_is_asked_once),
    };
    return cmocka_run_group_tests(tests, small_home_make, small_home_remove);
}
