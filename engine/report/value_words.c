#include "report/value_words.h"

#include <string.h>

void value_add_demand(struct text *out, enum sense sense, const struct value *required)
{
    const bool equals = sense == SENSE_NONE || sense == SENSE_EQUALS;
    if (equals && required->kind == VALUE_NUMBER)
        text_add(out, "exactly ");
    if (required->kind == VALUE_SET && required->set_count == 0 && sense == SENSE_NONE_OF) {
        text_add(out, "anything");
        return;
    }
    /* "all of none" says no more than "none". */
    const bool nothing = required->kind == VALUE_SET && required->set_count == 0 && !equals;
    if (!equals && !nothing) {
        text_add_spaced(out, sense_word(sense), strlen(sense_word(sense)));
        text_add(out, " ");
    }
    value_add(out, required);
}

/* "at least 2 in and at most 4 in". */
void value_add_demands(struct text *out, const struct finding *finding)
{
    value_add_demand(out, finding->sense, &finding->required);
    if (finding->also.kind == VALUE_NONE)
        return;
    text_add(out, " and ");
    value_add_demand(out, finding->also_sense, &finding->also);
}

/* Either may be missing; a space only between two. */
void value_add_cite(struct text *out, const struct cite *cite)
{
    const bool both = cite->code != NULL && cite->section != NULL && cite->section[0] != '\0';
    if (cite->code != NULL)
        text_add(out, cite->code);
    if (both && cite->code[0] != '\0')
        text_add(out, " ");
    if (cite->section != NULL)
        text_add(out, cite->section);
}

const char *value_cite_status(const struct cite *cite)
{
    return cite->status == STATUS_NONE ? "status not stated" : status_word(cite->status);
}

/* In full, for those who want to know how far to trust a figure. */
void value_add_cite_status(struct text *out, const struct cite *cite)
{
    static const char *const SPELLED[STATUS_COUNT] = {
        [STATUS_NONE] = "status not stated",
        [STATUS_SEEN] = "read in a public source",
        [STATUS_PARALLEL] = "read only in a sister text",
        [STATUS_MEMORY] = "from memory, not read",
        [STATUS_PRACTICE] = "common practice, not code",
        [STATUS_INVENTED] = "invented",
    };
    text_add(out, SPELLED[cite->status]);
    if (cite->source != NULL && cite->source[0] != '\0')
        text_addf(out, ": %s", cite->source);
}

void value_add_cited(struct text *out, const struct cite *cite)
{
    value_add_cite(out, cite);
    text_add(out, " (");
    value_add_cite_status(out, cite);
    text_add(out, ")");
}

void value_add_amended(struct text *out, const struct amended *amended)
{
    text_addf(out, "by %s: from ", amended->by);
    value_add(out, &amended->from);
    text_add(out, " to ");
    value_add(out, &amended->to);
}
