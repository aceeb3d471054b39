/* wind.h - design wind speeds and the pressure they carry.
 *
 * Speeds in mph, heights in feet, pressures in psf. Pure functions; NAN when
 * an argument is out of range. The constants of an edition and exposure come
 * in as arguments: they are figures of the place.
 */
#ifndef EAVEMARK_TRADE_WIND_H
#define EAVEMARK_TRADE_WIND_H

/* Nominal (Vasd) from ultimate (Vult) design speed, mph: Vult x sqrt(0.6),
 * and back. Source: IBC 1609.3.1 equation 16-33 and IRC R301.2.1.3. NAN when
 * negative or not finite. */
double trade_vult_to_vasd(double vult_mph);
double trade_vasd_to_vult(double vasd_mph);

/* How the wind grows with height over one kind of ground. */
struct wind_profile {
    double factor;   /* 2.01 in ASCE 7-10 and 7-16 */
    double alpha;    /* exponent: B 7, C 9.5, D 11.5 there */
    double zg_ft;    /* height of the gradient wind: 1200, 900, 700 there */
    double least_ft; /* lower roofs are taken as this high: 15 */
    double floor;    /* the coefficient is never less; 0 for no floor. For
                           cladding ASCE 7-10 holds exposure B at 0.70, 7-16 does not */
};

/* Velocity pressure exposure coefficient Kz = factor x (z / zg)^(2 / alpha).
 * Source: ASCE 7-16 Table 26.10-1 note; status memory. NAN above zg. */
double trade_wind_kz(double height_ft, const struct wind_profile *profile);

/* Ground elevation factor Ke = exp(-0.0000362 z), z in feet above sea level
 * (below it: negative). Source: ASCE 7-16 section 26.9; status memory. It may
 * always be taken as 1. NAN outside -1,500 to 30,000 ft. */
double trade_wind_ke(double elevation_ft);

struct wind_site {
    double vult_mph;
    double kz;  /* by height and exposure */
    double kzt; /* 1 unless on a hill, ridge or escarpment */
    double kd;  /* directionality */
    double ke;  /* 1 in editions that have none */
};

/* Velocity pressure q = 0.00256 Kz Kzt Kd Ke V^2, psf. The constant is half
 * the density of air in these units. Source: ASCE 7-10 equation 30.3-1 and
 * 7-16 equation 26.10-1. */
double trade_wind_q_psf(const struct wind_site *site);

#endif
