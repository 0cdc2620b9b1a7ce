// SPDX-License-Identifier: Apache-2.0
/**
 * The kind {@code slide}: a carriage that runs straight along two rods, pushed by a servo's horn and a link. The
 * mechanism's plane is that of the horn: x along the travel, y up, z along the servo's output; the rods lie beside each
 * other at y = 0. May use: what every kind may, and linkage.
 */
package ringleaf.mechanism.slide;
