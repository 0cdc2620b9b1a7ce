// SPDX-License-Identifier: Apache-2.0
/**
 * Grooves of timing pulleys: the belt's tooth as an outline, what it sweeps while its pitch line rolls on the pitch
 * circle, the plain trapezoid as the other way, a pulley's toothed outline, and the second opinion that rolls the
 * tooth through the finished groove. May use: geom, curve.
 */
package ringleaf.groove;
