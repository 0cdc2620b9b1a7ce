// SPDX-License-Identifier: Apache-2.0
/**
 * The catalogues: processes, stock, servos, screws, rods, bearings and belts, each value with its source.
 *
 * <p>Ready ones lie in the jar under {@code ringleaf/shared}; a user's own files of the same names are laid over them,
 * entry by entry and value by value. A file is read when something of it is asked for, and not before. May use:
 * spec.text, spec.field.
 */
package ringleaf.spec.shared;
