// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

/** One directed piece of an outline: a straight line or a true arc. */
public sealed interface Segment permits Line, Arc {
    Point start();

    Point end();

    /** Length along the piece, mm, exact to rounding. */
    double length();

    /** The point at the share {@code u} of the length, 0 at the start and 1 at the end. */
    Point pointAt(double u);

    /** Unit tangent in the direction of travel at the share {@code u} of the length. */
    Point tangentAt(double u);

    /** Signed curvature, 1/mm, positive where the piece turns left; 0 for a line. */
    double curvature();

    /** The same piece run the other way. */
    Segment reversed();

    /** The smallest axis-parallel box that holds the piece, exact to rounding. */
    Box box();

    /** The piece moved: turned first, then shifted. */
    Segment placed(Placement placement);

    /** The piece reflected; an arc's sense of turn changes. */
    Segment mirrored(Mirror mirror);

    /** The part between two shares of the length, {@code from < to}; an arc stays on its own circle. */
    Segment part(double from, double to);

    /** The same carrier with its ends moved onto the given points, which must lie on it within rounding. */
    Segment withEnds(Point start, Point end);

    /**
     * This piece's share of the area integral 1/2 &#8747; (x dy - y dx), mm². Summed over a closed contour it gives
     * the signed area by Green's theorem, without flattening.
     */
    double areaTerm();

    /**
     * This piece's share of the first moments of the enclosed area, mm³: (&#8747; x²/2 dy, -&#8747; y²/2 dx), by
     * Green's theorem. Only the sum over a closed contour has a meaning.
     */
    Point momentTerm();
}
