// SPDX-License-Identifier: Apache-2.0
/**
 * What matters of a design that works: how far each size may drift before something gives way, and the share of random
 * builds in which everything holds. Knows no kind of mechanism, only what it may be off by. May use: mechanism, part,
 * geom, Commons Math.
 */
package ringleaf.tolerance;
