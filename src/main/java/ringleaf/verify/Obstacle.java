package ringleaf.verify;

import ringleaf.geom.Point;

/**
 * Something in the way of what is put to its place.
 *
 * @param who members
 * @param at where; null where it is no place
 * @param depth by how much they would overlap, mm
 * @param limit what is allowed, mm
 * @param message what is wrong, without an end
 */
record Obstacle(String who, Point at, double depth, double limit, String message) {}
