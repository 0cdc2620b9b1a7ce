// SPDX-License-Identifier: Apache-2.0
/**
 * The kinds {@code pulley} and {@code belt-drive}: timing pulleys, and belts that run over several of them. May use:
 * mechanism and what it may use, groove.
 */
package ringleaf.mechanism.belt;
