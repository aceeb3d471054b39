/* proof_vouch.c - the figures of a place that nobody vouches for there, as a proof lists
 * them: by book and reason, and each by its name. */
#include "report/proof_vouch.h"

#include "profile/vouch.h"
#include "report/json_part.h"
#include "report/wrap.h"

#include <string.h>

/* Was one of the same book and reason told before this one? */
static bool is_told(const struct profile *profile, size_t at)
{
    const struct figure *figure = &profile->figures[at];
    const char *why = vouch_lacks(figure);
    for (size_t i = 0; i < at; i++) {
        const struct figure *other = &profile->figures[i];
        if (vouch_lacks(other) != NULL && strcmp(vouch_lacks(other), why) == 0
            && strcmp(other->cite.code, figure->cite.code) == 0)
            return true;
    }
    return false;
}

/* All that go with this one, in one paragraph. */
static void add_group(struct text *out, const struct profile *profile, size_t at)
{
    const struct figure *first = &profile->figures[at];
    const char *why = vouch_lacks(first);
    /* The place's own words for it, unless the short reason says as much. */
    const char *reason = first->borrowed != NULL ? first->borrowed
                         : strcmp(why, "recalled") == 0 || strcmp(why, "sister text") == 0
                             ? NULL
                             : first->unsure;
    struct text words = TEXT_EMPTY, names = TEXT_EMPTY;
    size_t count = 0;
    for (size_t i = at; i < profile->figure_count; i++) {
        const struct figure *figure = &profile->figures[i];
        if (vouch_lacks(figure) == NULL || strcmp(vouch_lacks(figure), why) != 0
            || strcmp(figure->cite.code, first->cite.code) != 0)
            continue;
        text_addf(&names, "%s%s", count++ == 0 ? "" : ", ", figure->name);
    }
    text_addf(&words, "%s, %s%s%s%s, %zu: %s", first->cite.code, why, reason == NULL ? "" : " (",
              reason == NULL ? "" : reason, reason == NULL ? "" : ")", count, text_string(&names));
    text_add(out, "  ");
    wrap_add(out, 2, text_string(&words));
    out->failed = out->failed || words.failed || names.failed;
    text_free(&words);
    text_free(&names);
}

void report_add_unvouched(struct text *out, const struct profile *profile)
{
    bool any = false;
    for (size_t i = 0; i < profile->figure_count; i++) {
        if (vouch_lacks(&profile->figures[i]) == NULL || is_told(profile, i))
            continue;
        if (!any)
            text_add(out, "\n");
        if (!any)
            wrap_add(out, 0,
                     "Nobody vouches here for these figures; adopts = { \"BOOK\", cite = ..., "
                     "as_seen = ... } lifts that for what the place has read itself:");
        any = true;
        add_group(out, profile, i);
    }
}

/* By figure, where the text has groups: a program sorts for itself. */
bool report_unvouched_json(cJSON *object, const struct profile *profile)
{
    cJSON *array = cJSON_AddArrayToObject(object, "unvouched");
    for (size_t i = 0; array != NULL && i < profile->figure_count; i++) {
        const struct figure *figure = &profile->figures[i];
        cJSON *one = vouch_lacks(figure) == NULL ? NULL : cJSON_CreateObject();
        if (vouch_lacks(figure) == NULL)
            continue;
        if (!cJSON_AddItemToArray(array, one) || !json_add_text(one, "figure", figure->name)
            || !json_add_text(one, "book", figure->cite.code)
            || !json_add_text(one, "why", vouch_lacks(figure)))
            return false;
    }
    return array != NULL;
}
