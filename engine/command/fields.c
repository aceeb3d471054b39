#include "command/command.h"

#include "include/eavemark.h"

#include <stdlib.h>

static const char HELP[] =
    "usage: eavemark fields [options] [TOPIC]\n"
    "\n"
    "Lists what a job may say: each field with its type, unit, range or choices,\n"
    "the stage at which it is known, and the question it answers. TOPIC limits the\n"
    "list to one part of the job (\"roof\", \"decks\" ...).\n"
    "\n"
    "  --schema           print a JSON Schema (draft 2020-12) instead\n"
    "  --jurisdiction ID  with the fields this place adds, such as example/tamarack\n"
    "  --date YYYY-MM-DD  as of this day of application\n"
    "  --home DIR         the folder with rules/ and jurisdictions/\n"
    "\n"
    "example: eavemark fields attics\n";

static int run(int argc, char **argv)
{
    const char *home = NULL, *jurisdiction = NULL, *date = NULL, *topic = NULL;
    bool schema = false;
    const struct setting settings[] = {
        {"schema", 0, NULL, &schema},
        {"jurisdiction", 0, &jurisdiction, NULL},
        {"date", 0, &date, NULL},
        {"home", 0, &home, NULL},
    };
    const size_t count = sizeof(settings) / sizeof(settings[0]);
    switch (settings_read(settings, count, &topic, argc, argv)) {
    case SETTINGS_BAD:
        return EAVEMARK_UNUSABLE;
    case SETTINGS_HELP:
        return output_text(NULL, HELP) == 0 ? 0 : EAVEMARK_UNUSABLE;
    case SETTINGS_READ:
        break;
    }
    char *text = NULL;
    eavemark *handle = eavemark_open(home_folder(home));
    int status = EAVEMARK_BROKEN;
    if (handle != NULL)
        status = (int)eavemark_fields(handle, topic, schema, jurisdiction, date, &text);
    status = print_text(status, status == EAVEMARK_NOTHING_FAILED, text);
    free(text);
    eavemark_close(handle);
    return status;
}

const struct command command_fields = {
    .name = "fields",
    .summary = "list what a job may say, or print it as a JSON Schema",
    .help = HELP,
    .run = run,
};
