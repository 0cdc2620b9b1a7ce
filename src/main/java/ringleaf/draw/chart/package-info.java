/** Charts of figures against each other, as SVG with real text. May use: draw, draw.svg. */
package ringleaf.draw.chart;
