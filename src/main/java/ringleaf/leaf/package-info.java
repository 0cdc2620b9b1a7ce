// SPDX-License-Identifier: Apache-2.0
/**
 * Blades of an aperture as mathematics: their outline and motion, what they cover by folding, how play takes from it,
 * and the search for the least blades that hold every limit.
 */
package ringleaf.leaf;
