/* A county's first files. */
#include "interface/inner.h"

#include "interface/handle.h"
#include "interface/reply.h"
#include "prove/county.h"
#include "report/county_report.h"

/* Both texts whole before either is written. */
static void write_county(struct laws *laws, const struct county_start *start,
                         struct problems *problems)
{
    struct text profile = TEXT_EMPTY, cases = TEXT_EMPTY;
    county_text_profile(start, &profile);
    county_text_cases(start, &cases);
    if (profile.failed || cases.failed)
        problem_out_of_memory(problems);
    else
        county_write(start, laws, profile.bytes, cases.bytes, problems);
    text_free(&profile);
    text_free(&cases);
}

/* county_write loads what it wrote, and takes it back if that does not load. */
enum eavemark_status inner_county_new(eavemark *handle, const char *id, const char *follows,
                                      const char *title, char **text)
{
    struct problems problems = {0};
    struct county_start start = {0};
    struct text out = TEXT_EMPTY;
    if (county_prepare(&start, &handle->laws, id, follows, title, &problems) == 0) {
        /* What will be said comes first: nothing is written that cannot be told. */
        text_addf(&out, "%s\n%s\n", start.profile_path, start.cases_path);
        county_text_caution(&start, "", &out);
        text_addf(&out, "next: eavemark proof %s\n", id);
        if (out.failed)
            problem_out_of_memory(&problems);
        else
            write_county(&handle->laws, &start, &problems);
    }
    const enum eavemark_status status = reply_status(&problems);
    if (status != EAVEMARK_NOTHING_FAILED) {
        text_free(&out);
        problems_write(&problems, &out);
    }
    county_free(&start);
    problems_free(&problems);
    *text = reply_text(&out);
    return *text == NULL ? EAVEMARK_BROKEN : status;
}
