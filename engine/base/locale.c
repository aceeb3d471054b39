#include "base/locale.h"

/* Of this thread only: the host may be running others. uselocale gives what held before, which
 * locale_back puts in again, and with it frees ours. */
locale_t locale_plain(void)
{
    const locale_t plain = newlocale(LC_ALL_MASK, "C", (locale_t)0);
    return plain == (locale_t)0 ? plain : uselocale(plain);
}

void locale_back(locale_t before)
{
    freelocale(uselocale(before));
}
