// SPDX-License-Identifier: Apache-2.0
/**
 * Bodies of round parts that several kinds share: bores, hub screws, lightening, marks; with their fields. May use:
 * mechanism's plain values, part, spec, curve, geom.
 */
package ringleaf.mechanism.body;
