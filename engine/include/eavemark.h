/* eavemark.h - the public interface of libeavemark.
 *
 * The library pre-checks a residential reroof against the building code that
 * applies to it. It never approves anything: the local building department
 * does.
 *
 * A handle holds a home folder (rules/ and jurisdictions/) and what was
 * loaded from it. There is no global state: different handles may be used
 * from different threads; one handle from one thread at a time. Nothing is
 * printed, and no file is written but by eavemark_county_new. The host's locale changes
 * nothing, and is as it was when a call returns.
 *
 * NULL where a call needs something, a request with neither text nor name, a form or kind
 * that is none: EAVEMARK_UNUSABLE, NULL or false, with a message where there is a place
 * for one; the same for an answer before a question.
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
    EAVEMARK_FAILED = 1,   /* at least one fail (strict: or open, not met, disputed) */
    EAVEMARK_UNUSABLE = 2, /* the job or the arguments cannot be used */
    EAVEMARK_BROKEN = 3,   /* a rule or profile is broken, or out of memory */
};

/* EAVEMARK_HTML is for checks and cards, EAVEMARK_CSV for orders; what knows no such form
 * gives text. */
enum eavemark_form {
    EAVEMARK_TEXT,
    EAVEMARK_JSON,
    EAVEMARK_JSON_LINE,
    EAVEMARK_HTML,
    EAVEMARK_CSV
};

/* The home that was packed into the library when it was built: its rules and places as
 * they then were, with the same fingerprint. Nothing can be written to it. */
#define EAVEMARK_HOME_INSIDE ":inside:"

/* Opens a home: a folder, or the one inside. NULL only when out of memory, or home is
 * NULL; a folder without rules shows as a problem of the first call that needs them. */
eavemark *eavemark_open(const char *home);
void eavemark_close(eavemark *handle);

/* What will be asked of a result: less is quicker. Each gives the reports of those after it
 * as well. */
enum eavemark_wanted {
    EAVEMARK_WANT_ANY,
    EAVEMARK_WANT_NO_DRAWINGS, /* text, pages without EAVEMARK_ALL, JSON */
    EAVEMARK_WANT_JSON,        /* JSON without EAVEMARK_ALL */
    EAVEMARK_WANT_BRIEF        /* JSON with EAVEMARK_BRIEF */
};

struct eavemark_request {
    const char *name; /* how to name the job in messages: "job.json" */
    const char *text; /* the job, JSON, not terminated; or NULL: read the file `name` */
    size_t length;
    const char *jurisdiction; /* overrides the job's, or NULL */
    const char *date;         /* YYYY-MM-DD, overrides the job's, or NULL */
    const char *stage;        /* this stage's rules, and what earlier ones left undone; NULL: all */
    /* The shop sheet, which goes before one that the job names: its text, JSON, not
     * terminated; or with shop NULL the file to read, by its name; both NULL: what the job
     * names under /shop, from shop_folder, or from beside the job's own file. */
    const char *shop;
    size_t shop_length;
    const char *shop_name; /* how to name it in messages, or NULL */
    const char *shop_folder;
    /* Of a check: what will be asked of the result. */
    enum eavemark_wanted wanted;
    bool ahead;            /* of an interview: asks for what later stages decide as well */
    const char *like_name; /* of an interview: the file of a job whose habits are taken over */
    bool habits;           /* of an interview: a shop's habits are asked, a shop sheet is written */
};

/* Checks one job. A result is freed before the handle it came from is closed:
 * it names rules and figures that the handle holds. NULL when out of memory;
 * otherwise a result that either holds findings or says why there are none
 * (eavemark_result_problems). */
eavemark_result *eavemark_check(eavemark *handle, const struct eavemark_request *request);

enum eavemark_status eavemark_result_status(const eavemark_result *result, bool strict);

/* What was wrong with the job, rules or profile, a line each, "" if nothing. */
const char *eavemark_result_problems(const eavemark_result *result);

/* How a report is written: flags. */
enum eavemark_report_option {
    EAVEMARK_COLOUR = 1, /* text for a terminal that shows colours */
    EAVEMARK_ALL = 2,    /* every finding in full, those that do not apply included */
    EAVEMARK_BRIEF = 4,  /* of JSON: how many came out how, and the rules that failed */
    EAVEMARK_DRAWINGS =
        8, /* of HTML: only the drawings, a figure each with its caption; "" for none */
};

/* The report; to be freed with free(). options: flags of eavemark_report_option, or
 * 0. NULL when out of memory, when the result holds no findings, or when the request wanted
 * less of them than this report shows. */
char *eavemark_result_report(const eavemark_result *result, enum eavemark_form form,
                             unsigned options);

/* What changed from one check of a job to the next, as text: which findings came to be
 * failed, met, open or gone, then the counts; the whole report where place, book, day or
 * stage are others. options as above, EAVEMARK_ALL left out. To be freed with free(); NULL
 * when out of memory, or when either holds no findings or was wanted as JSON only. */
char *eavemark_result_changes(const eavemark_result *before, const eavemark_result *after,
                              unsigned options);

void eavemark_result_free(eavemark_result *result);

/* The card of the request's stage, which must be given: what will be looked at
 * then, in that order, and the figure to hit for each. form: EAVEMARK_TEXT or
 * EAVEMARK_HTML. *report and *problems as for eavemark_takeoff. The status says
 * whether there is a card, not how the job stands: never EAVEMARK_FAILED. */
enum eavemark_status eavemark_card(eavemark *handle, const struct eavemark_request *request,
                                   enum eavemark_form form, char **report, char **problems);

/* Reckons what a job takes to do: areas, materials, loads, days. The request is
 * as for a check; its stage is not looked at. *report (text or JSON) and
 * *problems (a line each, "" for none) are to be freed with free(); either is
 * NULL when there is none of it, both when out of memory. Never
 * EAVEMARK_FAILED. */
enum eavemark_status eavemark_takeoff(eavemark *handle, const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems);

/* The same as a list to hand to the supplier: item, count, unit bought and what it is for,
 * without the sums. As CSV (RFC 4180) a line of headings stands first; the JSON is that of
 * eavemark_takeoff, which has both. */
enum eavemark_status eavemark_order(eavemark *handle, const struct eavemark_request *request,
                                    enum eavemark_form form, char **report, char **problems);

/* The catalogue of what a job may say: a listing (topic NULL: all), or a JSON
 * Schema (draft 2020-12). jurisdiction and date add that place's own fields;
 * NULL for the common ones. The text is to be freed with free(); on a status
 * other than 0 it is the message instead. */
enum eavemark_status eavemark_fields(eavemark *handle, const char *topic, bool schema,
                                     const char *jurisdiction, const char *date, char **text);

/* Says what a rule or a figure is about: its words, its figures by edition and
 * place, the facts it reads; with a job in the request (name or text) also how
 * that job was judged by it, step by step. name NULL lists all rules. request
 * may be NULL; without a job its jurisdiction and date may be set, together or
 * alone. *report and *problems as for eavemark_takeoff; EAVEMARK_UNUSABLE for a
 * name that is neither. */
enum eavemark_status eavemark_explain(eavemark *handle, const char *name,
                                      const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems);

/* A table of the figures of every model edition, or of one place: what is demanded, the
 * section, how well it is known, what was read. topic: what their names begin
 * with; status: "seen", "parallel", "memory", "practice" or "invented"; either may be
 * NULL. Of request only jurisdiction and date are looked at; it may be NULL. *report and
 * *problems as for eavemark_takeoff; EAVEMARK_UNUSABLE for what there is not. */
enum eavemark_status eavemark_figures(eavemark *handle, const char *topic, const char *status,
                                      const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems);

/* Checks count (2 to 64) jobs and says what differs: for two, which findings
 * changed and the figure or fact that moved them; for more, a table of
 * outcomes. Status EAVEMARK_FAILED when anything differs. *report and
 * *problems as for eavemark_takeoff. */
enum eavemark_status eavemark_compare(eavemark *handle, const struct eavemark_request *requests,
                                      size_t count, enum eavemark_form form, char **report,
                                      char **problems);

/* The places that a job may name, by the words of their titles, ids and cities (NULL or
 * "": all): id and title; with words also the law, the day it was read, what of it is
 * carried and what is not. *report and *problems as for eavemark_takeoff;
 * EAVEMARK_UNUSABLE when none fits. */
enum eavemark_status eavemark_places(eavemark *handle, const char *words, enum eavemark_form form,
                                     char **report, char **problems);

/* The names there are in the home, a line each, sorted; to be freed with
 * free(). On a status other than 0 it is the message instead. */
enum eavemark_names {
    EAVEMARK_RULES,
    EAVEMARK_FIGURES,
    EAVEMARK_TOPICS,
    EAVEMARK_JURISDICTIONS,
    EAVEMARK_PARTS, /* of a job: the topics of eavemark_fields */
};
enum eavemark_status eavemark_list(eavemark *handle, enum eavemark_names names, char **text);

/* Proves rules and places: runs their cases, looks through the files, and says
 * how a place differs from what it follows. name is a topic of rules, a
 * jurisdiction, or NULL for everything; date limits places to the edition of
 * one day, or NULL. *report (text or JSON) is NULL when there was nothing to
 * prove, *problems a line for each thing wrong beside it ("" for none); both
 * are to be freed with free(). Status 0 when all is well, 1 when a case does
 * not hold or a place has an error, 2 for no such name or date, 3 when a file
 * is broken. beside, a jurisdiction or NULL: that
 * is what a place is held against, instead of what it follows, and only the
 * differences are told: what one edition changed of another. */
enum eavemark_status eavemark_proof(eavemark *handle, const char *name, const char *date,
                                    const char *beside, enum eavemark_form form, char **report,
                                    char **problems);

/* Moves every figure (of one topic, or those that a place's own files give, or NULL: all)
 * by its smallest step, in memory, and lists those whose move changes no case's outcome;
 * of a place only the cases under it count. Texts as of
 * eavemark_proof. Status 1 when there are any. */
enum eavemark_status eavemark_mutate(eavemark *handle, const char *topic, char **report,
                                     char **problems);

/* What a change of law does to jobs: each is judged under two laws, and which findings
 * come out otherwise is counted. Nothing is kept of a job but its name. Counts of parts of
 * the jobs, merged in any order, are those of all of them. */
typedef struct eavemark_trial eavemark_trial;

/* A place, on a day (NULL: each job's own), in the home of a handle, which may be the same
 * for both laws or not; called: how reports name it. */
struct eavemark_law {
    eavemark *handle;
    const char *jurisdiction, *date, *called;
};

/* Both laws, or neither: then counts can be merged only. NULL with *status and *problems (to
 * be freed; NULL when out of memory) for a place that there is not, or whose files are
 * broken. To be closed before the handles. */
eavemark_trial *eavemark_trial_open(const struct eavemark_law *before,
                                    const struct eavemark_law *after, enum eavemark_status *status,
                                    char **problems);

/* Judges and counts a job, named by its own title. EAVEMARK_UNUSABLE: it was refused under
 * either law, and counted as that; EAVEMARK_BROKEN: the trial cannot go on. The request's
 * jurisdiction and date are not looked at. */
enum eavemark_status eavemark_trial_job(eavemark_trial *trial,
                                        const struct eavemark_request *request);

/* Adds the counts of another trial of the same laws: what eavemark_trial_report gave as
 * JSON. False with *problems (NULL: out of memory) for anything else. */
bool eavemark_trial_merge(eavemark_trial *trial, const char *text, size_t length, const char *name,
                          char **problems);

/* Counts something that holds no job at all, and says why in the report. False when out of
 * memory. */
bool eavemark_trial_refuse(eavemark_trial *trial, const char *name, const char *why);

/* EAVEMARK_NOTHING_FAILED: no finding of any job comes out otherwise; EAVEMARK_FAILED: some
 * do; EAVEMARK_BROKEN: some job was not judged, because a law's own files are broken. */
enum eavemark_status eavemark_trial_status(const eavemark_trial *trial);

/* The counts, in any form; to be freed with free(). NULL when out of memory. */
char *eavemark_trial_report(const eavemark_trial *trial, enum eavemark_form form);

void eavemark_trial_close(eavemark_trial *trial);

/* Starts a county that follows another place: writes its profile, which changes
 * nothing yet, and an empty file of cases below the home. Never writes over a
 * file; whatever goes wrong, nothing is left behind. The text says what was
 * written, or on a status other than 0 why nothing was; to be freed with
 * free(). */
enum eavemark_status eavemark_county_new(eavemark *handle, const char *id, const char *follows,
                                         const char *title, char **text);

/* A shop sheet with the habits that the request's job states, and nothing of its house.
 * Only the job of the request is looked at. *sheet (JSON) and *problems as for
 * eavemark_takeoff. */
enum eavemark_status eavemark_shop_lift(eavemark *handle, const struct eavemark_request *request,
                                        char **sheet, char **problems);

/* What a job does not say and a rule waits for, as questions in the order of
 * the trade: each with the place of the fact (JSON pointer), its unit, range or
 * choices, and the rules that wait. The request is as for a check; its stage is
 * not looked at. *report and *problems as for eavemark_takeoff. */
enum eavemark_status eavemark_questions(eavemark *handle, const struct eavemark_request *request,
                                        enum eavemark_form form, char **report, char **problems);

/* A job filled in question by question. After each answer it is judged again,
 * so that only what its place's rules still need is asked. */
typedef struct eavemark_interview eavemark_interview;

/* Starts one: from the request's job, or with neither text nor name from
 * nothing. Its jurisdiction and date answer those questions beforehand; a job
 * that says others is refused. NULL with *problems (to be freed; NULL when out
 * of memory) and the status saying why. To be closed before the handle. */
eavemark_interview *eavemark_interview_open(eavemark *handle,
                                            const struct eavemark_request *request,
                                            enum eavemark_status *status, char **problems);

/* The next question in words, with what may be answered, or with help who needs
 * it and why; to be freed. NULL when there is none: *problems is then "", or
 * says what went wrong (NULL: out of memory). */
char *eavemark_interview_ask(eavemark_interview *interview, bool help, char **problems);

/* How many questions wait now, the one last asked included; more may follow. */
size_t eavemark_interview_left(const eavemark_interview *interview);

/* How the job stands at its stage, in a line: "2 fail, 0 to look at ..."; to be freed. NULL
 * when out of memory. */
char *eavemark_interview_standing(eavemark_interview *interview);

/* Answers the question last asked: y or n, a choice or its number, a figure with
 * or without a unit ("12'6\"", "1 1/4", "5/12"), how many items a list has or
 * their kinds, a place by words of its name, the facts of one line with commas; "="
 * for what the question offers as the same. True when it was taken; otherwise
 * *why, to be freed, says what was wrong with it (NULL: out of memory). */
bool eavemark_interview_answer(eavemark_interview *interview, const char *words, char **why);

/* True when the question last asked is answered with a name, which any word may
 * be; in double quotes a word is always the name itself. */
bool eavemark_interview_wants_name(const eavemark_interview *interview);

/* Leaves the question open; likewise. And goes back to the one before: false
 * when there is none. */
bool eavemark_interview_skip(eavemark_interview *interview, char **why);
bool eavemark_interview_back(eavemark_interview *interview);

/* The job so far as JSON, in the order it was given and answered; to be freed.
 * NULL with *problems when it lacks what no job can do without. The text holds
 * up: it was checked as by eavemark_check. answered and skipped count. */
char *eavemark_interview_job(eavemark_interview *interview, size_t *answered, size_t *skipped,
                             char **problems);

/* What was answered so far, a job or not yet one, on one line of JSON that
 * eavemark_interview_open goes on from; to be freed. NULL when out of memory. */
char *eavemark_interview_draft(const eavemark_interview *interview);

void eavemark_interview_close(eavemark_interview *interview);

#ifdef __cplusplus
}
#endif
#endif
