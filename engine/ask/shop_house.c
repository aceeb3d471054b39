#include "ask/shop_house.h"

#include "job/json.h"
#include "profile/home.h"

/* Read with the rules, and not beside them: a home of one's own has its own house. */
cJSON *shop_house_read(const char *home, struct problems *problems)
{
    struct arena arena = {0};
    struct sources sources = {0};
    cJSON *job = NULL;
    const struct source *source = home_read(home, "rules/shop_house.json", &arena, &sources,
                                            problems);
    if (source != NULL)
        json_read(&job, source->text, source->length, source->path, problems);
    arena_free(&arena);
    return job;
}
