#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <cmocka.h>

static const char FIELDS[] =
    "field \"eavemark_job\" { type = \"integer\", range = { 1, 1 }, required = true,\n"
    "  stage = \"permit\", ask = \"Which version?\" }\n"
    "field \"job\" { type = \"text\", range = { 1, 200 }, required = true, stage = \"permit\",\n"
    "  ask = \"What do you call this job?\" }\n"
    "field \"jurisdiction\" { type = \"text\", range = { 1, 200 }, required = true,\n"
    "  stage = \"permit\", ask = \"Where?\" }\n"
    "field \"date\" { type = \"date\", required = true, stage = \"permit\", ask = \"When?\" }\n"
    "field \"stage\" { type = \"choice\", choices = { \"permit\", \"deck\", \"dry-in\", \"final\" },\n"
    "  required = true, stage = \"permit\", ask = \"How far?\" }\n"
    "field \"existing\" { type = \"group\", stage = \"permit\", ask = \"What is there\" }\n"
    "field \"existing.layers\" { type = \"integer\", unit = \"layers\", range = { 0, 6 },\n"
    "  stage = \"permit\", ask = \"How many layers?\" }\n"
    "field \"existing.condition\" { type = \"choice\", choices = { \"sound\", \"rotted\" },\n"
    "  stage = \"permit\", ask = \"Is it sound?\" }\n"
    "field \"existing.kinds\" { type = \"choices\", choices = { \"asphalt\", \"slate\", \"tile\" },\n"
    "  stage = \"permit\", ask = \"Which kinds?\" }\n"
    "field \"existing.slippery\" { type = \"yes_no\", stage = \"permit\", ask = \"Slippery?\" }\n"
    "field \"roof\" { type = \"group\", stage = \"permit\", ask = \"The roof\" }\n"
    "field \"roof.slopes\" { type = \"list\", range = { 0, 60 }, stage = \"permit\",\n"
    "  ask = \"Each plane\" }\n"
    "field \"roof.slopes[].name\" { type = \"text\", range = { 1, 60 }, stage = \"permit\",\n"
    "  ask = \"Its name?\" }\n"
    "field \"roof.slopes[].pitch\" { type = \"slope\", range = { 0, 24 }, stage = \"permit\",\n"
    "  ask = \"How steep?\" }\n"
    "field \"roof.slopes[].deck\" { type = \"reference\", refers = \"decks\", stage = \"permit\",\n"
    "  ask = \"On which deck?\" }\n"
    "field \"decks\" { type = \"list\", range = { 0, 10 }, stage = \"permit\", ask = \"Each deck\" }\n"
    "field \"decks[].name\" { type = \"text\", range = { 1, 60 }, stage = \"permit\",\n"
    "  ask = \"Its name?\" }\n"
    "field \"decks[].spacing_in\" { type = \"number\", unit = \"in\", range = { 0.5, 48 },\n"
    "  stage = \"permit\", ask = \"How far apart will the nails be?\" }\n"
    "field \"decks[].measured_spacing_in\" { type = \"numbers\", unit = \"in\",\n"
    "  range = { 0.1, 60 }, measured = true, stage = \"deck\",\n"
    "  ask = \"What spacings were measured?\" }\n"
    "field \"attics\" { type = \"list\", range = { 0, 20 }, stage = \"permit\",\n"
    "  ask = \"Each attic\" }\n"
    "field \"attics[].name\" { type = \"text\", range = { 1, 60 }, stage = \"permit\",\n"
    "  ask = \"Its name?\" }\n"
    "field \"attics[].vents\" { type = \"list\", range = { 0, 60 }, stage = \"permit\",\n"
    "  ask = \"Each vent\" }\n"
    "field \"attics[].vents[].name\" { type = \"text\", range = { 1, 60 }, stage = \"permit\",\n"
    "  ask = \"Its name?\" }\n"
    "field \"attics[].vents[].count\" { type = \"integer\", range = { 0, 2000 },\n"
    "  stage = \"permit\", ask = \"How many?\" }\n";

static const char MODEL[] =
    "jurisdiction \"model/test\" {\n"
    "  title = \"Test code, 2020\", model = true, edition = \"TEST 2020\",\n"
    "  figures = {\n"
    "    [\"test.most\"] = { 3, unit = \"layers\", sense = \"at_most\", cite = \"1.1\",\n"
    "      status = \"seen\", source = \"a page\" },\n"
    "    [\"test.seen\"] = { 3, unit = \"layers\", sense = \"at_most\", cite = \"1.2\",\n"
    "      status = \"seen\", source = \"a page\" },\n"
    "    [\"test.parallel\"] = { 3, unit = \"layers\", sense = \"at_most\", cite = \"1.3\",\n"
    "      status = \"parallel\", source = \"a sister code\" },\n"
    "    [\"test.memory\"] = { 3, unit = \"layers\", sense = \"at_most\", cite = \"1.4\",\n"
    "      status = \"memory\", source = \"recalled\" },\n"
    "    [\"test.practice\"] = { 3, unit = \"layers\", sense = \"at_most\", cite = \"1.5\",\n"
    "      status = \"practice\", source = \"common practice\" },\n"
    "    [\"test.disputed\"] = { 3, unit = \"layers\", sense = \"at_most\", cite = \"1.6\",\n"
    "      status = \"seen\", source = \"a page\", disputed = \"another page says 4\" },\n"
    "    [\"test.nails_most\"] = { 6, unit = \"in\", sense = \"at_most\", cite = \"2.1\",\n"
    "      status = \"seen\", source = \"a page\" },\n"
    "    [\"test.pitch_least\"] = { 4, unit = \"rise_in_12\", sense = \"at_least\", cite = \"3.1\",\n"
    "      status = \"seen\", source = \"a page\" },\n"
    "    [\"test.lap_least\"] = { 6, unit = \"in\", sense = \"at_least\", cite = \"2.2\",\n"
    "      status = \"seen\", source = \"a page\" },\n"
    "    [\"test.layers_exact\"] = { 3, unit = \"layers\", sense = \"equals\", cite = \"1.7\",\n"
    "      status = \"seen\", source = \"a page\" },\n"
    "    [\"test.kinds\"] = { { \"slate\", \"tile\" }, sense = \"none_of\", cite = \"4.1\",\n"
    "      status = \"seen\", source = \"a page\" },\n"
    "    [\"test.conditions\"] = { { \"sound\" }, sense = \"one_of\", cite = \"4.2\",\n"
    "      status = \"seen\", source = \"a page\" },\n"
    "    [\"test.required\"] = { true, sense = \"equals\", cite = \"5.1\",\n"
    "      status = \"seen\", source = \"a page\" },\n"
    "  },\n"
    "}\n";

const char SMALL_JOB[] =
    "{ \"eavemark_job\": 1, \"job\": \"Invented house\", \"jurisdiction\": \"model/test\",\n"
    "  \"date\": \"2026-03-02\", \"stage\": \"permit\",\n"
    "  \"existing\": { \"layers\": 1, \"condition\": \"sound\", \"kinds\": [\"asphalt\"] },\n"
    "  \"roof\": { \"slopes\": [\n"
    "    { \"name\": \"front\", \"pitch\": \"5:12\", \"deck\": \"panels\" },\n"
    "    { \"name\": \"back\", \"pitch\": \"3:12\", \"deck\": \"panels\" } ] },\n"
    "  \"decks\": [ { \"name\": \"panels\", \"spacing_in\": 6 } ],\n"
    "  \"attics\": [\n"
    "    { \"name\": \"main\", \"vents\": [ { \"name\": \"ridge\", \"count\": 1 },\n"
    "                                 { \"name\": \"soffit\", \"count\": 4 } ] },\n"
    "    { \"name\": \"porch\", \"vents\": [] } ] }\n";

void small_law_write(const struct temporary_home *home)
{
    home_write(home, "rules/fields.lua", FIELDS);
    home_write(home, "jurisdictions/model/test.lua", MODEL);
}

char *text_with(const char *text, const char *old, const char *new_text)
{
    const char *at = strstr(text, old);
    if (at == NULL || strstr(at + 1, old) != NULL)
        fail_msg("\"%s\" does not stand once in the text", old);
    const size_t before = (size_t)(at - text), size = strlen(new_text);
    const size_t after = strlen(at + strlen(old));
    char *out = malloc(before + size + after + 1);
    assert_non_null(out);
    memcpy(out, text, before);
    memcpy(out + before, new_text, size);
    memcpy(out + before + size, at + strlen(old), after + 1);
    return out;
}

/* Adds the names that follow `figure`. */
static size_t add_figures(const char *text, char *to, size_t length, size_t size)
{
    for (const char *at = strstr(text, "figure \""); at != NULL; at = strstr(at, "figure \"")) {
        at += strlen("figure \"");
        length += (size_t)snprintf(to + length, size - length, "'%.*s', ", (int)strcspn(at, "\""),
                                   at);
    }
    return length;
}

const char *small_reads(const char *keys, const char *lines, char reads[1000])
{
    size_t length = (size_t)snprintf(reads, 1000,
                                     "reads = { facts = " SMALL_FACTS ", figures = { ");
    length = add_figures(keys, reads, length, 1000);
    length = add_figures(lines, reads, length, 1000);
    snprintf(reads + length, 1000 - length, "} },");
    return reads;
}
