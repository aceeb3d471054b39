#include "job/scan.h"

#include "base/utf8.h"
#include "job/tree.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Bytes that are no character count as one column each. */
static size_t character_at(const struct scan *scan, size_t at)
{
    const size_t length = utf8_length((const unsigned char *)scan->text + at, scan->length - at);
    return length == 0 ? 1 : length;
}

/* Counted only when something is reported: a column is a character, not a byte. */
static int column_of(const struct scan *scan, size_t at)
{
    int column = 1;
    for (size_t i = scan->line_start; i < at; i += character_at(scan, i))
        column++;
    return column;
}

/* False when nothing more is to be listed; the last place in the list says that more
 * follows. */
bool scan_counts(struct scan *scan)
{
    if (scan->likely != NULL) {
        scan_again(scan);
        return false;
    }
    scan->found++;
    if (scan->found < JSON_MOST_PROBLEMS)
        return true;
    if (scan->found == JSON_MOST_PROBLEMS)
        problem_at_line(scan->problems, PROBLEM_JOB, scan->file, scan->line, 0,
                        "more problems follow; only the first %d are listed",
                        JSON_MOST_PROBLEMS - 1);
    scan->stopped = true;
    return false;
}

void scan_report(struct scan *scan, size_t at, const char *format, ...)
{
    if (!scan_counts(scan))
        return;
    char message[512];
    va_list args;
    va_start(args, format);
    vsnprintf(message, sizeof(message), format, args);
    va_end(args);
    problem_at_line(scan->problems, PROBLEM_JOB, scan->file, scan->line, column_of(scan, at), "%s",
                    message);
}

/* Counts as a problem, so that a half-read text is never taken for a sound one. */
void scan_out_of_memory(struct scan *scan)
{
    scan->found++;
    scan->stopped = true;
    problem_out_of_memory(scan->problems);
}

static const char *expected_said(const struct scan *scan)
{
    /* At the top there is no level: then a value or the end is expected. */
    const bool object = scan->depth > 0 && scan->levels[scan->depth - 1].object;
    switch (scan->expect) {
    case SCAN_VALUE:
        return "a value";
    case SCAN_FIRST_KEY:
        return "a name in double quotes or \"}\"";
    case SCAN_NEXT_KEY:
        return "a name in double quotes";
    case SCAN_COLON:
        return "\":\"";
    case SCAN_FIRST_ITEM:
        return "a value or \"]\"";
    case SCAN_NEXT_ITEM:
        return "a value";
    case SCAN_COMMA:
        return object ? "\",\" or \"}\"" : "\",\" or \"]\"";
    case SCAN_END:
        return "nothing more";
    }
    return "";
}

/* For habits from other languages. */
static const char *hint_for(char c)
{
    switch (c) {
    case '\'':
        return "; texts stand in double quotes";
    case '/':
    case '#':
        return "; JSON has no comments";
    default:
        return "";
    }
}

/* What stands at the current place, short enough to quote. */
static void found_said(const struct scan *scan, char out[64])
{
    const char *from = scan->text + scan->at;
    size_t length = 0;
    while (length < 40 && scan->at + length < scan->length && scan_is_word(from[length]))
        length++;
    if (length == 0)
        length = character_at(scan, scan->at);
    if (from[0] == '"')
        snprintf(out, 64, "a text");
    else if (from[0] == '\0')
        snprintf(out, 64, "a NUL byte");
    else
        snprintf(out, 64, "\"%.*s\"", (int)length, from);
}

/* After a wrong token nothing that follows can be trusted: one report, and an end. */
static void stop_unexpected(struct scan *scan)
{
    const char c = scan->text[scan->at];
    char found[64];
    found_said(scan, found);
    if ((scan->expect == SCAN_NEXT_KEY && c == '}') || (scan->expect == SCAN_NEXT_ITEM && c == ']'))
        scan_report(scan, scan->at, "a comma stands before %s; take it out", found);
    else if (scan->expect == SCAN_END)
        scan_report(scan, scan->at, "expected nothing after the end of the job, found %s%s", found,
                    hint_for(c));
    else
        scan_report(scan, scan->at, "expected %s, found %s%s", expected_said(scan), found,
                    hint_for(c));
    scan->stopped = true;
}

/* A value at the top ends the job; anywhere else a comma or the end of what holds it must
 * follow. */
static void value_done(struct scan *scan)
{
    if (scan->depth > 0) {
        scan->expect = SCAN_COMMA;
        return;
    }
    scan->expect = SCAN_END;
}

/* Keys of all open levels stand on one stack; a level knows where its own begin. */
static void open_level(struct scan *scan, bool object)
{
    if (scan->depth == JSON_DEEPEST) {
        scan_report(scan, scan->at, "nested more than %d deep; a job needs 5", JSON_DEEPEST);
        scan->stopped = true;
        return;
    }
    const struct field *const field = scan_known_field(scan);
    cJSON *node = scan_tree_level(scan, object);
    scan->levels[scan->depth++] = (struct scan_level){.object = object,
                                                      .line = scan->line,
                                                      .first_key = scan->key_count,
                                                      .node = node,
                                                      .field = field};
    scan->expect = object ? SCAN_FIRST_KEY : SCAN_FIRST_ITEM;
    scan->at++;
}

static void close_level(struct scan *scan)
{
    if (scan->levels[scan->depth - 1].object)
        scan_keys_close(scan);
    scan->depth--;
    scan->at++;
    value_done(scan);
}

/* At the top only an object will do, but a text that is something else is still read
 * through for other faults. */
static void read_value(struct scan *scan, char c)
{
    if (scan->depth == 0 && c != '{' && (c == '[' || c == '"' || scan_is_word(c)))
        scan_report(scan, scan->at, "a job is an object { ... }, not %s",
                    c == '[' ? "a list" : "a single value");
    if (c == '{' || c == '[') {
        open_level(scan, c == '{');
    } else if (c == '"') {
        const size_t from = scan->at + 1;
        if (scan_string(scan))
            scan_tree_text(scan, from, scan->at - 1);
        value_done(scan);
    } else if (scan_is_word(c)) {
        scan_word(scan);
        value_done(scan);
    } else {
        stop_unexpected(scan);
    }
}

/* The key between its quotes; an unsound one is kept too, so that its value has a place to be
 * named by. */
static void read_key(struct scan *scan)
{
    const size_t from = scan->at + 1;
    const bool sound = scan_string(scan);
    if (!scan->stopped)
        scan_key_add(scan, from, scan->at - 1, sound);
    scan->expect = SCAN_COLON;
}

/* After a value: the end of what holds it, or the next. */
static void read_comma(struct scan *scan, char c)
{
    struct scan_level *level = &scan->levels[scan->depth - 1];
    if (c == (level->object ? '}' : ']')) {
        close_level(scan);
    } else if (c == ',') {
        level->item++;
        scan->expect = level->object ? SCAN_NEXT_KEY : SCAN_NEXT_ITEM;
        scan->at++;
    } else {
        stop_unexpected(scan);
    }
}

/* One token, by what may come next: the grammar of RFC 8259 as a small machine, without
 * recursion. */
static void scan_next(struct scan *scan)
{
    const char c = scan->text[scan->at];
    switch (scan->expect) {
    case SCAN_COMMA:
        read_comma(scan, c);
        return;
    case SCAN_FIRST_KEY:
    case SCAN_NEXT_KEY:
        if (c == '"' && scan_known_members(scan))
            return;
        if (c == '"')
            read_key(scan);
        else if (c == '}' && scan->expect == SCAN_FIRST_KEY)
            close_level(scan);
        else
            stop_unexpected(scan);
        return;
    case SCAN_COLON:
        if (c != ':')
            stop_unexpected(scan);
        else
            scan->expect = SCAN_VALUE, scan->at++;
        return;
    case SCAN_FIRST_ITEM:
        if (c == ']')
            close_level(scan);
        else
            read_value(scan, c);
        return;
    case SCAN_VALUE:
    case SCAN_NEXT_ITEM:
        read_value(scan, c);
        return;
    case SCAN_END:
        stop_unexpected(scan);
        return;
    }
}

/* RFC 8259 section 2: space, tab, line feed, carriage return; no others. */
static void skip_space(struct scan *scan)
{
    for (; scan->at < scan->length; scan->at++) {
        const char c = scan->text[scan->at];
        if (c == '\n') {
            scan->line++;
            scan->line_start = scan->at + 1;
        } else if (c != ' ' && c != '\t' && c != '\r') {
            return;
        }
    }
}

/* A file that was not copied whole looks like this: say where the open piece began. */
static void report_cut_short(struct scan *scan)
{
    if (scan->depth == 0) {
        scan_report(scan, scan->at, "holds no JSON; a job is an object { ... }");
        return;
    }
    const struct scan_level *level = &scan->levels[scan->depth - 1];
    scan_report(scan, scan->at,
                "expected %s, but the text ends here; the %s begun on line %d is open",
                expected_said(scan), level->object ? "object" : "list", level->line);
}

/* What an editor may put before the text. */
static void read_mark(struct scan *scan)
{
    if (scan->length >= 3 && memcmp(scan->text, "\xEF\xBB\xBF", 3) == 0) {
        scan_report(scan, 0, "begins with a byte order mark; save it as UTF-8 without one");
        scan->at = 3;
    } else if (scan->length >= 2
               && (memcmp(scan->text, "\xFF\xFE", 2) == 0
                   || memcmp(scan->text, "\xFE\xFF", 2) == 0)) {
        scan_report(scan, 0, "is UTF-16; save it as UTF-8");
        scan->stopped = true;
    }
}

/* What the tree is to hold of the text lies in its arena. Zeroes follow it, so that plain values
 * are read without a look where it ends. */
static bool copy_text(struct scan *scan)
{
    enum { ZEROES = 8 };
    scan->copy = arena_room(scan->into, scan->length + ZEROES, 1);
    if (scan->copy == NULL) {
        scan_out_of_memory(scan);
        return false;
    }
    memcpy(scan->copy, scan->text, scan->length);
    memset(scan->copy + scan->length, 0, ZEROES);
    scan->text = scan->copy;
    return true;
}

/* Reports everything wrong that does not make the rest unreadable: bad escapes, numbers
 * and repeated keys do not stop it. */
cJSON *scan_text(const char *text, size_t length, const char *file, const struct fields *likely,
                 struct arena *into, struct problems *problems)
{
    struct scan scan = {.text = text,
                        .length = length,
                        .line = 1,
                        .file = file,
                        .problems = problems,
                        .expect = SCAN_VALUE,
                        .into = into,
                        .likely = likely};
    if (into != NULL && !copy_text(&scan))
        return NULL;
    read_mark(&scan);
    while (!scan.stopped) {
        skip_space(&scan);
        if (scan.at == scan.length)
            break;
        scan_next(&scan);
    }
    if (!scan.stopped && scan.expect != SCAN_END)
        report_cut_short(&scan);
    free(scan.keys);
    arena_free(&scan.arena);
    if (scan.found == 0 && scan.again)
        return scan_text(text, length, file, NULL, into, problems);
    if (scan.found == 0 && likely != NULL && !scan.spoken)
        tree_note_all(scan.tree, likely);
    if (scan.found == 0)
        return scan.tree;
    tree_free(scan.tree);
    return NULL;
}
