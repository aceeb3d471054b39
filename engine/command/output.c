/* For realpath, which POSIX counts to its XSI part. */
#define _XOPEN_SOURCE 700

#include "command/command.h"

#include "base/part.h"
#include "include/eavemark.h"

#include <errno.h>
#include <fcntl.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* errno says why. Always -1, for return in one line. */
static int complain_of_output(const struct output *output)
{
    complain("%s: cannot be written: %s", output->path == NULL ? "standard output" : output->path,
             strerror(errno));
    return -1;
}

/* Opens the temporary file; old: the file it will replace, whose permissions
 * it gets, or NULL. */
static FILE *open_temporary(struct output *output, const struct stat *old)
{
    const int handle = part_create(output->target, &output->temporary);
    if (handle < 0)
        return NULL;
    /* As open as the file it replaces: who could not read that one must not read this. */
    const bool ready = old == NULL || fchmod(handle, old->st_mode & 0777) == 0;
    FILE *stream = ready ? fdopen(handle, "w") : NULL;
    if (stream == NULL) {
        const int why = errno;
        close(handle);
        unlink(output->temporary);
        errno = why;
    }
    return stream;
}

/* The path stays, for a message. */
static void output_free(struct output *output)
{
    free(output->target);
    free(output->temporary);
    *output = (struct output){.path = output->path};
}

int output_open(struct output *output, const char *path)
{
    *output = (struct output){0};
    if (path == NULL || strcmp(path, "-") == 0) {
        output->stream = stdout;
        return 0;
    }
    struct stat old;
    const bool exists = stat(path, &old) == 0;
    output->path = path;
    if (exists && !S_ISREG(old.st_mode)) {
        /* A device or a pipe is written to; only files can be replaced. */
        output->stream = fopen(path, "w");
    } else {
        /* Through a link to the file behind it, so that the link stays. */
        output->target = exists ? realpath(path, NULL) : strdup(path);
        if (output->target != NULL)
            output->stream = open_temporary(output, exists ? &old : NULL);
    }
    if (output->stream != NULL)
        return 0;
    complain_of_output(output);
    output_free(output);
    return -1;
}

/* Closes the stream; false, with errno set, if anything written to it since it
 * was opened did not arrive. Standard output stays open, flushed. */
static bool finish_stream(struct output *output)
{
    int why = output->why;
    errno = 0;
    if (why != 0) {
        /* said when it happened */
    } else if (fflush(output->stream) != 0 || ferror(output->stream))
        why = errno != 0 ? errno : EIO;
    if (why == 0 && output->target != NULL && fsync(fileno(output->stream)) != 0)
        why = errno;
    /* Closing may be the first to say that a disk is full. */
    if (output->stream != stdout && fclose(output->stream) != 0 && why == 0)
        why = errno;
    errno = why;
    return why == 0;
}

int output_close(struct output *output, bool keep)
{
    bool written = finish_stream(output);
    if (written && keep && output->target != NULL)
        /* On one file system, so that the file appears whole or not at all. */
        written = rename(output->temporary, output->target) == 0;
    if (!written)
        complain_of_output(output);
    if (output->target != NULL && (!written || !keep))
        unlink(output->temporary);
    output_free(output);
    return written ? 0 : -1;
}

int output_text(const char *path, const char *text)
{
    struct output output;
    if (output_open(&output, path) != 0)
        return -1;
    errno = 0;
    if (fputs(text, output.stream) == EOF)
        output.why = errno; /* told when it is closed, and forgotten by then */
    return output_close(&output, true);
}

/* Problems first: what follows on standard output may be long. */
int output_answer(int status, const char *path, char *report, char *problems)
{
    fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
    if (report != NULL && output_text(path, report) != 0)
        status = EAVEMARK_UNUSABLE;
    free(report);
    free(problems);
    return status;
}

int output_print(int status, bool wanted, const char *text)
{
    if (text == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    if (wanted)
        return output_text(NULL, text) == 0 ? status : EAVEMARK_UNUSABLE;
    fputs(text, stderr);
    const size_t length = strlen(text);
    if (length == 0 || text[length - 1] != '\n')
        fputs("\n", stderr);
    return status;
}
