/* county_text.c - the first files of a new county. */
#include "report/county_report.h"

#include "base/date.h"
#include "base/utf8.h"
#include "report/value_words.h"

#include <string.h>

/* The words of what is followed, which may be somebody else's file, mostly stand in comments: a
 * line break among them would end the comment, and run what comes after. Releases them. */
static void add_safe(struct text *out, struct text *words)
{
    utf8_add_printable(out, text_string(words));
    out->failed = out->failed || words->failed;
    text_free(words);
}

/* A text as Lua reads it back. What does not print is written as utf8_add_printable has it,
 * which Lua reads as the same: \x0a, \u{200b}. */
static void add_quoted(struct text *out, const char *words)
{
    struct text escaped = TEXT_EMPTY;
    for (; *words != '\0'; words++) {
        if (*words == '"' || *words == '\\')
            text_add(&escaped, "\\");
        text_add_n(&escaped, words, 1);
    }
    text_add(out, "\"");
    add_safe(out, &escaped);
    text_add(out, "\"");
}

/* As a profile writes it. */
static void add_lua_value(struct text *out, const struct value *value)
{
    if (value->kind == VALUE_NUMBER)
        text_addf(out, "%.10g", value->number);
    if (value->kind == VALUE_YES_NO)
        text_add(out, value->yes ? "true" : "false");
    if (value->kind != VALUE_SET)
        return;
    text_add(out, "{");
    for (size_t i = 0; i < value->set_count; i++) {
        text_add(out, i == 0 ? " " : ", ");
        add_quoted(out, value->set[i]);
    }
    text_add(out, " }");
}

/* Two lines: what is followed, and how to move it. */
static void add_figure(struct text *out, const struct figure *figure)
{
    if (figure == NULL)
        return;
    struct text now = TEXT_EMPTY;
    value_add_demand(&now, figure->sense, &figure->value);
    text_add(&now, ", ");
    value_add_cite(&now, &figure->cite);
    text_add(out, "    -- Now: ");
    add_safe(out, &now);
    text_addf(out, ".\n    -- [\"%s\"] = { ", figure->name);
    add_lua_value(out, &figure->value);
    text_add(out, ", cite = \"1.02.030\", status = \"seen\", source = \"county page\" },\n");
}

/* The first day is that of what is followed, where it has one: before it nothing would
 * hold. */
static void add_dates(struct text *out, const struct county_start *start)
{
    char day[16];
    if (start->from != 0)
        date_write(start->from, day);
    text_addf(out, "  %sfrom = \"%s\", -- the first day of application that it binds\n",
              start->from == 0 ? "-- " : "", start->from == 0 ? "2026-01-01" : day);
    text_add(out, "  -- to = \"2099-01-01\", -- the first day that it no longer does\n");
}

/* What a writer of a first county needs to know, where he is going to write. */
static void add_heading(struct text *out, const struct county_start *start)
{
    text_addf(out, "-- %s: what differs here from %s.\n--\n", start->title, start->follows);
    text_addf(out,
              "-- Only differences stand here; the rest holds as in what is followed. To use a\n"
              "-- line that begins with \"-- [\", take the \"-- \" away, put in the county's own\n"
              "-- figure and section, and run:\n--\n--   eavemark proof %s\n--\n"
              "-- status says how the figure is known: seen, parallel, memory, practice; and\n"
              "-- source what was read. jurisdictions/README.md has the whole language.\n",
              start->id);
    if (start->borrowed != NULL)
        text_add(out, "--\n");
    county_text_caution(start, "-- ", out);
    text_add(out, "\n");
}

void county_text_caution(const struct county_start *start, const char *lead, struct text *out)
{
    if (start->borrowed == NULL)
        return;
    struct text why = TEXT_EMPTY;
    text_add(&why, start->borrowed);
    text_addf(out, "%scaution: what %s says was only borrowed there, and judges nothing: ", lead,
              start->follows);
    add_safe(out, &why);
    text_addf(
        out,
        ".\n%sWhat rests on it stays open until the county gives the figure, or adopts the book.\n",
        lead);
}

/* One of each kind of value, as comments: an unchanged profile must change nothing. */
static void add_figures(struct text *out, const struct county_start *start)
{
    text_add(out, "  figures = {\n"
                  "    -- A figure changed: the value first. Unit and sense stay as they are.\n");
    add_figure(out, start->number);
    add_figure(out, start->flag);
    add_figure(out, start->set);
    if (start->number != NULL)
        text_addf(out,
                  "    -- The same value under the county's own section (in place of the line\n"
                  "    -- above): leave the value out.\n"
                  "    -- [\"%s\"] = { cite = \"1.02.030\" },\n",
                  start->number->name);
    text_add(out, "  },\n");
}

/* A duty that is dropped is said with its reason, which reports then print. */
static void add_drop(struct text *out, const struct county_start *start)
{
    text_add(out, "  drop = {\n    -- A rule that does not hold here, and why.\n");
    if (start->dropped != NULL)
        text_addf(out, "    -- [\"%s\"] = \"waived by 1.02.040\",\n", start->dropped->id);
    text_add(out, "  },\n");
}

/* "alder" of "county/alder": files beside it go by that. */
static const char *last_part(const char *id)
{
    const char *slash = strrchr(id, '/');
    return slash == NULL ? id : slash + 1;
}

void county_text_profile(const struct county_start *start, struct text *out)
{
    add_heading(out, start);
    text_addf(out, "jurisdiction \"%s\" {\n  title = ", start->id);
    add_quoted(out, start->title);
    text_addf(out, ",\n  follows = \"%s\",\n", start->follows);
    add_dates(out, start);
    text_add(out, "  -- code = \"County Code\", -- how its own citations begin; else the title\n"
                  "  -- as_seen = \"2026-01-01\", -- when its pages were read\n"
                  "  -- invented = true, -- not a real place\n");
    text_add(out,
             "  -- What the county has read for itself of a book, or of topics of it: lifts what\n"
             "  -- is only recalled or read in a sister text, and whether the book binds.\n"
             "  -- adopts = { ");
    add_quoted(out,
               start->number == NULL ? start->parent->profile->edition : start->number->cite.code);
    text_add(out, ", cite = \"1.02.010\", as_seen = \"2026-01-01\" },\n"
                  "  --   topics = { \"deck\" } beside them: only that\n");
    add_figures(out, start);
    add_drop(out, start);
    text_addf(out,
              "  -- More figures in a file of their own, beside this one:\n"
              "  -- parts = { \"%s.more.lua\" }, -- it says: figures { [\"...\"] = { ... } }\n"
              "  -- Fields and rules of its own (rules/README.md), with cases for each:\n"
              "  -- rules = \"%s.rules.lua\",\n}\n",
              last_part(start->id), last_part(start->id));
    text_addf(out,
              "\n-- When the county changes its code, leave the above and add a second block:\n"
              "-- the one above then ends by itself where this one begins.\n"
              "--\n-- jurisdiction \"%s\" {\n--   title = ",
              start->id);
    add_quoted(out, start->title);
    text_addf(out,
              ",\n--   follows = \"%s\",\n--   from = \"2098-01-01\",\n--   figures = {\n"
              "--   },\n-- }\n",
              start->follows);
}

/* The example is of a rule that the base job meets under what is followed; as a comment,
 * it breaks no proof. */
void county_text_cases(const struct county_start *start, struct text *out)
{
    char day[16] = "2026-01-01";
    if (start->from != 0)
        date_write(start->from, day);
    text_addf(out, "-- Cases of %s: what must come out of which job here.\n--\n", start->title);
    text_addf(out,
              "-- Each starts from rules/cases/base.json, changes some facts, and says what\n"
              "-- must come out (rules/README.md). Write one that is met, one that is not and\n"
              "-- one at the limit for every figure moved, and run: eavemark proof %s\n--\n",
              start->id);
    text_addf(out, "-- cases \"%s\" {\n--   under = \"%s\", date = \"%s\",\n",
              start->case_rule == NULL ? "topic.rule" : start->case_rule, start->id, day);
    text_add(out, "--   { \"the base job as it stands\", expect = \"pass\"");
    if (start->case_where != NULL) {
        text_add(out, ", where = ");
        add_quoted(out, start->case_where);
    }
    text_add(out, " },\n"
                  "--   -- { \"one fact changed\", expect = \"fail\",\n"
                  "--   --   with = { [\"roof.slopes[1].pitch\"] = \"3:12\" } },\n-- }\n");
}
