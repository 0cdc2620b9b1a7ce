// SPDX-License-Identifier: Apache-2.0
/** Charts of figures against each other, as SVG with real text. May use: draw, draw.svg. */
package ringleaf.draw.chart;
