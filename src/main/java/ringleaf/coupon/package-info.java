// SPDX-License-Identifier: Apache-2.0
/**
 * The coupon: a test piece that measures the user's own machine, its sheet to fill in, and what the readings say, with
 * their uncertainty. May use part, curve, geom, spec and Commons Math; reads and writes texts, never files.
 */
package ringleaf.coupon;
