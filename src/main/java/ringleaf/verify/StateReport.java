// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

/**
 * What was measured in one judged state. Figures that nothing asked for are not numbers.
 *
 * @param state index
 * @param label name of the state for people
 * @param clearance least distance between members that are to stay apart, mm; negative: how deep they overlap
 * @param clearanceAt names of the two members
 * @param leakArea what no leaf covers of the clear area less the opening, mm²; 0 below 1e-6
 * @param inscribed diameter of the greatest circle about the opening's centre that meets no leaf, mm
 * @param neighbourOverlap area that a leaf shares with the next one in laying order, mm², to one tolerance on the
 *     length of its edge
 * @param leafLayers most leaves over one point
 */
public record StateReport(
        int state,
        String label,
        double clearance,
        String clearanceAt,
        double leakArea,
        double inscribed,
        double neighbourOverlap,
        int leafLayers) {}
