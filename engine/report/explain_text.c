#include "report/explain_report.h"

#include "base/date.h"
#include "base/text.h"
#include "include/eavemark.h"
#include "job/field_words.h"
#include "job/path.h"
#include "report/explain_figures.h"
#include "report/page.h"
#include "report/value_words.h"
#include "report/wrap.h"

#include <string.h>

/* Places that could not be looked at: silence would hide what they change. */
static void add_skipped(const struct explanation *x, struct text *out)
{
    struct text line = TEXT_EMPTY;
    if (x->places.skipped.count == 0)
        return;
    text_add(&line, "Not looked at, because they do not load or have no edition on that day: ");
    for (size_t i = 0; i < x->places.skipped.count; i++)
        text_addf(&line, "%s%s", i > 0 ? ", " : "", x->places.skipped.items[i]);
    text_add(out, "\n");
    page_phrase(out, 0, &line);
}

/* The list of all rules ------------------------------------------------------- */

/* What stands before the dot. */
static size_t topic_length(const char *rule)
{
    return strcspn(rule, ".");
}

/* By topic; ids are sorted, so a topic's rules stand together. */
static void add_rules(const struct explanation *x, bool by_fact, struct text *out)
{
    const char *topic = "";
    for (size_t i = 0; i < x->rule_count; i++) {
        const struct listed_rule *rule = &x->rules[i];
        const size_t length = topic_length(rule->id);
        struct text line = TEXT_EMPTY;
        if (rule->by_fact != by_fact)
            continue;
        if (topic_length(topic) != length || strncmp(topic, rule->id, length) != 0)
            text_addf(out, "\n%.*s\n", (int)length, rule->id);
        topic = rule->id;
        text_addf(&line, "%s", rule->title);
        if (rule->place != NULL)
            text_addf(&line, " (only in %s)", rule->place);
        text_addf(out, "  %-30s ", rule->id);
        page_phrase(out, 33, &line);
    }
}

/* With what the newest edition says, or the place asked for. */
static void add_listed_figure(const struct explanation *x, const char *name, struct text *out)
{
    const struct figure *figure = NULL;
    struct text line = TEXT_EMPTY;
    /* Columns stand in the order of years, the place asked for last. */
    for (size_t i = x->column_count; figure == NULL && i-- > 0;)
        figure = profile_figure(x->columns[i], name);
    text_addf(&line, "%s: ", name);
    if (figure != NULL)
        report_add_figure(&line, figure);
    text_add(out, "  ");
    page_phrase(out, 4, &line);
}

static void add_list(const struct explanation *x, struct text *out)
{
    size_t by_fact = 0;
    for (size_t i = 0; i < x->rule_count; i++)
        by_fact += x->rules[i].by_fact;
    if (x->word == NULL)
        text_addf(out, "%zu rules. eavemark explain RULE says more of one.\n", x->rule_count);
    else
        text_addf(out,
                  "%zu rules and %zu figures with \"%s\". eavemark explain NAME says more of "
                  "one.\n",
                  x->rule_count, x->figures.count, x->word);
    add_rules(x, false, out);
    if (x->figures.count > 0)
        page_section(out, "figures");
    for (size_t i = 0; i < x->figures.count; i++)
        add_listed_figure(x, x->figures.items[i], out);
    if (by_fact == 0)
        return;
    text_add(out, "\n-- rules that only read a fact with this word\n");
    add_rules(x, true, out);
}

/* The rule in words ----------------------------------------------------------- */

static void add_per(const struct rule *rule, struct text *out)
{
    struct text per = TEXT_EMPTY;
    if (rule->per_depth == 0)
        text_add(&per, "once for the whole job");
    else
        text_addf(&per, "once for each of %s", rule->per[rule->per_depth - 1]->path);
    text_addf(out, "%-*s", PAGE_HEAD, "Judges");
    page_phrase(out, PAGE_HEAD, &per);
}

static void add_rule(const struct explanation *x, struct text *out)
{
    const struct rule *rule = x->rule;
    struct text title = TEXT_EMPTY, from = TEXT_EMPTY;
    text_addf(&title, "%s: %s", rule->id, rule->title);
    page_phrase(out, 0, &title);
    text_add(out, "\n");
    page_head(out, "Stage", stage_word(rule->stage));
    add_per(rule, out);
    page_head(out, "Mend", rule->mend != NULL ? rule->mend : "worded by the rule for each job");
    page_head(out, "Caution", rule->caution);
    text_addf(&from, "%s, line %d%s%s", rule->file, rule->line,
              x->only_in == NULL ? "" : "; not a rule everywhere: shown as it stands in ",
              x->only_in == NULL ? "" : x->only_in);
    text_addf(out, "%-*s", PAGE_HEAD, "Written");
    page_phrase(out, PAGE_HEAD, &from);
}

/* Facts ------------------------------------------------------------------------ */

static void add_fields(const struct explanation *x, struct text *out)
{
    page_section(out, "the facts it reads");
    for (size_t i = 0; i < x->field_count; i++) {
        text_addf(out, "  %s\n    ", x->fields[i]->path);
        wrap_add(out, 4, x->fields[i]->ask);
    }
    if (x->field_count == 0)
        text_add(out, "  None.\n");
    text_add(out, "\n");
    wrap_add(out, 0, "Figures and facts are those that the rule declares: all there are.");
}

/* How a job was judged ---------------------------------------------------------- */

static void add_facts_read(const struct explanation *x, const struct finding *finding,
                           struct text *out)
{
    for (size_t i = 0; i < finding->read_count; i++) {
        const struct field *field = path_field(&x->law->book->fields, finding->reads[i].at);
        struct text line = TEXT_EMPTY;
        text_addf(&line, "%s = ", finding->reads[i].at);
        field_words_add(&line, path_find(x->job, finding->reads[i].at), field);
        page_labelled_phrase(out, i == 0 ? "1 facts" : "", &line);
    }
    if (finding->read_count == 0)
        page_labelled(out, "1 facts", "none read");
}

static void add_figures_asked(const struct finding *finding, struct text *out)
{
    for (size_t i = 0; i < finding->figure_count; i++) {
        const struct figure *figure = finding->figures[i];
        struct text line = TEXT_EMPTY;
        text_addf(&line, "%s = ", figure->name);
        value_add(&line, &figure->value);
        text_add(&line, " (");
        value_add_cite(&line, &figure->cite);
        text_addf(&line, ", %s", value_cite_status(&figure->cite));
        if (figure->amended != NULL) {
            text_addf(&line, "; %s moved it from ", figure->amended->by);
            value_add(&line, &figure->amended->from);
        }
        text_add(&line, ")");
        page_labelled_phrase(out, i == 0 ? "2 figures" : "", &line);
    }
    if (finding->figure_count == 0)
        page_labelled(out, "2 figures", "none asked for");
}

static void add_comparison(const struct finding *finding, struct text *out)
{
    struct text line = TEXT_EMPTY;
    if (!finding->compared) {
        text_add(&line, "not come to");
    } else {
        text_add(&line, "found ");
        value_add(&line, &finding->found);
        text_add(&line, ", demanded ");
        value_add_demand(&line, finding->sense, &finding->required);
    }
    page_labelled_phrase(out, "4 compared", &line);
}

/* In the order of judging: facts, figures, arithmetic, comparison, outcome. */
static void add_steps(const struct explanation *x, const struct finding *finding, struct text *out)
{
    struct text outcome = TEXT_EMPTY;
    text_add(out, "\n");
    if (finding->where != NULL) {
        text_add(out, "  ");
        wrap_add(out, 2, finding->where);
    }
    add_facts_read(x, finding, out);
    add_figures_asked(finding, out);
    for (size_t i = 0; i < finding->work_count; i++)
        page_labelled(out, i == 0 ? "3 arithmetic" : "", finding->work[i]);
    if (finding->work_count == 0)
        page_labelled(out, "3 arithmetic", "none needed");
    add_comparison(finding, out);
    text_addf(&outcome, "%s. %s", page_outcome(finding->outcome), finding->says);
    page_labelled_phrase(out, "5 outcome", &outcome);
    page_labelled(out, "mend", finding->mend);
}

/* The findings of this rule alone, under the heading of the whole check. */
static void add_judged(const struct explanation *x, struct text *out)
{
    size_t count = 0;
    page_section(out, "how this job is judged by it");
    page_heading(out, &x->checked.result);
    for (size_t i = 0; i < x->checked.result.finding_count; i++) {
        if (strcmp(x->checked.result.findings[i].rule, x->rule->id) != 0)
            continue;
        add_steps(x, &x->checked.result.findings[i], out);
        count++;
    }
    if (count == 0)
        text_add(out, "\n  It is not: the rule is no rule of that place, or of another stage.\n");
    text_add(out, "\n");
    wrap_add(out, 0, x->checked.result.caution);
}

void report_explain_text(const struct explanation *x, struct text *out)
{
    if (x->rules != NULL) {
        add_list(x, out);
        add_skipped(x, out);
        return;
    }
    if (x->rule != NULL)
        add_rule(x, out);
    else
        text_addf(out, "%s: a figure\n\n", x->figures.items[0]);
    explain_figures(x, out);
    add_skipped(x, out);
    if (x->rule == NULL)
        return;
    add_fields(x, out);
    if (x->job != NULL)
        add_judged(x, out);
}
