/* profile_ask.c - what may be asked of a profile that is made. */
#include "profile/profile_making.h"

#include "base/number.h"

#include <stdlib.h>
#include <string.h>

int profile_figure_order(const void *a, const void *b)
{
    return strcmp(((const struct figure *)a)->name, ((const struct figure *)b)->name);
}

/* Among the first `sorted` figures. */
struct figure *profile_figure_among(const struct profile *profile, size_t sorted, const char *name)
{
    size_t from = 0, to = sorted;
    while (from < to) {
        const size_t middle = from + (to - from) / 2;
        const int order = strcmp(profile->figures[middle].name, name);
        if (order == 0)
            return &profile->figures[middle];
        if (order < 0)
            from = middle + 1;
        else
            to = middle;
    }
    return NULL;
}

/* Exact: a figure was typed, not computed. Sets are compared in their order. */
bool profile_same_value(const struct value *a, const struct value *b)
{
    if (a->kind != b->kind || a->set_count != b->set_count)
        return false;
    for (size_t i = 0; i < a->set_count; i++)
        if (strcmp(a->set[i], b->set[i]) != 0)
            return false;
    return a->number == b->number && a->yes == b->yes;
}

bool profile_set_has(const struct value *set, const char *member)
{
    for (size_t i = 0; i < set->set_count; i++)
        if (strcmp(set->set[i], member) == 0)
            return true;
    return false;
}

/* "deck" names all rules of the topic deck; "deck.gap" that one. */
bool profile_set_names(const struct value *set, const char *rule)
{
    const size_t topic = strcspn(rule, ".");
    for (size_t i = 0; i < set->set_count; i++)
        if (strcmp(set->set[i], rule) == 0
            || (strlen(set->set[i]) == topic && strncmp(set->set[i], rule, topic) == 0))
            return true;
    return false;
}

const struct law_gap *profile_gap(const struct profile *profile, const char *rule)
{
    for (size_t i = 0; i < profile->gap_count; i++)
        if (profile_set_names(&profile->gaps[i].rules, rule)
            && !profile_set_has(&profile->gaps[i].but, rule))
            return &profile->gaps[i];
    return NULL;
}

const struct law_gap *profile_gap_in_order(const struct profile *profile, const char *quantity)
{
    for (size_t i = 0; i < profile->gap_count; i++)
        if (profile_set_has(&profile->gaps[i].orders, quantity))
            return &profile->gaps[i];
    return NULL;
}

/* From the last, which is the nearest place: whose reason counts. */
const struct drop *profile_drop(const struct profile *profile, const char *rule)
{
    for (size_t i = profile->drop_count; i-- > 0;)
        if (strcmp(profile->drops[i].rule, rule) == 0)
            return &profile->drops[i];
    return NULL;
}

bool profile_is_limit(const struct figure *figure)
{
    return figure->sense == SENSE_AT_LEAST || figure->sense == SENSE_AT_MOST;
}

double profile_threshold(const struct figure *figure)
{
    /* Less than the half of a printed digit that comparisons allow. */
    const double little = 0.8 * number_tolerance(figure->value.unit);
    const double value = figure->value.number;
    if (figure->sense == SENSE_OVER && figure->at == AT_COUNTS)
        return value - little;
    if ((figure->sense == SENSE_FROM && figure->at == AT_COUNTS_NOT)
        || (figure->sense == SENSE_UNDER && figure->at == AT_COUNTS))
        return value + little;
    return value;
}

/* Past what its sense alone compares. */
bool profile_is_held_further(const struct figure *figure)
{
    return profile_is_limit(figure)
           && (figure->also.kind != VALUE_NONE || figure->at == AT_COUNTS_NOT);
}

bool profile_same_demand(const struct figure *a, const struct figure *b)
{
    return profile_same_value(&a->value, &b->value) && profile_same_value(&a->also, &b->also)
           && a->at == b->at;
}

const struct figure *profile_figure(const struct profile *profile, const char *name)
{
    return profile_figure_among(profile, profile->figure_count, name);
}

const struct figure *profile_table(const struct profile *profile, const char *prefix, size_t length,
                                   size_t *count)
{
    size_t low = 0, high = profile->figure_count;
    while (low < high) {
        const size_t middle = low + (high - low) / 2;
        if (strncmp(profile->figures[middle].name, prefix, length) < 0)
            low = middle + 1;
        else
            high = middle;
    }
    *count = 0;
    while (low + *count < profile->figure_count
           && strncmp(profile->figures[low + *count].name, prefix, length) == 0)
        ++*count;
    return &profile->figures[low];
}

bool profile_binds(const struct profile *profile, const struct figure *figure)
{
    const struct figure *lever = figure->behind == NULL ? NULL
                                                        : profile_figure(profile, figure->behind);
    return lever == NULL || lever->value.yes;
}

const struct place_fact *profile_fact(const struct profile *profile, const char *name)
{
    for (size_t i = 0; i < profile->fact_count; i++)
        if (strcmp(profile->facts[i].name, name) == 0)
            return &profile->facts[i];
    return NULL;
}
