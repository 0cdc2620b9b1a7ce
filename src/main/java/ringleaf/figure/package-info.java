// SPDX-License-Identifier: Apache-2.0
/**
 * Mechanisms in space: the solids of their bodies, how drives move them, and how near two of them come whose planes are
 * not parallel. May use: verify, draw, solid, part, geom, space.
 */
package ringleaf.figure;
