/* flashing.h - the saddle behind a chimney.
 *
 * Pure functions; NAN when an argument is not above zero or not finite.
 */
#ifndef EAVEMARK_TRADE_FLASHING_H
#define EAVEMARK_TRADE_FLASHING_H

/* Height of a cricket at the chimney's face, in inches: two planes at the
 * roof's own pitch (rise in 12) meet over half the width, so
 * width / 2 x pitch / 12. Equals the rows of IRC Table R1003.20 as recalled:
 * W/2 at 12:12, W/3 at 8:12, W/4 at 6:12, W/6 at 4:12, W/8 at 3:12. */
double trade_cricket_height_in(double width_in, double pitch);

#endif
