// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.dxf;

/** The versions of DXF that are written. */
public enum DxfVersion {
    /** AC1015: declares its units and knows closed polylines with arcs as one entity. The usual one. */
    AC1015,
    /** AC1009, for old readers: polylines as a chain of entities. */
    R12
}
