#include "report/json_finding.h"

#include "judge/written.h"

#include <string.h>

/* A piece that was written before. */
static bool add_kept(struct json_out *out, const struct kept_piece *kept, enum origin from)
{
    if (out->pretty || kept == NULL || kept->bytes == NULL || kept->from != from)
        return false;
    json_out_line(out, kept->bytes, kept->length);
    return true;
}

/* Where the next object of a list will begin. */
static size_t begins(const struct json_out *out)
{
    return out->text->length + (out->follows ? 1 : 0);
}

/* What was written from start on, for the next finding that tells it. */
static void keep_piece(const struct json_out *out, struct kept_piece *kept, enum origin from,
                       size_t start)
{
    const size_t length = out->text->length - start;
    if (out->pretty || kept == NULL || out->text->failed)
        return;
    if (length > kept->room) {
        kept->bytes = arena_room(kept->arena, length, 1);
        kept->room = kept->bytes == NULL ? 0 : length;
    }
    if (kept->bytes == NULL)
        return;
    memcpy(kept->bytes, text_string(out->text) + start, length);
    kept->length = length;
    kept->from = from;
}

static void add_read(struct json_out *out, const struct read *read)
{
    if (add_kept(out, read->kept, read->from))
        return;
    const size_t start = begins(out);
    json_out_open(out, NULL, '{');
    json_out_text(out, "at", read->at);
    json_out_text(out, "from", origin_word(read->from));
    json_out_close(out, '}');
    keep_piece(out, read->kept, read->from, start);
}

/* How long they are on a line, each with a comma before it; 0 where one is not kept. */
static size_t kept_length(const struct finding *finding)
{
    size_t length = 0;
    for (size_t i = 0; i < finding->read_count; i++) {
        const struct kept_piece *kept = finding->reads[i].kept;
        if (kept == NULL || kept->bytes == NULL || kept->from != finding->reads[i].from)
            return 0;
        length += kept->length + 1;
    }
    return length;
}

/* Half of what is asked for a job is facts read: all of a finding at once. */
static void add_kept_reads(struct json_out *out, const struct finding *finding, size_t length)
{
    char *at = json_out_begin(out, "reads", length + 1);
    if (at == NULL)
        return;
    for (size_t i = 0; i < finding->read_count; i++) {
        const struct kept_piece *kept = finding->reads[i].kept;
        *at++ = i == 0 ? '[' : ',';
        memcpy(at, kept->bytes, kept->length);
        at += kept->length;
    }
    *at = ']';
}

/* Which facts, and whether the job states them or they were laid out. */
static void add_reads(struct json_out *out, const struct finding *finding)
{
    const size_t kept = out->pretty ? 0 : kept_length(finding);
    if (kept > 0) {
        add_kept_reads(out, finding, kept);
        return;
    }
    json_out_open(out, "reads", '[');
    for (size_t i = 0; i < finding->read_count; i++)
        add_read(out, &finding->reads[i]);
    json_out_close(out, ']');
}

/* null while it cannot be told. */
static void add_met(struct json_out *out, enum met met)
{
    if (met == MET_UNKNOWN)
        json_out_null(out, "met");
    else
        json_out_bool(out, "met", met == MET_YES);
}

/* Set bits as words. */
static void add_why(struct json_out *out, unsigned why)
{
    json_out_open(out, "why", '[');
    for (int i = 0; i < WHY_COUNT; i++)
        if (why & (1u << i))
            json_out_text(out, NULL, finding_why_word(i));
    json_out_close(out, ']');
}

/* The ids of the figures that made the demanded value. */
static void add_makers(struct json_out *out, const struct finding *finding)
{
    json_out_open(out, "figures", '[');
    for (size_t i = 0; i < finding->maker_count; i++)
        json_out_text(out, NULL, finding->makers[i].figure);
    json_out_close(out, ']');
}

/* A value with its unit, and its sense when it has one; null when absent. */
static void add_figure(struct json_out *out, const char *key, bool present,
                       const struct value *value, enum sense sense)
{
    if (!present || value->kind == VALUE_NONE) {
        json_out_null(out, key);
        return;
    }
    json_out_open(out, key, '{');
    json_out_value(out, "value", value);
    json_out_text(out, "unit", value->unit);
    if (sense != SENSE_NONE)
        json_out_text(out, "sense", sense_word(sense));
    json_out_close(out, '}');
}

static void add_cite(struct json_out *out, const struct cite *cite, struct kept_piece *kept)
{
    if (add_kept(out, kept, ORIGIN_JOB))
        return;
    const size_t start = begins(out);
    json_out_open(out, NULL, '{');
    json_out_text(out, "code", cite->code);
    json_out_text(out, "section", cite->section);
    json_out_text(out, "status", status_word(cite->status));
    json_out_text(out, "source", cite->source);
    json_out_close(out, '}');
    keep_piece(out, kept, ORIGIN_JOB, start);
}

static void add_cites(struct json_out *out, const struct finding *finding)
{
    json_out_open(out, "cite", '[');
    for (size_t i = 0; i < finding->cite_count; i++)
        add_cite(out, &finding->cites[i],
                 finding->kept_cites == NULL ? NULL : finding->kept_cites[i]);
    json_out_close(out, ']');
}

static void add_amended(struct json_out *out, const struct amended *amended)
{
    if (amended == NULL) {
        json_out_null(out, "amended");
        return;
    }
    json_out_open(out, "amended", '{');
    json_out_text(out, "by", amended->by);
    json_out_value(out, "from", &amended->from);
    json_out_value(out, "to", &amended->to);
    json_out_close(out, '}');
}

static void add_head(struct json_out *out, const struct finding *finding)
{
    json_out_text(out, "rule", finding->rule);
    json_out_text(out, "stage", stage_word(finding->stage));
}

static void add_outcome(struct json_out *out, const struct finding *finding)
{
    json_out_text(out, "outcome", outcome_word(finding->outcome));
    add_met(out, finding->met);
    add_why(out, finding->why);
}

static void add_said(struct json_out *out, const struct finding *finding)
{
    json_out_text(out, "ask", ask_word(finding->ask));
    json_out_text(out, "says", finding->says);
}

static void add_grounds(struct json_out *out, const struct finding *finding)
{
    add_figure(out, "required", finding->compared, &finding->required, finding->sense);
    add_figure(out, "also", finding->compared, &finding->also, finding->also_sense);
    add_figure(out, "rival", finding->compared, &finding->rival, SENSE_NONE);
    add_figure(out, "found", finding->compared, &finding->found, SENSE_NONE);
    add_makers(out, finding);
    add_cites(out, finding);
    add_amended(out, finding->amended);
    json_out_texts(out, "work", finding->work, finding->work_count);
    json_out_text(out, "mend", finding->mend);
    json_out_text(out, "caution", finding->caution);
}

static void add_said_and_grounds(struct json_out *out, const struct finding *finding)
{
    add_said(out, finding);
    add_grounds(out, finding);
}

static void add_opening(struct json_out *out, const struct finding *finding)
{
    add_head(out, finding);
    json_out_text(out, "where", finding->where);
    add_outcome(out, finding);
}

/* All but the facts read. */
static void add_told(struct json_out *out, const struct finding *finding)
{
    add_opening(out, finding);
    add_said_and_grounds(out, finding);
}

/* What was last said anew: many findings that follow one another wait for the same fact. */
struct said {
    const char *says;
    enum ask ask;
    size_t start, length; /* in the text */
};

static void add_said_anew(struct json_out *out, const struct finding *finding, struct said *last)
{
    const size_t start = out->text->length;
    if (!out->pretty && last->says == finding->says && last->ask == finding->ask) {
        char *again = text_room(out->text, last->length);
        if (again != NULL)
            memcpy(again, out->text->bytes + last->start, last->length);
        return;
    }
    add_said(out, finding);
    *last = (struct said){finding->says, finding->ask, start, out->text->length - start};
}

/* A part that is the same whatever job the finding is of: written once, then copied. Of a
 * finding that is written already there is nothing else. True when it is kept. */
static bool add_part(struct json_out *out, const struct finding *finding, enum finding_part part,
                     void (*add)(struct json_out *out, const struct finding *finding))
{
    struct kept_json *kept = out->pretty ? NULL : finding->kept;
    if (kept != NULL && kept->parts[part] != NULL) {
        json_out_raw(out, kept->parts[part], kept->lengths[part]);
        return true;
    }
    if (finding->written) {
        out->text->failed = true;
        return false;
    }
    const size_t start = out->text->length;
    add(out, finding);
    const size_t length = out->text->length - start;
    if (kept == NULL || out->text->failed || *kept->used + length > kept->most)
        return false;
    kept->parts[part] = arena_copy_n(kept->arena, text_string(out->text) + start, length);
    kept->lengths[part] = (unsigned)length;
    *kept->used += length;
    return kept->parts[part] != NULL;
}

/* The keys are a promise to whoever reads reports by program: always all of them, in this
 * order, null where there is nothing. */
static void add_anew(struct json_out *out, const struct finding *finding, struct said *last)
{
    const bool said_anew = finding->kept != NULL && finding->kept->said_anew;
    const bool whole = finding->where == NULL; /* up to what is said anew it is one part */
    bool kept;
    json_out_open(out, NULL, '{');
    if (whole) {
        kept = add_part(out, finding, PART_WHOLE, said_anew ? add_opening : add_told);
    } else {
        kept = add_part(out, finding, PART_HEAD, add_head);
        json_out_text(out, "where", finding->where);
        kept = add_part(out, finding, PART_OUTCOME, add_outcome) && kept;
    }
    if (said_anew)
        add_said_anew(out, finding, last);
    if (said_anew || !whole)
        kept = add_part(out, finding, PART_GROUNDS, said_anew ? add_grounds : add_said_and_grounds)
               && kept;
    add_reads(out, finding);
    json_out_close(out, '}');
    if (kept)
        finding->kept->complete = true;
}

/* What is there as written is put together on a line, and then laid out. */
static void add_laid_out(struct json_out *out, const struct finding *finding)
{
    struct text text = TEXT_EMPTY;
    struct json_out line = json_out_to(&text, false);
    struct said last = {.says = NULL};
    add_anew(&line, finding, &last);
    if (text.failed)
        out->text->failed = true;
    else
        json_out_line(out, text_string(&text), text.length);
    text_free(&text);
}

static void add_finding(struct json_out *out, const struct result *result,
                        const struct finding *finding, struct said *last)
{
    if (finding->json != NULL) { /* as it was written for the job before */
        json_out_line(out, finding->json, finding->json_length);
        return;
    }
    if (out->pretty && finding->written) {
        add_laid_out(out, finding);
        return;
    }
    const size_t start = begins(out);
    add_anew(out, finding, last);
    if (!out->pretty && !out->text->failed)
        carry_written(result, finding, text_string(out->text) + start, out->text->length - start);
}

void json_finding_list(struct json_out *out, const struct result *result, bool all)
{
    struct said last = {.says = NULL};
    json_out_open(out, "findings", '[');
    for (size_t i = 0; i < result->finding_count; i++)
        if (all || result->findings[i].outcome != OUTCOME_NOT_APPLICABLE)
            add_finding(out, result, &result->findings[i], &last);
    json_out_close(out, ']');
}
