#include "base/text.h"
#include "report/telling.h"
#include "report/sources.h"

#include "report/value_words.h"

#include <string.h>

enum { PLACES_SHOWN = 3 /* of a question */, WAITING_SHOWN = 8 /* rules with one answer */ };

/* A phrase to put into another. */
static void add_released(struct text *out, struct text phrase)
{
    text_add(out, text_string(&phrase));
    out->failed = out->failed || phrase.failed;
    text_free(&phrase);
}

/* The rule's id where it has no title. */
static const char *name_of(const struct finding *finding)
{
    return finding->title == NULL ? finding->rule : finding->title;
}

/* What is not met, or to look at ------------------------------------------------------- */

/* The caller's to free. */
static struct text found_of(const struct finding *finding)
{
    struct text found = TEXT_EMPTY;
    value_add(&found, &finding->found);
    return found;
}

/* As it prints: what reads alike is alike. */
static bool same_found(const struct finding *a, const struct finding *b)
{
    struct text left = found_of(a), right = found_of(b);
    const bool same = strcmp(text_string(&left), text_string(&right)) == 0;
    text_free(&left);
    text_free(&right);
    return same;
}

/* Of one finding: yes. */
static bool all_found_alike(const struct paragraph *paragraph)
{
    for (size_t i = 1; i < paragraph->count; i++)
        if (!same_found(paragraph->findings[0], paragraph->findings[i]))
            return false;
    return true;
}

/* A fail that rests on a figure nobody read says so before anything else. */
static const char *first_words(const struct finding *finding)
{
    if (finding->outcome != OUTCOME_FAIL || (finding->why & WHY_UNCONFIRMED) == 0)
        return "";
    return finding->unsure != NULL ? "Not certain to bind here: " : "Unconfirmed figure: ";
}

struct text telling_title(const struct paragraph *paragraph)
{
    struct text title = TEXT_EMPTY;
    const struct finding *finding = paragraph->findings[0];
    text_addf(&title, "%s%s", first_words(finding), name_of(finding));
    /* Where each place found something else, the places are named with what was found. */
    for (size_t i = 0; all_found_alike(paragraph) && i < paragraph->count; i++)
        if (paragraph->findings[i]->where != NULL)
            text_addf(&title, "%s%s", i == 0 ? ": " : "; ", paragraph->findings[i]->where);
    return title;
}

/* "found 4.8 psf (main front; main back), 4.2 psf (porch)". */
static void add_each_found(struct text *out, const struct paragraph *paragraph)
{
    bool any = false;
    for (size_t i = 0; i < paragraph->count; i++) {
        bool said_before = false;
        for (size_t j = 0; j < i && !said_before; j++)
            said_before = same_found(paragraph->findings[j], paragraph->findings[i]);
        if (said_before)
            continue;
        text_add(out, any ? ", " : "found ");
        add_released(out, found_of(paragraph->findings[i]));
        const char *lead = " (";
        for (size_t j = i; j < paragraph->count; j++)
            if (same_found(paragraph->findings[j], paragraph->findings[i])) {
                text_addf(out, "%s%s", lead,
                          paragraph->findings[j]->where == NULL ? "the house"
                                                                : paragraph->findings[j]->where);
                lead = "; ";
            }
        text_add(out, ")");
        any = true;
    }
}

/* Once when all places found the same; else each with what was found there. */
static void add_found(struct text *out, const struct paragraph *paragraph)
{
    if (paragraph->findings[0]->found.kind == VALUE_NONE)
        return;
    if (all_found_alike(paragraph)) {
        text_add(out, "found ");
        value_add(out, &paragraph->findings[0]->found);
    } else {
        add_each_found(out, paragraph);
    }
}

/* How it stands, where it is no plain fail. */
static const char *standing_of(const struct finding *finding)
{
    if (finding->outcome == OUTCOME_FAIL)
        return "";
    if (finding->met == MET_NO)
        return (finding->why & WHY_PRACTICE) != 0 ? "not met, by common practice: "
                                                  : "not met, by advice: ";
    return (finding->why & WHY_DISPUTED) != 0 ? "met on one reading only: "
                                              : "met, with a remark: ";
}

/* A duty's own words say it better than "found no". */
static bool is_said_by_rule(const struct finding *finding)
{
    return !finding->compared
           || (finding->required.kind == VALUE_YES_NO && finding->remark != NULL);
}

/* Found before demanded: the reader knows the roof. */
static void add_comparison(struct text *out, const struct paragraph *paragraph)
{
    const struct finding *finding = paragraph->findings[0];
    add_found(out, paragraph);
    if (finding->required.kind != VALUE_NONE) {
        text_add(out, finding->found.kind == VALUE_NONE ? "demanded " : "; demanded ");
        value_add_demands(out, finding);
    }
    if (finding->rival.kind != VALUE_NONE) {
        text_add(out, "; another source demands ");
        value_add_demand(out, finding->rival_sense, &finding->rival);
    }
}

/* The nth section of the figures that made the demand; of all that were cited where
 * none did. */
static struct text section_of(const struct result *result, const struct finding *finding,
                              size_t nth)
{
    return telling_section(result, finding->maker_count > 0 ? finding->makers[nth].cite
                                                            : &finding->cites[nth]);
}

/* Another one holds all of it: "R905.2.2" in "R905.2.2, Table R905.1.1(2)". */
static bool is_in_another(const struct result *result, const struct finding *finding, size_t count,
                          size_t nth)
{
    struct text own = section_of(result, finding, nth);
    bool held = own.length == 0;
    for (size_t i = 0; i < count && !held; i++) {
        struct text other = section_of(result, finding, i);
        held = i != nth && strstr(text_string(&other), text_string(&own)) != NULL
               && (other.length > own.length || i < nth);
        text_free(&other);
    }
    text_free(&own);
    return held;
}

/* Of several figures in one section, the longer citation is enough. */
static void add_sections(struct text *out, const struct result *result,
                         const struct finding *finding)
{
    const size_t count = finding->maker_count > 0 ? finding->maker_count : finding->cite_count;
    bool any = false;
    for (size_t i = 0; i < count; i++) {
        if (is_in_another(result, finding, count, i))
            continue;
        text_add(out, any ? "; " : " (");
        add_released(out, section_of(result, finding, i));
        any = true;
    }
    text_add(out, any ? ")" : "");
}

/* Behind the rest, or as a sentence of its own behind one. */
static void add_sources(struct text *out, const struct paragraph *paragraph)
{
    struct text sources = sources_of(paragraph->findings, paragraph->count);
    /* A remark of the rule is a sentence, with its own full stop. */
    const bool ended = out->length > 0 && text_string(out)[out->length - 1] == '.';
    if (sources.length > 0)
        text_addf(out, "%s%s", ended ? " Taken " : "; ", text_string(&sources));
    out->failed = out->failed || sources.failed;
    text_free(&sources);
}

/* How it stands, what was found and demanded, where that is written, whose facts they are. */
struct text telling_compared(const struct result *result, const struct paragraph *paragraph)
{
    struct text out = TEXT_EMPTY;
    const struct finding *finding = paragraph->findings[0];
    text_add(&out, standing_of(finding));
    if (is_said_by_rule(finding))
        text_add(&out, finding->remark != NULL ? finding->remark : finding->says);
    else
        add_comparison(&out, paragraph);
    add_sections(&out, result, finding);
    if (!is_said_by_rule(finding) && finding->remark != NULL)
        text_addf(&out, ". %s", finding->remark);
    add_sources(&out, paragraph);
    return out;
}

/* The three kinds of text that a block tells below its titles. */
static const char *mend_of(const struct finding *finding)
{
    return finding->mend;
}

static const char *dispute_of(const struct finding *finding)
{
    return finding->disagree;
}

static const char *caution_of(const struct finding *finding)
{
    return finding->caution;
}

/* The nth text of this kind that no earlier finding of the block has. */
static const char *nth_of(const struct finding_block *block, size_t nth,
                          const char *(*kind)(const struct finding *))
{
    for (size_t i = 0; i < block->count; i++) {
        const char *text = kind(block->paragraphs[i].findings[0]);
        bool said = text == NULL;
        for (size_t j = 0; j < i && !said; j++)
            said = text_same(kind(block->paragraphs[j].findings[0]), text);
        if (!said && nth-- == 0)
            return text;
    }
    return NULL;
}

const char *telling_mend(const struct finding_block *block, size_t nth)
{
    return nth_of(block, nth, mend_of);
}

const char *telling_dispute(const struct finding_block *block, size_t nth)
{
    return nth_of(block, nth, dispute_of);
}

const char *telling_caution(const struct finding_block *block, size_t nth)
{
    return nth_of(block, nth, caution_of);
}

/* Figures -------------------------------------------------------------------------------- */

struct text telling_demand(const struct doubtful *doubtful)
{
    struct text demand = TEXT_EMPTY;
    value_add_demand(&demand, doubtful->maker->sense, doubtful->maker->value);
    return demand;
}

struct text telling_section(const struct result *result, const struct cite *cite)
{
    struct text section = TEXT_EMPTY;
    /* The head names the edition: its sections need no book. */
    const bool own = text_same(cite->code, result->edition) && cite->section != NULL
                     && cite->section[0] != '\0';
    if (own)
        text_add(&section, cite->section);
    else
        value_add_cite(&section, cite);
    return section;
}

/* Only figures nobody read in this book come here: of memory, or of a sister text. */
const char *telling_known(const struct cite *cite)
{
    return cite->status == STATUS_PARALLEL ? "sister text" : "recalled";
}

/* What is open ----------------------------------------------------------------------------- */

/* Of many that wait for one answer a few are named: what matters is the answer. */
struct text telling_waiting(const struct pending *pending)
{
    struct text waiting = TEXT_EMPTY;
    size_t rules = 0;
    for (size_t i = 0; i < pending->count; i++) {
        const struct finding *finding = pending->findings[i];
        const bool same = i > 0 && text_same(finding->rule, pending->findings[i - 1]->rule);
        rules += !same;
        if (rules > WAITING_SHOWN)
            continue;
        if (!same)
            text_addf(&waiting, "%s%s", i == 0 ? "" : "; ", name_of(finding));
        if (finding->where != NULL)
            text_addf(&waiting, ", %s", finding->where);
    }
    if (rules > WAITING_SHOWN)
        text_addf(&waiting, " and %zu more", rules - WAITING_SHOWN);
    return waiting;
}

/* With the number of findings it decides, so that the reader sees what an answer is
 * worth. */
struct text telling_question(const struct asked *asked)
{
    struct text question = TEXT_EMPTY;
    text_add(&question, asked->ask);
    for (size_t i = 0; i < asked->where_count && i < PLACES_SHOWN; i++)
        text_addf(&question, "%s%s", i == 0 ? " " : "; ", asked->where[i]);
    if (asked->where_count > PLACES_SHOWN)
        text_addf(&question, " and %zu more", asked->where_count - PLACES_SHOWN);
    text_addf(&question, " (%zu)", asked->decides);
    return question;
}

/* Where the answer is to be had; an unknown word stands for itself. */
const char *telling_answer(const char *answer)
{
    static const struct {
        const char *answer, *words;
    } WORDS[] = {
        {"desk", "At the desk"}, {"wrapper", "On a wrapper, box or label"},
        {"paper", "In a paper"}, {"department", "From the department"},
        {"roof", "On the roof"}, {"attic", "In the attic"},
    };
    for (size_t i = 0; i < sizeof(WORDS) / sizeof(WORDS[0]); i++)
        if (text_same(WORDS[i].answer, answer))
            return WORDS[i].words;
    return answer;
}

/* What is met ------------------------------------------------------------------------------ */

/* In brackets, how many of them rest on a figure to be confirmed. */
static void add_topic(struct text *out, const struct topic *topic)
{
    text_add_spaced(out, topic->name, topic->length);
    text_addf(out, " %zu", topic->met);
    if (topic->unconfirmed > 0)
        text_addf(out, " (%zu)", topic->unconfirmed);
}

struct text telling_topics(const struct digest *digest)
{
    struct text topics = TEXT_EMPTY;
    for (size_t i = 0; i < digest->topic_count; i++) {
        text_add(&topics, i > 0 ? ", " : "");
        add_topic(&topics, &digest->topics[i]);
    }
    return topics;
}
