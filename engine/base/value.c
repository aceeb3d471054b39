#include "base/value.h"

#include "base/number.h"

#include <string.h>

/* An empty set demands, or has, nothing. */
static void add_set(struct text *out, const struct value *value)
{
    for (size_t i = 0; i < value->set_count; i++) {
        if (i > 0)
            text_add(out, ", ");
        text_add_spaced(out, value->set[i], strlen(value->set[i]));
    }
    if (value->set_count == 0)
        text_add(out, "none");
}

/* Everything that is said of a value goes through here, so that it reads the same
 * everywhere. */
void value_add(struct text *out, const struct value *value)
{
    char number[96];
    const char *text = value->text == NULL ? "nothing" : value->text;
    switch (value->kind) {
    case VALUE_NONE:
        text_add(out, "nothing");
        break;
    case VALUE_NUMBER:
        number_write_unit(value->number, value->unit, number);
        text_add(out, number);
        break;
    case VALUE_YES_NO:
        text_add(out, value->yes ? "yes" : "no");
        break;
    case VALUE_TEXT:
        text_add_spaced(out, text, strlen(text));
        break;
    case VALUE_SET:
        add_set(out, value);
        break;
    }
}
