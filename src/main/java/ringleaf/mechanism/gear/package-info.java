// SPDX-License-Identifier: Apache-2.0
/**
 * The kinds {@code gear}, {@code gear-pair} and {@code gear-train}: spur gears with involute teeth, alone, meshing, and
 * in several stages on shared shafts. A pair is a train of one stage. May use: mechanism, mechanism.body, tooth, part,
 * spec, curve, geom.
 */
package ringleaf.mechanism.gear;
