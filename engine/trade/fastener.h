/* fastener.h - how far a fastener reaches. */
#ifndef EAVEMARK_TRADE_FASTENER_H
#define EAVEMARK_TRADE_FASTENER_H

/* Inches of a nail left for the deck after the layers it passes through;
 * negative when it does not reach the deck. NAN when an argument is negative
 * or not finite. */
double trade_nail_penetration_in(double length_in, double through_in);

#endif
