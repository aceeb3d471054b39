#include "support/report_words.h"

#include "base/text.h"
#include "base/utf8.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

void assert_has(const char *report, const char *words)
{
    if (report == NULL || strstr(report, words) == NULL)
        fail_msg("\"%s\" is not in:\n%s", words, report == NULL ? "(nothing)" : report);
}

void assert_has_not(const char *report, const char *words)
{
    if (report == NULL || strstr(report, words) != NULL)
        fail_msg("\"%s\" is in:\n%s", words, report == NULL ? "(nothing)" : report);
}

void assert_order(const char *report, const char *const *words, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        const char *at = strstr(report, words[i]);
        if (at == NULL)
            fail_msg("\"%s\" is missing or too early in:\n%s", words[i], report);
        report = at + strlen(words[i]);
    }
}

void assert_tame(const char *report)
{
    for (const char *line = report; *line != '\0';) {
        const size_t length = strcspn(line, "\n");
        char *copy = strndup(line, length);
        assert_non_null(copy);
        if (utf8_columns(copy) > 80)
            fail_msg("%zu columns: %s", utf8_columns(copy), copy);
        struct text safe = TEXT_EMPTY;
        utf8_add_printable(&safe, copy);
        assert_string_equal(text_string(&safe), copy);
        text_free(&safe);
        free(copy);
        line += length + (line[length] == '\n');
    }
}
