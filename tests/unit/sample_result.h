/* sample_result.h - a result made by hand, with one finding of every outcome.
 *
 * Nothing in it is a claim about a code: the tests look at how it is written,
 * not at what it says. */
#ifndef EAVEMARK_TESTS_SAMPLE_RESULT_H
#define EAVEMARK_TESTS_SAMPLE_RESULT_H

#include "judge/finding.h"

#include <string.h>

enum { SAMPLE_FINDINGS = 8 };

/* Everything the result points to; as long-lived as the result. */
struct sample {
    struct cite seen, memory;
    struct amended amended;
    const char *chain[2], *work[2], *set[2], *doubts[1];
    struct maker maker;
    struct read reads[2];
    struct safety safety;
    struct finding findings[SAMPLE_FINDINGS];
    struct result result;
};

static struct value sample_number(double number, const char *unit)
{
    return (struct value){.kind = VALUE_NUMBER, .number = number, .unit = unit};
}

static void sample_fail(struct sample *s, struct finding *finding)
{
    *finding = (struct finding){
        .rule = "layers.total",
        .title = "Layers after the work",
        .stage = STAGE_PERMIT,
        .outcome = OUTCOME_FAIL,
        .met = MET_NO,
        .why = WHY_UNCONFIRMED,
        .says = "Found 3 layers. 2 layers stay under the new one.",
        .note = "2 layers stay under the new one.",
        .remark = "2 layers stay under the new one.",
        .compared = true,
        .required = sample_number(1, "layers"),
        .sense = SENSE_AT_MOST,
        .also = sample_number(0, "layers"),
        .also_sense = SENSE_AT_LEAST,
        .rival = sample_number(2, "layers"),
        .rival_sense = SENSE_AT_MOST,
        .makers = &s->maker,
        .maker_count = 1,
        .found = sample_number(3, "layers"),
        .cites = &s->seen,
        .cite_count = 1,
        .amended = &s->amended,
        .work = s->work,
        .work_count = 2,
        .mend = "Tear off to the deck.",
        .caution = "Old layers hide soft decks.",
        .reads = s->reads,
        .read_count = 2,
    };
}

static void sample_findings(struct sample *s)
{
    struct finding *f = s->findings;
    f[0] = (struct finding){.rule = "deck.gap",
                            .title = "Gap",
                            .stage = STAGE_DECK,
                            .outcome = OUTCOME_BROKEN,
                            .says = "deck.lua:12: no figure \"gap\""};
    f[1] = (struct finding){.rule = "drip_edge.eave",
                            .title = "Drip edge",
                            .where = "front eave",
                            .outcome = OUTCOME_PASS,
                            .met = MET_YES,
                            .says = "Found yes; demanded yes.",
                            .compared = true,
                            .required = {.kind = VALUE_YES_NO, .yes = true},
                            .sense = SENSE_EQUALS,
                            .found = {.kind = VALUE_YES_NO, .yes = true},
                            .cites = &s->seen,
                            .cite_count = 1};
    sample_fail(s, &f[2]);
    f[3] = (struct finding){.rule = "slope.least",
                            .title = "Slope",
                            .where = "front",
                            .outcome = OUTCOME_OPEN,
                            .ask = ASK_LATER,
                            .says = "Not known: roof.slopes[1].pitch."};
    f[4] = (struct finding){.rule = "valley.lining",
                            .title = "Lining",
                            .where = "a",
                            .outcome = OUTCOME_NOT_APPLICABLE,
                            .says = "No metal."};
    f[5] = (struct finding){.rule = "valley.lining",
                            .title = "Lining",
                            .where = "b",
                            .outcome = OUTCOME_NOT_APPLICABLE,
                            .says = "No metal."};
    f[6] = (struct finding){.rule = "ventilation.ratio",
                            .title = "Attic openings",
                            .outcome = OUTCOME_WARN,
                            .met = MET_YES,
                            .why = WHY_UNCONFIRMED,
                            .says = "Met, on a weak figure.",
                            .note = "Met, on a weak figure.",
                            .compared = true,
                            .required = sample_number(1152.04, "sqin"),
                            .sense = SENSE_AT_LEAST,
                            .found = sample_number(0.1 + 0.2, "in"),
                            .cites = &s->memory,
                            .cite_count = 1};
    f[7] = (struct finding){.rule = "wood.kind",
                            .title = "Kind",
                            .stage = STAGE_DRY_IN,
                            .outcome = OUTCOME_WARN,
                            .met = MET_YES,
                            .why = WHY_DISPUTED,
                            .says = "Met.",
                            .compared = true,
                            .required = {.kind = VALUE_SET, .set = s->set, .set_count = 2},
                            .sense = SENSE_ONE_OF,
                            .found = {.kind = VALUE_TEXT, .text = "D226_II"}};
}

static void sample_make(struct sample *s)
{
    *s = (struct sample){
        .seen = {"IRC 2021", "R908.3.1.1", STATUS_SEEN, "city handouts"},
        .memory = {"IRC 2021", "R806.2", STATUS_MEMORY, NULL},
        .chain = {"example/tamarack", "model/irc-2021"},
        .doubts = {"the page is old"},
        .work = {"2 kept + 1 new = 3 layers", "3 is over 1"},
        .reads = {{"/existing/layers", ORIGIN_JOB, STATUS_NONE, NULL, NULL, NULL},
                  {"/scope/method", ORIGIN_PLAN, STATUS_NONE, NULL, NULL, NULL}},
        .set = {"D226_II", "D1970"},
        .safety = {"falls", NULL, "Tie off.", {"Code of Practice", "4", STATUS_PRACTICE, NULL}},
    };
    s->amended = (struct amended){"Tamarack County", sample_number(2, "layers"),
                                  sample_number(1, "layers")};
    s->maker = (struct maker){"layers.most", &s->seen, NULL, SENSE_NONE};
    sample_findings(s);
    s->result = (struct result){
        .job = "Blue house",
        .date = "2026-03-01",
        .jurisdiction = "example/tamarack",
        .jurisdiction_title = "Tamarack County",
        .invented = true,
        .chain = s->chain,
        .chain_count = 2,
        .doubts = s->doubts,
        .doubt_count = 1,
        .met_unconfirmed = 1,
        .disputed = 1,
        .not_met = 1,
        .edition = "IRC 2021 as amended",
        .only_stage = -1,
        .findings = s->findings,
        .finding_count = SAMPLE_FINDINGS,
        .safety = &s->safety,
        .safety_count = 1,
        .caution = "The building department decides.",
    };
    memset(s->result.fingerprint, 'a', 64);
    for (size_t i = 0; i < SAMPLE_FINDINGS; i++)
        s->result.counts[s->findings[i].outcome]++;
}

#endif
