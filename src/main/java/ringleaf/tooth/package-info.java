// SPDX-License-Identifier: Apache-2.0
/**
 * Involute teeth, shared by every kind that meshes: the basic rack, the tooth it cuts, its outline and the pair.
 *
 * <p>Millimetres and radians; angles counter-clockwise positive. A tooth space is described in its own frame, with the
 * gear's axis in the origin and the middle of the space on +x; outlines put tooth 0 on +x. May use: geom, curve.
 */
package ringleaf.tooth;
