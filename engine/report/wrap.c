#include "report/wrap.h"

#include "base/utf8.h"

#include <string.h>

/* The line being written: where further ones begin, and the column reached. */
struct line {
    struct text *out;
    size_t hang;
    size_t column;
};

/* Further lines begin under the words, not under the label. */
static void line_break(struct line *line)
{
    text_addf(line->out, "\n%*s", (int)line->hang, "");
    line->column = line->hang;
}

/* Adds a word character by character, breaking wherever the line is full. */
static void add_cut(struct line *line, const char *word, size_t length)
{
    while (length > 0) {
        if (line->column == WRAP_COLUMNS)
            line_break(line);
        const size_t bytes = utf8_length((const unsigned char *)word, length);
        const size_t step = bytes == 0 ? 1 : bytes;
        text_add_n(line->out, word, step);
        line->column++;
        word += step, length -= step;
    }
}

/* As utf8_columns, for a word inside a text; broken bytes count one each. */
static size_t columns_of(const char *word, size_t length)
{
    size_t columns = 0;
    while (length > 0) {
        const size_t bytes = utf8_length((const unsigned char *)word, length);
        const size_t step = bytes == 0 ? 1 : bytes;
        columns++;
        word += step, length -= step;
    }
    return columns;
}

static void add_word(struct line *line, const char *word, size_t length)
{
    const size_t columns = columns_of(word, length);
    const bool first = line->column == line->hang;
    /* A word longer than a line begins on a new one and is cut there. */
    if (!first && line->column + 1 + columns > WRAP_COLUMNS) {
        line_break(line);
    } else if (!first) {
        text_add(line->out, " ");
        line->column++;
    }
    add_cut(line, word, length);
}

/* The lead is written by the caller: the first line begins at `hang`. */
void wrap_add(struct text *out, size_t hang, const char *words)
{
    struct text safe = TEXT_EMPTY;
    utf8_add_printable(&safe, words);
    struct line line = {.out = out, .hang = hang, .column = hang};
    const char *at = text_string(&safe);
    while (*at != '\0') {
        at += strspn(at, " ");
        const size_t length = strcspn(at, " ");
        if (length > 0)
            add_word(&line, at, length);
        at += length;
    }
    text_add(out, "\n");
    if (safe.failed)
        out->failed = true;
    text_free(&safe);
}
