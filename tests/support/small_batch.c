#include "support/small_batch.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>

#include <cmocka.h>

enum { DAY = 20260504 };

struct temporary_home small_home;

int small_home_make(void **state)
{
    (void)state;
    home_make(&small_home);
    small_law_write(&small_home);
    return 0;
}

int small_home_remove(void **state)
{
    (void)state;
    home_remove(&small_home);
    return 0;
}

static struct rulebook *book_of(struct laws *laws)
{
    struct problems problems = {0};
    laws->home = small_home.path;
    const struct law *law = laws_find(laws, "model/test", DAY, "", &problems);
    assert_int_equal(problems.count, 0);
    assert_non_null(law);
    problems_free(&problems);
    return law->book;
}

void small_batch_begin(struct small_batch *batch, const char *rules)
{
    home_write(&small_home, "rules/test.lua", rules);
    *batch = (struct small_batch){.job = cJSON_Parse(SMALL_JOB)};
    batch->book = book_of(&batch->laws);
}

void small_batch_end(struct small_batch *batch)
{
    cJSON_Delete(batch->job);
    laws_free(&batch->laws);
}

void small_batch_assert_as_alone(struct small_batch *batch, small_told *told)
{
    struct laws laws = {0};
    char *here = told(batch->book, batch->job), *alone = told(book_of(&laws), batch->job);
    assert_string_equal(here, alone);
    free(here);
    free(alone);
    laws_free(&laws);
}
