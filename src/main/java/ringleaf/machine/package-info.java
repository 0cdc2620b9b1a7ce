// SPDX-License-Identifier: Apache-2.0
/**
 * A machine as every kind states it: parts known by their roles, and joints. A joint is stated once, as two typed
 * features that meet and one {@link ringleaf.machine.Fit}; from it follow, for all kinds by the same code, the default
 * clearance and where it comes from ({@link ringleaf.machine.Room}), the rows of the table of fits, what a judge asks of
 * the outlines and which pairs may come how near ({@link ringleaf.machine.Joints}), and the two sizes that can be off in
 * the study of yield with the play that is left ({@link ringleaf.machine.Fit#play}).
 *
 * <p>How a kind does it: an enum of its roles; while the spec is read, one {@code Fit} for each sort of joint; once the
 * places are known, features from the fits (the outline is cut from the feature, so hole and joint are never two
 * figures), and a list of joints that name role and feature. What a kind asks beyond that (a reach, a web) it asks
 * itself, beside its joints.
 *
 * <p>May use: part, spec, geom, space.
 */
package ringleaf.machine;
