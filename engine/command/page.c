/* page.c - the page that was built with the program, made for one place: what of the home
 * is not as it was built in goes along, and the place comes first. */
#include "command/command.h"

#include "base/file.h"
#include "base/home_files.h"
#include "base/nearest.h"
#include "base/text.h"
#include "include/eavemark.h"

#include <inttypes.h>
#include <stdlib.h>
#include <string.h>

/* As the page's build leaves them: where the place goes, and of which files it was made. */
static const char EMPTY[] = "<script type=\"application/json\" id=\"county\">null</script>";
static const char MARK[] = "<meta name=\"eavemark-home\" content=\"%s %016" PRIx64 "\">";

enum {
    PAGE_LARGEST = 4 * 1024 * 1024,
    FILE_LARGEST = 1024 * 1024,
    DEEPEST = 6,
    MARK_LONGEST = 128
};

struct page_options {
    const char *home, *place, *notice, *telephone, *from, *output;
};

/* Files of a home that differ from those inside, as they are gathered. */
struct differing {
    const char *home;
    struct text *json;
    size_t count;
    size_t unread;
};

/* "<" could end the element that holds it. */
static void add_string(struct text *out, const char *bytes, size_t length)
{
    text_add(out, "\"");
    for (size_t i = 0; i < length; i++) {
        const unsigned char letter = (unsigned char)bytes[i];
        if (letter < 0x20 || letter == '<' || letter == '"' || letter == '\\')
            text_addf(out, "\\u%04x", letter);
        else
            text_add_n(out, &bytes[i], 1);
    }
    text_add(out, "\"");
}

/* JSON on one line; "<" stands in strings only, line breaks and tabs in none. */
static void add_json(struct text *out, const char *json)
{
    for (; *json != '\0'; json++)
        if (*json == '<')
            text_add(out, "\\u003c");
        else if (*json != '\n' && *json != '\t')
            text_add_n(out, json, 1);
}

/* null for what was not given. */
static void add_member(struct text *out, const char *name, const char *value)
{
    text_addf(out, ",\"%s\":", name);
    if (value == NULL)
        text_add(out, "null");
    else
        add_string(out, value, strlen(value));
}

/* A file, unless it is the one inside. */
static void add_differing(void *data, const char *path)
{
    struct differing *differing = data;
    struct packed_file inside;
    const struct pack pack = home_files_packed();
    char *text = NULL;
    size_t length = 0;
    if (home_files_read(&text, &length, differing->home, path, FILE_LARGEST) != FILE_READ) {
        complain("%s/%s: cannot be read", differing->home, path);
        differing->unread++;
    } else if (!pack_find(&pack, path, &inside) || inside.length != length
               || memcmp(inside.bytes, text, length) != 0) {
        text_add(differing->json, differing->count++ > 0 ? "," : "");
        add_string(differing->json, path, strlen(path));
        text_add(differing->json, ":");
        add_string(differing->json, text, length);
    }
    free(text);
}

/* What is inside and not in the home cannot be taken out of a page: it would still judge
 * there. */
static size_t count_missing(const char *home)
{
    const struct pack pack = home_files_packed();
    struct packed_file file;
    size_t at = 0, missing = 0;
    while (pack_next(&pack, &at, &file)) {
        char *path = strndup(file.path, file.path_length);
        if (path == NULL || !home_files_has(home, path)) {
            complain("%s: has no %s, which the page holds", home, path == NULL ? "file" : path);
            missing++;
        }
        free(path);
    }
    return missing;
}

static bool add_files(const char *home, struct text *json)
{
    static const char *const FOLDERS[] = {"jurisdictions", "rules"};
    struct differing differing = {.home = home, .json = json};
    bool gone_through = true;
    /* It is what the page was built from. */
    if (home_files_inside(home))
        return true;
    for (size_t i = 0; i < sizeof(FOLDERS) / sizeof(FOLDERS[0]); i++)
        gone_through = home_files_each(home, FOLDERS[i], ".lua", DEEPEST, add_differing, &differing)
                           == 0
                       && gone_through;
    if (!gone_through)
        complain("%s: cannot be gone through", home);
    return gone_through && differing.unread == 0 && count_missing(home) == 0;
}

/* Complains, with the nearest, when no job may name it. Looked for among the ids there are,
 * and not made a path of. */
static bool is_place(eavemark *handle, const char *id)
{
    char *list = NULL;
    bool found = false;
    struct nearest nearest;
    nearest_start(&nearest, id);
    if (eavemark_list(handle, EAVEMARK_JURISDICTIONS, &list) != EAVEMARK_NOTHING_FAILED) {
        complain("%s", list == NULL ? "out of memory" : list);
        free(list);
        return false;
    }
    for (char *line = list, *next = NULL; line != NULL && *line != '\0'; line = next) {
        next = strchr(line, '\n');
        if (next != NULL)
            *next++ = '\0';
        found = found || strcmp(line, id) == 0;
        nearest_offer(&nearest, line);
    }
    if (!found)
        complain(nearest.name == NULL ? "page: no place \"%s\""
                                      : "page: no place \"%s\" (did you mean \"%s\"?)",
                 id, nearest.name);
    free(list);
    return found;
}

/* The place's own words, as `places` gives them; false after a complaint. */
static bool add_place(const char *id, eavemark *handle, struct text *json)
{
    char *places = NULL, *problems = NULL;
    struct text found = TEXT_EMPTY, wanted = TEXT_EMPTY;
    const bool listed = eavemark_places(handle, id, EAVEMARK_JSON_LINE, &places, &problems)
                        == EAVEMARK_NOTHING_FAILED;
    add_json(&found, listed ? places : "null");
    text_addf(&wanted, "\"jurisdiction\":\"%s\"", id);
    const bool offered = strstr(text_string(&found), text_string(&wanted)) != NULL;
    if (!offered)
        complain("page: %s cannot be chosen for a job: it is only followed", id);
    text_add(json, text_string(&found));
    json->failed = json->failed || found.failed || wanted.failed;
    text_free(&found);
    text_free(&wanted);
    free(places);
    free(problems);
    return offered;
}

/* What the page is told, as JSON. */
static bool add_county(const struct page_options *options, eavemark *handle, const char *home,
                       struct text *json)
{
    text_add(json, "{\"places\":");
    if (options->place == NULL)
        text_add(json, "null");
    else if (!is_place(handle, options->place) || !add_place(options->place, handle, json))
        return false;
    add_member(json, "place", options->place);
    add_member(json, "notice", options->notice);
    add_member(json, "telephone", options->telephone);
    text_add(json, ",\"files\":{");
    if (!add_files(home, json))
        return false;
    text_add(json, "}}");
    return true;
}

/* The built page, which holds the same files as the program; NULL after a complaint. */
static char *read_page(const char *path)
{
    char *page = NULL, mark[MARK_LONGEST];
    size_t length = 0;
    const struct pack pack = home_files_packed();
    /* By version and files: a page of another build would judge by other rules than it says. */
    snprintf(mark, sizeof(mark), MARK, EAVEMARK_VERSION, pack_mark(&pack));
    if (file_read(&page, &length, path, PAGE_LARGEST) != FILE_READ)
        complain("%s: cannot be read", path);
    else if (strstr(page, EMPTY) == NULL)
        complain("%s: is no page as it was built, or was already made for a place", path);
    else if (strstr(page, mark) == NULL)
        complain("%s: was not built from the files that this program has inside: build it again "
                 "(cmake --build build --target page)",
                 path);
    else
        return page;
    free(page);
    return NULL;
}

/* The page's one empty place is filled; all else stays to the byte. */
static int make_page(const struct page_options *options, eavemark *handle, const char *home)
{
    struct text json = TEXT_EMPTY, made = TEXT_EMPTY;
    int status = EAVEMARK_UNUSABLE;
    char *page = read_page(options->from);
    if (page != NULL && add_county(options, handle, home, &json)) {
        const char *at = strstr(page, EMPTY);
        text_add_n(&made, page, (size_t)(at - page));
        text_addf(&made, "<script type=\"application/json\" id=\"county\">%s</script>",
                  text_string(&json));
        text_add(&made, at + strlen(EMPTY));
        /* The page is whole before a byte of it is written. */
        if (json.failed || made.failed) {
            complain("out of memory");
            status = EAVEMARK_BROKEN;
        } else if (output_text(options->output, text_string(&made)) == 0)
            status = EAVEMARK_NOTHING_FAILED;
    }
    free(page);
    text_free(&json);
    text_free(&made);
    return status;
}

static int run_page(int argc, char **argv)
{
    struct page_options options = {0};
    struct several words = {.count = 0};
    const int read = arguments_read(&command_page, &options, &words, argc, argv);
    if (read != COMMAND_GOES_ON)
        return read;
    if (options.output == NULL)
        return complain_of_usage(&command_page, "where to? -o roof.html");
    if (options.from == NULL)
        options.from = settings_page();
    if (options.from == NULL)
        return complain_of_usage(&command_page,
                                 "no page was built with this program: cmake --build "
                                 "build --target page, or name one with --from");
    if (arguments_same_file(options.from, options.output))
        return complain_of_usage(&command_page, "the page would overwrite the one it is made from");
    const char *home = settings_home(options.home);
    eavemark *handle = eavemark_open(home);
    if (handle == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    const int status = make_page(&options, handle, home);
    eavemark_close(handle);
    return status;
}

static const struct option_line OPTIONS[] = {
    {"output", 'o', "FILE", "write the page there (needed)", KIND_FILE,
     offsetof(struct page_options, output), false},
    {"place", 0, "ID", "this place first, and chosen for new jobs", KIND_JURISDICTION,
     offsetof(struct page_options, place), false},
    {"notice", 0, "TEXT", "what the department says to those who open it", KIND_OTHER,
     offsetof(struct page_options, notice), false},
    {"telephone", 0, "NUMBER", "whom to call", KIND_OTHER, offsetof(struct page_options, telephone),
     false},
    {"from", 0, "FILE", "the built page, else the one beside the program", KIND_FILE,
     offsetof(struct page_options, from), false},
    {"home", 0, "DIR", "rules and places that the page shall go by", KIND_FOLDER,
     offsetof(struct page_options, home), false},
};

const struct command command_page = {
    .name = "page",
    .summary = "write the page for a browser, which needs no network",
    .usage = "-o FILE [options]",
    .about = "Writes the whole tool as one HTML file, to be opened from disk on a telephone or\n"
             "a desk. With --place it is a county's own: that place comes first, with its\n"
             "notice and telephone. What the home's files say otherwise than those built in\n"
             "goes along.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_NONE, KIND_NONE},
    .words_most = 0,
    .status = "0 written; 2 no such place, no page to make it from, or it\n"
              "cannot be written; 3 out of memory",
    .example = "page -o roof.html --place example/dunmarrow",
    .run = run_page,
};
