// SPDX-License-Identifier: Apache-2.0
/**
 * The formats that {@code --formats} names, each a class that says its name, what it writes, where, from what and with
 * which options. {@link ringleaf.draw.format.Formats} lists them; options, help, the clean-up of an earlier run's files
 * and the table in src/doc/output.md follow from that list. May use: the writers of draw, part, geom.
 */
package ringleaf.draw.format;
