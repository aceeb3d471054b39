/* The base room: arena, text, utf8, nearest, date, number, problem, file. */
#include "base/arena.h"
#include "base/date.h"
#include "base/file.h"
#include "base/format.h"
#include "base/nearest.h"
#include "base/number.h"
#include "base/problem.h"
#include "base/text.h"
#include "base/utf8.h"

#include <limits.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include <cmocka.h>

static void arena_gives_zeroed_aligned_blocks(void **state)
{
    (void)state;
    struct arena arena = {0};
    for (size_t size = 1; size < 40000; size = size * 2 + 1) {
        unsigned char *block = arena_alloc(&arena, size);
        assert_non_null(block);
        assert_int_equal((uintptr_t)block % _Alignof(max_align_t), 0);
        for (size_t i = 0; i < size; i++)
            assert_int_equal(block[i], 0);
        memset(block, 0xAA, size);
    }
    arena_free(&arena);
    assert_null(arena.blocks);
}

static bool holds_only(const unsigned char *bytes, size_t size, unsigned char value)
{
    for (size_t i = 0; i < size; i++)
        if (bytes[i] != value)
            return false;
    return true;
}

/* Memory that was written before comes back: what is given is zeroed all the same, and a
 * copy ends where it should. */
static void arena_zeroes_memory_that_was_used(void **state)
{
    (void)state;
    struct arena arena = {0};
    char words[300];
    memset(words, 'w', sizeof(words));
    for (int round = 0; round < 3; round++) {
        for (size_t size = 1; size < 300; size++) {
            assert_true(holds_only(arena_alloc(&arena, size), size, 0));
            assert_true(holds_only(arena_array(&arena, 3, size), 3 * size, 0));
            assert_int_equal(strlen(arena_copy_n(&arena, words, size)), size);
        }
        arena_free(&arena);
        for (int i = 0; i < 400; i++)
            memset(arena_room(&arena, 100, 20), 0xFF, 2000);
        arena_free(&arena);
    }
    assert_null(arena_room(&arena, SIZE_MAX / 2, 3));
    assert_true(arena.failed);
    arena_free(&arena);
}

static void arena_refuses_what_overflows_and_remembers(void **state)
{
    (void)state;
    struct arena arena = {0};
    assert_null(arena_array(&arena, SIZE_MAX / 2, 3));
    assert_true(arena.failed);
    assert_null(arena_alloc(&arena, SIZE_MAX));
    assert_true(arena.failed);
    arena_free(&arena);
    assert_false(arena.failed);
}

static void arena_copies_and_formats(void **state)
{
    (void)state;
    struct arena arena = {0};
    assert_string_equal(arena_copy(&arena, "ridge"), "ridge");
    assert_string_equal(arena_copy_n(&arena, "ridge vent", 5), "ridge");
    assert_string_equal(arena_format(&arena, "%s %d", "layer", 2), "layer 2");
    assert_null(arena_copy(&arena, NULL));
    assert_false(arena.failed);
    arena_free(&arena);
}

static void text_is_trimmed_and_spaced(void **state)
{
    (void)state;
    static const struct {
        const char *typed, *left;
    } rows[] = {{" two words\t", "two words"}, {"one", "one"}, {" \t ", ""}, {"", ""}};
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        const char *at = rows[i].typed;
        const size_t length = text_trim(&at, strlen(at));
        assert_int_equal(length, strlen(rows[i].left));
        assert_memory_equal(at, rows[i].left, length);
    }
    struct text text = TEXT_EMPTY;
    text_add_spaced(&text, "wood_shake_x", strlen("wood_shake"));
    assert_string_equal(text_string(&text), "wood shake");
    text_free(&text);
}

static void text_grows_and_stays_terminated(void **state)
{
    (void)state;
    struct text text = TEXT_EMPTY;
    assert_string_equal(text_string(&text), "");
    for (int i = 0; i < 1000; i++)
        text_addf(&text, "%03d,", i);
    text_add_n(&text, "end and more", 3);
    assert_int_equal(text.length, 4003);
    assert_int_equal(strlen(text_string(&text)), 4003);
    assert_memory_equal(text_string(&text) + 3996, "999,end", 7);
    text_free(&text);
    assert_null(text.bytes);
}

/* The same letters and the same length, in any room; what is not put together by hand too. */
#define assert_as_printf(...)                                                \
    do {                                                                     \
        char expected[400], given[400];                                      \
        const int whole = snprintf(expected, sizeof(expected), __VA_ARGS__); \
        for (size_t room = 1; room <= (size_t)whole + 3; room++) {           \
            memset(given, '#', sizeof(given));                               \
            snprintf(expected, room, __VA_ARGS__);                           \
            assert_int_equal(format_to(given, room, __VA_ARGS__), whole);    \
            assert_string_equal(given, expected);                            \
            assert_int_equal(given[room], '#');                              \
        }                                                                    \
        assert_int_equal(format_to(NULL, 0, __VA_ARGS__), whole);            \
    } while (0)

static void formats_say_what_printf_says(void **state)
{
    (void)state;
    /* Not known to the compiler, which would put them together itself. */
    const char *volatile some = "some words", *volatile none = "";
    volatile int few = 4, many = 400, all = -1, nothing = 0;
    assert_as_printf("%s and 100 %%: %s%s.", some, none, some);
    assert_as_printf("[%.*s|%.*s|%.*s|%.*s]", few, some, many, some, all, some, nothing, some);
    assert_as_printf("%d %d %d %d %d", 0, 7, -7, INT_MAX, INT_MIN);
    assert_as_printf("%ld %ld %lu", LONG_MAX, LONG_MIN, ULONG_MAX);
    assert_as_printf("%zu of %zu", (size_t)0, SIZE_MAX);
    assert_as_printf("%s: %g of %s", some, 0.5, some);
    assert_as_printf("%s %03d %5s %.3s %c %x %lld", some, few, some, some, 'c', 255u, -1ll);
    assert_as_printf("%s", none);
}

/* Around what is written at once, and around where a text must grow: nothing is lost. */
static void formatted_words_of_any_length_are_whole(void **state)
{
    (void)state;
    struct arena arena = {0};
    char words[600];
    memset(words, 'x', sizeof(words));
    for (int length = 200; length < 600; length++) {
        struct text text = TEXT_EMPTY;
        text_add(&text, "[");
        text_addf(&text, "%.*s]", length, words);
        assert_int_equal(text.length, (size_t)length + 2);
        assert_int_equal(strlen(text_string(&text)), text.length);
        assert_memory_equal(text_string(&text) + 1, words, (size_t)length);
        assert_int_equal(text_string(&text)[length + 1], ']');
        const char *copy = arena_format(&arena, "[%.*s]", length, words);
        assert_string_equal(copy, text_string(&text));
        text_free(&text);
    }
    arena_free(&arena);
}

/* The Unicode standard, table 3-7 (well-formed UTF-8 byte sequences). */
static void utf8_follows_the_table_of_the_standard(void **state)
{
    (void)state;
    static const struct {
        const char *bytes;
        size_t length;
    } CASES[] = {
        {"a", 1},
        {"\xC2\x80", 2},
        {"\xDF\xBF", 2},
        {"\xE0\xA0\x80", 3},
        {"\xED\x9F\xBF", 3},
        {"\xEF\xBF\xBF", 3},
        {"\xF0\x90\x80\x80", 4},
        {"\xF4\x8F\xBF\xBF", 4},
        {"\x80", 0},
        {"\xC0\x80", 0},
        {"\xC1\xBF", 0},
        {"\xE0\x9F\xBF", 0},
        {"\xED\xA0\x80", 0},
        {"\xF0\x8F\xBF\xBF", 0},
        {"\xF4\x90\x80\x80", 0},
        {"\xF5\x80\x80\x80", 0},
        {"\xC2", 0},
        {"\xE2\x82", 0},
        {"\xFF", 0},
        {"\xC2 ", 0},
    };
    for (size_t i = 0; i < sizeof(CASES) / sizeof(CASES[0]); i++)
        assert_int_equal(utf8_length((const unsigned char *)CASES[i].bytes, strlen(CASES[i].bytes)),
                         CASES[i].length);
    assert_int_equal(utf8_length((const unsigned char *)"", 0), 0);
    assert_int_equal(utf8_columns("5\xE2\x80\xB3 de\xC3\xA7k"), 7);
}

static void utf8_printable_moves_no_cursor(void **state)
{
    (void)state;
    struct text out = TEXT_EMPTY;
    utf8_add_printable(&out, "a\x1B[2J\n\xC2\x85\xE2\x80\xAE\xEF\xBB\xBF\xFF\xC3\xA9");
    assert_string_equal(text_string(&out),
                        "a\\x1b[2J\\x0a\\u{0085}\\u{202e}\\u{feff}\\xff\xC3\xA9");
    text_free(&out);
    /* The first and the last that print, and what stands beside them. */
    utf8_add_printable(&out, " ~\x7F\x1F~ \x7F");
    utf8_add_printable(&out, "");
    assert_string_equal(text_string(&out), " ~\\x7f\\x1f~ \\x7f");
    text_free(&out);
}

static void nearest_counts_slips(void **state)
{
    (void)state;
    assert_int_equal(nearest_distance("pitch", "pitch"), 0);
    assert_int_equal(nearest_distance("pich", "pitch"), 1);
    assert_int_equal(nearest_distance("mian", "main"), 1);
    assert_int_equal(nearest_distance("", "deck"), 4);
    assert_int_equal(nearest_distance("Tear off", "tear-off"), 0);
    assert_int_equal(nearest_distance("eave_ft", "ridge_ft"), 4);
    char big[NEAREST_LONGEST + 2];
    memset(big, 'x', sizeof(big) - 1);
    big[sizeof(big) - 1] = '\0';
    assert_true(nearest_distance(big, "x") == SIZE_MAX);
    big[NEAREST_LONGEST] = '\0';
    assert_int_equal(nearest_distance(big, "x"), NEAREST_LONGEST - 1);
}

static void nearest_keeps_the_closest(void **state)
{
    (void)state;
    struct nearest nearest;
    nearest_start(&nearest, "underlaymnet");
    nearest_offer(&nearest, "deck");
    assert_null(nearest.name);
    nearest_offer(&nearest, "underlays");
    nearest_offer(&nearest, "underlayment");
    nearest_offer(&nearest, "underlayments");
    assert_string_equal(nearest.name, "underlayment");
    assert_int_equal(nearest.distance, 1);
}

static void date_knows_the_calendar(void **state)
{
    (void)state;
    assert_int_equal(date_parse("2026-03-01"), 20260301);
    assert_int_equal(date_parse("2024-02-29"), 20240229);
    assert_int_equal(date_parse("2000-02-29"), 20000229); /* divisible by 400 */
    assert_int_equal(date_parse("1900-02-29"), 0);        /* by 100 only */
    static const char *const NOT[] = {
        "2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "2026-01-00",
        "1899-12-31", "2200-01-01", "2026-3-1",   "2026/03/01", "2026-03-01 ",
        " 2026-03-0", "",           "2026-03-0x",
    };
    for (size_t i = 0; i < sizeof(NOT) / sizeof(NOT[0]); i++)
        assert_int_equal(date_parse(NOT[i]), 0);
    static const long PAIRS[][2] = {{20190731, 20190801}, {20261231, 20270101},
                                    {20240228, 20240229}, {20240229, 20240301},
                                    {20250228, 20250301}, {20260309, 20260310}};
    for (size_t i = 0; i < sizeof(PAIRS) / sizeof(PAIRS[0]); i++) {
        assert_int_equal(date_after(PAIRS[i][0]), PAIRS[i][1]);
        assert_int_equal(date_before(PAIRS[i][1]), PAIRS[i][0]);
    }
    char out[16];
    date_write(20260301, out);
    assert_string_equal(out, "2026-03-01");
}

static void number_prints_as_a_report_does(void **state)
{
    (void)state;
    static const struct {
        double value;
        const char *unit, *written;
    } CASES[] = {
        {1152, "sqin", "1,152 sq in"},
        {0.4375, "in", "7/16 in"},
        {22.5, "ft", "22.5 ft"},
        {4, "rise_in_12", "4:12"},
        {0.125, "rise_in_12", "1/8:12"},
        {0.5, "rise_in_12", "1/2:12"},
        {0.13, "rise_in_12", "0.13:12"},
        {2.5, "rise_in_12", "2.5:12"},
        {0, "rise_in_12", "0:12"},
        {1, "layers", "1 layer"},
        {1, "plies", "1 ply"},
        {2, "nails", "2 nails"},
        {1978, "year", "1978"},
        {-0.0001, "in", "0 in"},
        {-1234567, "ft", "-1,234,567 ft"},
        {17.5, "percent", "17.5 %"},
        {3, NULL, "3"},
        {999.9996, "in", "1,000 in"},
        {20190731, "date", "2019-07-31"},
    };
    char out[96];
    for (size_t i = 0; i < sizeof(CASES) / sizeof(CASES[0]); i++) {
        number_write_unit(CASES[i].value, CASES[i].unit, out);
        assert_string_equal(out, CASES[i].written);
    }
}

/* What is measured against the taped figure meets the figure itself. */
static void number_is_taped_on_the_safe_side(void **state)
{
    (void)state;
    assert_float_equal(number_on_tape(55.285, SENSE_AT_LEAST, "in"), 55.3125, 0);
    assert_float_equal(number_on_tape(55.285, SENSE_AT_MOST, "in"), 55.25, 0);
    assert_float_equal(number_on_tape(55.3125, SENSE_AT_LEAST, "in"), 55.3125, 0);
    assert_float_equal(number_on_tape(24.0000001, SENSE_AT_LEAST, "in"), 24, 0); /* prints as 24 */
    assert_float_equal(number_on_tape(55.285, SENSE_EQUALS, "in"), 55.285, 0);
    assert_float_equal(number_on_tape(55.285, SENSE_AT_LEAST, "ft"), 55.285, 0);
    assert_float_equal(number_on_tape(0.019, SENSE_AT_LEAST, "in"), 0.019, 0); /* gauged */
    assert_true(isnan(number_on_tape(NAN, SENSE_AT_LEAST, "in")));
}

static void number_compares_within_half_the_last_digit(void **state)
{
    (void)state;
    assert_true(number_at_least(3.9995, 4, "in"));
    assert_false(number_at_least(3.9994, 4, "in"));
    assert_true(number_at_most(4.0005, 4, "in"));
    assert_false(number_at_most(4.0006, 4, "in"));
    assert_true(number_equals(0.1 + 0.2, 0.3, "in"));
    assert_false(number_at_most(3, 2, "layers"));
    assert_true(number_at_most(2, 2, "layers"));
    /* Gages are whole, and a month's mean prints to a tenth of a degree. */
    assert_false(number_at_most(29, 28, "gage"));
    assert_int_equal(number_decimals("gage"), 0);
    assert_false(number_at_most(25.1, 25, "F"));
    assert_true(number_at_most(25.04, 25, "F"));
}

static void problem_says_place_and_message(void **state)
{
    (void)state;
    struct problems list = {0};
    struct text out = TEXT_EMPTY;
    problem_at_line(&list, PROBLEM_JOB, "job.json", 3, 14, "bad %s", "comma");
    problem_at_line(&list, PROBLEM_RULES, "x.lua", 7, 0, "oh");
    problem_at(&list, PROBLEM_JOB, "job.json", "/roof", "\x1B[31m");
    problem_at(&list, PROBLEM_JOB, "job.json", "", "whole");
    problems_write(&list, &out);
    assert_string_equal(text_string(&out), "job.json:3:14: bad comma\n"
                                           "x.lua:7: oh\n"
                                           "job.json: /roof: \\x1b[31m\n"
                                           "job.json: whole\n");
    assert_int_equal(list.count, 4);
    assert_true(problems_any(&list, PROBLEM_RULES));
    text_free(&out);
    problems_free(&list);
    assert_false(problems_any(&list, PROBLEM_RULES));
}

static void problem_of_no_memory_is_said(void **state)
{
    (void)state;
    struct problems list = {0};
    struct text out = TEXT_EMPTY;
    problem_out_of_memory(&list);
    problems_write(&list, &out);
    assert_string_equal(text_string(&out), "eavemark: out of memory\n");
    text_free(&out);
    problems_free(&list);
}

static void file_is_read_up_to_its_limit(void **state)
{
    (void)state;
    char path[] = "/tmp/eavemark-test-XXXXXX";
    const int handle = mkstemp(path);
    assert_true(handle >= 0);
    assert_int_equal(write(handle, "a\0b", 3), 3);
    char *text = NULL;
    size_t length = 0;
    assert_int_equal(file_read(&text, &length, path, 3), FILE_READ);
    assert_int_equal(length, 3);
    assert_memory_equal(text, "a\0b", 4);
    free(text);
    assert_int_equal(file_read(&text, &length, path, 2), FILE_TOO_LARGE);
    close(handle);
    unlink(path);
    assert_int_equal(file_read(&text, &length, path, 2), FILE_MISSING);
    assert_int_equal(file_read(&text, &length, "/tmp", 2), FILE_NOT_A_FILE);
    /* A stream has no size: it is refused once it passes the limit. */
    assert_int_equal(file_read(&text, &length, "/dev/zero", 100000), FILE_TOO_LARGE);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(arena_gives_zeroed_aligned_blocks),
        cmocka_unit_test(arena_zeroes_memory_that_was_used),
        cmocka_unit_test(arena_refuses_what_overflows_and_remembers),
        cmocka_unit_test(arena_copies_and_formats),
        cmocka_unit_test(text_is_trimmed_and_spaced),
        cmocka_unit_test(text_grows_and_stays_terminated),
        cmocka_unit_test(formats_say_what_printf_says),
        cmocka_unit_test(formatted_words_of_any_length_are_whole),
        cmocka_unit_test(utf8_follows_the_table_of_the_standard),
        cmocka_unit_test(utf8_printable_moves_no_cursor),
        cmocka_unit_test(nearest_counts_slips),
        cmocka_unit_test(nearest_keeps_the_closest),
        cmocka_unit_test(date_knows_the_calendar),
        cmocka_unit_test(number_prints_as_a_report_does),
        cmocka_unit_test(number_compares_within_half_the_last_digit),
        cmocka_unit_test(number_is_taped_on_the_safe_side),
        cmocka_unit_test(problem_says_place_and_message),
        cmocka_unit_test(problem_of_no_memory_is_said),
        cmocka_unit_test(file_is_read_up_to_its_limit),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
