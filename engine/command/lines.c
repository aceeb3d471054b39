#include "command/checking.h"

#include "base/text.h"
#include "base/utf8.h"
#include "command/command.h"
#include "command/line.h"
#include "command/relay.h"
#include "command/workers.h"

#include <errno.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

/* A batch under way; a line of input gives a line of output, in the same order. */
struct batch {
    const struct check *check;
    eavemark *handle;
    FILE *input;
    FILE *out;
    FILE *err;            /* messages */
    struct answers *kept; /* of a worker: relay.h; or NULL */
    bool flush;           /* somebody may be waiting at the other end */
    unsigned long number; /* of the line in the input, from 1 */
    bool any;             /* a line that was not blank */
    bool broken_off;      /* answers are lacking */
    int why;              /* errno of a write that failed, or 0 */
    int worst;
};

/* A JSON string; the text is printable, so only two characters need care. */
static void add_quoted(struct text *out, const char *printable, size_t length)
{
    text_add(out, "\"");
    for (size_t i = 0; i < length; i++) {
        if (printable[i] == '"' || printable[i] == '\\')
            text_add(out, "\\");
        text_add_n(out, printable + i, 1);
    }
    text_add(out, "\"");
}

/* The message of a syntax problem names the line within the job, which is
 * always 1, after the line of the batch: that 1 says nothing and is left out,
 * so that FILE:LINE:COL is the place in the file. */
static void add_message(struct text *out, const char *message, size_t length, const char *name)
{
    const size_t known = strlen(name);
    if (length > known + 3 && strncmp(message, name, known) == 0
        && strncmp(message + known, ":1:", 3) == 0) {
        text_add_n(out, message, known);
        text_add_n(out, message + known + 2, length - known - 2);
    } else {
        text_add_n(out, message, length);
    }
}

/* Stands in for a result: the same messages to the output and to standard
 * error. problems: a line each. */
static void write_problems(struct batch *batch, const char *name, const char *problems)
{
    struct text record = TEXT_EMPTY, messages = TEXT_EMPTY;
    text_addf(&record, "{\"eavemark\":\"%s\",\"line\":%lu,\"error\":[", EAVEMARK_VERSION,
              batch->number);
    for (const char *at = problems; *at != '\0';) {
        const size_t length = strcspn(at, "\n");
        struct text message = TEXT_EMPTY, safe = TEXT_EMPTY;
        add_message(&message, at, length, name);
        utf8_add_printable(&safe, text_string(&message));
        text_add(&record, at == problems ? "" : ",");
        add_quoted(&record, text_string(&safe), safe.length);
        text_addf(&messages, "%s\n", text_string(&safe));
        record.failed = record.failed || message.failed || safe.failed;
        text_free(&message);
        text_free(&safe);
        at += length + (at[length] == '\n');
    }
    text_add(&record, "]}\n");
    fputs(text_string(&messages), batch->err);
    if (record.failed) {
        /* The order of lines is a promise: say it without memory. */
        complain("out of memory");
        fprintf(batch->out, "{\"eavemark\":\"%s\",\"line\":%lu,\"error\":[\"out of memory\"]}\n",
                EAVEMARK_VERSION, batch->number);
    } else {
        fputs(text_string(&record), batch->out);
    }
    text_free(&record);
    text_free(&messages);
}

/* The batch ends with the worst status of any line. */
static void note_status(struct batch *batch, int status)
{
    if (status > batch->worst)
        batch->worst = status;
}

static void check_line(struct batch *batch, const char *name, const struct text *line)
{
    const struct eavemark_request request = {
        .name = name,
        .text = text_string(line),
        .length = line->length,
        .jurisdiction = batch->check->jurisdiction,
        .date = batch->check->date,
        .stage = batch->check->stage,
        .shop_name = batch->check->shop,
        .wanted = batch->check->brief ? EAVEMARK_WANT_BRIEF
                  : batch->check->all ? EAVEMARK_WANT_NO_DRAWINGS
                                      : EAVEMARK_WANT_JSON,
    };
    eavemark_result *result = eavemark_check(batch->handle, &request);
    char *report = result == NULL ? NULL
                                  : eavemark_result_report(result, EAVEMARK_JSON_LINE,
                                                           check_options(batch->check));
    const char *problems = result == NULL ? "" : eavemark_result_problems(result);
    if (report != NULL) {
        struct answer_to to = {.out = batch->out, .kept = batch->kept};
        fputs(problems, batch->err);
        relay_answer(&to, report);
        note_status(batch, (int)eavemark_result_status(result, batch->check->strict));
    } else if (problems[0] != '\0') {
        write_problems(batch, name, problems);
        note_status(batch, (int)eavemark_result_status(result, batch->check->strict));
    } else {
        write_problems(batch, name, "out of memory\n");
        note_status(batch, EAVEMARK_BROKEN);
    }
    eavemark_result_free(result);
}

/* True when the output takes no more. Asked right after writing, while errno says why. */
static bool is_out_closed(struct batch *batch)
{
    if (!ferror(batch->out))
        return false;
    if (batch->why == 0)
        batch->why = errno;
    return true;
}

/* One line of the batch: a result, or a record of why there is none. */
static void handle_line(struct batch *batch, enum line_kind kind, const struct text *line)
{
    struct text name = TEXT_EMPTY, problem = TEXT_EMPTY;
    utf8_add_printable(&name, batch->check->job);
    text_addf(&name, ":%lu", batch->number);
    batch->any = true;
    if (line->failed || name.failed) {
        write_problems(batch, "", "out of memory\n");
        note_status(batch, EAVEMARK_BROKEN);
    } else if (kind == LINE_TOO_LONG) {
        text_addf(&problem, "%s: longer than %d MB; a job is about 5 KB\n", text_string(&name),
                  LINE_LARGEST / (1024 * 1024));
        write_problems(batch, text_string(&name), text_string(&problem));
        note_status(batch, EAVEMARK_UNUSABLE);
    } else {
        check_line(batch, text_string(&name), line);
    }
    text_free(&name);
    text_free(&problem);
}

/* A line in a process of its own: the batch is a copy. */
static void work_on_line(void *data, unsigned long number, enum line_kind kind,
                         const struct text *line, struct answer_to *to)
{
    struct batch *batch = data;
    batch->number = number;
    batch->out = to->out;
    batch->err = to->err;
    batch->kept = to->kept;
    batch->worst = to->status;
    handle_line(batch, kind, line);
    to->status = batch->worst;
}

/* How many processes: as many as asked for, or as there are cores and work for them. Where
 * somebody may be waiting for each answer there is one. */
static size_t processes_for(const struct batch *batch)
{
    enum { BYTES_EACH = 512 * 1024 }; /* less is done before another has loaded the law */
    struct stat about;
    size_t asked;
    if (batch->check->jobs != NULL && workers_read(batch->check->jobs, &asked))
        return asked;
    if (fstat(fileno(batch->input), &about) != 0 || !S_ISREG(about.st_mode))
        return 1;
    const size_t busy = (size_t)about.st_size / BYTES_EACH + 1, usual = workers_usual();
    return busy < usual ? busy : usual;
}

/* All lines by several processes. False when that could not be begun. */
static bool share_batch(struct batch *batch, size_t processes)
{
    struct relay relay;
    struct text line = TEXT_EMPTY;
    struct answer_to to = {.out = batch->out, .err = batch->err};
    if (processes < 2 || !relay_start(&relay, processes, work_on_line, batch, &to))
        return false;
    for (;;) {
        const enum line_kind kind = line_read(batch->input, &line);
        if (kind == LINE_END || relay.broken)
            break;
        batch->number++;
        if (kind == LINE_BLANK && !line.failed)
            continue;
        batch->any = true;
        relay_give(&relay, batch->number, kind, &line);
        line.failed = false;
    }
    if (!relay_finish(&relay, &to)) {
        complain("%s: a part of the work was broken off", batch->check->job);
        to.status = EAVEMARK_BROKEN;
        batch->broken_off = true;
    }
    note_status(batch, to.status);
    batch->why = to.why;
    /* As if this process had written: whoever would no longer read is no fault. */
    if (to.why == EPIPE)
        raise(SIGPIPE);
    text_free(&line);
    return true;
}

/* All lines, until the input ends or the output cannot be written. */
static void run_batch(struct batch *batch)
{
    if (share_batch(batch, processes_for(batch)))
        return;
    struct text line = TEXT_EMPTY;
    for (;;) {
        const enum line_kind kind = line_read(batch->input, &line);
        if (kind == LINE_END)
            break;
        batch->number++;
        if (kind == LINE_BLANK && !line.failed)
            continue;
        handle_line(batch, kind, &line);
        if (batch->flush)
            fflush(batch->out);
        if (is_out_closed(batch))
            break;
        line.failed = false;
    }
    text_free(&line);
}

/* A pipe will do; a folder opens, but cannot be read. */
static FILE *open_input(const char *path)
{
    struct stat about;
    FILE *input = strcmp(path, "-") == 0 ? stdin : fopen(path, "r");
    if (input == NULL) {
        complain("%s: cannot be read: %s", path, strerror(errno));
        return NULL;
    }
    if (fstat(fileno(input), &about) == 0 && !S_ISDIR(about.st_mode))
        return input;
    complain("%s: not a file", path);
    if (input != stdin)
        fclose(input);
    return NULL;
}

/* The batch with its input and output open; false when the result must not be
 * kept because it is not one. */
static bool run_whole(struct batch *batch)
{
    struct stat about;
    batch->flush = fstat(fileno(batch->out), &about) != 0 || !S_ISREG(about.st_mode);
    run_batch(batch);
    if (ferror(batch->input)) {
        complain("%s: cannot be read to its end", batch->check->job);
        return false;
    }
    if (batch->broken_off)
        return false;
    /* Nothing checked must not look like nothing failed. */
    if (!batch->any && !ferror(batch->out)) {
        complain("%s: holds no job", batch->check->job);
        return false;
    }
    return true;
}

int lines_check(const struct check *check, eavemark *handle)
{
    struct batch batch = {.check = check, .handle = handle, .err = stderr};
    struct output output;
    batch.input = open_input(check->job);
    if (batch.input == NULL)
        return EAVEMARK_UNUSABLE;
    if (output_open(&output, check->output) == 0) {
        batch.out = output.stream;
        const bool whole = run_whole(&batch);
        output.why = batch.why;
        if (!whole)
            note_status(&batch, EAVEMARK_UNUSABLE);
        if (output_close(&output, whole) != 0)
            batch.worst = EAVEMARK_UNUSABLE;
    } else {
        batch.worst = EAVEMARK_UNUSABLE;
    }
    if (batch.input != stdin)
        fclose(batch.input);
    return batch.worst;
}
