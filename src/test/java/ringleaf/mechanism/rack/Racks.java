// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.List;
import ringleaf.OneMechanism;
import ringleaf.mechanism.Kind;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.spec.text.Problems;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** Racks from the text of a spec, for tests. */
final class Racks {
    private Racks() {}

    /** One mechanism of the kind whose fields are given, one a line; what is refused goes to the problems. */
    static Kind.Planned planned(Problems problems, String fabrication, String... lines) {
        return OneMechanism.planned(problems, fabrication, RackAndPinion.NAME, lines);
    }

    static Design design(String... lines) {
        return planned(new Problems(), "", lines).design(61);
    }

    static double value(Design design, String name) {
        for (Dimension dimension : design.dimensions()) {
            if (dimension.name().equals(name)) {
                return dimension.value();
            }
        }
        throw new AssertionError("no dimension " + name);
    }

    static List<Finding> judged(Design design) {
        return Judge.judge(design.assembly(), Options.DEFAULT).findings();
    }
}
