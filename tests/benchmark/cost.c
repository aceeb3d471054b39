#include "cost.h"

#include <cjson/cJSON.h>
#include <fcntl.h>
#include <spawn.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

extern char **environ;

enum { RUNS_MOST = 31 };

static int compare_numbers(const void *a, const void *b)
{
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

static double median(double *numbers, int count)
{
    qsort(numbers, (size_t)count, sizeof(*numbers), compare_numbers);
    return numbers[count / 2];
}

static double seconds_of(clockid_t clock)
{
    struct timespec now;
    clock_gettime(clock, &now);
    return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

static double seconds_in(const struct timeval *time)
{
    return (double)time->tv_sec + 1e-6 * (double)time->tv_usec;
}

static struct cost run_once(const char *const *argv, const char *output)
{
    struct rusage use;
    int status = 0;
    const double before = seconds_of(CLOCK_MONOTONIC);
    pid_t child = -1;
    /* Not fork: what copying this process costs would be the program's. */
    posix_spawn_file_actions_t streams;
    posix_spawn_file_actions_init(&streams);
    posix_spawn_file_actions_addopen(&streams, STDOUT_FILENO, output == NULL ? "/dev/null" : output,
                                     O_WRONLY | O_CREAT | O_TRUNC, 0666);
    posix_spawn_file_actions_addopen(&streams, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
    if (posix_spawn(&child, argv[0], &streams, NULL, (char *const *)(void *)(size_t)argv, environ)
        != 0)
        child = -1;
    posix_spawn_file_actions_destroy(&streams);
    if (child < 0 || wait4(child, &status, 0, &use) != child) {
        perror("benchmark");
        exit(2);
    }
    return (struct cost){.seconds = seconds_in(&use.ru_utime) + seconds_in(&use.ru_stime),
                         .wall = seconds_of(CLOCK_MONOTONIC) - before,
                         .peak_kb = use.ru_maxrss,
                         .status = WIFEXITED(status) ? WEXITSTATUS(status) : -1};
}

struct cost cost_of_program(const char *const *argv, const char *output, int runs)
{
    double seconds[RUNS_MOST], wall[RUNS_MOST];
    struct cost cost = {.peak_kb = 0};
    for (int i = 0; i < runs && i < RUNS_MOST; i++) {
        const struct cost once = run_once(argv, output);
        seconds[i] = once.seconds;
        wall[i] = once.wall;
        cost.peak_kb = once.peak_kb > cost.peak_kb ? once.peak_kb : cost.peak_kb;
        cost.status = once.status;
    }
    cost.seconds = median(seconds, runs);
    cost.wall = median(wall, runs);
    return cost;
}

double cost_of_parse(const char *path, int runs)
{
    double seconds[RUNS_MOST];
    char *line = NULL;
    size_t capacity = 0;
    for (int i = 0; i < runs && i < RUNS_MOST; i++) {
        FILE *file = fopen(path, "r");
        seconds[i] = 0;
        while (file != NULL && getline(&line, &capacity, file) > 0) {
            const double before = seconds_of(CLOCK_PROCESS_CPUTIME_ID);
            cJSON *job = cJSON_Parse(line);
            seconds[i] += seconds_of(CLOCK_PROCESS_CPUTIME_ID) - before;
            cJSON_Delete(job);
        }
        if (file != NULL)
            fclose(file);
    }
    free(line);
    return median(seconds, runs);
}
