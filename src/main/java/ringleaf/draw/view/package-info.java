// SPDX-License-Identifier: Apache-2.0
/**
 * Pictures of an assembly for people: plan views at true scale and an exploded one. They know no kind of mechanism;
 * what they show is members, motion, leaves and callouts. May use: draw, draw.svg, part, curve, geom.
 */
package ringleaf.draw.view;
