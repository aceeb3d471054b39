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

/* Lines are handed over in pieces of about this size: a few jobs, so that handing over
 * costs little and the last piece does not keep everybody waiting. */
enum { PIECE_BYTES = 96 * 1024 };

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

/* A worker goes on while the answers to earlier pieces still wait for their turn: so many
 * pieces at most. */
enum { WAITING_MOST = 4 };

/* Its turn comes as a byte from the worker of the piece before, and goes on to that of the
 * piece after. */
struct serving {
    int socket, turn, next_turn;
    struct answer_to to;  /* into: */
    struct text out, err; /* of pieces that wait, and of the one at hand */
    int out_file, err_file;
    size_t out_done, err_done; /* bytes written of what is in memory */
    struct piece {
        size_t out, err; /* where its answers end */
    } waiting[WAITING_MOST];
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
    const struct piece piece = serving->waiting[0];
    char turn;
    if (!receive_all(serving->turn, &turn, 1))
        return false;
    if (!write_all(serving->out_file, text_string(&serving->out) + serving->out_done,
                   piece.out - serving->out_done)) {
        serving->to.why = errno;
        return false;
    }
    write_all(serving->err_file, text_string(&serving->err) + serving->err_done,
              piece.err - serving->err_done);
    serving->out_done = piece.out, serving->err_done = piece.err;
    serving->waiting_count--;
    memmove(serving->waiting, serving->waiting + 1, serving->waiting_count * sizeof(piece));
    /* Whoever would have the turn may have no work left, and be gone. */
    return write(serving->next_turn, &turn, 1) == 1 || errno == EPIPE;
}

static void drop_front(struct text *text, size_t length)
{
    if (length == 0)
        return;
    text->length -= length;
    memmove(text->bytes, text->bytes + length, text->length + 1);
}

/* What is written need not be kept; moving what waits up front pays once it is the less. */
static void drop_written(struct serving *serving)
{
    if (serving->out_done < serving->out.length / 2)
        return;
    for (size_t i = 0; i < serving->waiting_count; i++) {
        serving->waiting[i].out -= serving->out_done;
        serving->waiting[i].err -= serving->err_done;
    }
    drop_front(&serving->out, serving->out_done);
    drop_front(&serving->err, serving->err_done);
    serving->out_done = serving->err_done = 0;
}

static bool write_due(struct serving *serving, bool wait)
{
    while (serving->waiting_count > 0 && is_turn(serving, wait))
        if (!write_oldest(serving))
            return false;
    drop_written(serving);
    return true;
}

static bool end_piece(struct serving *serving)
{
    if (fflush(serving->to.out) != 0 || fflush(serving->to.err) != 0 || serving->out.failed
        || serving->err.failed)
        return false;
    serving->waiting[serving->waiting_count++] = (struct piece){serving->out.length,
                                                                serving->err.length};
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

static ssize_t keep_bytes(void *text, const char *bytes, size_t length)
{
    struct text *kept = text;
    text_add_n(kept, bytes, length);
    return kept->failed ? 0 : (ssize_t)length;
}

/* open_memstream takes its memory anew for each piece. */
static FILE *open_kept(struct text *text)
{
    return fopencookie(text, "w", (cookie_io_functions_t){.write = keep_bytes});
}

/* Never returns. Nothing of the parent's streams is flushed a second time. */
static void serve(struct serving *serving, relay_task *task, void *data)
{
    struct line_head head;
    bool whole = true;
    /* A reader who is gone is told of as any output that failed. */
    signal(SIGPIPE, SIG_IGN);
    serving->to.out = open_kept(&serving->out);
    serving->to.err = open_kept(&serving->err);
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
    struct serving serving = {.out_file = fileno(to->out), .err_file = fileno(to->err)};
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
