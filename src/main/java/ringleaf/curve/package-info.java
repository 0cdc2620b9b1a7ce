// SPDX-License-Identifier: Apache-2.0
/**
 * Operations on lines and true arcs: fitting arcs to a smooth curve, ready shapes, union, difference, intersection,
 * offset, rounding of corners, containment, distances, and flattening for a judge.
 *
 * <p>What comes out lies on the carriers of what went in: arcs are split and joined, never refitted and never turned
 * into chords. Millimetres and radians, y up, counter-clockwise positive. {@link
 * ringleaf.curve.Roots} finds the numbers at which something happens. May use: {@code ringleaf.geom}, JTS, Commons Math.
 */
package ringleaf.curve;
