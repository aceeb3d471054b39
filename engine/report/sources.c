#include "report/sources.h"

#include "job/path.h"

#include <stdbool.h>
#include <string.h>

enum { NAMED_MOST = 6 /* facts of one source */ };

/* What is worth telling: the job's own and what its plan shows go without saying. */
static const struct {
    enum origin origin;
    const char *words;
} TOLD[] = {{ORIGIN_SHOP, "the shop sheet"},
            {ORIGIN_PLACE, "the place"},
            {ORIGIN_DERIVED, "other facts"},
            {ORIGIN_USUAL, "what is usual"}};

enum { TOLD_COUNT = sizeof(TOLD) / sizeof(TOLD[0]) };

/* "3 from the place (1 of them unconfirmed)"; "" when all are the job's own. The caller's to
 * free. */
struct text sources_head(const struct result *result)
{
    struct text head = TEXT_EMPTY;
    for (size_t i = 0; i < TOLD_COUNT; i++) {
        const size_t count = result->facts[TOLD[i].origin];
        if (count == 0)
            continue;
        text_addf(&head, "%s%zu from %s", head.length > 0 ? ", " : "", count, TOLD[i].words);
        if (TOLD[i].origin == ORIGIN_SHOP && result->shop != NULL)
            text_addf(&head, " (%s)", result->shop);
        if (TOLD[i].origin == ORIGIN_PLACE && result->unconfirmed_facts > 0)
            text_addf(&head, " (%zu of them unconfirmed)", result->unconfirmed_facts);
    }
    return head;
}

/* A group or an item on the way to a fact is none itself; a name is none of the roof. */
static bool is_fact(const struct finding *finding, size_t index)
{
    const char *at = finding->reads[index].at, *name = path_last(at);
    if (name[0] == '\0' || strcmp(name, "/name") == 0)
        return false;
    for (size_t i = 0; i < finding->read_count; i++)
        if (strcmp(finding->reads[i].at, at) != 0 && path_is_within(finding->reads[i].at, at))
            return false;
    return true;
}

/* Facts go by their names: where several findings read one of many items, it is said once. */
static bool is_named(const struct text *names, const char *name)
{
    const size_t length = strlen(name);
    for (const char *at = text_string(names); (at = strstr(at, name)) != NULL; at += length)
        if ((at == text_string(names) || at[-1] == ' ')
            && (at[length] == ',' || at[length] == '\0'))
            return true;
    return false;
}

/* "covering kind" of /covering/kind, "nails length in" of /decks/0/nails/length_in: the fact,
 * and what it is of, as a reader says them. */
static struct text name_of(const char *at)
{
    char steps[2][PATH_LONGEST_STEP] = {"", ""}, step[PATH_LONGEST_STEP];
    struct text name = TEXT_EMPTY;
    for (bool item = path_step_is_item(at); path_step(&at, step); item = path_step_is_item(at)) {
        if (item)
            continue;
        memcpy(steps[0], steps[1], sizeof(step));
        memcpy(steps[1], step, sizeof(step));
    }
    for (size_t i = 0; i < 2; i++)
        for (char *line = steps[i]; (line = strchr(line, '_')) != NULL;)
            *line = ' ';
    text_addf(&name, "%s%s%s", steps[0], steps[0][0] == '\0' ? "" : " ", steps[1]);
    return name;
}

static void add_names(struct text *names, size_t *count, const struct finding *finding,
                      enum origin origin)
{
    for (size_t i = 0; i < finding->read_count; i++) {
        if (finding->reads[i].from != origin || !is_fact(finding, i))
            continue;
        struct text name = name_of(finding->reads[i].at);
        if (!is_named(names, text_string(&name)) && ++*count <= NAMED_MOST)
            text_addf(names, "%s%s", names->length > 0 ? ", " : "", text_string(&name));
        names->failed = names->failed || name.failed;
        text_free(&name);
    }
}

struct text sources_of(const struct finding *const *findings, size_t count)
{
    struct text out = TEXT_EMPTY;
    for (size_t t = 0; t < TOLD_COUNT; t++) {
        struct text names = TEXT_EMPTY;
        size_t named = 0;
        for (size_t i = 0; i < count; i++)
            add_names(&names, &named, findings[i], TOLD[t].origin);
        if (names.length > 0)
            text_addf(&out, "%sfrom %s: %s%s", out.length > 0 ? "; " : "", TOLD[t].words,
                      text_string(&names), named > NAMED_MOST ? " and more" : "");
        out.failed = out.failed || names.failed;
        text_free(&names);
    }
    return out;
}
