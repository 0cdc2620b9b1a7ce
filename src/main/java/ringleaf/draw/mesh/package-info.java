// SPDX-License-Identifier: Apache-2.0
/**
 * Solids of parts: closed meshes of triangles made from the layers, and their files (STL, 3MF). May use: part, curve,
 * solid, geom, and the numbers of draw.
 */
package ringleaf.draw.mesh;
