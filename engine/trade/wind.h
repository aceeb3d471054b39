/* wind.h - design wind speeds. */
#ifndef EAVEMARK_TRADE_WIND_H
#define EAVEMARK_TRADE_WIND_H

/* Nominal (Vasd) from ultimate (Vult) design speed, mph: Vult x sqrt(0.6).
 * Source: IBC 1609.3.1 equation 16-33 and IRC R301.2.1.3. NAN when negative
 * or not finite. */
double trade_vult_to_vasd(double vult_mph);

#endif
