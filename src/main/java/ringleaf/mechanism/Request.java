package ringleaf.mechanism;

import ringleaf.spec.Fabrication;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.text.Problems;

/**
 * What a kind reads its mechanism from.
 *
 * @param name of the mechanism in the spec
 * @param values of its fields
 * @param fabrication how each family of parts is made
 * @param catalogues of screws, servos and the like
 * @param problems where contradictions go
 */
public record Request(
        String name, Values values, Fabrication fabrication, Catalogues catalogues, Problems problems) {}
