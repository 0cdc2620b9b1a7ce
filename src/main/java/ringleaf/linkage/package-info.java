// SPDX-License-Identifier: Apache-2.0
/**
 * Loops of rods, cranks, a universal joint, hinged shells and guides: where they stand and what bears them, by closed
 * forms where there is one and by Newton's method elsewhere. Knows nothing of parts. May use: geom, space, curve.
 */
package ringleaf.linkage;
