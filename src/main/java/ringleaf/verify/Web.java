// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import ringleaf.geom.Point;

/** A thin place: its width in mm, where, and between what. */
record Web(double width, Point at, String what) {}
