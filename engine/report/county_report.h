/* county_report.h - the first files of a new county, as text. */
#ifndef EAVEMARK_REPORT_COUNTY_REPORT_H
#define EAVEMARK_REPORT_COUNTY_REPORT_H

#include "base/text.h"
#include "prove/county.h"

/* A profile that changes nothing yet and shows, in comments, how it is done;
 * and a file for its cases. Both set out->failed when out of memory. */
void county_text_profile(const struct county_start *start, struct text *out);
void county_text_cases(const struct county_start *start, struct text *out);

/* That the law followed was only borrowed, each line after lead; nothing where it was not. */
void county_text_caution(const struct county_start *start, const char *lead, struct text *out);

#endif
