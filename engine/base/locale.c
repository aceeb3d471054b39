#include "base/locale.h"

locale_t locale_plain(void)
{
    const locale_t plain = newlocale(LC_ALL_MASK, "C", (locale_t)0);
    return plain == (locale_t)0 ? plain : uselocale(plain);
}

void locale_back(locale_t before)
{
    freelocale(uselocale(before));
}
