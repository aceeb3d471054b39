#include "support/all_listed.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

static size_t size_of(enum part_kind kind)
{
    static const size_t SIZES[] = {
        [FLAG] = sizeof(bool),     [WORD] = sizeof(int),    [DAY] = sizeof(long),
        [NUMBER] = sizeof(double), [TEXT] = sizeof(char *), [TEXTS] = sizeof(char *),
        [LIST] = sizeof(void *)};
    return SIZES[kind];
}

void assert_all_listed(const struct shape *shape)
{
    bool listed[1024] = {false};
    assert_true(shape->size <= sizeof(listed));
    if (shape->next != 0)
        memset(listed + shape->next, 1, sizeof(void *));
    for (size_t i = 0; i < shape->part_count; i++) {
        const struct part *part = &shape->parts[i];
        memset(listed + part->at, 1,
               part->kind == INSIDE ? part->shape->size : size_of(part->kind));
        if (part->kind == TEXTS)
            memset(listed + part->count_at, 1, sizeof(size_t));
        if (part->shape != NULL)
            assert_all_listed(part->shape);
    }
    size_t gap = 0;
    for (size_t i = 0; i < shape->size; i++) {
        gap = listed[i] ? 0 : gap + 1;
        assert_true(gap < sizeof(void *));
    }
}
