#include "base/date.h"

#include <stdio.h>

/* Of the Gregorian calendar, also for years before it was in use somewhere. */
static int days_in(int year, int month)
{
    static const int days[13] = {0, 31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const int leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    return days[month] + (month == 2 && leap);
}

/* Dates are kept as 20260331: they compare as numbers do, and print without a table. */
static long date_of(int year, int month, int day)
{
    return (long)year * 10000 + (long)month * 100 + day;
}

long date_parse(const char *text)
{
    static const char SHAPE[] = "0000-00-00";
    int parts[3] = {0}, part = 0;
    /* The end of a shorter text is no digit and no dash. */
    for (int i = 0; i < 10; i++) {
        if (SHAPE[i] == '-' ? text[i] != '-' : text[i] < '0' || text[i] > '9')
            return 0;
        if (SHAPE[i] == '-')
            part++;
        else
            parts[part] = parts[part] * 10 + (text[i] - '0');
    }
    if (text[10] != '\0')
        return 0;
    const int year = parts[0], month = parts[1], day = parts[2];
    /* What lies outside is taken for a slip of the keys. */
    if (year < 1900 || year > 2199 || month < 1 || month > 12 || day < 1
        || day > days_in(year, month))
        return 0;
    return date_of(year, month, day);
}

long date_after(long date)
{
    const int year = (int)(date / 10000), month = (int)(date / 100 % 100);
    if (date % 100 < days_in(year, month))
        return date + 1;
    return month < 12 ? date_of(year, month + 1, 1) : date_of(year + 1, 1, 1);
}

long date_before(long date)
{
    const int year = (int)(date / 10000), month = (int)(date / 100 % 100);
    if (date % 100 > 1)
        return date - 1;
    return month > 1 ? date_of(year, month - 1, days_in(year, month - 1))
                     : date_of(year - 1, 12, 31);
}

/* The remainder keeps the text within its bytes, whatever a rule reckoned. */
void date_write(long date, char out[16])
{
    snprintf(out, 16, "%04ld-%02ld-%02ld", date / 10000 % 10000, date / 100 % 100, date % 100);
}
