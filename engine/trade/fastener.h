/* fastener.h - how far a fastener reaches, how long it must be, how many go in.
 *
 * Lengths in inches. Pure functions; NAN when an argument is negative or not
 * finite.
 */
#ifndef EAVEMARK_TRADE_FASTENER_H
#define EAVEMARK_TRADE_FASTENER_H

#include <stddef.h>

/* Inches of a nail left for the deck after the layers it passes through;
 * negative when it does not reach the deck. */
double trade_nail_penetration_in(double length_in, double through_in);

/* Least length through the layers and into the deck: through + into where the
 * deck is at least `into` thick; else through the layers and the whole deck, and
 * `past` out of it. Source: the form of IRC R905.2.5; past is practice. */
double trade_nail_length_in(double through_in, double deck_in, double into_in, double past_in);

/* The least of the stocked lengths (in any order) that is at least length_in,
 * within half a thousandth; NAN when none is, or when the list holds what is no
 * length. */
double trade_stocked_length_in(double length_in, const double *stocked_in, size_t count);

/* Nails per square of strips, and over so many squares. */
double trade_nails_per_square(double strips_per_square, double nails_per_strip);
double trade_nails(double squares, double strips_per_square, double nails_per_strip);

#endif
