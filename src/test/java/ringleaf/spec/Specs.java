// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.field.VentFields;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Reads specs of the invented kind in tests. */
final class Specs {
    static final List<KindFields> KINDS = List.of(
            new KindFields("flap-vent", "flaps over a round opening", () -> VentFields.FIELDS),
            new KindFields("slide-vent", "a slide over slots", () -> VentFields.DRIVE_FIELDS));
    static final String SMALLEST = """
            mechanisms:
              vent:
                kind: flap-vent
                full-opening: 64
                flaps: 14
            """;
    static final String WHOLE = """
            title: Harbour light
            units: mm
            fabrication:
              blade: {process: fibre-laser, stock: brass-0.15}
              plate: {stock: acrylic-3}
            mechanisms:
              vent:
                kind: flap-vent
                full-opening: 2 1/2 in
                flaps: 14
                outer-width: {at-most: 110}
                stops: [32, 22.6]
                drive: {by: pinion, at: 250, torque: 1.8kgcm}
              slide-2:
                kind: slide-vent
                module: 0.5
            """;

    final Problems problems = new Problems();

    Optional<SpecDocument> read(String text, String... options) {
        return read(text, SharedFiles.NONE, options);
    }

    Optional<SpecDocument> read(String text, SharedFiles own, String... options) {
        List<SetOption> set = new ArrayList<>();
        for (String option : options) {
            SetOption.parse(option, problems).ifPresent(set::add);
        }
        SpecReader reader = new SpecReader(KINDS, new Catalogues(own, problems), problems);
        return reader.read(SpecSource.of("harbour-light.yaml", text), set);
    }

    /** All messages of reading a text. */
    static String messages(String text, String... options) {
        Specs specs = new Specs();
        specs.read(text, options);
        return specs.problems.text();
    }
}
