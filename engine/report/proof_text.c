/* proof_text.c - a proof for people. */
#include "report/proof_report.h"

#include "base/date.h"
#include "judge/place_fact.h"
#include "report/proof_vouch.h"
#include "report/value_words.h"
#include "report/wrap.h"

/* Past the word and a space: "  stricter  ". */
enum { HANG = 12 };

/* A word of at most ten letters, then the sentence, wrapped beside it. */
static void add_item(struct text *out, const char *word, const struct text *words)
{
    text_addf(out, "  %-10s", word);
    wrap_add(out, HANG, text_string(words));
    out->failed = out->failed || words->failed;
}

/* Was and is; the words alone where the place says by what it was moved. */
static void add_figure(struct text *words, const struct difference *d)
{
    text_addf(words, "%s: ", d->name);
    if (d->was != NULL && d->says == NULL) {
        text_add(words, "was ");
        report_add_figure(words, d->was);
        text_add(words, ", now ");
    }
    report_add_figure(words, d->is);
    text_add(words, " (");
    value_add_cite(words, d->cite);
    text_add(words, ")");
    if (d->says != NULL)
        text_addf(words, ", by [\"%s\"]", d->says);
}

/* The law's own value stays, and is told beside it. */
static void add_advice(struct text *words, const struct difference *d)
{
    text_addf(words, "advice %s: ", d->name);
    value_add(words, &d->to);
    text_add(words, " beside the law's ");
    report_add_figure(words, d->was);
    text_addf(words, "; %s", d->says);
}

/* As a file of a place has it. */
static const char *word_of(enum difference_of of)
{
    static const char *const WORDS[] = {[DIFFERENCE_FIGURE] = "figure",
                                        [DIFFERENCE_RULE] = "rule",
                                        [DIFFERENCE_FIELD] = "field",
                                        [DIFFERENCE_DUTY] = "duty",
                                        [DIFFERENCE_ADVICE] = "advice"};
    return WORDS[of];
}

static void add_difference(struct text *out, const struct difference *d)
{
    struct text words = TEXT_EMPTY;
    if (d->of == DIFFERENCE_FIGURE)
        add_figure(&words, d);
    else if (d->of == DIFFERENCE_ADVICE)
        add_advice(&words, d);
    else
        text_addf(&words, "%s %s: %s", word_of(d->of), d->name, d->says == NULL ? "" : d->says);
    add_item(out, proof_difference_word(d->kind), &words);
    text_free(&words);
    if (d->caution == NULL)
        return;
    text_addf(&words, "Caution: %s.", d->caution);
    add_item(out, "", &words);
    text_free(&words);
}

/* What jobs are given of the place, its own or inherited. */
static void add_fact(struct text *out, const struct place_fact *fact)
{
    struct text words = TEXT_EMPTY;
    text_addf(&words, "%s: ", fact->name);
    place_fact_add(&words, fact);
    text_add(&words, " (");
    value_add_cite(&words, &fact->cite);
    text_addf(&words, "; %s)", value_cite_status(&fact->cite));
    add_item(out, "states", &words);
    text_free(&words);
}

/* How far cases show what the place says. */
static void add_cover(struct text *out, const struct proof_block *block)
{
    struct text words = TEXT_EMPTY;
    if (block->moved == 0)
        return;
    text_addf(&words, "of %zu figures given otherwise here, cases judge by %zu", block->moved,
              block->shown);
    add_item(out, "cases", &words);
    text_free(&words);
}

/* file:line: first, as compilers do, so that editors find it. */
static void add_remark(struct text *out, const struct remark *r)
{
    struct text words = TEXT_EMPTY;
    if (r->file != NULL)
        text_addf(&words, "%s:", r->file);
    if (r->file != NULL && r->line > 0)
        text_addf(&words, "%d:", r->line);
    text_addf(&words, " %s", r->says);
    add_item(out, r->error ? "error" : "warning", &words);
    text_free(&words);
}

/* "From 2024-01-01 to 2026-07-01, beside IRC 2021:" */
static void add_heading(struct text *out, const struct proof_block *block)
{
    char from[16], to[16];
    struct text words = TEXT_EMPTY;
    /* A place that could not be loaded at all has remarks and no days. */
    if (block->block == NULL)
        return;
    if (block->from != 0) {
        date_write(block->from, from);
        text_addf(&words, "From %s", from);
    } else {
        text_add(&words, "From the beginning");
    }
    if (block->to != 0) {
        date_write(block->to, to);
        text_addf(&words, " up to %s", to);
    }
    if (block->follows != NULL)
        text_addf(&words, ", beside %s", block->follows);
    text_add(&words, ":");
    text_add(out, "\n");
    wrap_add(out, 0, text_string(&words));
    text_free(&words);
}

/* The paragraph of a place begins with its name and the id to be used in files. */
static void add_title(struct text *out, const struct place_proof *place)
{
    struct text words = TEXT_EMPTY;
    text_addf(&words, "%s (%s%s)", place->title, place->id, place->invented ? ", invented" : "");
    wrap_add(out, 0, text_string(&words));
    text_free(&words);
}

/* One place in full: every difference and every remark; of its last edition, what nobody
 * vouches for. */
static void add_place(struct text *out, const struct place_proof *place, bool beside)
{
    add_title(out, place);
    for (const struct proof_block *b = place->blocks; b != NULL; b = b->next) {
        add_heading(out, b);
        for (const struct difference *d = b->differences; d != NULL; d = d->next)
            add_difference(out, d);
        if (b->law != NULL && b->follows != NULL && b->differences == NULL)
            text_add(out, "  no difference\n");
        for (size_t i = 0; b->law != NULL && i < b->law->profile->fact_count; i++)
            add_fact(out, &b->law->profile->facts[i]);
        add_cover(out, b);
        for (const struct remark *r = b->remarks; r != NULL; r = r->next)
            add_remark(out, r);
        if (b->law != NULL && b->next == NULL && !b->law->profile->model && !beside)
            report_add_unvouched(out, b->law->profile);
    }
    text_add(out, "\n");
}

/* Among all places only errors are told in full. */
static void add_summary(struct text *out, const struct place_proof *place)
{
    size_t counts[DIFFERENCE_KIND_COUNT] = {0}, editions = 0;
    struct text words = TEXT_EMPTY;
    add_title(out, place);
    for (const struct proof_block *b = place->blocks; b != NULL; b = b->next) {
        editions += b->law != NULL;
        for (const struct difference *d = b->differences; d != NULL; d = d->next)
            counts[d->kind]++;
    }
    text_addf(&words, "%zu edition%s", editions, editions == 1 ? "" : "s");
    for (int i = 0; i < DIFFERENCE_KIND_COUNT; i++)
        if (counts[i] > 0)
            text_addf(&words, ", %zu %s", counts[i],
                      proof_difference_word((enum difference_kind)i));
    if (place->warnings > 0)
        text_addf(&words, "; %zu warning%s", place->warnings, place->warnings == 1 ? "" : "s");
    text_add(out, "  ");
    wrap_add(out, 2, text_string(&words));
    text_free(&words);
    for (const struct proof_block *b = place->blocks; b != NULL; b = b->next)
        for (const struct remark *r = b->remarks; r != NULL; r = r->next)
            if (r->error)
                add_remark(out, r);
}

/* Of all places; which they are, each place's own proof tells. */
static void add_cover_of_all(struct text *out, const struct proof *proof)
{
    size_t moved = 0, shown = 0;
    for (const struct place_proof *place = proof->places; place != NULL; place = place->next) {
        for (const struct proof_block *b = place->blocks; b != NULL; b = b->next) {
            moved += b->moved;
            shown += b->shown;
        }
    }
    if (moved > 0)
        text_addf(out, "of %zu figures that places give otherwise, cases judge by %zu\n", moved,
                  shown);
}

void report_proof_text(const struct proof *proof, struct text *out)
{
    size_t errors = 0, warnings = proof->unread;
    const bool one = proof->places != NULL && proof->places->next == NULL;
    for (const struct place_proof *place = proof->places; place != NULL; place = place->next) {
        if (one)
            add_place(out, place, proof->beside != NULL);
        else
            add_summary(out, place);
        errors += place->errors;
        warnings += place->warnings;
    }
    if (proof->places != NULL && !one)
        text_add(out, "\n");
    text_add(out, text_string(&proof->lines));
    if (proof->of_places)
        text_addf(out, "%zu error%s, %zu warning%s\n", errors, errors == 1 ? "" : "s", warnings,
                  warnings == 1 ? "" : "s");
    if (!one)
        add_cover_of_all(out, proof);
    if (proof->beside == NULL)
        text_addf(out, "%zu rules judged by cases\n%zu passed, %zu failed\n", proof->cases.rules,
                  proof->cases.held, proof->cases.failed);
    out->failed = out->failed || proof->lines.failed;
}
