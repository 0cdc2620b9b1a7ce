// SPDX-License-Identifier: Apache-2.0
/**
 * The leaf aperture: curved blades between a base plate and a drive ring, each turned about a pivot of its own by a
 * pin in a slot of the ring. May use: geom, curve, part, spec, tooth, mechanism.
 */
package ringleaf.mechanism.aperture;
