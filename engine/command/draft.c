#include "command/draft.h"

#include "base/file.h"
#include "base/text.h"
#include "command/command.h"

#include <errno.h>
#include <fcntl.h>
#include <inttypes.h>
#include <signal.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

enum { DRAFT_MOST = 64 * 1024 * 1024, HEAD_BYTES = 80 };

/* Signals ------------------------------------------------------------------------------ */

static const int ENDING[] = {SIGINT, SIGTERM, SIGHUP};
enum { ENDING_COUNT = sizeof(ENDING) / sizeof(ENDING[0]) };

/* A handler has no other place to find what it says. */
static char *last_words;
static size_t last_words_length;

/* Only what a handler may call: write, signal, raise. The status then says which signal it
 * was. */
static void say_and_end(int number)
{
    const ssize_t written = write(STDERR_FILENO, last_words, last_words_length);
    (void)written; /* there is nobody left to tell */
    signal(number, SIG_DFL);
    raise(number);
}

static void ending_signals(sigset_t *set)
{
    sigemptyset(set);
    for (int i = 0; i < ENDING_COUNT; i++)
        sigaddset(set, ENDING[i]);
}

void draft_hold_signals(void)
{
    sigset_t set;
    ending_signals(&set);
    sigprocmask(SIG_BLOCK, &set, NULL);
}

void draft_let_signals(void)
{
    sigset_t set;
    ending_signals(&set);
    sigprocmask(SIG_UNBLOCK, &set, NULL);
}

void draft_say_when_ended(const struct draft *draft, const char *go_on)
{
    struct text words = TEXT_EMPTY;
    text_add(&words, "\neavemark: ended; ");
    if (draft->handle < 0)
        text_add(&words, "the answers are lost: they are kept only with -o FILE or --fill JOB\n");
    else if (draft->begun)
        text_addf(&words, "what was answered is kept in %s\neavemark: go on with: %s\n",
                  draft->path, go_on);
    else
        text_add(&words, "nothing was answered yet\n");
    draft_hold_signals();
    free(last_words);
    last_words_length = words.failed ? 0 : words.length;
    last_words = words.failed ? NULL : words.bytes;
    for (int i = 0; i < ENDING_COUNT; i++) {
        struct sigaction now, before;
        memset(&now, 0, sizeof(now));
        now.sa_handler = say_and_end;
        ending_signals(&now.sa_mask);
        /* What is to be ignored, as under nohup, stays ignored. */
        if (sigaction(ENDING[i], NULL, &before) == 0 && before.sa_handler != SIG_IGN)
            sigaction(ENDING[i], &now, NULL);
    }
    draft_let_signals();
}

/* Opening ------------------------------------------------------------------------------- */

/* FNV-1a, 64 bits: tells a file that was edited from one that was not. */
static uint64_t sum_of(const char *bytes, size_t length)
{
    uint64_t sum = 14695981039346656037u;
    for (size_t i = 0; i < length; i++)
        sum = (sum ^ (unsigned char)bytes[i]) * 1099511628211u;
    return sum;
}

/* By length and sum: the draft goes on only from the file it was begun from. */
static void write_head(char head[HEAD_BYTES], const char *original, size_t length)
{
    if (original == NULL)
        snprintf(head, HEAD_BYTES, "eavemark draft 1, begun from nothing\n");
    else
        snprintf(head, HEAD_BYTES, "eavemark draft 1, begun from %zu bytes, %016" PRIx64 "\n",
                 length, sum_of(original, length));
}

/* 0: the interview goes on without a draft. An empty file that we made does not stay. */
static int cannot_keep(struct draft *draft)
{
    complain("the answers are not kept as they are given: %s: %s", draft->path, strerror(errno));
    if (draft->handle >= 0 && draft->length == 0)
        unlink(draft->path);
    if (draft->handle >= 0)
        close(draft->handle);
    draft->handle = -1;
    return 0;
}

/* -1: going on would write over somebody else's answers. */
static int give_up(struct draft *draft)
{
    if (draft->handle >= 0)
        close(draft->handle);
    draft->handle = -1;
    return -1;
}

/* Opens and locks it, and again when the one who had it took it away meanwhile. */
static int lock(struct draft *draft)
{
    for (;;) {
        struct stat mine, there;
        draft->handle = open(draft->path, O_RDWR | O_CREAT | O_APPEND | O_CLOEXEC, 0666);
        if (draft->handle < 0)
            return cannot_keep(draft);
        if (flock(draft->handle, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK) {
            complain("new: another program is asking for the same job: it keeps its answers in %s",
                     draft->path);
            return give_up(draft);
        }
        if (fstat(draft->handle, &mine) == 0 && !S_ISREG(mine.st_mode)) {
            complain("new: %s is in the way: it is no file", draft->path);
            return give_up(draft);
        }
        if (fstat(draft->handle, &mine) == 0 && stat(draft->path, &there) == 0
            && mine.st_ino == there.st_ino && mine.st_dev == there.st_dev)
            return 0;
        close(draft->handle);
    }
}

/* Where the last whole line begins; *end: where it ends, newline included. */
static size_t last_line(const char *text, size_t length, size_t *end)
{
    while (length > 0 && text[length - 1] != '\n')
        length--;
    *end = length;
    size_t from = length == 0 ? 0 : length - 1;
    while (from > 0 && text[from - 1] != '\n')
        from--;
    return from;
}

/* Goes on from what is there, if there is anything. */
static int read_on(struct draft *draft, const char *head, bool filling)
{
    char *text;
    size_t length, end;
    draft->length = 1; /* what cannot be read is not known to be empty */
    if (file_read(&text, &length, draft->path, DRAFT_MOST) != FILE_READ)
        return cannot_keep(draft);
    const size_t from = last_line(text, length, &end);
    const size_t head_length = strlen(head);
    int status = 0;
    if (end == 0) {
        /* killed before its first line, or new */
    } else if (strncmp(text, head, head_length) != 0) {
        complain(filling && strncmp(text, head, 14) == 0
                     ? "new: the job changed since %s was begun; delete the draft to begin anew"
                     : "new: %s is in the way: it is not a draft begun from this",
                 draft->path);
        status = give_up(draft);
    } else if (from >= head_length) {
        text[end - 1] = '\0';
        draft->job = strdup(text + from);
        draft->begun = true;
        if (draft->job == NULL)
            complain("out of memory");
        status = draft->job == NULL ? give_up(draft) : 0;
    }
    free(text);
    draft->length = (off_t)end;
    return status;
}

/* One line, as a whole or not at all. */
static bool add(struct draft *draft, const char *line)
{
    const size_t length = strlen(line);
    size_t done = 0;
    ssize_t written = 0;
    draft_hold_signals();
    while (done < length && written >= 0) {
        written = write(draft->handle, line + done, length - done);
        done += written > 0 ? (size_t)written : 0;
    }
    /* On the disk before the answer counts as kept: the next may be a crash. */
    const bool whole = done == length && fdatasync(draft->handle) == 0;
    const int why = errno;
    if (whole)
        draft->length += (off_t)length;
    else if (ftruncate(draft->handle, draft->length) != 0)
        draft->broken = true; /* a half line stays: what comes next would be part of it */
    errno = why;
    draft_let_signals();
    return whole;
}

/* In this order: locked, then read, then cut to whole lines, then begun. */
int draft_open(struct draft *draft, const char *target, const char *original, size_t length)
{
    char head[HEAD_BYTES];
    struct text path = TEXT_EMPTY;
    *draft = (struct draft){.handle = -1};
    text_addf(&path, "%s.draft", target);
    if (path.failed) {
        complain("out of memory");
        return -1;
    }
    draft->path = path.bytes;
    write_head(head, original, length);
    if (lock(draft) != 0)
        return -1;
    if (draft->handle < 0)
        return 0;
    if (read_on(draft, head, original != NULL) != 0)
        return -1;
    /* What a killed program had half written goes. */
    if (draft->handle >= 0 && ftruncate(draft->handle, draft->length) != 0)
        return cannot_keep(draft);
    if (draft->handle >= 0 && draft->length == 0 && !add(draft, head))
        return cannot_keep(draft);
    return 0;
}

/* A job that takes more memory than there is (NULL) is told like a full disk. */
void draft_keep(struct draft *draft, const char *job)
{
    struct text line = TEXT_EMPTY;
    if (draft->handle < 0 || draft->broken)
        return;
    text_addf(&line, "%s\n", job == NULL ? "" : job);
    errno = ENOMEM;
    if (job == NULL || line.failed || !add(draft, text_string(&line)))
        complain("%s: cannot be written: %s; this answer is not kept", draft->path,
                 strerror(errno));
    else
        draft->begun = true;
    text_free(&line);
}

void draft_close(struct draft *draft, bool done)
{
    if (draft->handle >= 0 && (done || !draft->begun))
        unlink(draft->path);
    if (draft->handle >= 0)
        close(draft->handle);
    free(draft->path);
    free(draft->job);
    *draft = (struct draft){.handle = -1};
    draft_hold_signals();
    for (int i = 0; i < ENDING_COUNT; i++) {
        struct sigaction now;
        if (sigaction(ENDING[i], NULL, &now) == 0 && now.sa_handler == say_and_end)
            signal(ENDING[i], SIG_DFL);
    }
    free(last_words);
    last_words = NULL;
    last_words_length = 0;
    draft_let_signals();
}
