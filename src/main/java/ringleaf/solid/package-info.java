// SPDX-License-Identifier: Apache-2.0
/**
 * Solids bounded by triangles, and how near two of them come: what is wrong with a mesh, the distance of two solids at
 * one pose, and the least distance over all settings of the drives between them, proved. Knows nothing of parts. May
 * use: space, geom.
 */
package ringleaf.solid;
