/* published.h - checks against figures published outside this project, as
 * tables: what, where it is printed, the answer printed there, how far off is
 * still the same, and why.
 *
 * Kinds: a handbook or manual; a trade journal, association, column or how-to
 * page; a code, or a public agency's or officials' page restating one; a code
 * recalled, not read; and "ours", arithmetic made here. The last two guard
 * against change, but prove nothing.
 *
 * Where a printed answer is rounded, half of its last digit is the tolerance.
 */
#ifndef EAVEMARK_TESTS_PUBLISHED_H
#define EAVEMARK_TESTS_PUBLISHED_H

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

#include <cmocka.h>

enum kind { KIND_HANDBOOK, KIND_TRADE, KIND_CODE, KIND_RECALLED, KIND_OURS, KIND_COUNT };

/* How many checks of each kind have held; one per program. */
struct counted {
    size_t of[KIND_COUNT];
};

/* One answer computed by the engine against the one printed. */
struct check {
    enum kind kind;
    const char *name;   /* with its inputs */
    const char *source; /* and section or page */
    double computed, printed, tolerance;
    const char *why; /* of the tolerance */
};

/* A row of the table that tests/published/table.sh prints. */
static inline void published_row(const struct check *row)
{
    static const char *const KINDS[KIND_COUNT] = {"handbook", "trade page", "code", "recalled",
                                                  "ours"};
    if (getenv("EAVEMARK_TABLE") != NULL)
        printf("| %-10s | %s | %s | %.6g | %.6g | %+.4g | %.3g | %s |\n", KINDS[row->kind],
               row->name, row->source, row->printed, row->computed, row->computed - row->printed,
               row->tolerance, row->why);
}

/* Fails the test, naming every row that is off; counts the others. */
static inline void published_hold(struct counted *counted, const struct check *rows, size_t count)
{
    size_t off = 0;
    for (size_t i = 0; i < count; i++) {
        const struct check *row = &rows[i];
        published_row(row);
        if (fabs(row->computed - row->printed) <= row->tolerance) {
            counted->of[row->kind]++;
            continue;
        }
        off++;
        print_error("%s: %s prints %.6g, computed %.6g (within %.6g: %s)\n", row->name, row->source,
                    row->printed, row->computed, row->tolerance, row->why);
    }
    assert_int_equal(off, 0);
}

/* The program's last line. */
static inline int published_summary(const char *what, const struct counted *counted, int failed)
{
    const size_t published = counted->of[KIND_HANDBOOK] + counted->of[KIND_TRADE]
                             + counted->of[KIND_CODE];
    printf("%s: %zu published checks hold (%zu handbook, %zu trade page, %zu code or agency "
           "page); besides, %zu recalled and %zu ours, regression only\n",
           what, published, counted->of[KIND_HANDBOOK], counted->of[KIND_TRADE],
           counted->of[KIND_CODE], counted->of[KIND_RECALLED], counted->of[KIND_OURS]);
    return failed;
}

#endif
