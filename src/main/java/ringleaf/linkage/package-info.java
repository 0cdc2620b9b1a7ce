// SPDX-License-Identifier: Apache-2.0
/**
 * Rods, cranks and guides: where they stand and what bears them, in closed form. Knows nothing of parts. May use nothing
 * of the rest.
 */
package ringleaf.linkage;
