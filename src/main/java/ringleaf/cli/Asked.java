package ringleaf.cli;

import java.util.List;
import java.util.Optional;

/**
 * What is asked of a spec on the command line.
 *
 * @param spec file, preset or {@code -} for standard input
 * @param sets each {@code path=value}
 * @param states of the travel
 * @param thorough whether the judge looks at all of them
 * @param shared folder with the user's own catalogues
 */
record Asked(String spec, List<String> sets, int states, boolean thorough, Optional<String> shared) {}
