/* The heap of one Lua state: what it hands out, what it refuses, and that
 * putting its copy back leaves no trace of what came after. */
#include "sandbox/heap.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <cmocka.h>

enum { MEGABYTE = 1024 * 1024 };

static void open_heap(struct heap *heap)
{
    assert_int_equal(heap_open(heap, 4 * MEGABYTE), 0);
    heap_allow(heap, 4 * MEGABYTE);
}

static void blocks_are_aligned_and_apart(void **state)
{
    (void)state;
    enum { COUNT = 700 };
    struct heap heap;
    unsigned char *blocks[COUNT];
    open_heap(&heap);
    for (size_t i = 0; i < COUNT; i++) {
        blocks[i] = heap_allocate(&heap, NULL, 0, i + 1);
        assert_non_null(blocks[i]);
        assert_int_equal((uintptr_t)blocks[i] % _Alignof(max_align_t), 0);
        memset(blocks[i], (int)(i % 251), i + 1);
    }
    for (size_t i = 0; i < COUNT; i++)
        for (size_t at = 0; at <= i; at++)
            assert_int_equal(blocks[i][at], i % 251);
    heap_close(&heap);
}

static void a_block_given_back_is_used_again(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    static const size_t sizes[] = {1, 16, 17, 512, 513, 1024, 1025, 5000, 70000};
    for (size_t i = 0; i < sizeof(sizes) / sizeof(sizes[0]); i++) {
        void *first = heap_allocate(&heap, NULL, 0, sizes[i]);
        const size_t used = heap_used(&heap);
        assert_null(heap_allocate(&heap, first, sizes[i], 0));
        assert_ptr_equal(heap_allocate(&heap, NULL, 0, sizes[i]), first);
        assert_int_equal(heap_used(&heap), used);
    }
    heap_close(&heap);
}

/* Without a block, Lua passes a type tag where the old size would stand. */
static void a_type_tag_is_not_a_size(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    const size_t used = heap_used(&heap);
    assert_non_null(heap_allocate(&heap, NULL, 8, 32));
    assert_int_equal(heap_used(&heap) - used, 32);
    assert_null(heap_allocate(&heap, NULL, 8, 0));
    heap_close(&heap);
}

static void growing_and_shrinking_keep_the_bytes(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    unsigned char *block = NULL;
    size_t size = 0;
    static const size_t steps[] = {3, 15, 16, 100, 600, 2000, 100000, 300, 20, 7};
    for (size_t i = 0; i < sizeof(steps) / sizeof(steps[0]); i++) {
        block = heap_allocate(&heap, block, size, steps[i]);
        assert_non_null(block);
        for (size_t at = 0; at < size && at < steps[i]; at++)
            assert_int_equal(block[at], at % 253);
        size = steps[i];
        for (size_t at = 0; at < size; at++)
            block[at] = (unsigned char)(at % 253);
    }
    heap_close(&heap);
}

static void the_arena_is_a_cap(void **state)
{
    (void)state;
    struct heap heap;
    assert_int_equal(heap_open(&heap, MEGABYTE), 0);
    heap_allow(&heap, 100 * (size_t)MEGABYTE);
    assert_null(heap_allocate(&heap, NULL, 0, MEGABYTE));
    assert_true(heap_refused(&heap));
    heap_allow(&heap, 100 * (size_t)MEGABYTE);
    assert_false(heap_refused(&heap));
    size_t count = 0;
    while (heap_allocate(&heap, NULL, 0, 1000) != NULL)
        count++;
    assert_in_range(count, 1000, 1024);
    assert_true(heap_refused(&heap));
    assert_true(heap_used(&heap) <= MEGABYTE);
    heap_close(&heap);
}

/* What is given back is not credited: garbage without end meets the limit. */
static void the_allowance_is_a_cap_in_total(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    heap_allow(&heap, 1000 * 16);
    for (int i = 0; i < 1000; i++) {
        void *block = heap_allocate(&heap, NULL, 0, 16);
        assert_non_null(block);
        heap_allocate(&heap, block, 16, 0);
    }
    assert_null(heap_allocate(&heap, NULL, 0, 1));
    assert_true(heap_refused(&heap));
    heap_close(&heap);
}

static void a_refused_growth_leaves_the_block(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    char *block = heap_allocate(&heap, NULL, 0, 100);
    strcpy(block, "as it was");
    heap_allow(&heap, 0);
    assert_null(heap_allocate(&heap, block, 100, 5000));
    assert_string_equal(block, "as it was");
    heap_close(&heap);
}

/* Lua counts on it (lmem.c, luaM_shrinkvector). */
static void a_shrink_never_fails(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    char *block = heap_allocate(&heap, NULL, 0, 5000);
    strcpy(block, "short");
    heap_allow(&heap, 0);
    assert_ptr_equal(heap_allocate(&heap, block, 5000, 10), block);
    assert_string_equal(block, "short");
    heap_close(&heap);
}

static void no_size_overflows(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    assert_null(heap_allocate(&heap, NULL, 0, SIZE_MAX));
    assert_null(heap_allocate(&heap, NULL, 0, (size_t)1 << 31));
    assert_null(heap_allocate(&heap, NULL, 0, SIZE_MAX / 2 + 1));
    assert_non_null(heap_allocate(&heap, NULL, 0, 64));
    heap_close(&heap);
}

static void the_copy_puts_back_bytes_and_bookkeeping(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    char *kept = heap_allocate(&heap, NULL, 0, 64);
    char *freed = heap_allocate(&heap, NULL, 0, 64);
    strcpy(kept, "before");
    heap_allocate(&heap, freed, 64, 0);
    const size_t used = heap_used(&heap);
    assert_int_equal(heap_snapshot(&heap), 0);
    char *orders[2][8];
    for (int round = 0; round < 2; round++) {
        strcpy(kept, "changed");
        for (int i = 0; i < 8; i++)
            orders[round][i] = heap_allocate(&heap, NULL, 0, 64 + (size_t)i * 30);
        heap_restore(&heap);
        assert_string_equal(kept, "before");
        assert_int_equal(heap_used(&heap), used);
    }
    /* The same requests after it are answered alike. */
    assert_memory_equal(orders[0], orders[1], sizeof(orders[0]));
    assert_ptr_equal(orders[0][0], freed);
    heap_close(&heap);
}

static void a_later_copy_takes_the_place_of_an_earlier(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    char *text = heap_allocate(&heap, NULL, 0, 16);
    strcpy(text, "first");
    assert_int_equal(heap_snapshot(&heap), 0);
    strcpy(text, "second");
    assert_int_equal(heap_snapshot(&heap), 0);
    strcpy(text, "third");
    heap_restore(&heap);
    assert_string_equal(text, "second");
    heap_close(&heap);
}

static void without_a_copy_nothing_is_put_back(void **state)
{
    (void)state;
    struct heap heap;
    open_heap(&heap);
    char *text = heap_allocate(&heap, NULL, 0, 16);
    strcpy(text, "kept");
    heap_restore(&heap);
    assert_string_equal(text, "kept");
    heap_close(&heap);
    heap_close(&heap); /* closing twice is harmless */
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(blocks_are_aligned_and_apart),
        cmocka_unit_test(a_block_given_back_is_used_again),
        cmocka_unit_test(a_type_tag_is_not_a_size),
        cmocka_unit_test(growing_and_shrinking_keep_the_bytes),
        cmocka_unit_test(the_arena_is_a_cap),
        cmocka_unit_test(the_allowance_is_a_cap_in_total),
        cmocka_unit_test(a_refused_growth_leaves_the_block),
        cmocka_unit_test(a_shrink_never_fails),
        cmocka_unit_test(no_size_overflows),
        cmocka_unit_test(the_copy_puts_back_bytes_and_bookkeeping),
        cmocka_unit_test(a_later_copy_takes_the_place_of_an_earlier),
        cmocka_unit_test(without_a_copy_nothing_is_put_back),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
