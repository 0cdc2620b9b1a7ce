// SPDX-License-Identifier: Apache-2.0
/**
 * A drawing without a format: named layers of closed contours, circles, open paths and lettering, and how a part
 * becomes one. The writers below it read nothing else. May use: part, curve, geom.
 */
package ringleaf.draw;
