// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import ringleaf.spec.field.Field;

/** How two parts are to hold or to move in each other. */
public enum FitName {
    RUNNING("running", "turns freely"),
    SLIDING("sliding", "slides along"),
    PRESS("press", "is pressed in and stays"),
    GLUE("glue", "is pushed in by hand and glued"),
    THREAD_CLEARANCE("thread-clearance", "lets a thread through, ISO 273");

    private final String label;
    private final String meaning;

    FitName(String label, String meaning) {
        this.label = label;
        this.meaning = meaning;
    }

    public String label() {
        return label;
    }

    /** The fit of this name, which must be one. */
    public static FitName of(String label) {
        for (FitName fit : values()) {
            if (fit.label.equals(label)) {
                return fit;
            }
        }
        throw new IllegalArgumentException("no fit is called " + label);
    }

    /** A field that chooses among some of them. */
    public static Field<String> field(String name, String help, FitName... among) {
        Field<String> field = Field.choice(name).help(help);
        for (FitName fit : among) {
            field = field.option(fit.label, fit.meaning);
        }
        return field;
    }
}
