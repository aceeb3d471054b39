/* shop_read.c - finding and reading the shop sheet, see shop.h. */
#include "job/shop.h"

#include "base/file.h"
#include "base/text.h"
#include "job/json.h"
#include "job/path.h"

#include <errno.h>
#include <stdlib.h>
#include <string.h>

static const char SHOP[] = "/shop";

static char *copy_of(const char *text)
{
    const size_t size = strlen(text) + 1;
    char *copy = malloc(size);
    if (copy != NULL)
        memcpy(copy, text, size);
    return copy;
}

/* A path below the job's folder, and nowhere else: a job may come from a stranger. */
static bool stays_beside(const char *path)
{
    if (path[0] == '\0' || path[0] == '/' || strcmp(path, "-") == 0)
        return false;
    for (const char *at = path;; at++) {
        const size_t length = strcspn(at, "/");
        if (length == 2 && memcmp(at, "..", 2) == 0)
            return false;
        at += length;
        if (*at == '\0')
            return true;
    }
}

/* The path of a sheet that lies beside the job; NULL with a problem. */
static char *path_beside(const char *named, const char *file, const struct shop_source *source,
                         struct problems *problems)
{
    struct text path = TEXT_EMPTY;
    if (!stays_beside(named)) {
        problem_at(problems, PROBLEM_JOB, file, SHOP,
                   "a shop sheet is named by its path beside the job, without \"/\" in front and "
                   "without \"..\"");
        return NULL;
    }
    if (source->folder == NULL && source->job_file == NULL) {
        problem_at(problems, PROBLEM_JOB, file, SHOP,
                   "names a shop sheet, but the job was not read from a file that it could lie "
                   "beside: hand the sheet over as well (--shop FILE)");
        return NULL;
    }
    if (source->folder != NULL) {
        text_addf(&path, "%s/%s", source->folder, named);
    } else {
        const char *slash = strrchr(source->job_file, '/');
        text_add_n(&path, source->job_file,
                   slash == NULL ? 0 : (size_t)(slash + 1 - source->job_file));
        text_add(&path, named);
    }
    char *copy = path.failed ? NULL : copy_of(text_string(&path));
    if (copy == NULL)
        problem_out_of_memory(problems);
    text_free(&path);
    return copy;
}

static const struct json_file_words SHOP_FILE = {"shop sheet", "a shop sheet is one JSON file",
                                                 "a shop sheet is about 3 KB"};

/* by_job: named by the job. */
static void read_file(struct shop *shop, bool by_job, struct problems *problems)
{
    if (strcmp(shop->file, "-") == 0) {
        problem_at_line(problems, PROBLEM_JOB, "--shop", 0, 0,
                        "a shop sheet is a file, not standard input");
        return;
    }
    const enum file_result result = by_job ? file_read_regular(&shop->text, &shop->length,
                                                               shop->file, JSON_LARGEST)
                                           : file_read(&shop->text, &shop->length, shop->file,
                                                       JSON_LARGEST);
    if (result != FILE_READ)
        json_say_unread(result, errno, shop->file, &SHOP_FILE, problems);
}

/* Without an end, as handed over. */
static void take_text(struct shop *shop, const struct shop_source *source,
                      struct problems *problems)
{
    shop->text = malloc(source->length + 1);
    if (shop->text == NULL) {
        problem_out_of_memory(problems);
        return;
    }
    memcpy(shop->text, source->text, source->length);
    shop->text[source->length] = '\0';
    shop->length = source->length;
}

/* NULL: there is none, or a problem says why not. */
static char *file_of(const cJSON *job, const char *file, const struct shop_source *source,
                     struct problems *problems)
{
    const cJSON *named = cJSON_GetObjectItemCaseSensitive(job, "shop");
    if (source->name != NULL || source->text != NULL) {
        char *copy = copy_of(source->name != NULL ? source->name : "shop sheet");
        if (copy == NULL)
            problem_out_of_memory(problems);
        return copy;
    }
    /* What is no text is left to validation. */
    return cJSON_IsString(named) ? path_beside(named->valuestring, file, source, problems) : NULL;
}

/* The job may be the object of nobody's but its own sheet. */
static void parse(struct shop *shop, struct problems *problems)
{
    if (shop->length == 0)
        problem_at_line(problems, PROBLEM_JOB, shop->file, 0, 0,
                        "is empty; a shop sheet is a JSON object { ... }");
    else
        json_read(&shop->tree, shop->text, shop->length, shop->file, problems);
}

int shop_read(struct shop *shop, const cJSON *job, const char *file,
              const struct shop_source *source, struct problems *problems)
{
    const size_t before = problems->count;
    static const struct shop_source NONE;
    *shop = (struct shop){0};
    if (source == NULL)
        source = &NONE;
    shop->file = file_of(job, file, source, problems);
    if (shop->file != NULL && source->text != NULL)
        take_text(shop, source, problems);
    else if (shop->file != NULL)
        read_file(shop, source->name == NULL, problems);
    if (shop->text != NULL)
        parse(shop, problems);
    return problems->count > before || problems->out_of_memory ? -1 : 0;
}

void shop_free(struct shop *shop)
{
    cJSON_Delete(shop->tree);
    free(shop->text);
    free(shop->file);
    *shop = (struct shop){0};
}
