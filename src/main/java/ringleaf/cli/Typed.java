package ringleaf.cli;

import java.util.List;

/** What was typed for a command that takes a spec: its options and what else stands there. */
interface Typed {
    /** The text at a place among what is no option, from 0, or null when nothing stands there. */
    String positional(int place);

    /** The text after an option, or null when it was not given. */
    String value(String option);

    /** Every text after an option that may stand more than once. */
    List<String> values(String option);

    /** Whether an option was given. */
    boolean has(String option);
}
