#include "trade/wind.h"

#include <math.h>

/* Half the density of air at sea level, in psf per mph squared, and how pressure falls
 * with height above the sea (ASCE 7-16 26.10-1 and 26.9). */
static const double PSF_PER_MPH_SQUARED = 0.00256;
static const double KE_PER_FT = 0.0000362;

/* False for NAN too. */
static int not_negative(double x)
{
    return x >= 0 && isfinite(x);
}

static int positive(double x)
{
    return x > 0 && isfinite(x);
}

/* The root of 0.6, the load factor between strength and allowable stress (IRC R301.2.1.3
 * tabulates it). */
double trade_vult_to_vasd(double vult_mph)
{
    return not_negative(vult_mph) ? vult_mph * sqrt(0.6) : NAN;
}

double trade_vasd_to_vult(double vasd_mph)
{
    return not_negative(vasd_mph) ? vasd_mph / sqrt(0.6) : NAN;
}

double trade_wind_kz(double height_ft, const struct wind_profile *profile)
{
    if (!not_negative(height_ft) || !positive(profile->factor) || !positive(profile->alpha)
        || !positive(profile->zg_ft) || !positive(profile->least_ft)
        || !not_negative(profile->floor))
        return NAN;
    /* Below the least height the exposure counts as at it; above the gradient height the
     * power law does not hold. */
    const double z = fmax(height_ft, profile->least_ft);
    if (z > profile->zg_ft)
        return NAN;
    return fmax(profile->factor * pow(z / profile->zg_ft, 2 / profile->alpha), profile->floor);
}

double trade_wind_ke(double elevation_ft)
{
    return elevation_ft >= -1500 && elevation_ft <= 30000 ? exp(-KE_PER_FT * elevation_ft) : NAN;
}

double trade_wind_q_psf(const struct wind_site *site)
{
    if (!not_negative(site->vult_mph) || !positive(site->kz) || !positive(site->kzt)
        || !positive(site->kd) || !positive(site->ke))
        return NAN;
    return PSF_PER_MPH_SQUARED * site->kz * site->kzt * site->kd * site->ke * site->vult_mph
           * site->vult_mph;
}
