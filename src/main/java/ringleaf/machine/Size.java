// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

/**
 * A size of a joint that can be off.
 *
 * @param name stable, lower case with hyphens
 * @param what it is, in words for people
 * @param copies how many of it there are in one mechanism, each off by itself, at least 1
 * @param within how far it may be off, either way, by what makes it, mm
 * @param source what that comes from
 */
public record Size(String name, String what, int copies, double within, String source) {}
