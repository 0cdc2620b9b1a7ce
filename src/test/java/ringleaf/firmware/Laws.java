// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import ringleaf.OneMechanism;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.ServoLaw;
import ringleaf.spec.text.Problems;

/** Mechanisms with a servo from the text of a spec, for tests. */
final class Laws {
    private Laws() {}

    static Kind.Planned planned(String kind, String... lines) {
        return OneMechanism.planned(new Problems(), "", kind, lines);
    }

    static Kind.Planned shutter(String... more) {
        String[] lines = {"full-opening: 64", "least-opening: 20", "blades: 14", "blade-thickness: 0.15"};
        String[] all = java.util.Arrays.copyOf(lines, lines.length + more.length);
        System.arraycopy(more, 0, all, lines.length, more.length);
        return planned("leaf-aperture", all);
    }

    static ServoLaw law(Kind.Planned planned) {
        return planned.servoLaw().orElseThrow();
    }
}
