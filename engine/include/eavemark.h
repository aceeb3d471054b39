/* eavemark.h - the public interface of libeavemark.
 *
 * The library pre-checks a residential reroof against the building code that
 * applies to it. It never approves anything: the local building department
 * does.
 *
 * A handle holds a home folder (rules/ and jurisdictions/) and what was
 * loaded from it. There is no global state: different handles may be used
 * from different threads; one handle from one thread at a time. Nothing is
 * printed and no file is written.
 */
#ifndef EAVEMARK_H
#define EAVEMARK_H

#include <stdbool.h>
#include <stddef.h>

#ifdef __cplusplus
extern "C" {
#endif

#define EAVEMARK_VERSION "0.1.0"

typedef struct eavemark eavemark;
typedef struct eavemark_result eavemark_result;

/* What a check comes to; also the exit status of the program. */
enum eavemark_status {
    EAVEMARK_NOTHING_FAILED = 0,
    EAVEMARK_FAILED = 1,   /* at least one fail (strict: warn or open too) */
    EAVEMARK_UNUSABLE = 2, /* the job or the arguments cannot be used */
    EAVEMARK_BROKEN = 3,   /* a rule or profile is broken, or out of memory */
};

enum eavemark_form { EAVEMARK_TEXT, EAVEMARK_JSON, EAVEMARK_JSON_LINE };

/* Opens a home folder. NULL only when out of memory; a folder without rules
 * shows as a problem of the first call that needs them. */
eavemark *eavemark_open(const char *home);
void eavemark_close(eavemark *handle);

struct eavemark_request {
    const char *name;         /* how to name the job in messages: "job.json" */
    const char *text;         /* the job, JSON, not terminated; or NULL: read the file `name` */
    size_t length;
    const char *jurisdiction; /* overrides the job's, or NULL */
    const char *date;         /* YYYY-MM-DD, overrides the job's, or NULL */
    const char *stage;        /* only this stage's rules, or NULL: all */
};

/* Checks one job. NULL when out of memory; otherwise a result that either
 * holds findings or says why there are none (eavemark_result_problems). */
eavemark_result *eavemark_check(eavemark *handle, const struct eavemark_request *request);

enum eavemark_status eavemark_result_status(const eavemark_result *result, bool strict);

/* What was wrong with the job, rules or profile, a line each, "" if nothing. */
const char *eavemark_result_problems(const eavemark_result *result);

/* The report; to be freed with free(). NULL when out of memory or when the
 * result holds no findings. */
char *eavemark_result_report(const eavemark_result *result, enum eavemark_form form, bool colour);

void eavemark_result_free(eavemark_result *result);

/* The catalogue of what a job may say: a listing (topic NULL: all), or a JSON
 * Schema (draft 2020-12). jurisdiction and date add that place's own fields;
 * NULL for the common ones. The text is to be freed with free(); on a status
 * other than 0 it is the message instead. */
enum eavemark_status eavemark_fields(eavemark *handle, const char *topic, bool schema,
                                     const char *jurisdiction, const char *date, char **text);

/* Runs the rule cases (rules/cases, and those beside profiles); topic NULL
 * for all. The text is a line per case that went wrong and a summary; to be
 * freed with free(). Status 0 when all hold, 1 when one does not, 3 when a
 * file is broken. */
enum eavemark_status eavemark_proof(eavemark *handle, const char *topic, char **text);

#ifdef __cplusplus
}
#endif
#endif
