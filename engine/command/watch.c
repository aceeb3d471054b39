/* watch.c - checks a job again whenever it, a rule or a profile is saved. */
#include "command/checking.h"
#include "command/command.h"
#include "command/watched.h"

#include "base/text.h"
#include "base/utf8.h"

#include <errno.h>
#include <poll.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <sys/signalfd.h>
#include <time.h>
#include <unistd.h>

enum {
    QUIET_MS = 150,     /* editors touch a file several times to save it once */
    PATIENCE_MS = 2000, /* something may be writing all the time */
};

struct watch {
    const struct check *check;
    struct watched watched;
    int signals;               /* readable when the user wants to stop */
    struct check_outcome last; /* the last check that gave a report, if any did */
    unsigned long number;
};

static const char *status_words(int status)
{
    switch (status) {
    case EAVEMARK_NOTHING_FAILED:
        return "nothing failed";
    case EAVEMARK_FAILED:
        return "something failed";
    case EAVEMARK_UNUSABLE:
        return "the job cannot be used";
    default:
        return "a rule or profile is broken";
    }
}

/* "== check 2, after job.json was saved: something failed ==" */
static void print_header(const struct watch *watch, int status)
{
    struct text name = TEXT_EMPTY;
    utf8_add_printable(&name, watch->watched.changed);
    printf("%s== check %lu", watch->number > 1 ? "\n" : "", watch->number);
    if (name.length > 0)
        printf(", after a change of %s", text_string(&name));
    printf(": %s ==\n\n", status_words(status));
    text_free(&name);
}

/* The whole report the first time, then what changed. What is to be passed on is passed
 * on whole each time. NULL when out of memory; to be freed. */
static char *news_of(const struct watch *watch, const struct check_outcome *outcome)
{
    if (watch->last.result != NULL && check_is_text(watch->check))
        return eavemark_result_changes(watch->last.result, outcome->result,
                                       check_options(watch->check));
    return strdup(outcome->report);
}

/* To the file the whole report each time: who reads it may not have seen the one before. */
static void print_news(struct watch *watch, const struct check_outcome *outcome)
{
    if (watch->check->output != NULL) {
        output_text(watch->check->output, outcome->report); /* complains itself */
        return;
    }
    char *news = news_of(watch, outcome);
    fputs(news == NULL ? "eavemark: out of memory\n" : news, stdout);
    free(news);
}

/* What is wrong now; the last report is still above. */
static void print_problems(const struct watch *watch, const char *problems)
{
    fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stdout);
    if (watch->last.report != NULL)
        fputs("The last report is above; the next check is held against it.\n", stdout);
}

/* Checks once; -1 when standard output cannot be written any more. */
static int check_again(struct watch *watch)
{
    struct check_outcome outcome;
    check_run(watch->check, &outcome);
    watch->number++;
    print_header(watch, outcome.status);
    if (outcome.report == NULL) {
        print_problems(watch, outcome.problems);
        check_outcome_free(&outcome);
    } else {
        print_news(watch, &outcome);
        fputs(outcome.problems == NULL ? "" : outcome.problems, stdout);
        check_outcome_free(&watch->last);
        watch->last = outcome;
    }
    if (fflush(stdout) == 0 && !ferror(stdout))
        return 0;
    complain("standard output cannot be written");
    return -1;
}

/* Monotonic: a clock that is set must not stop the waiting. */
static long long now_ms(void)
{
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return now.tv_sec * 1000LL + now.tv_nsec / 1000000;
}

enum woken { WOKEN_STOP, WOKEN_CHANGE, WOKEN_NOTHING };

/* Waits for a change of interest, a stop, or the end of the time (-1: none). */
static enum woken wait_for(struct watch *watch, int timeout)
{
    struct pollfd polled[2] = {{watch->signals, POLLIN, 0}, {watch->watched.handle, POLLIN, 0}};
    const int ready = poll(polled, 2, timeout);
    /* Polling itself fails: there is nothing to wait for. */
    if (ready < 0 && errno != EINTR)
        return WOKEN_STOP;
    if (ready > 0 && (polled[0].revents & POLLIN) != 0)
        return WOKEN_STOP;
    if (ready > 0 && polled[1].revents != 0 && watched_read(&watch->watched))
        return WOKEN_CHANGE;
    return WOKEN_NOTHING;
}

/* Waits until something changed and has come to rest; false to stop. */
static bool wait_for_change(struct watch *watch)
{
    enum woken woken;
    while ((woken = wait_for(watch, -1)) == WOKEN_NOTHING)
        ;
    const long long patience = now_ms() + PATIENCE_MS;
    long long quiet = now_ms() + QUIET_MS;
    while (woken != WOKEN_STOP && now_ms() < quiet && now_ms() < patience) {
        woken = wait_for(watch, (int)(quiet - now_ms()) + 1);
        if (woken == WOKEN_CHANGE)
            quiet = now_ms() + QUIET_MS;
    }
    return woken != WOKEN_STOP;
}

/* Until it is ended: Ctrl-C is how, and no failure. */
static int watch_job(struct watch *watch)
{
    do {
        /* Folders made since then are looked at before the check, so that no
         * save falls between the two. */
        watched_renew(&watch->watched);
        if (check_again(watch) != 0)
            return EAVEMARK_UNUSABLE;
    } while (wait_for_change(watch));
    return EAVEMARK_NOTHING_FAILED;
}

/* A way to wait for Ctrl-C and TERM together with files; -1 if there is none. */
static int open_signals(void)
{
    sigset_t stops;
    sigemptyset(&stops);
    sigaddset(&stops, SIGINT);
    sigaddset(&stops, SIGTERM);
    sigaddset(&stops, SIGHUP);
    if (sigprocmask(SIG_BLOCK, &stops, NULL) != 0)
        return -1;
    return signalfd(-1, &stops, SFD_NONBLOCK | SFD_CLOEXEC);
}

/* What is saved again must not be what is written. */
static int complete_options(const struct check *check)
{
    if (check->job == NULL)
        return complain_of_usage(&command_watch, "which job? Name a file");
    if (strcmp(check->job, "-") == 0)
        return complain_of_usage(&command_watch, "standard input cannot be watched; name a file");
    if (check->output != NULL && arguments_same_file(check->job, check->output))
        return complain_of_usage(&command_watch, "the report would overwrite the job itself");
    return COMMAND_GOES_ON;
}

static int run_watch(int argc, char **argv)
{
    struct check check = {0};
    struct several words = {.count = 0};
    int status = arguments_read(&command_watch, &check, &words, argc, argv);
    check.job = words.items[0];
    if (status == COMMAND_GOES_ON)
        status = complete_options(&check);
    if (status != COMMAND_GOES_ON)
        return status;
    struct watch watch = {.check = &check};
    watch.signals = open_signals();
    if (watch.signals < 0
        || watched_open(&watch.watched, check.job, check.shop, settings_home(check.home)) != 0) {
        complain("%s: cannot be watched: %s", check.job, strerror(errno));
        status = EAVEMARK_UNUSABLE;
    } else {
        status = watch_job(&watch);
        watched_close(&watch.watched);
    }
    if (watch.signals >= 0)
        close(watch.signals);
    check_outcome_free(&watch.last);
    return status;
}

static const struct option_line OPTIONS[] = {
    {"jurisdiction", 0, "ID", "check under this place instead of the job's", KIND_JURISDICTION,
     offsetof(struct check, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "as if applied for on this day", KIND_OTHER,
     offsetof(struct check, date), false},
    {"stage", 0, "STAGE",
     "what is looked at then, and what was left undone\nbefore: "
     "permit, deck, dry-in, final",
     KIND_STAGE, offsetof(struct check, stage), false},
    {"form", 0, "FORM", "text (to read) or json (to pass on)", KIND_FORM,
     offsetof(struct check, form), false},
    {"shop", 0, "FILE", "the shop sheet, in place of one that the job names", KIND_FILE,
     offsetof(struct check, shop), false},
    {"output", 'o', "FILE", "write each report there, once it is complete", KIND_FILE,
     offsetof(struct check, output), false},
    {"strict", 0, NULL, "what is open, not met or disputed counts as failed", KIND_NONE,
     offsetof(struct check, strict), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct check, home), false},
};

const struct command command_watch = {
    .name = "watch",
    .summary = "check a job again each time it or a rule is saved",
    .usage = "[options] JOB",
    .about = "Checks JOB, and again each time the job, a rule or a profile is saved: the whole\n"
             "report first, then what changed since the last check. When it cannot be checked,\n"
             "says why. Ends on Ctrl-C.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_FILE, KIND_NONE},
    .words_most = 1,
    .status = "0 ended by Ctrl-C or TERM; 2 the job cannot be watched, bad\n"
              "usage, or nobody reads the output",
    .example = "watch --stage deck job.json",
    .run = run_watch,
};
