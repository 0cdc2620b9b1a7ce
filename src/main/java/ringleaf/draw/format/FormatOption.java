// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;

/**
 * A choice about one or more formats.
 *
 * @param name on the command line
 * @param label that stands for the value in help
 * @param help what it does
 * @param what its value is, for messages, e.g. {@code version of DXF}
 * @param values that it takes; empty where any text is read further
 */
public record FormatOption(String name, String label, String help, String what, List<String> values) {}
