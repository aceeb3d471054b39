/* county.c - the first files of a county, written by the library. */
#include "command/command.h"

#include "include/eavemark.h"

#include <stdlib.h>

struct county_options {
    const char *home, *follows, *title;
};

/* Whatever went wrong, no file is left; the text says what. */
static int start(const struct county_options *county, const char *id)
{
    char *text = NULL;
    eavemark *handle = eavemark_open(settings_home(county->home));
    int status = EAVEMARK_BROKEN;
    if (handle != NULL)
        status = (int)eavemark_county_new(handle, id, county->follows, county->title, &text);
    status = output_print(status, status == EAVEMARK_NOTHING_FAILED, text);
    free(text);
    eavemark_close(handle);
    return status;
}

static int run_county(int argc, char **argv)
{
    /* One so far; the word leaves room for others. */
    static const char *const VERBS[] = {"new"};
    struct county_options county = {0};
    struct several words = {.count = 0};
    const int status = arguments_read(&command_county, &county, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    /* A wrong verb is told before what is missing behind it. */
    if (words.count > 0
        && settings_choice("county", "county command", words.items[0], VERBS, 1) < 0)
        return EAVEMARK_UNUSABLE;
    if (words.count < 2 || county.follows == NULL || county.title == NULL)
        return complain_of_usage(&command_county,
                                 "write: county new ID --follows PARENT --title TITLE");
    return start(&county, words.items[1]);
}

static const struct option_line OPTIONS[] = {
    {"follows", 0, "PARENT", "the place it differs from: model/irc-2021, a state",
     KIND_JURISDICTION, offsetof(struct county_options, follows), false},
    {"title", 0, "TITLE", "its name as reports print it", KIND_OTHER,
     offsetof(struct county_options, title), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct county_options, home), false},
};

const struct command command_county = {
    .name = "county",
    .summary = "start the files of a new county",
    .usage = "new ID --follows PARENT --title TITLE [--home DIR]",
    .about = "Writes jurisdictions/ID.lua, a profile that changes nothing yet and shows in\n"
             "comments how to, and jurisdictions/ID.cases.lua for its cases. Files that are\n"
             "there already are left alone. ID is made of a-z, 0-9, - and _, with / between\n"
             "its parts.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_OTHER, KIND_OTHER},
    .words_most = 2,
    .status = "0 written; 2 bad usage, or nothing could be written; 3 a rule or\n"
              "profile is broken; whatever went wrong, nothing is left half written",
    .example = "county new alder --follows model/irc-2021 --title Alder",
    .run = run_county,
};
