package ringleaf.part;

import java.util.List;

/**
 * One row a state: numbers first, then at most one column of words.
 *
 * @param columns names of the number columns
 * @param rows a number for each column, in display units
 * @param placeColumn name of the column of words, or empty
 * @param places its words, one a row, empty when there is no such column
 */
public record MotionTable(List<String> columns, List<double[]> rows, String placeColumn, List<String> places) {}
