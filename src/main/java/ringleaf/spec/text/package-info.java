// SPDX-License-Identifier: Apache-2.0
/**
 * What stands in a text file and where: the source, a small tree of nodes with their places, and the problems found.
 *
 * <p>Knows YAML (1.2 core, by a library's events) and nothing of mechanisms. May use: java.*, snakeyaml-engine.
 */
package ringleaf.spec.text;
