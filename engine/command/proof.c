/* proof.c - the cases of rules and places; with --mutate whether they would notice a figure
 * that moved. */
#include "command/command.h"

#include "include/eavemark.h"

#include <string.h>

struct proof_options {
    const char *home, *date, *form, *beside;
    bool mutate;
};

/* Moved figures have a report of their own. */
static int make_proof(const struct proof_options *proof, const char *name)
{
    const bool json = proof->form != NULL && strcmp(proof->form, "json") == 0;
    char *report = NULL, *problems = NULL;
    eavemark *handle = eavemark_open(settings_home(proof->home));
    int status = EAVEMARK_BROKEN;
    if (handle != NULL && proof->mutate)
        status = (int)eavemark_mutate(handle, name, &report, &problems);
    else if (handle != NULL)
        status = (int)eavemark_proof(handle, name, proof->date, proof->beside,
                                     json ? EAVEMARK_JSON : EAVEMARK_TEXT, &report, &problems);
    status = output_answer(status, NULL, report, problems);
    eavemark_close(handle);
    return status;
}

static int run_proof(int argc, char **argv)
{
    struct proof_options proof = {0};
    struct several words = {.count = 0};
    /* A word is a topic, a place, or nothing: everything. */
    const int status = arguments_read(&command_proof, &proof, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    /* The table lets html pass too, which other commands have. */
    if (proof.form != NULL && strcmp(proof.form, "text") != 0 && strcmp(proof.form, "json") != 0)
        return complain_of_usage(&command_proof, "a proof is text or json");
    if (proof.mutate && (proof.date != NULL || proof.form != NULL))
        return complain_of_usage(&command_proof, "--mutate takes neither --date nor --form");
    if (proof.beside != NULL && (proof.mutate || words.count == 0))
        return complain_of_usage(&command_proof, "--beside holds one place, named first, beside "
                                                 "another");
    return make_proof(&proof, words.items[0]);
}

static const struct option_line OPTIONS[] = {
    {"form", 0, "FORM", "text (to read) or json (to pass on)", KIND_FORM,
     offsetof(struct proof_options, form), false},
    {"date", 0, "YYYY-MM-DD", "places: only the edition of this day", KIND_OTHER,
     offsetof(struct proof_options, date), false},
    {"beside", 0, "ID",
     "a place: only how it differs from this one, instead of\n"
     "from what it follows",
     KIND_JURISDICTION, offsetof(struct proof_options, beside), false},
    {"mutate", 0, NULL,
     "move every figure (of TOPIC, or ID's own) by its\n"
     "smallest step and list those that no case notices",
     KIND_NONE, offsetof(struct proof_options, mutate), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct proof_options, home), false},
};

const struct command command_proof = {
    .name = "proof",
    .summary = "run the rule cases; look through a place and show how it differs",
    .usage = "[options] [ID | TOPIC]",
    .about = "Runs the cases that come with the rules: each says what must come out for a\n"
             "job changed in some way. ID, a place, has its files looked through as well,\n"
             "and says how it differs from what it follows. TOPIC is one file of rules\n"
             "(\"slope\", \"drip_edge\" ...). With neither, everything is proved.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_TOPIC, KIND_NONE},
    .words_most = 1,
    .status = "0 all is well; 1 a case does not hold, or an error is named;\n"
              "2 no such place or topic, or bad usage; 3 a file is broken",
    .example = "proof example/tamarack",
    .run = run_proof,
};
