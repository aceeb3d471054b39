/* place_list_report.h - the places that fit some words, as a list or as JSON. */
#ifndef EAVEMARK_REPORT_PLACE_LIST_REPORT_H
#define EAVEMARK_REPORT_PLACE_LIST_REPORT_H

#include "base/text.h"
#include "profile/place_list.h"

#include <stdbool.h>

/* A line each; with words also its law, the day it was read, what of it is carried and
 * what is not. Returns how many fit. Sets out->failed when out of memory. */
size_t report_place_list_text(const struct place_list *list, const char *words, struct text *out);
size_t report_place_list_json(const struct place_list *list, const char *words, bool pretty,
                              struct text *out);

#endif
