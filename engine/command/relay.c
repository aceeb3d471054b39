#define _GNU_SOURCE /* fopencookie */

#include "command/relay.h"

#include "base/text.h"

#include <errno.h>
#include <poll.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <sys/socket.h>
#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

/* Lines are handed over in pieces of about this size: a job or two. Their answers are ten times
 * as long and wait for the whole piece: more of them would drive all else out of the cache. */
enum { PIECE_BYTES = 16 * 1024 };

/* Before each line of a piece; number 0 ends the piece. */
struct line_head {
    unsigned long number;
    enum line_kind kind;
    bool failed;
    size_t length;
};

/* What a worker says at its end. */
struct last_words {
    int status, why;
};

/* Both ends -------------------------------------------------------------------------------- */

/* Who reads may be gone: that is no reason to be killed. */
static bool send_all(int socket, const void *bytes, size_t length)
{
    const char *at = bytes;
    while (length > 0) {
        const ssize_t sent = send(socket, at, length, MSG_NOSIGNAL);
        if (sent < 0 && errno == EINTR)
            continue;
        if (sent <= 0)
            return false;
        at += sent, length -= (size_t)sent;
    }
    return true;
}

/* False at an end: a worker that died has nothing more to say. */
static bool receive_all(int from, void *bytes, size_t length)
{
    char *at = bytes;
    while (length > 0) {
        const ssize_t got = read(from, at, length);
        if (got < 0 && errno == EINTR)
            continue;
        if (got <= 0)
            return false;
        at += got, length -= (size_t)got;
    }
    return true;
}

static bool write_all(int file, const char *bytes, size_t length)
{
    while (length > 0) {
        const ssize_t written = write(file, bytes, length);
        if (written < 0 && errno == EINTR)
            continue;
        if (written <= 0)
            return false;
        bytes += written, length -= (size_t)written;
    }
    return true;
}

/* The worker's end -------------------------------------------------------------------------- */

/* Bytes that wait to be written, in pieces of memory as they came. */
struct answers {
    struct bytes {
        char *bytes;
        size_t length;
    } * items;
    size_t count, capacity;
    bool failed;
};

/* Takes the bytes over. */
static void answers_add(struct answers *answers, char *bytes, size_t length)
{
    if (answers->count == answers->capacity) {
        const size_t capacity = answers->capacity == 0 ? 16 : answers->capacity * 2;
        struct bytes *items = realloc(answers->items, capacity * sizeof(*items));
        if (items == NULL) {
            answers->failed = true;
            free(bytes);
            return;
        }
        answers->items = items;
        answers->capacity = capacity;
    }
    answers->items[answers->count++] = (struct bytes){bytes, length};
}

/* All of them are forgotten, written or not; the list's own memory serves the next. 0, or
 * the errno of what could not be written. */
static int answers_write(struct answers *answers, int file)
{
    int why = 0;
    for (size_t i = 0; i < answers->count; i++) {
        const struct bytes *piece = &answers->items[i];
        if (why == 0 && !write_all(file, piece->bytes, piece->length))
            why = errno;
        free(piece->bytes);
    }
    answers->count = 0;
    return why;
}

/* A worker goes on while the answers to earlier pieces still wait for their turn: so many
 * pieces at most. */
enum { WAITING_MOST = 4 };

/* Its turn comes as a byte from the worker of the piece before, and goes on to that of the
 * piece after. */
struct serving {
    int socket, turn, next_turn;
    struct answer_to to;   /* into: */
    struct answers now[2]; /* of the piece at hand: what went to out, and to err */
    int files[2];          /* where those go in the end */
    struct answers waiting[WAITING_MOST][2]; /* of pieces that wait, the oldest first */
    size_t waiting_count;
};

/* Has the turn come? Waits for it or for lines, whichever is first, or not at all. */
static bool is_turn(const struct serving *serving, bool wait)
{
    struct pollfd ends[] = {{.fd = serving->turn, .events = POLLIN},
                            {.fd = serving->socket, .events = POLLIN}};
    int ready;
    do
        ready = poll(ends, wait ? 2 : 1, wait ? -1 : 0);
    while (ready < 0 && errno == EINTR);
    return ready > 0 && ends[0].revents != 0;
}

/* The answers to the oldest piece, once it is its turn; false when that cannot be, or nobody
 * is left to give the turn. */
static bool write_oldest(struct serving *serving)
{
    struct answers written[2];
    char turn;
    if (!receive_all(serving->turn, &turn, 1))
        return false;
    memcpy(written, serving->waiting[0], sizeof(written));
    serving->to.why = answers_write(&written[0], serving->files[0]);
    if (serving->to.why != 0)
        return false;
    answers_write(&written[1], serving->files[1]);
    serving->waiting_count--;
    memmove(serving->waiting[0], serving->waiting[1], serving->waiting_count * sizeof(written));
    memcpy(serving->waiting[serving->waiting_count], written, sizeof(written));
    /* Whoever would have the turn may have no work left, and be gone. */
    return write(serving->next_turn, &turn, 1) == 1 || errno == EPIPE;
}

static bool write_due(struct serving *serving, bool wait)
{
    while (serving->waiting_count > 0 && is_turn(serving, wait))
        if (!write_oldest(serving))
            return false;
    return true;
}

static bool end_piece(struct serving *serving)
{
    struct answers empty[2];
    if (fflush(serving->to.out) != 0 || fflush(serving->to.err) != 0 || serving->now[0].failed
        || serving->now[1].failed)
        return false;
    /* Lists change places: that of a piece written before is taken again. */
    memcpy(empty, serving->waiting[serving->waiting_count], sizeof(empty));
    memcpy(serving->waiting[serving->waiting_count++], serving->now, sizeof(empty));
    memcpy(serving->now, empty, sizeof(empty));
    if (serving->waiting_count == WAITING_MOST && !write_oldest(serving))
        return false;
    return write_due(serving, false);
}

/* False where the line was cut off. */
static bool work_on(struct serving *serving, relay_task *task, void *data,
                    const struct line_head *head)
{
    char *bytes = malloc(head->length + 1);
    struct text line = {.bytes = bytes,
                        .length = head->length,
                        .capacity = head->length + 1,
                        .failed = head->failed};
    if (bytes == NULL || !receive_all(serving->socket, bytes, head->length)) {
        free(bytes);
        return false;
    }
    bytes[head->length] = '\0';
    task(data, head->number, head->kind, &line, &serving->to);
    text_free(&line);
    return true;
}

static ssize_t keep_bytes(void *answers, const char *bytes, size_t length)
{
    struct answers *kept = answers;
    char *copy = malloc(length);
    if (copy == NULL)
        return 0;
    memcpy(copy, bytes, length);
    answers_add(kept, copy, length);
    return kept->failed ? 0 : (ssize_t)length;
}

static FILE *open_kept(struct answers *answers)
{
    return fopencookie(answers, "w", (cookie_io_functions_t){.write = keep_bytes});
}

/* What was written before stands before it. */
void relay_answer(struct answer_to *to, char *answer)
{
    if (to->kept == NULL) {
        fputs(answer, to->out);
        free(answer);
    } else {
        fflush(to->out);
        answers_add(to->kept, answer, strlen(answer));
    }
}

/* Never returns. Nothing of the parent's streams is flushed a second time. */
static void serve(struct serving *serving, relay_task *task, void *data)
{
    struct line_head head;
    bool whole = true;
    /* A reader who is gone is told of as any output that failed. */
    signal(SIGPIPE, SIG_IGN);
    serving->to.out = open_kept(&serving->now[0]);
    serving->to.err = open_kept(&serving->now[1]);
    serving->to.kept = &serving->now[0];
    if (serving->to.out == NULL || serving->to.err == NULL)
        _exit(1);
    while (whole && receive_all(serving->socket, &head, sizeof(head))) {
        whole = head.number == 0 ? end_piece(serving) : work_on(serving, task, data, &head);
        /* While it waits for the next piece it must not keep others waiting. */
        if (head.number == 0)
            whole = whole && write_due(serving, true);
    }
    while (whole && serving->waiting_count > 0)
        whole = write_oldest(serving);
    const struct last_words last = {serving->to.status, serving->to.why};
    if (whole || last.why != 0)
        send_all(serving->socket, &last, sizeof(last));
    _exit(0);
}

/* The giver's end ---------------------------------------------------------------------------- */

/* The ways by which the turn goes round: [0] to take it, [1] to give it to the worker of that
 * number. */
struct turns {
    int ends[RELAY_MOST][2];
    size_t count;
};

static void turns_close(struct turns *turns, const struct serving *but)
{
    for (size_t i = 0; i < turns->count; i++)
        for (size_t end = 0; end < 2; end++)
            if (but == NULL
                || (turns->ends[i][end] != but->turn && turns->ends[i][end] != but->next_turn))
                close(turns->ends[i][end]);
}

/* The first has the turn. */
static bool turns_open(struct turns *turns, size_t count)
{
    for (turns->count = 0; turns->count < count; turns->count++)
        if (pipe(turns->ends[turns->count]) != 0)
            break;
    if (turns->count == count && write(turns->ends[0][1], "", 1) == 1)
        return true;
    turns_close(turns, NULL);
    return false;
}

/* One more worker; false when the system refuses. */
static bool start_one(struct relay *relay, struct turns *turns, struct serving *serving,
                      relay_task *task, void *data)
{
    int ends[2];
    if (socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, ends) != 0)
        return false;
    serving->socket = ends[1];
    serving->turn = turns->ends[relay->count][0];
    serving->next_turn = turns->ends[(relay->count + 1) % turns->count][1];
    const pid_t process = fork();
    if (process == 0) {
        /* Whoever holds an end of another's keeps it from seeing that nobody is left. */
        for (size_t i = 0; i < relay->count; i++)
            close(relay->items[i].socket);
        close(ends[0]);
        turns_close(turns, serving);
        serve(serving, task, data);
    }
    close(ends[1]);
    if (process < 0) {
        close(ends[0]);
        return false;
    }
    relay->items[relay->count++] = (struct worker){.socket = ends[0], .process = process};
    return true;
}

/* Closing says that there is no more; then each is waited for, so that none stays behind. */
static void end_all(struct relay *relay)
{
    for (size_t i = 0; i < relay->count; i++)
        close(relay->items[i].socket);
    for (size_t i = 0; i < relay->count; i++)
        while (waitpid(relay->items[i].process, NULL, 0) < 0 && errno == EINTR)
            ;
    relay->count = 0;
    text_free(&relay->lines);
}

bool relay_start(struct relay *relay, size_t count, relay_task *task, void *data,
                 const struct answer_to *to)
{
    struct turns turns;
    struct serving serving = {.files = {fileno(to->out), fileno(to->err)}};
    *relay = (struct relay){.count = 0};
    /* What is not written yet would be written by each. */
    fflush(NULL);
    if (count > RELAY_MOST || !turns_open(&turns, count))
        return false;
    while (relay->count < count && start_one(relay, &turns, &serving, task, data))
        ;
    turns_close(&turns, NULL);
    if (relay->count == count)
        return true;
    end_all(relay);
    return false;
}

static void hand_over(struct relay *relay)
{
    const struct worker *worker = &relay->items[relay->next];
    const struct line_head end = {.number = 0};
    relay->next = (relay->next + 1) % relay->count;
    text_add_n(&relay->lines, (const char *)&end, sizeof(end));
    if (relay->lines.failed || !send_all(worker->socket, relay->lines.bytes, relay->lines.length))
        relay->broken = true;
    relay->lines.length = 0;
}

void relay_give(struct relay *relay, unsigned long number, enum line_kind kind,
                const struct text *line)
{
    const struct line_head head = {
        .number = number, .kind = kind, .failed = line->failed, .length = line->length};
    text_add_n(&relay->lines, (const char *)&head, sizeof(head));
    text_add_n(&relay->lines, text_string(line), line->length);
    if (relay->lines.length >= PIECE_BYTES || relay->lines.failed)
        hand_over(relay);
}

bool relay_finish(struct relay *relay, struct answer_to *to)
{
    if (relay->lines.length > 0)
        hand_over(relay);
    for (size_t i = 0; i < relay->count; i++)
        shutdown(relay->items[i].socket, SHUT_WR);
    for (size_t i = 0; i < relay->count; i++) {
        struct last_words last;
        if (!receive_all(relay->items[i].socket, &last, sizeof(last))) {
            relay->broken = true;
            continue;
        }
        to->why = to->why == 0 ? last.why : to->why;
        to->status = last.status > to->status ? last.status : to->status;
    }
    end_all(relay);
    return !relay->broken || to->why != 0;
}
