#include "command/command.h"

#include "include/eavemark.h"

#include <stdlib.h>

static const char HELP[] =
    "usage: eavemark proof [--home DIR] [TOPIC]\n"
    "\n"
    "Runs the cases that come with the rules: each says what must come out for a\n"
    "job changed in some way. Prints the cases that went wrong and a summary. TOPIC\n"
    "limits it to the rules of one topic (\"slope\", \"drip_edge\" ...).\n"
    "\n"
    "  --home DIR  the folder with rules/ and jurisdictions/\n"
    "\n"
    "exit status: 0 all cases hold; 1 one does not; 2 no such topic, or bad usage;\n"
    "3 a rule, case or profile file is broken\n"
    "\n"
    "example: eavemark proof slope\n";

static int run(int argc, char **argv)
{
    const char *home = NULL, *topic = NULL;
    const struct setting settings[] = {{"home", 0, &home, NULL}};
    switch (settings_read(settings, 1, &topic, argc, argv)) {
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
        status = (int)eavemark_proof(handle, topic, &text);
    const bool ran = status == EAVEMARK_NOTHING_FAILED || status == EAVEMARK_FAILED;
    status = print_text(status, ran, text);
    free(text);
    eavemark_close(handle);
    return status;
}

const struct command command_proof = {
    .name = "proof",
    .summary = "run the cases that come with the rules",
    .help = HELP,
    .run = run,
};
