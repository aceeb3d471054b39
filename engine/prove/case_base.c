#include "prove/case_base.h"

#include "job/json.h"
#include "job/tree.h"

#include <stdio.h>
#include <string.h>

static const struct case_base *known_base(const struct case_bases *bases, const char *path)
{
    for (const struct case_base *base = bases->first; base != NULL; base = base->next)
        if (strcmp(base->path, path) == 0)
            return base;
    return NULL;
}

/* One that cannot be used is read, and told of, for each case. */
static const struct case_base *read_base(struct case_bases *bases, const char *home,
                                         const char *path, struct problems *problems)
{
    struct arena *arena = &bases->arena;
    const size_t before = problems->count;
    const struct source *source = home_read(home, path, arena, &bases->sources, problems);
    cJSON *job = NULL;
    if (source != NULL)
        json_read_into(&job, arena, source->text, source->length, path, problems);
    struct case_base *base = job == NULL ? NULL : arena_alloc(arena, sizeof(*base));
    if (base == NULL || problems->count != before) {
        tree_free(job);
        return NULL;
    }
    *base = (struct case_base){source->path, source->length, job, bases->first};
    return bases->first = base;
}

const struct case_base *case_base_find(struct case_bases *bases, const char *home, const char *from,
                                       struct problems *problems)
{
    char path[160];
    snprintf(path, sizeof(path), "rules/cases/%.80s.json", from == NULL ? "base" : from);
    const struct case_base *base = known_base(bases, path);
    return base != NULL ? base : read_base(bases, home, path, problems);
}

void case_base_free_all(struct case_bases *bases)
{
    for (const struct case_base *base = bases->first; base != NULL; base = base->next)
        tree_free(base->job);
    arena_free(&bases->arena);
    *bases = (struct case_bases){.first = NULL};
}
