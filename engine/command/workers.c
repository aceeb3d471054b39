#define _XOPEN_SOURCE 700

#include "command/workers.h"

#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

struct worker {
    pid_t process;
    FILE *jobs;   /* to it */
    FILE *result; /* a nameless file, written when it is done */
};

struct workers {
    struct worker items[WORKERS_MOST];
    size_t count, next;
    bool lost; /* one could not be written to */
};

/* Before each name and text. */
struct job_head {
    size_t name_length, length;
};

/* The child ------------------------------------------------------------------------- */

/* With a zero behind them, so that texts are texts; NULL when cut short. */
static char *read_bytes(FILE *input, size_t length)
{
    char *bytes = malloc(length + 1);
    if (bytes == NULL || fread(bytes, 1, length, input) != length) {
        free(bytes);
        return NULL;
    }
    bytes[length] = '\0';
    return bytes;
}

/* Until the parent closes its end. */
static bool do_jobs(FILE *input, const struct work *work)
{
    struct job_head head;
    while (fread(&head, sizeof(head), 1, input) == 1) {
        char *name = read_bytes(input, head.name_length);
        char *text = name == NULL ? NULL : read_bytes(input, head.length);
        const bool done = text != NULL && work->take(work->data, name, text, head.length);
        free(name);
        free(text);
        if (!done)
            return false;
    }
    return !ferror(input);
}

/* Never returns. Nothing of the parent's standard streams is flushed a second time. */
static void be_worker(int from, FILE *result, const struct work *work)
{
    FILE *input = fdopen(from, "r");
    const bool done = input != NULL && do_jobs(input, work) && work->finish(work->data, result)
                      && fflush(result) == 0;
    /* No exit(): the parent's handlers and files are not the child's. */
    _exit(done ? 0 : 1);
}

/* The parent ------------------------------------------------------------------------ */

/* A later worker must not hold the ends of those before it, or they would never see the
 * end of their input. */
static void close_ends(struct workers *workers)
{
    for (size_t i = 0; i < workers->count; i++)
        close(fileno(workers->items[i].jobs));
}

static bool start_one(struct workers *workers, const struct work *work)
{
    struct worker *worker = &workers->items[workers->count];
    int ends[2];
    /* A file and not a pipe: what a worker came to may be longer than a pipe holds, and nobody
     * reads until all are done. */
    worker->result = tmpfile();
    if (worker->result == NULL)
        return false;
    if (pipe(ends) != 0) {
        fclose(worker->result);
        return false;
    }
    worker->process = fork();
    if (worker->process == 0) {
        close(ends[1]);
        close_ends(workers);
        be_worker(ends[0], worker->result, work);
    }
    close(ends[0]);
    worker->jobs = worker->process < 0 ? NULL : fdopen(ends[1], "w");
    if (worker->jobs == NULL) {
        close(ends[1]);
        fclose(worker->result);
        return false;
    }
    workers->count++;
    return true;
}

/* For workers that are ended before they had work. */
static bool no_more(void *data, const char *text, size_t length)
{
    (void)data;
    (void)text;
    (void)length;
    return true;
}

struct workers *workers_start(size_t count, const struct work *work)
{
    struct workers *workers = calloc(1, sizeof(*workers));
    if (workers == NULL)
        return NULL;
    /* A worker that died is told by what writing to it says. */
    signal(SIGPIPE, SIG_IGN);
    fflush(NULL);
    while (workers->count < count && workers->count < WORKERS_MOST)
        if (!start_one(workers, work)) {
            workers_end(workers, no_more, NULL);
            return NULL;
        }
    return workers;
}

bool workers_give(struct workers *workers, const char *name, const char *text, size_t length)
{
    struct worker *worker = &workers->items[workers->next];
    const struct job_head head = {strlen(name), text == NULL ? 0 : length};
    workers->next = (workers->next + 1) % workers->count;
    const bool given = fwrite(&head, sizeof(head), 1, worker->jobs) == 1
                       && fwrite(name, 1, head.name_length, worker->jobs) == head.name_length
                       && (head.length == 0
                           || fwrite(text, 1, head.length, worker->jobs) == head.length);
    /* Its jobs are counted nowhere: the sum is not to be trusted. */
    workers->lost = workers->lost || !given;
    return given;
}

/* What a worker wrote, handed on; false when it did not end well. */
static bool collect(struct worker *worker,
                    bool (*each)(void *data, const char *text, size_t length), void *data)
{
    int status = 0;
    if (waitpid(worker->process, &status, 0) != worker->process || !WIFEXITED(status)
        || WEXITSTATUS(status) != 0 || fseek(worker->result, 0, SEEK_END) != 0)
        return false;
    /* The worker wrote through the same open file: its end is where it stopped. */
    const long length = ftell(worker->result);
    rewind(worker->result);
    char *text = length < 0 ? NULL : read_bytes(worker->result, (size_t)length);
    const bool taken = text != NULL && each(data, text, (size_t)length);
    free(text);
    return taken;
}

/* All inputs are closed first: workers finish side by side, and are then waited for in order. */
bool workers_end(struct workers *workers, bool (*each)(void *data, const char *text, size_t length),
                 void *data)
{
    bool whole = !workers->lost;
    for (size_t i = 0; i < workers->count; i++)
        whole = fclose(workers->items[i].jobs) == 0 && whole;
    for (size_t i = 0; i < workers->count; i++) {
        whole = collect(&workers->items[i], each, data) && whole;
        fclose(workers->items[i].result);
    }
    free(workers);
    return whole;
}

/* One for each processor: judging waits for nothing else. */
size_t workers_usual(void)
{
    const long cores = sysconf(_SC_NPROCESSORS_ONLN);
    return cores < 1 ? 1 : cores > WORKERS_MOST ? WORKERS_MOST : (size_t)cores;
}

bool workers_read(const char *words, size_t *count)
{
    char *end = NULL;
    if (words[0] < '1' || words[0] > '9')
        return false;
    const unsigned long number = strtoul(words, &end, 10);
    *count = (size_t)number;
    return *end == '\0' && number <= WORKERS_MOST;
}
