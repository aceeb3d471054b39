#include "command/relay.h"

#include "base/text.h"

#include <errno.h>
#include <stdlib.h>
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

struct answer_head {
    int status;
    size_t out, err; /* bytes that follow */
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
static bool receive_all(int socket, void *bytes, size_t length)
{
    char *at = bytes;
    while (length > 0) {
        const ssize_t got = recv(socket, at, length, 0);
        if (got < 0 && errno == EINTR)
            continue;
        if (got <= 0)
            return false;
        at += got, length -= (size_t)got;
    }
    return true;
}

/* The worker's end -------------------------------------------------------------------------- */

/* One piece of lines; false when there are no more, or its end was cut off. */
static bool work_through(int socket, relay_task *task, void *data, struct answer_to *to)
{
    struct line_head head;
    while (receive_all(socket, &head, sizeof(head))) {
        if (head.number == 0)
            return true;
        char *bytes = malloc(head.length + 1);
        struct text line = {.bytes = bytes,
                            .length = head.length,
                            .capacity = head.length + 1,
                            .failed = head.failed};
        if (bytes == NULL || !receive_all(socket, bytes, head.length)) {
            free(bytes);
            return false;
        }
        bytes[head.length] = '\0';
        task(data, head.number, head.kind, &line, to);
        text_free(&line);
    }
    return false;
}

/* Answers are kept until the whole piece is done: who waits for another's does not keep
 * this one from working. The streams are written anew for each piece. */
struct keeping {
    char *out, *err;
    size_t out_size, err_size;
    struct answer_to to;
};

static bool serve_piece(int socket, relay_task *task, void *data, struct keeping *keeping)
{
    struct answer_to *to = &keeping->to;
    rewind(to->out);
    rewind(to->err);
    to->status = 0;
    if (!work_through(socket, task, data, to) || fflush(to->out) != 0 || fflush(to->err) != 0)
        return false;
    const struct answer_head head = {to->status, (size_t)ftello(to->out), (size_t)ftello(to->err)};
    return send_all(socket, &head, sizeof(head)) && send_all(socket, keeping->out, head.out)
           && send_all(socket, keeping->err, head.err);
}

/* Never returns. Nothing of the parent's streams is flushed a second time. */
static void serve(int socket, relay_task *task, void *data)
{
    struct keeping keeping = {.out = NULL};
    keeping.to.out = open_memstream(&keeping.out, &keeping.out_size);
    keeping.to.err = open_memstream(&keeping.err, &keeping.err_size);
    while (keeping.to.out != NULL && keeping.to.err != NULL
           && serve_piece(socket, task, data, &keeping))
        ;
    _exit(0);
}

/* One more worker; false when the system refuses. */
static bool start_one(struct relay *relay, relay_task *task, void *data)
{
    int ends[2];
    if (socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, ends) != 0)
        return false;
    const pid_t process = fork();
    if (process == 0) {
        /* Whoever holds the other end of a worker keeps it from seeing that it is done. */
        for (size_t i = 0; i < relay->count; i++)
            close(relay->items[i].socket);
        close(ends[0]);
        serve(ends[1], task, data);
    }
    close(ends[1]);
    if (process < 0) {
        close(ends[0]);
        return false;
    }
    relay->items[relay->count++] = (struct worker){.socket = ends[0], .process = process};
    return true;
}

/* The giver's end ---------------------------------------------------------------------------- */

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

bool relay_start(struct relay *relay, size_t count, relay_task *task, void *data)
{
    *relay = (struct relay){.count = 0};
    /* What is not written yet would be written by each. */
    fflush(NULL);
    for (size_t i = 0; i < count && i < RELAY_MOST; i++) {
        if (!start_one(relay, task, data)) {
            end_all(relay);
            return false;
        }
    }
    return true;
}

/* In order of the lines: answers of other workers wait meanwhile. */
static bool copy_bytes(int socket, size_t length, FILE *to)
{
    char bytes[64 * 1024];
    while (length > 0) {
        const size_t some = length < sizeof(bytes) ? length : sizeof(bytes);
        if (!receive_all(socket, bytes, some))
            return false;
        fwrite(bytes, 1, some, to);
        length -= some;
    }
    return true;
}

/* The answers that a worker owes. */
static void collect(struct relay *relay, struct worker *worker, struct answer_to *to)
{
    struct answer_head head;
    if (!worker->busy || relay->broken)
        return;
    worker->busy = false;
    const bool whole = receive_all(worker->socket, &head, sizeof(head))
                       && copy_bytes(worker->socket, head.out, to->out);
    if (whole && ferror(to->out) && to->why == 0)
        to->why = errno;
    if (!whole || !copy_bytes(worker->socket, head.err, to->err))
        relay->broken = true;
    else if (head.status > to->status)
        to->status = head.status;
}

/* Hands the piece to the next in turn, whose answers are the oldest that are out: it has
 * nothing left to say then, and reads. */
static void hand_over(struct relay *relay, struct answer_to *to)
{
    struct worker *worker = &relay->items[relay->next];
    const struct line_head end = {.number = 0};
    relay->next = (relay->next + 1) % relay->count;
    collect(relay, worker, to);
    text_add_n(&relay->lines, (const char *)&end, sizeof(end));
    if (relay->lines.failed || !send_all(worker->socket, relay->lines.bytes, relay->lines.length))
        relay->broken = true;
    worker->busy = true;
    relay->lines.length = 0;
}

void relay_give(struct relay *relay, unsigned long number, enum line_kind kind,
                const struct text *line, struct answer_to *to)
{
    const struct line_head head = {
        .number = number, .kind = kind, .failed = line->failed, .length = line->length};
    text_add_n(&relay->lines, (const char *)&head, sizeof(head));
    text_add_n(&relay->lines, text_string(line), line->length);
    if (relay->lines.length >= PIECE_BYTES || relay->lines.failed)
        hand_over(relay, to);
}

/* The oldest answers first, as hand_over left them. */
bool relay_finish(struct relay *relay, struct answer_to *to)
{
    if (relay->lines.length > 0)
        hand_over(relay, to);
    for (size_t i = 0; i < relay->count; i++)
        collect(relay, &relay->items[(relay->next + i) % relay->count], to);
    end_all(relay);
    return !relay->broken;
}
