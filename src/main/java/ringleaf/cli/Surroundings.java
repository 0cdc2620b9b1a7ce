// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import ringleaf.kinds.Kinds;
import ringleaf.spec.text.Shown;

/**
 * What a run finds around it.
 *
 * @param folder that relative paths are relative to
 * @param errIsTerminal whether somebody watches what goes to standard error
 * @param colour whether colour is welcome there
 * @param kinds that a spec may name
 */
public record Surroundings(Path folder, boolean errIsTerminal, boolean colour, Kinds kinds) {
    /** With every kind that is registered. */
    public Surroundings(Path folder, boolean errIsTerminal, boolean colour) {
        this(folder, errIsTerminal, colour, Kinds.REGISTERED);
    }

    /** The place that a path on the command line means. */
    Path place(String typed, String what) {
        if (typed.isEmpty()) {
            throw Stop.wrong(what + " is empty");
        }
        try {
            return folder.resolve(typed);
        } catch (InvalidPathException e) {
            throw Stop.wrong(what + " is no path: " + Shown.quoted(typed));
        }
    }
}
