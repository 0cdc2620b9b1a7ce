// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import ringleaf.spec.text.Problems;

/**
 * What every reading of a value needs to know.
 *
 * @param units what bare lengths are in
 * @param problems where what is wrong goes
 */
public record Reading(LengthUnit units, Problems problems) {}
