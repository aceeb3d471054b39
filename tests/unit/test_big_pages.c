/* Large blocks from the system: zeroed, where big pages can begin, given back whole. */
#include "base/big_pages.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

enum { MEGABYTE = 1024 * 1024, BIG_PAGE = 2 * MEGABYTE };

static void blocks_are_zeroed_and_apart(void **state)
{
    (void)state;
    enum { COUNT = 5 };
    unsigned char *blocks[COUNT];
    const size_t sizes[COUNT] = {1, 4097, BIG_PAGE, BIG_PAGE + 1, 3 * BIG_PAGE};
    for (size_t i = 0; i < COUNT; i++) {
        blocks[i] = big_pages_take(sizes[i]);
        assert_non_null(blocks[i]);
        assert_int_equal((uintptr_t)blocks[i] % BIG_PAGE, 0);
        for (size_t at = 0; at < sizes[i]; at++)
            if (blocks[i][at] != 0)
                fail_msg("byte %zu of block %zu is not 0", at, i);
        memset(blocks[i], (int)i + 1, sizes[i]);
    }
    for (size_t i = 0; i < COUNT; i++)
        for (size_t at = 0; at < sizes[i]; at++)
            if (blocks[i][at] != i + 1)
                fail_msg("byte %zu of block %zu was written to by another", at, i);
    for (size_t i = 0; i < COUNT; i++)
        big_pages_give_back(blocks[i], sizes[i]);
    big_pages_give_back(NULL, 7);
}

/* Pages of addresses that this process has, from Linux's proc(5), statm. */
static long pages_mapped(void)
{
    long pages = 0;
    FILE *file = fopen("/proc/self/statm", "r");
    assert_non_null(file);
    assert_int_equal(fscanf(file, "%ld", &pages), 1);
    fclose(file);
    return pages;
}

static void what_is_given_back_is_gone(void **state)
{
    (void)state;
    enum { BLOCK = 5 * MEGABYTE, SYSTEM_PAGE = 4096, TIMES = 20 };
    const long before = pages_mapped();
    for (int i = 0; i < TIMES; i++) {
        void *block = big_pages_take(BLOCK);
        assert_non_null(block);
        assert_true(pages_mapped() - before >= BLOCK / SYSTEM_PAGE);
        big_pages_give_back(block, BLOCK);
    }
    /* What reading the file takes for itself is less than one block. */
    assert_true(pages_mapped() - before < BLOCK / SYSTEM_PAGE);
}

static void too_much_is_refused(void **state)
{
    (void)state;
    assert_null(big_pages_take(SIZE_MAX));
    assert_null(big_pages_take(SIZE_MAX - BIG_PAGE));
    assert_null(big_pages_take(SIZE_MAX / 2));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(blocks_are_zeroed_and_apart),
        cmocka_unit_test(what_is_given_back_is_gone),
        cmocka_unit_test(too_much_is_refused),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
