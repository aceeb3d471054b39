#include "report/trial_report.h"

#include "report/html.h"

#include <stdlib.h>

static void add_books(struct text *out, const char *label, const struct trial_side *side)
{
    struct text words = TEXT_EMPTY;
    text_add(&words, side->law);
    for (size_t i = 0; i < side->book_count; i++)
        text_addf(&words, "; %s: %s", side->books[i].place, side->books[i].edition);
    html_pair_phrase(out, label, &words);
}

/* As in text: the first few, and how many more. */
static void add_names(struct text *out, const struct trial_named *named, size_t count)
{
    struct text words = TEXT_EMPTY;
    for (size_t i = 0; i < named->count; i++)
        text_addf(&words, "%s%s", i == 0 ? "" : "; ", named->names[i]);
    if (count > named->count)
        text_addf(&words, "; and %zu more", count - named->count);
    html_phrase(out, &words);
}

/* Nothing where there is none of it. */
static void add_named(struct text *out, const char *title, const struct trial_named *named,
                      size_t count)
{
    if (count == 0)
        return;
    html_element(out, "h2", title);
    text_add(out, "<p>");
    add_names(out, named, count);
    text_add(out, "</p>\n");
}

static void add_head(const struct trial *trial, struct text *out)
{
    struct text line = TEXT_EMPTY;
    text_add(out, "<header><h1>What a change of law does to jobs</h1>\n<dl class=\"facts\">\n");
    add_books(out, "Before", &trial->sides[0]);
    add_books(out, "After", &trial->sides[1]);
    trial_text_add_jobs(&line, trial->jobs);
    text_addf(&line, " judged under both, %zu not", trial->not_judged);
    html_pair_phrase(out, "Jobs", &line);
    /* html_pair_phrase has released it. */
    line = TEXT_EMPTY;
    text_addf(&line, "%zu come out otherwise; %zu newly fail, %zu fail no more", trial->changed,
              trial->newly_fail, trial->fail_no_more);
    html_pair_phrase(out, "Count", &line);
    text_add(out, "</dl></header>\n");
}

/* In the order of the text, so that both can be read side by side. */
static void add_move(struct text *out, const struct trial_move *move)
{
    struct text title = TEXT_EMPTY, count = TEXT_EMPTY, by = TEXT_EMPTY;
    text_addf(&title, "%s: %s \xe2\x86\x92 %s", move->rule, trial_text_outcome(move->from),
              trial_text_outcome(move->to));
    text_add(out, "<section class=\"finding\"><h3>");
    html_phrase(out, &title);
    text_add(out, "</h3>\n<dl>\n");
    trial_text_add_jobs(&count, move->jobs);
    if (move->findings != move->jobs)
        text_addf(&count, ", %zu findings", move->findings);
    html_pair_phrase(out, "Moved", &count);
    for (size_t i = 0; i < move->cause_count; i++)
        text_addf(&by, "%s%s", i == 0 ? "" : ", ", move->causes[i].figure);
    if (move->cause_count > 0)
        html_pair_phrase(out, "By", &by);
    else
        text_free(&by);
    text_add(out, "<div><dt>Jobs</dt><dd>");
    add_names(out, &move->named, move->jobs);
    text_add(out, "</dd></div>\n</dl></section>\n");
}

static void add_moves(struct text *out, const struct trial *trial)
{
    /* NULL too where nothing moves. */
    const struct trial_move **moves = trial_text_by_jobs(trial, &out->failed);
    html_element(out, "h2", "What moves");
    if (trial->move_count == 0)
        html_element(out, "p",
                     trial->jobs == 0 ? "No job was judged under both laws."
                                      : "No finding of any job moves.");
    for (size_t i = 0; i < trial->move_count && moves != NULL; i++)
        add_move(out, moves[i]);
    free(moves);
}

void report_trial_html(const struct trial *trial, struct text *out)
{
    html_start(out, "What a change of law does to jobs", "trial");
    add_head(trial, out);
    text_add(out, "<main id=\"main\">\n");
    add_named(out, "Newly fail", &trial->newly_failing, trial->newly_fail);
    add_named(out, "Fail no more", &trial->failing_no_more, trial->fail_no_more);
    add_moves(out, trial);
    add_named(out, "Not judged", &trial->refused, trial->not_judged);
    text_add(out, "</main>\n<footer>\n");
    html_element(out, "p",
                 "A pre-check of jobs as they are written: not what a "
                 "department found.");
    text_add(out, "</footer>\n");
    html_end(out);
}
