// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Dimension;
import ringleaf.part.Dimension.Origin;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;

/** Collects resolved sizes in display units. */
final class Figures {
    private final List<Dimension> all = new ArrayList<>();

    void mm(String name, double value, Origin origin, String how) {
        add(name, value, "mm", origin, how);
    }

    void deg(String name, double angle, Origin origin, String how) {
        add(name, Math.toDegrees(angle), "deg", origin, how);
    }

    void number(String name, double value, Origin origin, String how) {
        add(name, value, "1", origin, how);
    }

    void torque(String name, double value, Origin origin, String how) {
        add(name, value, "Nmm", origin, how);
    }

    void newton(String name, double value, Origin origin, String how) {
        add(name, value, "N", origin, how);
    }

    private void add(String name, double value, String unit, Origin origin, String how) {
        all.add(new Dimension(name, value, unit, origin, origin == Origin.GIVEN ? "" : how));
    }

    /** Given where the user gave it, else from a default. */
    static Origin origin(Values values, Field<?> field) {
        return values.isGiven(field) ? Origin.GIVEN : Origin.DEFAULT;
    }

    /** Given where the user gave it, else solved. */
    static Origin solved(Values values, Field<?> field) {
        return values.isGiven(field) ? Origin.GIVEN : Origin.SOLVED;
    }

    List<Dimension> all() {
        return all;
    }
}
