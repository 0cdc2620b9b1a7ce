// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

/** Says that a spec, a catalogue or an option is wrong; its message is the whole text for a person. */
public final class SpecRefused extends RuntimeException {
    private final transient Problems problems;

    public SpecRefused(Problems problems) {
        super(problems.text(), null, false, false);
        this.problems = problems;
    }

    public Problems problems() {
        return problems;
    }
}
