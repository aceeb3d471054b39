/* report_html_all.c - every finding in full as one page, see report.h. The content is
 * that of text_all.c, in the same order. */
#include "report/report.h"

#include "base/text.h"
#include "include/eavemark.h"
#include "report/confirm.h"
#include "report/job_drawings.h"
#include "report/html.h"
#include "report/story.h"
#include "report/value_words.h"

struct sheet {
    struct text *out;
    const struct result *result;
};

/* Groups in the order they are told; the id is also the anchor's. */
struct group {
    enum outcome outcome;
    const char *id, *heading, *gloss;
};

static const struct group GROUPS[] = {
    {OUTCOME_BROKEN, "broken", "broken", "the rule itself erred, so nothing is shown"},
    {OUTCOME_FAIL, "fail", "fail", "shown not to meet the figure"},
    {OUTCOME_OPEN, "open", "open", "cannot be told yet: a fact is missing"},
    {OUTCOME_WARN, "warn", "warn", "met on a weak figure, risky, or not common practice"},
    {OUTCOME_PASS, "pass", "pass", "shown to meet the figure"},
    {OUTCOME_NOT_APPLICABLE, "na", "not applicable", "nothing to say about this job"},
};

enum { GROUP_COUNT = sizeof(GROUPS) / sizeof(GROUPS[0]) };

/* A broken rule is news; that none is broken is not. */
static bool is_told(const struct sheet *sheet, const struct group *group)
{
    return group->outcome != OUTCOME_BROKEN || sheet->result->counts[OUTCOME_BROKEN] > 0;
}

/* Only groups that hold something: each is a link. */
static void add_nav(const struct sheet *sheet)
{
    struct text *out = sheet->out;
    text_add(out, "<nav aria-label=\"Findings by outcome\">\n<ul>\n");
    for (size_t i = 0; i < GROUP_COUNT; i++) {
        const size_t count = sheet->result->counts[GROUPS[i].outcome];
        if (is_told(sheet, &GROUPS[i]) && count > 0)
            text_addf(out, "<li><a href=\"#%s\">%zu %s</a></li>\n", GROUPS[i].id, count,
                      GROUPS[i].heading);
    }
    text_add(out, "</ul>\n</nav>\n");
}

/* Every group but that of broken rules, be there none: a reader looks for the zero. */
static void add_summary(const struct sheet *sheet)
{
    struct text *out = sheet->out;
    text_add(out, "<section aria-labelledby=\"count\">\n<h2 id=\"count\">Count</h2>\n"
                  "<table class=\"count\">\n<caption>Findings by outcome</caption>\n"
                  "<colgroup><col><col><col></colgroup>\n"
                  "<thead><tr><th scope=\"col\">Outcome</th><th scope=\"col\">Findings</th>"
                  "<th scope=\"col\">What it means</th></tr></thead>\n<tbody>\n");
    for (size_t i = 0; i < GROUP_COUNT; i++) {
        if (!is_told(sheet, &GROUPS[i]))
            continue;
        text_add(out, "<tr><th scope=\"row\">");
        html_outcome(out, GROUPS[i].outcome);
        text_addf(out, "</th><td>%zu</td><td>%s</td></tr>\n",
                  sheet->result->counts[GROUPS[i].outcome], GROUPS[i].gloss);
    }
    text_add(out, "</tbody>\n</table>\n</section>\n");
}

/* One finding ------------------------------------------------------------- */

/* The title with every place of count findings that read the same. */
static struct text title_of(const struct finding *finding, size_t count)
{
    struct text title = TEXT_EMPTY;
    text_add(&title, finding->title == NULL ? finding->rule : finding->title);
    for (size_t i = 0; i < count; i++)
        if (finding[i].where != NULL)
            text_addf(&title, "%s%s", i == 0 ? ": " : "; ", finding[i].where);
    return title;
}

/* The rule's name, to be asked of `explain`. */
static void add_rule(struct text *out, const struct finding *finding)
{
    text_add(out, " <span class=\"rule\">[");
    html_text(out, finding->rule);
    text_add(out, "]</span>");
}

static void add_compared(struct text *out, const struct finding *finding)
{
    struct text demand = TEXT_EMPTY, found = TEXT_EMPTY;
    if (finding->compared && finding->required.kind != VALUE_NONE)
        value_add_demands(&demand, finding);
    if (finding->compared && finding->found.kind != VALUE_NONE)
        value_add(&found, &finding->found);
    html_pair_phrase(out, "Demanded", &demand);
    html_pair_phrase(out, "Found", &found);
}

/* A line each in one cell; nothing for none. */
static void add_lines(struct text *out, const char *label, const char *const *lines, size_t count)
{
    if (count == 0)
        return;
    text_addf(out, "<div><dt>%s</dt>", label);
    for (size_t i = 0; i < count; i++)
        html_element(out, "dd", lines[i]);
    text_add(out, "</div>\n");
}

/* With sources: two sections read in different sources are two lines. */
static void add_cites(struct text *out, const struct finding *finding)
{
    if (finding->cite_count == 0)
        return;
    text_add(out, "<div><dt>Cited</dt>");
    for (size_t i = 0; i < finding->cite_count; i++) {
        if (story_cited_before(finding, i, true))
            continue;
        struct text cite = TEXT_EMPTY;
        value_add_cited(&cite, &finding->cites[i]);
        text_add(out, "<dd>");
        html_phrase(out, &cite);
        text_add(out, "</dd>\n");
    }
    text_add(out, "</div>\n");
}

/* "by Dunmarrow: from 2 to 3"; "" where the figure is as it was. The caller's to free. */
static struct text amended_of(const struct finding *finding)
{
    struct text moved = TEXT_EMPTY;
    if (finding->amended != NULL)
        value_add_amended(&moved, finding->amended);
    return moved;
}

static void add_finding(struct text *out, const struct finding *finding, size_t count)
{
    struct text title = title_of(finding, count), amended = amended_of(finding);
    text_add(out, "<article class=\"finding\">\n<h3>");
    html_outcome(out, finding->outcome);
    html_phrase(out, &title);
    add_rule(out, finding);
    text_add(out, "</h3>\n");
    /* What was compared stands in its own rows below. */
    html_element(out, "p", finding->compared ? finding->note : finding->says);
    text_add(out, "<dl>\n");
    add_compared(out, finding);
    add_lines(out, "Arithmetic", finding->work, finding->work_count);
    add_cites(out, finding);
    html_pair_phrase(out, "Amended", &amended);
    html_pair(out, "Mend", finding->mend);
    html_pair(out, "Caution", finding->caution);
    text_add(out, "</dl>\n</article>\n");
}

/* A row of what needs no mending. */
static void add_brief(struct text *out, const struct finding *finding, size_t count)
{
    struct text title = title_of(finding, count), amended = amended_of(finding);
    struct text cites = html_cites(finding);
    text_add(out, "<tr role=\"row\">" HTML_ROW);
    html_outcome(out, finding->outcome);
    html_phrase(out, &title);
    add_rule(out, finding);
    text_add(out, "</th><td role=\"cell\">");
    html_text(out, finding->says);
    if (amended.length > 0) {
        text_add(out, "<br>Amended ");
        html_phrase(out, &amended);
    }
    text_free(&amended);
    if (finding->caution != NULL) {
        text_add(out, "<br>Caution: ");
        html_text(out, finding->caution);
    }
    text_add(out, "</td><td role=\"cell\" class=\"cite\">");
    html_phrase(out, &cites);
    text_add(out, "</td></tr>\n");
}

/* Groups ------------------------------------------------------------------ */

static void start_group(const struct sheet *sheet, const struct group *group)
{
    text_addf(sheet->out,
              "<section aria-labelledby=\"%s\">\n<h2 id=\"%s\">%zu %s</h2>\n"
              "<p class=\"gloss\">%s</p>\n",
              group->id, group->id, sheet->result->counts[group->outcome], group->heading,
              group->gloss);
    struct text words = story_unmeasured(sheet->result);
    if (group->outcome == OUTCOME_PASS && words.length > 0) {
        text_add(sheet->out, "<p class=\"gloss\">");
        html_phrase(sheet->out, &words);
        text_add(sheet->out, "</p>\n");
    } else {
        text_free(&words);
    }
}

/* Goes over the findings of an outcome, those that read the same at once: only those said
 * in brief, or only the others. Writes them when asked to, and returns how many there are. */
static size_t each_told(const struct sheet *sheet, enum outcome outcome, bool brief, bool write)
{
    const struct result *result = sheet->result;
    size_t told = 0;
    for (size_t i = 0, count = 1; i < result->finding_count; i += count) {
        const struct finding *finding = &result->findings[i];
        count = 1;
        if (finding->outcome != outcome || story_is_brief(finding) != brief)
            continue;
        count = story_group_size(result, i);
        told++;
        if (write && brief)
            add_brief(sheet->out, finding, count);
        else if (write)
            add_finding(sheet->out, finding, count);
    }
    return told;
}

/* Findings to be mended in full, then those that need no mending as rows of one table. */
static void add_group(const struct sheet *sheet, const struct group *group)
{
    if (sheet->result->counts[group->outcome] == 0)
        return;
    start_group(sheet, group);
    /* Two passes, since a table holds nothing but its rows. */
    each_told(sheet, group->outcome, false, true);
    if (each_told(sheet, group->outcome, true, false) > 0) {
        text_addf(sheet->out,
                  "<table class=\"brief stack\" role=\"table\">\n"
                  "<caption>What needs no mending: %s</caption>\n"
                  "<colgroup><col><col><col></colgroup>\n"
                  "<thead role=\"rowgroup\"><tr role=\"row\">" HTML_COLUMN
                  "Looked at</th>" HTML_COLUMN "Found</th>" HTML_COLUMN
                  "Written in</th></tr></thead>\n"
                  "<tbody role=\"rowgroup\">\n",
                  group->heading);
        each_told(sheet, group->outcome, true, true);
        text_add(sheet->out, "</tbody>\n</table>\n");
    }
    text_add(sheet->out, "</section>\n");
}

/* The facts the job lacks, each asked once, with all that waits for it. */
static void add_waiting(const struct sheet *sheet, size_t index)
{
    const struct result *result = sheet->result;
    text_add(sheet->out, "<dl><div><dt>Waiting</dt>");
    for (size_t i = index; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome != OUTCOME_OPEN
            || !text_same(finding->says, result->findings[index].says))
            continue;
        struct text title = title_of(finding, 1);
        text_add(sheet->out, "<dd>");
        html_phrase(sheet->out, &title);
        add_rule(sheet->out, finding);
        text_add(sheet->out, "</dd>\n");
    }
    text_add(sheet->out, "</div>\n");
    html_pair(sheet->out, "Caution", result->findings[index].caution);
    text_add(sheet->out, "</dl>\n");
}

/* By question, not by rule: one answer may close many. */
static void add_open(const struct sheet *sheet, const struct group *group)
{
    const struct result *result = sheet->result;
    if (result->counts[OUTCOME_OPEN] == 0)
        return;
    start_group(sheet, group);
    for (size_t i = 0; i < result->finding_count; i++) {
        if (result->findings[i].outcome != OUTCOME_OPEN || story_asked_before(result, i))
            continue;
        text_add(sheet->out, "<article class=\"finding\">\n<h3>");
        html_outcome(sheet->out, OUTCOME_OPEN);
        html_text(sheet->out, result->findings[i].says);
        text_add(sheet->out, "</h3>\n");
        add_waiting(sheet, i);
        text_add(sheet->out, "</article>\n");
    }
    text_add(sheet->out, "</section>\n");
}

/* Their names would fill pages: the JSON form has them. */
static void add_inapplicable(const struct sheet *sheet)
{
    struct text counts = TEXT_EMPTY;
    story_count_inapplicable(sheet->result, &counts);
    text_add(sheet->out, "<p>Rules by topic: ");
    html_phrase(sheet->out, &counts);
    text_add(sheet->out, ". <span class=\"gloss\">(--form json names each and says why)</span>"
                         "</p>\n");
}

/* What the place itself has dropped gets its sentence: under other law it
 * might bind. */
static void add_dropped(const struct sheet *sheet)
{
    const struct result *result = sheet->result;
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome != OUTCOME_NOT_APPLICABLE || story_is_inapplicable(finding))
            continue;
        struct text dropped = TEXT_EMPTY;
        text_addf(&dropped, "%s: %s", finding->rule, finding->says);
        text_add(sheet->out, "<p>");
        html_phrase(sheet->out, &dropped);
        text_add(sheet->out, "</p>\n");
    }
}

static void add_not_applicable(const struct sheet *sheet, const struct group *group)
{
    if (sheet->result->counts[OUTCOME_NOT_APPLICABLE] == 0)
        return;
    start_group(sheet, group);
    add_dropped(sheet);
    add_inapplicable(sheet);
    text_add(sheet->out, "</section>\n");
}

/* Open and inapplicable findings are told together; the others one by one. */
static void add_groups(const struct sheet *sheet)
{
    for (size_t i = 0; i < GROUP_COUNT; i++) {
        if (GROUPS[i].outcome == OUTCOME_OPEN)
            add_open(sheet, &GROUPS[i]);
        else if (GROUPS[i].outcome == OUTCOME_NOT_APPLICABLE)
            add_not_applicable(sheet, &GROUPS[i]);
        else
            add_group(sheet, &GROUPS[i]);
    }
}

/* What a screen has no room for: all the figures to confirm. */
static void add_confirm(const struct sheet *sheet)
{
    struct digest digest;
    digest_make(sheet->result, &digest);
    if (digest.confirm_count > 0) {
        text_addf(sheet->out,
                  "<section aria-labelledby=\"confirm\">\n<h2 id=\"confirm\">%zu to "
                  "confirm</h2>\n<p class=\"gloss\">figures that what is met rests on, not read"
                  "</p>\n",
                  digest.confirm_count);
        confirm_html(sheet->out, sheet->result, &digest, digest.confirm_count);
        text_add(sheet->out, "</section>\n");
    }
    sheet->out->failed = sheet->out->failed || digest.arena.failed;
    digest_free(&digest);
}

void report_drawings(const struct result *result, struct text *out)
{
    job_drawings_add(&(struct drawings){.result = result}, out);
}

void report_html_all(const struct result *result, struct text *out)
{
    const struct sheet sheet = {.out = out, .result = result};
    struct text title = TEXT_EMPTY;
    text_addf(&title, "%s - pre-check of a reroof", result->job);
    html_start(out, text_string(&title), "report");
    out->failed = out->failed || title.failed;
    text_free(&title);
    html_heading(out, "Eavemark " EAVEMARK_VERSION ", pre-check of a reroof", result, false);
    add_nav(&sheet);
    text_add(out, "<main id=\"main\" tabindex=\"-1\">\n");
    add_summary(&sheet);
    add_groups(&sheet);
    add_confirm(&sheet);
    job_drawings_add(&(struct drawings){.result = result}, out);
    html_safety(out, result, true);
    text_add(out, "</main>\n");
    html_close(out, result);
    html_end(out);
}
