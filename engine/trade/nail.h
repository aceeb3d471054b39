/* nail.h - how hard a nail holds a roof panel against suction.
 *
 * Inches, pounds, psf. gravity is the specific gravity of the wood, oven dry.
 * The formulas are those of the National Design Specification for wood (NDS
 * 2012 equation 11.2-3; 2015 and 2018 chapter 12): reference values before
 * adjustment. Status of the constants: memory; that for smooth nails
 * reproduces the 66 lb a federal coastal manual gives for an 8d common nail.
 * NAN when an argument is not positive and finite, or gravity is over 1.
 */
#ifndef EAVEMARK_TRADE_NAIL_H
#define EAVEMARK_TRADE_NAIL_H

#include <stdbool.h>

/* Withdrawal from side grain, lb per inch of shank in the framing.
 * Smooth carbon steel: 1380 G^2.5 D (NDS 12.2-3). */
double trade_withdrawal_smooth(double gravity, double shank_in);

/* Smooth stainless steel: 465 G^1.5 D (NDS 2018 12.2). */
double trade_withdrawal_stainless(double gravity, double shank_in);

/* Roof sheathing ring shank nails of ASTM F1667: 1800 G^2 D, per inch of
 * ringed shank in the framing (NDS 2018 12.2.3.2). */
double trade_withdrawal_ring(double gravity, double shank_in);

/* Force that draws a head through a panel of that gravity, lb: 690 pi D_H G^2
 * t, and from t = 2.5 D_H on 1725 pi D_H^2 G^2 (NDS 2018 12.2.5). */
double trade_pull_through_lb(double panel_gravity, double head_in, double thickness_in);

struct nail {
    double length_in, shank_in, head_in;
    double ring_in; /* length of ringed shank, near the point; 0: smooth */
};

struct nailing {
    double framing_gravity, panel_gravity;
    double panel_in;       /* thickness of the panel under the head */
    double duration;       /* load duration factor, 1.6 for wind */
    double wet_withdrawal; /* wet service factors; 1 when dry */
    double wet_pull_through;
};

struct nail_capacity {
    double penetration_in; /* of the shank that holds: ringed only, if it has rings */
    double withdrawal_lb, pull_through_lb; /* adjusted */
    double lb;                             /* the lesser: what the nail may carry */
    bool head_governs;
};

/* Returns 0, or -1 for a nail or nailing that cannot be (a nail that does not
 * reach through the panel, say), with a text in *why (static, never NULL
 * then). */
int trade_nail_capacity(struct nail_capacity *out, const struct nail *nail,
                        const struct nailing *nailing, const char **why);

/* Spacing along a support at which nails of that capacity hold a suction of
 * pressure_psf (its size, more than 0) on panels over supports that far
 * apart: capacity over load per length of support. */
double trade_nail_spacing_in(double capacity_lb, double support_spacing_in, double pressure_psf);

#endif
