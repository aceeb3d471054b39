#include "report/changes.h"

#include "base/text.h"
#include "report/digest.h"
#include "report/gloss.h"
#include "report/page.h"
#include "report/telling.h"

enum { TITLE_HANG = 4, DETAIL_HANG = 6, MEND_HANG = 12, OPEN_MOST = 16 };

/* One finding then and now; either is NULL where there was none, or is none. */
struct news {
    const struct finding *before, *after;
    enum part was, now;
    bool written;
};

/* Two results of one job and what is news between them. */
struct changes {
    struct arena arena;
    const struct result *before, *after;
    struct text *out;
    bool colour;
    struct news *items;
    size_t count, open_shown;
};

/* A finding that is not there stands with those that do not apply. */
static enum part part_of(const struct finding *finding)
{
    return finding == NULL ? PART_NONE : digest_part(finding);
}

/* Whatever it waits for. */
static bool is_open(enum part part)
{
    return part == PART_ASKED || part == PART_UNASKED || part == PART_UNKNOWN || part == PART_LATER;
}

/* Something is to be done about it. */
static bool is_urgent(enum part part)
{
    return part == PART_BROKEN || part == PART_FIX || part == PART_LOOK;
}

/* Finding them ------------------------------------------------------------------------------ */

static bool same_place(const struct finding *a, const struct finding *b)
{
    return text_same(a->rule, b->rule) && text_same(a->where, b->where);
}

/* How many before this one have its rule and place. */
static size_t nth_of(const struct result *result, const struct finding *finding)
{
    size_t nth = 0;
    for (const struct finding *f = result->findings; f < finding; f++)
        nth += same_place(f, finding);
    return nth;
}

/* The finding of the same rule and place in another result, or NULL. */
static const struct finding *counterpart(const struct result *from, const struct result *to,
                                         const struct finding *finding)
{
    size_t nth = nth_of(from, finding);
    for (size_t i = 0; i < to->finding_count; i++)
        if (same_place(&to->findings[i], finding) && nth-- == 0)
            return &to->findings[i];
    return NULL;
}

/* The same found, demanded, and to be done: it reads as before. */
static bool reads_alike(struct changes *c, const struct finding *before,
                        const struct finding *after)
{
    const struct paragraph was = {&before, 1}, now = {&after, 1};
    struct text one = telling_compared(c->before, &was), other = telling_compared(c->after, &now);
    const bool same = text_same(text_string(&one), text_string(&other))
                      && text_same(before->title, after->title)
                      && text_same(before->mend, after->mend);
    c->arena.failed = c->arena.failed || one.failed || other.failed;
    text_free(&one);
    text_free(&other);
    return same;
}

/* News is what stands elsewhere now, or is to be done and reads otherwise. From met to
 * not applicable and back there is nothing to do. */
static bool is_news(struct changes *c, const struct news *change)
{
    if (change->was == change->now)
        return is_urgent(change->now) && !reads_alike(c, change->before, change->after);
    return !((change->was == PART_MET || change->was == PART_NONE)
             && (change->now == PART_MET || change->now == PART_NONE));
}

/* Kept only if it is news. */
static void add_change(struct changes *c, const struct finding *before, const struct finding *after)
{
    const struct news change = {before, after, part_of(before), part_of(after), false};
    if (is_news(c, &change))
        c->items[c->count++] = change;
}

/* First what stands now, in its order; then what stood and is gone. */
static void find_changes(struct changes *c)
{
    const size_t most = c->before->finding_count + c->after->finding_count;
    c->items = arena_array(&c->arena, most + 1, sizeof(*c->items));
    for (size_t i = 0; c->items != NULL && i < c->after->finding_count; i++) {
        const struct finding *after = &c->after->findings[i];
        add_change(c, counterpart(c->after, c->before, after), after);
    }
    for (size_t i = 0; c->items != NULL && i < c->before->finding_count; i++) {
        const struct finding *before = &c->before->findings[i];
        if (counterpart(c->before, c->after, before) == NULL)
            add_change(c, before, NULL);
    }
}

/* Telling them ------------------------------------------------------------------------------ */

static const char *word_of(enum part part)
{
    static const char *const WORDS[PART_COUNT] = {
        [PART_BROKEN] = "BROKEN", [PART_FIX] = "FIX",        [PART_LOOK] = "LOOK",
        [PART_ASKED] = "ANSWER",  [PART_UNASKED] = "ANSWER", [PART_UNKNOWN] = "NOT KNOWN HERE",
        [PART_LATER] = "LATER",   [PART_MET] = "MET",        [PART_NONE] = "GONE",
    };
    return WORDS[part];
}

/* As it is now; of what is gone as it was. */
static const struct finding *any_of(const struct news *change)
{
    return change->after != NULL ? change->after : change->before;
}

/* Moved alike and reading alike: one paragraph names all the places. */
static bool is_alike(const struct news *a, const struct news *b)
{
    return a->was == b->was && a->now == b->now && (a->before == NULL) == (b->before == NULL)
           && digest_is_alike(any_of(a), any_of(b));
}

/* This change with all that are told with it. */
static struct paragraph gather_paragraph(struct changes *c, size_t from)
{
    size_t most = 0;
    for (size_t i = from; i < c->count; i++)
        most += is_alike(&c->items[from], &c->items[i]);
    /* Room for all alike; those told already are left out below. */
    struct paragraph paragraph = {arena_array(&c->arena, most, sizeof(struct finding *)), 0};
    for (size_t i = from; paragraph.findings != NULL && i < c->count; i++) {
        struct news *change = &c->items[i];
        if (change->written || !is_alike(&c->items[from], change))
            continue;
        change->written = true;
        paragraph.findings[paragraph.count++] = any_of(change);
    }
    return paragraph;
}

/* Releases the phrase. */
static void add_line(struct changes *c, size_t hang, struct text phrase)
{
    text_addf(c->out, "%*s", (int)hang, "");
    page_phrase(c->out, hang, &phrase);
}

/* "FIX (was MET)  Layers here [one.layers]" */
static void add_title(struct changes *c, const struct news *change,
                      const struct paragraph *paragraph)
{
    struct text title = telling_title(paragraph);
    const char *colour = is_urgent(change->now)    ? "\033[1;31m"
                         : change->now == PART_MET ? "\033[1;32m"
                                                   : "\033[1m";
    text_addf(&title, " [%s]", paragraph->findings[0]->rule);
    text_addf(c->out, "%s%s%s", c->colour ? colour : "", word_of(change->now),
              c->colour ? "\033[0m" : "");
    if (change->was == change->now)
        text_add(c->out, " (still)\n");
    else if (change->before == NULL || change->was == PART_NONE)
        text_add(c->out, " (new)\n");
    else
        text_addf(c->out, " (was %s)\n", word_of(change->was));
    add_line(c, TITLE_HANG, title);
}

/* What is to be done is told in full; of the rest its title is enough. */
static void add_paragraph(struct changes *c, const struct news *change,
                          const struct paragraph *paragraph)
{
    struct text says = TEXT_EMPTY;
    add_title(c, change, paragraph);
    if (change->now == PART_FIX || change->now == PART_LOOK) {
        add_line(c, DETAIL_HANG, telling_compared(c->after, paragraph));
        if (paragraph->findings[0]->mend != NULL) {
            text_addf(c->out, "%*s%-*s", TITLE_HANG, "", MEND_HANG - TITLE_HANG, "mend");
            text_add(&says, paragraph->findings[0]->mend);
            page_phrase(c->out, MEND_HANG, &says);
        }
    } else if (change->now == PART_BROKEN || is_open(change->now)) {
        text_add(&says, paragraph->findings[0]->says);
        add_line(c, DETAIL_HANG, says);
    }
}

/* What was open and is met now, and open ones past the first few, are only counted. */
static bool is_counted_only(struct changes *c, const struct news *change)
{
    if (is_open(change->now))
        return c->open_shown++ >= OPEN_MOST;
    return is_open(change->was) && !is_urgent(change->now);
}

/* Returns how many were left to be counted only. */
static size_t tell_part(struct changes *c, enum part part)
{
    size_t counted = 0;
    for (size_t i = 0; i < c->count && !c->arena.failed; i++) {
        const struct news *change = &c->items[i];
        if (change->written || change->now != part)
            continue;
        const struct paragraph paragraph = gather_paragraph(c, i);
        /* Out of memory, which the arena remembers. */
        if (paragraph.count == 0)
            return counted;
        if (is_counted_only(c, change))
            counted += paragraph.count;
        else
            add_paragraph(c, change, &paragraph);
    }
    return counted;
}

/* What is urgent comes first: parts are in that order. */
static void write_changes(struct changes *c)
{
    for (enum part part = 0; part < PART_COUNT; part++) {
        const size_t counted = tell_part(c, part);
        if (counted > 0 && is_open(part))
            text_addf(c->out, "%s  and %zu more\n", word_of(part), counted);
        else if (counted > 0)
            text_addf(c->out, "%s  %zu that were open\n", word_of(part), counted);
    }
    if (c->count == 0)
        text_add(c->out, "Nothing changed that was judged.\n");
}

static void add_counts(struct changes *c)
{
    struct digest digest;
    digest_make(c->after, &digest);
    struct text counts = gloss_counts(c->after, &digest);
    text_addf(c->out, "\n%-*s", PAGE_HEAD, "Count");
    page_phrase(c->out, PAGE_HEAD, &counts);
    c->out->failed = c->out->failed || digest.arena.failed;
    digest_free(&digest);
}

bool report_is_comparable(const struct result *before, const struct result *after)
{
    return text_same(before->jurisdiction, after->jurisdiction)
           && text_same(before->edition, after->edition) && text_same(before->date, after->date)
           && before->only_stage == after->only_stage && before->reached == after->reached;
}

void report_changes_text(const struct result *before, const struct result *after, bool colour,
                         struct text *out)
{
    struct changes changes = {.before = before, .after = after, .out = out, .colour = colour};
    find_changes(&changes);
    write_changes(&changes);
    add_counts(&changes);
    out->failed = out->failed || changes.arena.failed;
    arena_free(&changes.arena);
}
