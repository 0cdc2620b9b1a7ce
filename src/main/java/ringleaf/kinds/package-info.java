// SPDX-License-Identifier: Apache-2.0
/**
 * The registry of kinds of mechanisms, above all of them: one line a kind; and where the mechanisms of a spec stand on one another. May use: mechanism and everything below it.
 */
package ringleaf.kinds;
