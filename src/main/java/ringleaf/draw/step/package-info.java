// SPDX-License-Identifier: Apache-2.0
/**
 * Parts as exact solids in STEP files (ISO 10303-21, application protocol 214): lines become planes and arcs cylinders,
 * never facets; assemblies are placed parts. May use: part, curve, space, geom, the levels of draw.mesh and the plain
 * text of draw.
 */
package ringleaf.draw.step;
