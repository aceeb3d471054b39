#include "command/line.h"

#include <stdbool.h>
#include <string.h>

/* A file may end in empty lines; they are no jobs. */
static bool is_blank(const struct text *line)
{
    return strspn(text_string(line), " \t\r") == line->length;
}

/* A part of a line: how many bytes, of which any may be zero, and whether the line ends
 * behind them. fgets tells neither; the first line feed of a piece that held nothing else
 * does: a zero follows the line's own. */
static size_t piece_read(FILE *input, char *piece, size_t size, bool *ends)
{
    memset(piece, '\n', size);
    *ends = false;
    if (fgets(piece, (int)size, input) == NULL) {
        *ends = true;
        return 0;
    }
    const char *feed = memchr(piece, '\n', size);
    if (feed == NULL)
        return size - 1;
    *ends = feed + 1 < piece + size && feed[1] == '\0';
    return (size_t)(feed - piece) - (*ends ? 0 : 1);
}

/* In pieces, so that a line without end takes no more memory than the longest allowed. */
enum line_kind line_read(FILE *input, struct text *line)
{
    bool too_long = false, ends = false;
    char piece[4096];
    if (line->bytes != NULL)
        line->bytes[0] = '\0';
    line->length = 0;
    while (!ends) {
        const size_t length = piece_read(input, piece, sizeof(piece), &ends);
        too_long = too_long || line->length + length > LINE_LARGEST;
        if (!too_long)
            text_add_n(line, piece, length);
    }
    /* Read to its end all the same, so that the next line begins where it should. */
    if (too_long)
        return LINE_TOO_LONG;
    /* A last line without an end still counts. */
    if ((feof(input) || ferror(input)) && line->length == 0 && !line->failed)
        return LINE_END;
    if (line->length > 0 && line->bytes[line->length - 1] == '\r')
        line->bytes[--line->length] = '\0';
    return is_blank(line) ? LINE_BLANK : LINE_READ;
}
