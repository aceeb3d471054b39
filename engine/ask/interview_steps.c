/* interview_steps.c - what was answered or left out, and the way back. */
#include "ask/interview_parts.h"

#include <stdlib.h>
#include <string.h>

/* A line for each fact that the question is about; to be freed. */
static char *pointers_of(const struct question *question)
{
    struct text lines = TEXT_EMPTY;
    text_add(&lines, question->pointer);
    for (size_t i = 0; i < question->part_count; i++)
        text_addf(&lines, "\n%s", question->parts[i].pointer);
    char *copy = lines.failed ? NULL : strdup(text_string(&lines));
    text_free(&lines);
    return copy;
}

bool interview_push(struct interview *interview, cJSON *before)
{
    struct step *step = calloc(1, sizeof(*step));
    char *pointer = pointers_of(interview->now);
    if (step == NULL || pointer == NULL) {
        free(step);
        free(pointer);
        return false;
    }
    *step = (struct step){interview->steps, pointer, before};
    interview->steps = step;
    free(interview->again);
    interview->again = NULL;
    interview->now = NULL;
    return true;
}

/* What the step stood for is lost with it: for the end, or after its job was put back. */
void interview_drop(struct interview *interview)
{
    struct step *step = interview->steps;
    interview->steps = step->before;
    cJSON_Delete(step->job);
    free(step->pointer);
    free(step);
}

/* A step may be about a line of facts; of a material begun anew only the steps since count. */
bool interview_done(const struct interview *interview, const char *pointer)
{
    const size_t length = strlen(pointer);
    const size_t part = strlen(interview->mark_place);
    const bool anew = part > 0 && strncmp(pointer + 1, interview->mark_place, part) == 0
                      && pointer[1 + part] == '/';
    const struct step *last = anew ? interview->mark : NULL;
    for (const struct step *step = interview->steps; step != last; step = step->before)
        for (const char *at = step->pointer; at != NULL; at = strchr(at, '\n')) {
            at += *at == '\n';
            if (strncmp(at, pointer, length) == 0 && (at[length] == '\0' || at[length] == '\n'))
                return true;
        }
    return false;
}

struct interview_counts interview_count(const struct interview *interview)
{
    struct interview_counts counts = {0};
    for (const struct step *step = interview->steps; step != NULL; step = step->before)
        *(step->job == NULL ? &counts.skipped : &counts.answered) += 1;
    return counts;
}

/* The job goes back to what it was, and the same question comes again, whether or not a
 * rule waits for it now. */
bool interview_back(struct interview *interview)
{
    struct step *step = interview->steps;
    if (step == interview->mark)
        return false;
    if (step->job != NULL) {
        cJSON_Delete(interview->job);
        interview->job = step->job;
        step->job = NULL;
    }
    free(interview->again);
    interview->again = step->pointer;
    /* Of several, the question is found by the first. */
    interview->again[strcspn(interview->again, "\n")] = '\0';
    step->pointer = NULL;
    interview->now = NULL;
    if (strcmp(interview->again, interview_sheet) == 0)
        interview->without_sheet = false;
    interview_drop(interview);
    return true;
}
