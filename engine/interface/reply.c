#include "interface/reply.h"

#include <stdlib.h>

char *reply_text(struct text *text)
{
    /* A report of nothing is "", since NULL would say that memory ran out. */
    if (text->bytes == NULL)
        text_add(text, "");
    char *bytes = text->failed ? NULL : text->bytes;
    if (bytes == NULL)
        text_free(text);
    return bytes;
}

/* Always a text: "" says that all is well. */
char *reply_problems(const struct problems *problems)
{
    struct text text = TEXT_EMPTY;
    problems_write(problems, &text);
    return reply_text(&text);
}

/* The worse of the two kinds decides; out of memory is nobody's fault but ours. */
enum eavemark_status reply_status(const struct problems *problems)
{
    if (problems->out_of_memory || problems_any(problems, PROBLEM_RULES))
        return EAVEMARK_BROKEN;
    return problems->count > 0 ? EAVEMARK_UNUSABLE : EAVEMARK_NOTHING_FAILED;
}

/* The statuses are numbered by how bad they are. */
enum eavemark_status reply_worse(enum eavemark_status a, enum eavemark_status b)
{
    return a > b ? a : b;
}

/* Out of memory halfway: neither text is given, so that half an answer is never
 * taken for a whole one. */
enum eavemark_status reply_drop(char **report, char **problems)
{
    free(*report);
    free(*problems);
    *report = *problems = NULL;
    return EAVEMARK_BROKEN;
}

/* By what it is not, so that a form which is added later gives text. */
bool reply_is_text(enum eavemark_form form)
{
    return form != EAVEMARK_JSON && form != EAVEMARK_JSON_LINE;
}
