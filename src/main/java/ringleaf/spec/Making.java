package ringleaf.spec;

import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Place;

/**
 * How the parts of a family are made.
 *
 * @param process that makes them
 * @param stock they are made of
 * @param given whether the user said so; else it is the default
 * @param place of what the user said, for messages; else of the document
 */
public record Making(MakingProcess process, Stock stock, boolean given, Place place) {}
