// SPDX-License-Identifier: Apache-2.0
/**
 * Looks round a design: every combination of varied fields solved and checked, the undominated ones marked, and the
 * smallest single changes that make a failing spec work. Drives every kind through {@code mechanism.Kind} and knows
 * none. May use: verify, mechanism, part, spec, geom.
 */
package ringleaf.explore;
