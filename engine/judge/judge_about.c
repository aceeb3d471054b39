/* judge_about.c - see judge_about.h. */
#include "judge/judge_about.h"

void judge_abouts(struct run *run, enum stage stage)
{
    struct result *result = run->result;
    size_t count = 0;
    for (const struct about *a = run->judging.book->abouts; a != NULL; a = a->next)
        count++;
    struct about_line *lines = arena_array(&result->arena, count + 1, sizeof(*lines));
    if (lines == NULL)
        return;
    result->about = lines;
    for (const struct about *a = run->judging.book->abouts; a != NULL; a = a->next) {
        struct call call = {.judging = &run->judging, .function = a->says, .facts_only = true};
        const enum sandbox_stop stop = run_enter_or_recall(run, call_for_text, &call);
        const struct part part = {.kind = "about",
                                  .name = a->label,
                                  .title = "A line about the house",
                                  .file = a->file,
                                  .line = a->line,
                                  .stage = stage};
        if (stop == SANDBOX_DONE && call.text != NULL)
            lines[result->about_count++] = (struct about_line){a->label, call.text};
        else if (stop != SANDBOX_DONE && stop != SANDBOX_SIGNAL)
            run_part_broken(run, &part, sandbox_message(run->judging.book->sandbox, stop));
    }
}
