/* fields.c - what a job may say, as a listing or as a JSON Schema. */
#include "command/command.h"

#include "include/eavemark.h"

#include <stdlib.h>

struct fields_options {
    /* NULL where it is not given, as in the options of every command. */
    const char *home, *jurisdiction, *date;
    bool schema;
};

static int run_fields(int argc, char **argv)
{
    struct fields_options fields = {0};
    struct several words = {.count = 0};
    int status = arguments_read(&command_fields, &fields, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    char *text = NULL;
    eavemark *handle = eavemark_open(settings_home(fields.home));
    status = EAVEMARK_BROKEN;
    if (handle != NULL)
        status = (int)eavemark_fields(handle, words.items[0], fields.schema, fields.jurisdiction,
                                      fields.date, &text);
    /* What is no list is a message, and goes to standard error. */
    status = output_print(status, status == EAVEMARK_NOTHING_FAILED, text);
    free(text);
    eavemark_close(handle);
    return status;
}

static const struct option_line OPTIONS[] = {
    {"schema", 0, NULL, "print a JSON Schema (draft 2020-12) instead", KIND_NONE,
     offsetof(struct fields_options, schema), false},
    {"jurisdiction", 0, "ID", "with the fields this place adds, such as example/tamarack",
     KIND_JURISDICTION, offsetof(struct fields_options, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "as of this day of application", KIND_OTHER,
     offsetof(struct fields_options, date), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct fields_options, home), false},
};

const struct command command_fields = {
    .name = "fields",
    .summary = "list what a job may say, or print it as a JSON Schema",
    .usage = "[options] [TOPIC]",
    .about = "Lists what a job may say: each field with its type, unit, range or choices,\n"
             "the stage at which it is known, and the question it answers. TOPIC limits the\n"
             "list to one part of the job (\"roof\", \"decks\" ...); \"spoken\" shows how figures\n"
             "may be written.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_PART, KIND_NONE},
    .words_most = 1,
    .example = "fields attics",
    .run = run_fields,
};
