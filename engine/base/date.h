/* date.h - ISO 8601 calendar dates, YYYY-MM-DD, held as YYYYMMDD. */
#ifndef EAVEMARK_BASE_DATE_H
#define EAVEMARK_BASE_DATE_H

/* The date as one number, so that dates compare with < and ==; 0 when the
 * text is not a real day from 1900-01-01 to 2199-12-31. */
long date_parse(const char *text);

/* The day after a real day, or before it. */
long date_after(long date);
long date_before(long date);

/* Writes YYYY-MM-DD and its terminator into out (at least 11 bytes). */
void date_write(long date, char out[16]);

#endif
