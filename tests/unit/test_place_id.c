/* What may be the id of a place: a path is made of it, and files are written there. */
#include "base/place_id.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

static void ids_stay_below_their_folder(void **state)
{
    (void)state;
    static const char *const NONE[] = {"",     "..",   "../a", "a/../b", "a/..",    "/a",
                                       "a/",   "a//b", "a\\b", "A",      "a b",     "a.b",
                                       "a\nb", "a:b",  "~a",   "a\x7F",  "\xC3\xA4"};
    static const char *const SOME[] = {"a", "us-mn/azle", "model/irc-2021", "9/x_1", "-"};
    for (size_t i = 0; i < sizeof(NONE) / sizeof(NONE[0]); i++)
        if (place_id_is_sound(NONE[i]))
            fail_msg("\"%s\" is taken", NONE[i]);
    for (size_t i = 0; i < sizeof(SOME) / sizeof(SOME[0]); i++)
        if (!place_id_is_sound(SOME[i]))
            fail_msg("\"%s\" is refused", SOME[i]);
}

static void ids_fit_a_path(void **state)
{
    (void)state;
    char id[122] = "";
    memset(id, 'a', 121);
    assert_false(place_id_is_sound(id));
    id[120] = '\0';
    assert_true(place_id_is_sound(id));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(ids_stay_below_their_folder),
        cmocka_unit_test(ids_fit_a_path),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
