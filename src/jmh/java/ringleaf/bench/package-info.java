// SPDX-License-Identifier: Apache-2.0
/** Benchmarks of what takes most of a run's time; may use every package. Not part of the usual build. */
package ringleaf.bench;
