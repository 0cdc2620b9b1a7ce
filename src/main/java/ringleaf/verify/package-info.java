// SPDX-License-Identifier: Apache-2.0
/**
 * The second opinion: judges an assembly through its motion by what the assembly itself requires, without knowing
 * what kind of mechanism it is or how it was computed. Distances are exact on lines and arcs; coverage and the depth
 * of overlaps are judged by polygon overlay on one-sided flattenings with a stated tolerance. May use: geom, curve,
 * part.
 */
package ringleaf.verify;
