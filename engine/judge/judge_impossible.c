/* judge_impossible.c - facts that cannot be together, as judge.h tells. */
#include "judge/judge.h"

#include "base/text.h"
#include "job/path.h"
#include "judge/carry.h"
#include "judge/meant.h"
#include "judge/recall.h"
#include "judge/run.h"
#include "judge/settle.h"

#include <stdio.h>
#include <string.h>

struct impossible_run {
    const struct impossible *check;
    const char *file;
    struct problems *problems;
    size_t missing; /* visits for want of a list */
    bool broken;
};

static void impossible_broken(struct impossible_run *run, const char *message)
{
    run->broken = true;
    problem_at_line(run->problems, PROBLEM_RULES, run->check->file, run->check->line, 0,
                    "impossible \"%s\": %s", run->check->name, message);
}

static void say_impossible(struct impossible_run *run, const struct walk *walk, const char *why)
{
    const char *base = walk->depth > 0 ? walk->items[walk->depth - 1].pointer : "";
    const char *pointer = path_below(walk->judging->arena, base, run->check->at);
    /* Who says so, if it is not what everybody goes by. */
    char who[160] = "";
    if (strncmp(run->check->file, "rules/", strlen("rules/")) != 0)
        snprintf(who, sizeof(who), " (%.100s:%d)", run->check->file, run->check->line);
    if (!run->check->asks_back) {
        problem_at(run->problems, PROBLEM_JOB, run->file, pointer, "cannot be: %s%s", why, who);
        return;
    }
    struct text words = TEXT_EMPTY;
    text_addf(&words, "%s%s", why, who);
    if (words.failed)
        problem_out_of_memory(run->problems);
    meant_ask_back(walk->judging->job, run->file, pointer, text_string(&words), run->problems);
    text_free(&words);
}

static void visit_impossible(struct walk *walk, const struct node *missing)
{
    struct impossible_run *run = walk->data;
    run->missing += missing != NULL;
    if (missing != NULL || run->broken)
        return;
    if (run_spent(walk->judging)) {
        impossible_broken(run, "was not run: those before it took all the time there is");
        return;
    }
    struct call call = {.judging = walk->judging,
                        .items = walk->items,
                        .depth = walk->depth,
                        .function = run->check->when,
                        .facts_only = true};
    walk->judging->record = (struct record){0};
    enum sandbox_stop stop;
    if (!carry_call(walk->judging, &call, walk->visited - 1, &stop)) {
        if (!recall_call(walk->judging, &call, &stop)) {
            stop = call_enter(walk->judging, call_for_text, &call);
            recall_keep_call(walk->judging, &call, stop);
        }
        carry_keep_call(walk->judging, &call, stop);
    }
    if (stop == SANDBOX_SIGNAL)
        return;
    if (stop != SANDBOX_DONE) {
        impossible_broken(run, sandbox_message(walk->judging->book->sandbox, stop));
    } else if (call.text != NULL) {
        say_impossible(run, walk, call.text);
    }
}

/* Is it a place at which something may be asked back? A place may ask back what another
 * does not: the job goes to both. */
static bool is_asked_back(const struct rulebook *book, const struct field *field)
{
    char path[256];
    if (field->of_place)
        return true;
    for (const struct impossible *c = book->impossibles; c != NULL; c = c->next) {
        snprintf(path, sizeof(path), "%s%s%s",
                 c->per_depth > 0 ? c->per[c->per_depth - 1]->path : "",
                 c->per_depth > 0 ? "[]." : "", c->at);
        if (c->asks_back && fields_find(&book->fields, path) == field)
            return true;
    }
    return false;
}

/* A slip in /as_meant would leave the question standing, and nobody know why. */
static void check_meant(const struct rulebook *book, const cJSON *job, const char *file,
                        struct problems *problems)
{
    const cJSON *meant = NULL;
    size_t index = 0;
    cJSON_ArrayForEach(meant, cJSON_GetObjectItemCaseSensitive(job, "as_meant")) {
        const char *at = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(meant, "at"));
        const struct field *field = at == NULL ? NULL : path_field(&book->fields, at);
        char pointer[64];
        snprintf(pointer, sizeof(pointer), "/as_meant/%zu/at", index++);
        if (at != NULL && (field == NULL || !is_asked_back(book, field)))
            problem_at(problems, PROBLEM_JOB, file, pointer,
                       "\"%.*s\" is no place at which anything is asked back: copy it from the "
                       "question",
                       (int)path_quotable(at, strlen(at), 80), at);
    }
}

static void look_for_impossible(struct judging *judging, const char *file,
                                struct problems *problems)
{
    size_t number = judging->book->rule_count;
    for (const struct impossible *c = judging->book->impossibles; c != NULL; c = c->next) {
        const size_t whole = number++;
        struct impossible_run run = {.check = c, .file = file, .problems = problems};
        judging->output_of_rule = 0;
        if (settle_take_check(judging, whole))
            continue;
        struct walk walk = {.judging = judging,
                            .per = c->per,
                            .depth = c->per_depth,
                            .data = &run,
                            .visit = visit_impossible};
        settle_begin(judging, &walk, whole);
        walk_per(&walk);
        settle(judging, &walk, rulebook_function_number(judging->book, c->when), run.missing);
    }
}

void judge_impossible(struct rulebook *book, const cJSON *job, const char *file,
                      struct problems *problems)
{
    struct judging judging = {.arena = &problems->arena,
                              .spots = &problems->arena,
                              .book = book,
                              .job = job,
                              .wanted = WANTED_OUTCOMES};
    /* To cut off what is said twice, should it have to be looked for again. */
    const struct problems before = *problems;
    carry_begin(&judging);
    call_begin_all(&judging);
    look_for_impossible(&judging, file, problems);
    if (!call_end_all(&judging)) {
        problems_cut(problems, &before);
        judging.apart = true;
        judge_begin(book);
        call_begin_all(&judging);
        look_for_impossible(&judging, file, problems);
        call_end_all(&judging);
    }
    carry_end(&judging);
    if (book->profile != NULL) /* without one only the catalogue's own checks are loaded */
        check_meant(book, job, file, problems);
    if (problems->arena.failed)
        problem_out_of_memory(problems);
}
