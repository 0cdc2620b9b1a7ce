// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.Optional;
import ringleaf.machine.Room;
import ringleaf.machine.Size;
import ringleaf.part.Part;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/**
 * How one family of parts is made: what a designer needs to know of process and stock, in plain numbers.
 *
 * @param process name of the process in the catalogue
 * @param stock name of the stock in the catalogue, or a plain description
 * @param sheet whether the process cuts through sheet, so that a part has one height and no blind bores
 * @param thickness of the sheet, mm; for built-up processes the thickness asked for
 * @param leastWeb least material between two cuts, mm
 * @param edgeDistanceFactor least distance from a hole's centre to an edge, as a multiple of its diameter
 * @param runningClearance added to the diameter of a bore in which a pin turns, mm
 * @param slotClearance added to the width of a slot in which a pin slides, mm
 * @param repeatability how far a feature may lie from its place, mm
 * @param burr flatness and burr that a piece adds to a stack, mm
 * @param density g/cm³
 * @param stiffness Young's modulus, MPa
 * @param elasticStrain strain at the end of elastic behaviour
 * @param friction coefficient of sliding against the usual partner, ±50 %
 * @param slopeLimit greatest slope at which leaves of it still lie on one another, rad
 */
public record Material(
        String process,
        String stock,
        boolean sheet,
        double thickness,
        double leastWeb,
        double edgeDistanceFactor,
        double runningClearance,
        double slotClearance,
        double repeatability,
        double burr,
        double density,
        double stiffness,
        double elasticStrain,
        double friction,
        double slopeLimit) {
    /** Bores of a mechanism that turn; a choice. */
    private static final int BORES = 2;

    /** A process and a stock of the catalogue, in a thickness, mm. */
    public static Material of(MakingProcess process, Stock stock, double thickness) {
        Stock sized = stock.ofThickness(thickness);
        return new Material(
                process.name(),
                stock.name(),
                !process.makesLayers(),
                thickness,
                process.web(thickness),
                process.edgeDistance(),
                running(process.runningClearance(), process.repeatability()).mm(),
                process.slotClearance(),
                process.repeatability(),
                stock.flatness(),
                stock.density(),
                stock.stiffness(),
                stock.yieldStrain(),
                stock.friction(),
                sized.slopeLimit());
    }

    /**
     * Room of a bore in which an axle of drawn wire turns, on the diameter: what the process is listed with, or more where
     * it is coarser.
     */
    private static Room running(double listed, double repeatability) {
        return Room.of("running", Optional.empty(), listed, BORES, repeatability, SizesOff.WIRE);
    }

    /** The same as it is drawn. */
    public Room running(double drawn) {
        return running(drawn, repeatability).of(drawn);
    }

    /** A width between two edges of one part, of so many copies: off by no more than what the process repeats to. */
    public Size width(String name, String what, int copies) {
        return new Size(name, what, copies, repeatability, process);
    }

    public Part.Source source() {
        return new Part.Source(process, stock);
    }

    /** Least material from the rim of a hole of this diameter to the edge of the part, mm. */
    public double holeEdge(double diameter) {
        return Math.max(leastWeb, (edgeDistanceFactor - 0.5) * diameter);
    }
}
