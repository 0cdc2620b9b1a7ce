// SPDX-License-Identifier: Apache-2.0
/**
 * What a mechanism is made of, without knowing which: parts as stacks of outlines, the motion, and what the assembly
 * requires of them. May use: geom, curve.
 */
package ringleaf.part;
