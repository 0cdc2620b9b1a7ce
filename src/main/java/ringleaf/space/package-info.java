// SPDX-License-Identifier: Apache-2.0
/**
 * Where things stand in space: vectors, turns, poses and planes; knows nothing of parts.
 *
 * <p>Millimetres and radians, right-handed: x to the right as seen by the onlooker, y up, z forward, towards whoever
 * looks. A drawing's plane is the x-y plane of its frame. May use: geom only.
 */
package ringleaf.space;
