/* places.c - places by the words of their titles, ids and cities. */
#include "command/command.h"

#include "include/eavemark.h"

#include <string.h>

/* More than any title, id and city together. */
enum { WORDS_LONGEST = 512 };

struct places_options {
    const char *home, *form, *output;
};

/* The words as one text; what does not fit in fits no place either. */
static void join(const struct several *words, char joined[WORDS_LONGEST])
{
    size_t length = 0;
    joined[0] = '\0';
    for (size_t i = 0; i < words->count && length < WORDS_LONGEST; i++)
        length += (size_t)snprintf(joined + length, WORDS_LONGEST - length, "%s%s",
                                   i == 0 ? "" : " ", words->items[i]);
}

static int run_places(int argc, char **argv)
{
    struct places_options places = {0};
    struct several words = {.count = 0};
    char joined[WORDS_LONGEST];
    int status = arguments_read(&command_places, &places, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    join(&words, joined);
    /* arguments_read lets nothing else through. */
    const bool json = places.form != NULL && strcmp(places.form, "json") == 0;
    char *report = NULL, *problems = NULL;
    eavemark *handle = eavemark_open(settings_home(places.home));
    status = EAVEMARK_BROKEN;
    if (handle != NULL)
        status = (int)eavemark_places(handle, joined, json ? EAVEMARK_JSON : EAVEMARK_TEXT, &report,
                                      &problems);
    eavemark_close(handle);
    /* Whatever came of it: no handle leaves NULL, which is said to be for want of memory. */
    return output_answer(status, places.output, report, problems);
}

static const struct option_line OPTIONS[] = {
    {"form", 0, "FORM", "text (to read) or json (to pass on)", KIND_FORM,
     offsetof(struct places_options, form), false},
    {"output", 'o', "FILE", "write the list there, once it is complete", KIND_FILE,
     offsetof(struct places_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct places_options, home), false},
};

const struct command command_places = {
    .name = "places",
    .summary = "find a place by its words, and see what of its law is carried",
    .usage = "[options] [WORDS]",
    .about = "Lists the places that a job may name: id and title. With WORDS only those whose\n"
             "title, id or cities hold each of them as the beginning of a word, and of each\n"
             "its law, the day it was read, what is carried of it, and what is not.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_OTHER, KIND_OTHER},
    .words_most = 16,
    .status = "0 printed; 2 no place fits; 3 a place's file is broken",
    .example = "places redwood city",
    .run = run_places,
};
