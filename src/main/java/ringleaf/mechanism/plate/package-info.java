// SPDX-License-Identifier: Apache-2.0
/**
 * The kind {@code plate}: one or two plates with seats for bought things. The plates lie in the mechanism's plane, the
 * front one's back at z = 0; things stand behind them, or before them. May use: what every kind may.
 */
package ringleaf.mechanism.plate;
