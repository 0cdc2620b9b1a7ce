// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import ringleaf.geom.Point;
import ringleaf.part.Saying;

/** A thin place: its width in mm, where, and between what. */
record Web(double width, Point at, Saying what) {}
