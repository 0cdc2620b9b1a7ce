// SPDX-License-Identifier: Apache-2.0
/**
 * The second opinion: judges an assembly through its motion by what the assembly itself requires, without knowing
 * what kind of mechanism it is or how it was computed. Distances are exact on lines and arcs; coverage and the depth
 * of overlaps are judged by polygon overlay on one-sided flattenings with a stated tolerance. May use: geom, curve,
 * part.
 *
 * <p>Its lines and arcs ({@code Piece}, {@code Shape}, {@code Nearest}, {@code Crossing}) are deliberately its own and
 * share nothing with those of {@code curve} that outlines are made with: one written wrong would otherwise be judged
 * right. A test holds the two against one another on random pairs. Only finding a number between two ends, and the
 * rolling of pairs, are curve's.
 */
package ringleaf.verify;
