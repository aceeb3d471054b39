/* question_report.h - questions about a job in the forms a user sees. */
#ifndef EAVEMARK_REPORT_QUESTION_REPORT_H
#define EAVEMARK_REPORT_QUESTION_REPORT_H

#include "base/text.h"
#include "ask/question.h"

#include <stdbool.h>

/* The question with what may be answered: unit, range, choices by number. With
 * heading, the part of the job it belongs to stands above it. */
void report_question(const struct question *question, bool heading, struct text *out);

/* A line or more: what fails by the answers so far. */
void report_question_fails(const struct finding *finding, struct text *out);

/* Where the fact stands, who waits for it and why. */
void report_question_help(const struct question *question, struct text *out);

/* All of them: for people, or as a JSON list, each with "pointer", "question",
 * "type", "unit", "least", "most", "choices", "stage", "where" and "rules". */
void report_questions_text(const struct questions *questions, struct text *out);
void report_questions_json(const struct questions *questions, bool pretty, struct text *out);

#endif
