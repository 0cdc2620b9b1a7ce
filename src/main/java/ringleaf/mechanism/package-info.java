// SPDX-License-Identifier: Apache-2.0
/**
 * What every kind of mechanism offers, and the plain values that several kinds are designed with. Each kind is one
 * package below this one and one line in the registry. May use: machine, part, spec, geom, curve, tooth, groove.
 */
package ringleaf.mechanism;
