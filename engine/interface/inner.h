/* inner.h - the calls of eavemark.h, behind its door.
 *
 * What each does is said there. The eavemark*.c look at the arguments and put the host's
 * locale aside: here all pointers that must be are given, and numbers have a point.
 */
#ifndef EAVEMARK_INTERFACE_INNER_H
#define EAVEMARK_INTERFACE_INNER_H

#include "include/eavemark.h"

eavemark *inner_open(const char *home);
void inner_close(eavemark *handle);
eavemark_result *inner_check(eavemark *handle, const struct eavemark_request *request);

/* A result that holds no findings and says why. NULL when out of memory. */
eavemark_result *inner_refused(const char *why);

/* How many laws a handle keeps now. */
size_t inner_law_count(const eavemark *handle);

enum eavemark_status inner_result_status(const eavemark_result *result, bool strict);
const char *inner_result_problems(const eavemark_result *result);
char *inner_result_report(const eavemark_result *result, enum eavemark_form form, unsigned options);
char *inner_result_changes(const eavemark_result *before, const eavemark_result *after,
                           unsigned options);
void inner_result_free(eavemark_result *result);
enum eavemark_status inner_takeoff(eavemark *handle, const struct eavemark_request *request,
                                   enum eavemark_form form, char **report, char **problems);
enum eavemark_status inner_order(eavemark *handle, const struct eavemark_request *request,
                                 enum eavemark_form form, char **report, char **problems);
enum eavemark_status inner_card(eavemark *handle, const struct eavemark_request *request,
                                enum eavemark_form form, char **report, char **problems);
enum eavemark_status inner_fields(eavemark *handle, const char *topic, bool schema,
                                  const char *jurisdiction, const char *date, char **text);
enum eavemark_status inner_explain(eavemark *handle, const char *name,
                                   const struct eavemark_request *request, enum eavemark_form form,
                                   char **report, char **problems);
enum eavemark_status inner_figures(eavemark *handle, const char *topic, const char *status,
                                   const struct eavemark_request *request, enum eavemark_form form,
                                   char **report, char **problems);
enum eavemark_status inner_compare(eavemark *handle, const struct eavemark_request *requests,
                                   size_t count, enum eavemark_form form, char **report,
                                   char **problems);
enum eavemark_status inner_places(eavemark *handle, const char *words, enum eavemark_form form,
                                  char **report, char **problems);
enum eavemark_status inner_list(eavemark *handle, enum eavemark_names names, char **text);
enum eavemark_status inner_proof(eavemark *handle, const char *name, const char *date,
                                 const char *beside, enum eavemark_form form, char **report,
                                 char **problems);
enum eavemark_status inner_mutate(eavemark *handle, const char *topic, char **report,
                                  char **problems);
eavemark_trial *inner_trial_open(const struct eavemark_law *before,
                                 const struct eavemark_law *after, enum eavemark_status *status,
                                 char **problems);
enum eavemark_status inner_trial_job(eavemark_trial *trial, const struct eavemark_request *request);
bool inner_trial_refuse(eavemark_trial *trial, const char *name, const char *why);
enum eavemark_status inner_trial_status(const eavemark_trial *trial);
bool inner_trial_merge(eavemark_trial *trial, const char *text, size_t length, const char *name,
                       char **problems);
char *inner_trial_report(const eavemark_trial *trial, enum eavemark_form form);
void inner_trial_close(eavemark_trial *trial);
enum eavemark_status inner_county_new(eavemark *handle, const char *id, const char *follows,
                                      const char *title, char **text);
enum eavemark_status inner_shop_lift(eavemark *handle, const struct eavemark_request *request,
                                     char **sheet, char **problems);
enum eavemark_status inner_questions(eavemark *handle, const struct eavemark_request *request,
                                     enum eavemark_form form, char **report, char **problems);
eavemark_interview *inner_interview_open(eavemark *handle, const struct eavemark_request *request,
                                         enum eavemark_status *status, char **problems);
char *inner_interview_ask(eavemark_interview *interview, bool help, char **problems);
size_t inner_interview_left(const eavemark_interview *interview);
char *inner_interview_standing(eavemark_interview *interview);
bool inner_interview_answer(eavemark_interview *interview, const char *words, char **why);
bool inner_interview_wants_name(const eavemark_interview *interview);
bool inner_interview_skip(eavemark_interview *interview, char **why);
bool inner_interview_back(eavemark_interview *interview);
char *inner_interview_job(eavemark_interview *interview, size_t *answered, size_t *skipped,
                          char **problems);
char *inner_interview_draft(const eavemark_interview *interview);
void inner_interview_close(eavemark_interview *interview);

#endif
