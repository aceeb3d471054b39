/* Numbers of rows in words, as a card's back has them. */
#include "report/spans.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

static void reads_as(const char *words, const size_t *numbers, size_t count)
{
    struct spans spans = {TEXT_EMPTY, 0, 0};
    for (size_t i = 0; i < count; i++)
        spans_add(&spans, numbers[i]);
    spans_end(&spans);
    assert_string_equal(text_string(&spans.words), words);
    text_free(&spans.words);
}

static void two_are_named_and_three_are_a_span(void **state)
{
    (void)state;
    static const size_t NUMBERS[] = {4, 5, 6, 9, 11, 12, 20, 21, 22, 23};
    reads_as("", NUMBERS, 0);
    reads_as("4", NUMBERS, 1);
    reads_as("4, 5", NUMBERS, 2);
    reads_as("4 to 6", NUMBERS, 3);
    reads_as("4 to 6, 9, 11, 12, 20 to 23", NUMBERS, 10);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(two_are_named_and_three_are_a_span)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
