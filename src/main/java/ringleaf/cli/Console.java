// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.InputStream;
import java.io.PrintStream;

/**
 * What a command reads from and writes to.
 *
 * @param in standard input
 * @param out results
 * @param err findings and errors
 * @param surroundings where it runs
 */
record Console(InputStream in, PrintStream out, PrintStream err, Surroundings surroundings) {}
