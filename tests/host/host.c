/* A program of somebody else's that takes in the library, as C and as C++: it prints the
 * report of the job that is its second argument, under the home that is its first. */
#include <eavemark.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int main(int count, char *arguments[])
{
    if (count != 3)
        return 9;
    eavemark *handle = eavemark_open(arguments[1]);
    if (handle == NULL)
        return 9;
    struct eavemark_request request;
    memset(&request, 0, sizeof(request));
    request.name = arguments[2];
    eavemark_result *result = eavemark_check(handle, &request);
    char *report = result == NULL ? NULL : eavemark_result_report(result, EAVEMARK_TEXT, 0);
    if (report == NULL)
        return 9;
    fputs(report, stdout);
    free(report);
    const int status = (int)eavemark_result_status(result, false);
    eavemark_result_free(result);
    eavemark_close(handle);
    return status;
}
