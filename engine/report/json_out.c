#include "report/json_out.h"

#include "base/format.h"
#include "base/number.h"
#include "base/utf8.h"

#include <float.h>
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct json_out json_out_to(struct text *text, bool pretty)
{
    return (struct json_out){.text = text, .pretty = pretty};
}

static void add_line(struct json_out *out)
{
    text_add_n(out->text, "\n", 1);
    for (int i = 0; i < out->depth; i++)
        text_add_n(out->text, "  ", 2);
}

static char *room_on_line(struct json_out *out, const char *key, size_t key_length, size_t length)
{
    const size_t before = (out->follows ? 1 : 0) + (key == NULL ? 0 : key_length + 3);
    char *at = text_room(out->text, before + length);
    if (at == NULL)
        return NULL;
    if (out->follows)
        *at++ = ',';
    out->follows = true;
    if (key == NULL)
        return at;
    *at++ = '"';
    memcpy(at, key, key_length);
    memcpy(at + key_length, "\":", 2);
    return at + key_length + 2;
}

static void begin_pretty(struct json_out *out, const char *key)
{
    if (out->follows)
        text_add_n(out->text, ", ", key == NULL ? 2 : 1);
    if (key == NULL)
        return;
    add_line(out);
    text_add_n(out->text, "\"", 1);
    text_add(out->text, key);
    text_add_n(out->text, "\": ", 3);
}

char *json_out_room(struct json_out *out, const char *key, size_t key_length, size_t length)
{
    if (!out->pretty)
        return room_on_line(out, key, key_length, length);
    begin_pretty(out, key);
    out->follows = true;
    return text_room(out->text, length);
}

static void add_value(struct json_out *out, const char *key, const char *json, size_t length)
{
    char *at = json_out_begin(out, key, length);
    if (at != NULL)
        memcpy(at, json, length);
}

void json_out_close(struct json_out *out, char bracket)
{
    out->depth--;
    if (out->pretty && bracket == '}')
        add_line(out);
    char *at = text_room(out->text, 1);
    if (at != NULL)
        *at = bracket;
    out->follows = true;
}

static unsigned long code_point(const unsigned char *s, size_t length)
{
    static const unsigned char lead_mask[5] = {0, 0x7F, 0x1F, 0x0F, 0x07};
    unsigned long code = s[0] & lead_mask[length];
    for (size_t i = 1; i < length; i++)
        code = code << 6 | (s[i] & 0x3F);
    return code;
}

/* Past U+FFFF as two halves (RFC 8259 section 7). */
static void add_code(struct text *out, unsigned long code)
{
    if (code > 0xFFFF)
        text_addf(out, "\\u%04lx\\u%04lx", 0xD800 + ((code - 0x10000) >> 10),
                  0xDC00 + ((code - 0x10000) & 0x3FF));
    else
        text_addf(out, "\\u%04lx", code);
}

/* One character that does not stand for itself. Everything but plain ASCII is escaped:
 * no mark in a job's text can then steer the terminal that the report is read on.
 * Returns its bytes. */
static size_t add_escaped(struct text *out, const unsigned char *s, size_t left)
{
    static const char SHORT[] = "\"\"\\\\\bb\ff\nn\rr\tt";
    for (size_t i = 0; i + 1 < sizeof(SHORT); i += 2) {
        if ((char)s[0] == SHORT[i]) {
            const char escape[2] = {'\\', SHORT[i + 1]};
            text_add_n(out, escape, 2);
            return 1;
        }
    }
    const size_t length = utf8_length(s, left);
    add_code(out, length == 0 ? 0xFFFD : code_point(s, length));
    return length == 0 ? 1 : length;
}

static bool is_plain(unsigned char c)
{
    return c >= ' ' && c < 0x7F && c != '"' && c != '\\';
}

/* Has one of eight bytes its highest bit set, or is it below ' ' or one of three? Bit 1 turned,
 * the quote is where ' ' is, and what was below that is so still. */
static bool some_not_plain(uint64_t eight)
{
    const uint64_t ones = UINT64_C(0x0101010101010101), highest = ones * 0x80;
    const uint64_t quote = (eight ^ (ones * 2)) - ones * ('!'),
                   slash = (eight ^ (ones * '\\')) - ones;
    return ((eight | (eight + ones) | quote | slash) & highest) != 0;
}

static size_t plain_length(const unsigned char *s, size_t left)
{
    size_t plain = 0;
    for (uint64_t eight; plain + sizeof(eight) <= left; plain += sizeof(eight)) {
        memcpy(&eight, s + plain, sizeof(eight));
        if (some_not_plain(eight))
            break;
    }
    while (plain < left && is_plain(s[plain]))
        plain++;
    return plain;
}

/* Most texts are plain; of a longer one the end is looked at once more, by eight bytes. */
static bool is_all_plain(const unsigned char *s, size_t length)
{
    uint64_t eight = UINT64_C(0x0101010101010101) * ' ';
    if (length < sizeof(eight)) {
        for (size_t i = 0; i < length; i++)
            eight = eight << 8 | s[i];
        return !some_not_plain(eight);
    }
    for (size_t at = 0; at + sizeof(eight) < length; at += sizeof(eight)) {
        memcpy(&eight, s + at, sizeof(eight));
        if (some_not_plain(eight))
            return false;
    }
    memcpy(&eight, s + length - sizeof(eight), sizeof(eight));
    return !some_not_plain(eight);
}

/* Quotes included. */
static void add_escaped_text(struct text *out, const unsigned char *s, size_t left)
{
    text_add_n(out, "\"", 1);
    while (left > 0) {
        const size_t plain = plain_length(s, left);
        text_add_n(out, (const char *)s, plain);
        s += plain, left -= plain;
        if (left == 0)
            break;
        const size_t length = add_escaped(out, s, left);
        s += length, left -= length;
    }
    text_add_n(out, "\"", 1);
}

void json_out_quoted(struct json_out *out, const char *key, size_t key_length, const char *text)
{
    const size_t length = text == NULL ? 0 : strlen(text);
    if (text == NULL) {
        char *at = json_out_room(out, key, key_length, 4);
        if (at != NULL)
            memcpy(at, "null", 4);
    } else if (is_all_plain((const unsigned char *)text, length)) {
        char *at = json_out_room(out, key, key_length, length + 2);
        if (at == NULL)
            return;
        *at = '"';
        memcpy(at + 1, text, length);
        at[length + 1] = '"';
    } else {
        json_out_room(out, key, key_length, 0);
        add_escaped_text(out->text, (const unsigned char *)text, length);
    }
}

void json_out_raw(struct json_out *out, const char *json, size_t length)
{
    text_add_n(out->text, json, length);
    out->follows = true;
}

/* The string, number or word that begins there, as the value of the key. */
static const char *copy_value(struct json_out *out, const char *key, const char *at,
                              const char *end)
{
    const char *from = at++;
    if (*from == '"') {
        while (at < end && *at != '"')
            at += *at == '\\' ? 2 : 1;
        at++;
    } else {
        while (at < end && *at != ',' && *at != '}' && *at != ']')
            at++;
    }
    add_value(out, key, from, (size_t)(at - from));
    return at;
}

/* "key": the program's own, without escapes. Where the value begins. */
static const char *take_key(const char *at, char key[80])
{
    const size_t length = strcspn(at + 1, "\"");
    snprintf(key, 80, "%.*s", (int)length, at + 1);
    return at + length + 3;
}

/* Laid out anew, from what this file wrote. */
static void lay_out(struct json_out *out, const char *json, size_t length)
{
    char key[80], within[16] = ""; /* brackets that are open: reports are a few deep */
    const char *at = json, *const end = json + length;
    const int depth = out->depth;
    while (at < end) {
        const size_t level = (size_t)(out->depth - depth);
        const bool named = level > 0 && within[level - 1] == '{' && *at == '"';
        if (*at == ',') {
            at++;
            continue;
        }
        if (*at == '}' || *at == ']') {
            json_out_close(out, *at++);
            continue;
        }
        if (named)
            at = take_key(at, key);
        if (*at == '{' || *at == '[') {
            within[level] = *at;
            json_out_open(out, named ? key : NULL, *at++);
        } else {
            at = copy_value(out, named ? key : NULL, at, end);
        }
    }
}

void json_out_line(struct json_out *out, const char *json, size_t length)
{
    if (out->pretty) {
        lay_out(out, json, length);
        return;
    }
    add_value(out, NULL, json, length);
}

void json_out_texts(struct json_out *out, const char *key, const char *const *texts, size_t count)
{
    json_out_open(out, key, '[');
    for (size_t i = 0; i < count; i++)
        json_out_text(out, NULL, texts[i]);
    json_out_close(out, ']');
}

/* A number of thousandths, as most are. Its digits are then fewer than 15, and read back as it:
 * they are what write_double would find. */
static bool write_thousandths(double number, char out[40])
{
    const double all = fabs(number) * 1000;
    if (fabs(number) >= 1e9 || all != floor(all) || all / 1000 != fabs(number))
        return false;
    const int whole = (int)fabs(number), parts = (int)((uint64_t)all % 1000);
    const char *sign = number < 0 ? "-" : "";
    if (parts % 100 == 0)
        format_to(out, 40, "%s%d.%d", sign, whole, parts / 100);
    else if (parts % 10 == 0)
        format_to(out, 40, "%s%d.%d%d", sign, whole, parts / 100, parts / 10 % 10);
    else
        format_to(out, 40, "%s%d.%d%d%d", sign, whole, parts / 100, parts / 10 % 10, parts % 10);
    return true;
}

/* 15 digits where they read back as the same number, to the last bit or so; else 17. */
static void write_double(double number, char out[40])
{
    snprintf(out, 40, "%1.15g", number);
    const double read = strtod(out, NULL);
    if (fabs(read - number) > fmax(fabs(read), fabs(number)) * DBL_EPSILON)
        snprintf(out, 40, "%1.17g", number);
}

void json_out_number(struct json_out *out, const char *key, double number)
{
    char written[40];
    if (!isfinite(number))
        format_to(written, sizeof(written), "null");
    else if (fabs(number) < 1e9 && number == (double)(int)number)
        format_to(written, sizeof(written), "%d", (int)number);
    else if (!write_thousandths(number, written))
        write_double(number, written);
    add_value(out, key, written, strlen(written));
}

void json_out_count(struct json_out *out, const char *key, size_t count)
{
    json_out_number(out, key, (double)count);
}

void json_out_bool(struct json_out *out, const char *key, bool yes)
{
    add_value(out, key, yes ? "true" : "false", yes ? 4 : 5);
}

void json_out_null(struct json_out *out, const char *key)
{
    json_out_text(out, key, NULL);
}

void json_out_value(struct json_out *out, const char *key, const struct value *value)
{
    switch (value->kind) {
    case VALUE_NONE:
        json_out_null(out, key);
        return;
    case VALUE_NUMBER:
        json_out_number(out, key, number_rounded(value->number, value->unit));
        return;
    case VALUE_YES_NO:
        json_out_bool(out, key, value->yes);
        return;
    case VALUE_TEXT:
        json_out_text(out, key, value->text);
        return;
    case VALUE_SET:
        json_out_texts(out, key, value->set, value->set_count);
        return;
    }
}
