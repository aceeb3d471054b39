/* benchmark.c - what checks cost, held against the parse of the same lines.
 *
 *     benchmark EAVEMARK SOURCE_DIR [RUNS]            the tables
 *     benchmark --jobs alike|varied COUNT SOURCE_DIR  the jobs, a line each
 *     benchmark --parse RUNS FILE                     seconds of cJSON_Parse over its lines
 *     benchmark --cost RUNS OUTPUT PROGRAM [ARG ...]  seconds and MB of any program
 *
 * Processor time throughout, so that a busy machine does not change it much; ratios hold
 * where times drift. Reports go nowhere (/dev/null).
 */
#include "cost.h"
#include "jobs.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static const char *program, *source;
static char folder[] = "/tmp/eavemark-benchmark-XXXXXX";
static int runs = 5;

/* The path of a file of jobs in the folder, written. */
static const char *jobs_in(const char *name, enum jobs_kind kind, size_t count)
{
    static char path[256];
    snprintf(path, sizeof(path), "%s/%s", folder, name);
    FILE *file = fopen(path, "w");
    if (file == NULL) {
        perror(path);
        exit(2);
    }
    jobs_write(file, source, kind, count);
    fclose(file);
    return path;
}

static struct cost check_lines(const char *path, const char *option, const char *home, int times)
{
    const char *argv[] = {program,  "check", "--home", home,   "--lines",
                          "--jobs", "1",     path,     option, NULL};
    return cost_of_program(argv, NULL, times);
}

/* Against the parse -------------------------------------------------------------------- */

static void ratio_row(const char *name, const struct cost *cost, double parse, size_t count)
{
    printf("%-22s %9.0f us a job %8.1f x parse %8.0f jobs/s %7.1f MB\n", name,
           1e6 * cost->seconds / (double)count, cost->seconds / parse,
           (double)count / cost->seconds, (double)cost->peak_kb / 1024);
    fflush(stdout);
}

static void tell_ratio(const char *name, enum jobs_kind kind, size_t count)
{
    const char *path = jobs_in("jobs", kind, count);
    char title[64];
    const double parse = cost_of_parse(path, runs);
    printf("%-22s %9.1f us a job\n", name, 1e6 * parse / (double)count);
    const struct cost all = check_lines(path, NULL, source, runs);
    const struct cost brief = check_lines(path, "--brief", source, runs);
    snprintf(title, sizeof(title), "  check --lines");
    ratio_row(title, &all, parse, count);
    ratio_row("  check --brief", &brief, parse, count);
    /* What a second thousand costs: the laws are loaded once. */
    const char *half = jobs_in("half", kind, count / 2);
    struct cost first = check_lines(half, NULL, source, runs), rest = all;
    rest.seconds -= first.seconds;
    snprintf(title, sizeof(title), "  its second half");
    ratio_row(title, &rest, parse / 2, count / 2);
}

/* Cold starts -------------------------------------------------------------------------- */

static void cold_row(const char *name, const char *const *argv)
{
    const struct cost cost = cost_of_program(argv, NULL, runs * 3 < 31 ? runs * 3 : 31);
    printf("%-22s %9.1f ms %35.1f MB\n", name, 1e3 * cost.seconds, (double)cost.peak_kb / 1024);
    fflush(stdout);
}

/* The program by itself, with no folder of rules beside it: it goes by its home inside. */
static const char *program_alone(void)
{
    static char alone[256];
    char command[2048];
    snprintf(alone, sizeof(alone), "%s/alone/eavemark", folder);
    snprintf(command, sizeof(command), "mkdir '%s/alone' && cp '%s' '%s'", folder, program, alone);
    if (system(command) != 0)
        exit(2);
    return alone;
}

static void tell_cold(void)
{
    char job[1024];
    const char *alone = program_alone();
    snprintf(job, sizeof(job), "%s/tests/houses/cross-gable/job.json", source);
    cold_row("check, text", (const char *[]){program, "check", "--home", source, job, NULL});
    cold_row("check, HTML",
             (const char *[]){program, "check", "--home", source, "--form", "html", job, NULL});
    cold_row("check, home inside", (const char *[]){alone, "check", job, NULL});
    cold_row("nothing (true)", (const char *[]){"/bin/true", NULL});
    cold_row("--help", (const char *[]){program, "--help", NULL});
    cold_row("--version", (const char *[]){program, "--version", NULL});
    cold_row("places", (const char *[]){alone, "places", NULL});
    cold_row("places of a folder", (const char *[]){program, "places", "--home", source, NULL});
}

/* Growth ------------------------------------------------------------------------------- */

/* Between neighbours, what a tenfold size makes of the time beyond the least one's. */
static void growth_row(const char *name, const size_t *sizes, const double *seconds, size_t count)
{
    printf("%-22s", name);
    for (size_t i = 0; i < count; i++)
        printf(" %6zu: %8.2f ms", sizes[i], 1e3 * seconds[i]);
    /* What is lost in the noise of the load has no exponent. */
    if (seconds[count - 2] <= 0) {
        printf("   too little to tell\n");
        return;
    }
    const double by = log(seconds[count - 1] / seconds[count - 2])
                      / log((double)sizes[count - 1] / (double)sizes[count - 2]);
    printf("   exponent %.2f\n", by);
    fflush(stdout);
}

/* One job of that size, beyond one with a single thing: what a first job costs beside, and
 * loading, is much more than any later one does. */
static void tell_job_growth(const char *name, enum jobs_kind kind)
{
    static const size_t SIZES[] = {10, 100, 1000};
    double seconds[3];
    const double least = check_lines(jobs_in("size", kind, 1), NULL, source, runs).seconds;
    for (size_t i = 0; i < 3; i++)
        seconds[i] = check_lines(jobs_in("size", kind, SIZES[i]), NULL, source, runs).seconds
                     - least;
    growth_row(name, SIZES, seconds, 3);
}

/* A copy of the home, to which files may be added. */
static const char *home_copied(void)
{
    static char home[256];
    char command[1024];
    snprintf(home, sizeof(home), "%s/home", folder);
    snprintf(command, sizeof(command),
             "rm -rf '%s' && mkdir '%s' && cp -r '%s/rules' '%s/jurisdictions' '%s'", home, home,
             source, source, home);
    if (system(command) != 0)
        exit(2);
    return home;
}

static FILE *file_in(const char *home, const char *name)
{
    char path[1024];
    snprintf(path, sizeof(path), "%s/%s", home, name);
    FILE *file = fopen(path, "w");
    if (file == NULL) {
        perror(path);
        exit(2);
    }
    return file;
}

/* So many more rules, each a row, over a hundred jobs. */
static void tell_rule_growth(void)
{
    static const size_t SIZES[] = {10, 100, 1000};
    double seconds[3];
    const char *home = home_copied();
    double none = check_lines(jobs_in("jobs", JOBS_ALIKE, 100), "--brief", home, runs).seconds;
    for (size_t i = 0; i < 3; i++) {
        FILE *file = file_in(home, "rules/benchmark.lua");
        for (size_t j = 0; j < SIZES[i]; j++)
            fprintf(file,
                    "demand \"benchmark.rule_%zu\" { title = \"Layers, again\", stage = \"permit\","
                    " fact = \"existing.layers\", meets = \"layers.most\", mend = \"Fewer.\" }\n",
                    j);
        fclose(file);
        seconds[i] = check_lines(jobs_in("jobs", JOBS_ALIKE, 100), "--brief", home, runs).seconds
                     - none;
    }
    growth_row("more rules", SIZES, seconds, 3);
}

/* So many more places in the home: one check in one of the others. */
static void tell_home_growth(void)
{
    static const size_t SIZES[] = {10, 100, 1000};
    double seconds[3];
    const char *home = home_copied();
    for (size_t i = 0; i < 3; i++) {
        for (size_t j = i == 0 ? 0 : SIZES[i - 1]; j < SIZES[i]; j++) {
            char name[64];
            snprintf(name, sizeof(name), "jurisdictions/us-zz-%zu.lua", j);
            FILE *file = file_in(home, name);
            fprintf(
                file,
                "jurisdiction \"us-zz-%zu\" { title = \"Place %zu\", invented = true, code = \"Its code\", follows = \"us-ca\", from = \"2020-01-01\" }\n",
                j, j);
            fclose(file);
        }
        seconds[i] = check_lines(jobs_in("jobs", JOBS_ALIKE, 1), "--brief", home, runs).seconds;
    }
    growth_row("more places at home", SIZES, seconds, 3);
}

/* A batch whose jobs are of so many places, each of which is loaded once. */
static void tell_place_growth(void)
{
    static const size_t SIZES[] = {1, 4, 8};
    double seconds[3];
    for (size_t i = 0; i < 3; i++)
        seconds[i] =
            check_lines(jobs_in("jobs", JOBS_PLACES, SIZES[i]), "--brief", source, runs).seconds;
    growth_row("places in a batch", SIZES, seconds, 3);
}

static void tell_memory(void)
{
    static const size_t SIZES[] = {1000, 4000, 16000};
    printf("%-22s", "memory, alike");
    for (size_t i = 0; i < 3; i++)
        printf(
            " %6zu: %8.1f MB", SIZES[i],
            (double)check_lines(jobs_in("jobs", JOBS_ALIKE, SIZES[i]), "--brief", source, 1).peak_kb
                / 1024);
    printf("\n");
}

/* By the clock on the wall: of no meaning on a machine that has other work, or one core. */
static void tell_workers(void)
{
    const char *path = jobs_in("jobs", JOBS_ALIKE, 4000);
    double wall[2];
    for (int i = 0; i < 2; i++) {
        const char *argv[] = {program,   "check",  "--home",           source,
                              "--lines", "--jobs", i == 0 ? "1" : "2", path,
                              NULL};
        wall[i] = cost_of_program(argv, NULL, runs).wall;
    }
    printf("%-22s %9.2f times as fast as one\n", "two workers", wall[0] / wall[1]);
}

static int print_jobs(const char *kind, const char *count)
{
    jobs_write(stdout, source, strcmp(kind, "alike") == 0 ? JOBS_ALIKE : JOBS_VARIED,
               strtoul(count, NULL, 10));
    return 0;
}

/* For what is measured beside this: plain figures, to be read by a script (beside.sh). */
static int print_cost(int argc, char **argv)
{
    const int times = atoi(argv[2]);
    if (argc == 4 && strcmp(argv[1], "--parse") == 0) {
        printf("%.9f\n", cost_of_parse(argv[3], times));
        return 0;
    }
    const struct cost cost = cost_of_program((const char *const *)&argv[4], argv[3], times);
    printf("%.9f %.1f\n", cost.seconds, (double)cost.peak_kb / 1024);
    return cost.status;
}

int main(int argc, char **argv)
{
    if ((argc == 4 && strcmp(argv[1], "--parse") == 0)
        || (argc > 4 && strcmp(argv[1], "--cost") == 0))
        return print_cost(argc, argv);
    if (argc == 5 && strcmp(argv[1], "--jobs") == 0) {
        source = argv[4];
        return print_jobs(argv[2], argv[3]);
    }
    if (argc < 3 || mkdtemp(folder) == NULL) {
        fprintf(stderr, "usage: benchmark EAVEMARK SOURCE_DIR [RUNS]\n");
        return 2;
    }
    program = argv[1];
    source = argv[2];
    runs = argc > 3 ? atoi(argv[3]) : runs;
    printf("1,000 jobs. Alike: one house, in each job a tenth of its facts measured otherwise.\n"
           "Varied: places, days, houses, stages; up to three fifths of the facts missing.\n");
    tell_ratio("cJSON_Parse, alike", JOBS_ALIKE, 1000);
    tell_ratio("cJSON_Parse, varied", JOBS_VARIED, 1000);
    tell_cold();
    tell_job_growth("planes", JOBS_PLANES);
    tell_job_growth("edges", JOBS_EDGES);
    tell_rule_growth();
    tell_home_growth();
    tell_place_growth();
    tell_workers();
    tell_memory();
    char command[256];
    snprintf(command, sizeof(command), "rm -rf '%s'", folder);
    return system(command) == 0 ? 0 : 2;
}
