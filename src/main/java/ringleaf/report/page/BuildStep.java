package ringleaf.report.page;

import java.util.List;

/**
 * A step of the build order as the page shows it: a sentence, and a picture of what is placed so far with what goes on
 * now standing out.
 *
 * @param text what to do
 * @param added members that go on in this step, as indices into the assembly's members
 * @param notes further lines, e.g. what the check for room found; usually empty
 */
public record BuildStep(String text, List<Integer> added, List<String> notes) {
    public BuildStep {
        added = List.copyOf(added);
        notes = List.copyOf(notes);
    }
}
