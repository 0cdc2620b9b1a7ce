// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Part;

/** Screws, spacers and axles of belt drives come in sizes that are sold, and what they hold follows. */
class DriveFastenersTest {
    private static final String[] FIVE_TO_TWO = {"driver: {teeth: 16}", "driven: {teeth: 40}"};
    private static final List<Double> SPACERS =
            List.of(3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 18.0, 20.0, 25.0, 30.0);

    private static Design drive(String belt, String... lines) {
        return Designs.of(Designs.drive(belt, lines));
    }

    private static Part part(Design design, String name) {
        return design.parts().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static String bought(Design design, String name) {
        return part(design, name).source().stock();
    }

    private static Member member(Design design, String name) {
        return design.assembly().members().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The front plate lies on spacers as they are sold, the next ones up, and the screws go through all of it. */
    @Test
    void thePlatesStandAsFarApartAsASpacerThatIsSold() {
        for (String width : new String[] {"4", "6", "10"}) {
            Design design =
                    drive("T2.5", FIVE_TO_TWO[0], FIVE_TO_TWO[1], "centre-distance: 70", "belt-width: " + width);
            Part front = member(design, "front-plate").part();
            assertThat(SPACERS).contains(front.zFrom());
            assertThat(bought(design, "standoff"))
                    .isEqualTo("round spacer for M3, 6 x " + (int) front.zFrom() + " mm long");
            double top = member(design, "driven-flange-above").part().zTo();
            double room = front.zFrom() - top;
            assertThat(room).as("clearances.axial").isGreaterThanOrEqualTo(1 - 1e-9);
            assertThat(SPACERS)
                    .as("the next shorter one is too short")
                    .noneMatch(s -> s < front.zFrom() && s >= top + 1);
            Finding screw = Designs.finding(design, "screw-length");
            double length = Double.parseDouble(bought(design, "screw").replaceAll("M3 x ([0-9.]+), ISO 4762", "$1"));
            double grip = front.zTo() - member(design, "base-plate").part().zFrom();
            assertThat(screw.measured())
                    .isCloseTo(length - grip - 2.4, within(1e-9))
                    .isGreaterThanOrEqualTo(0.5 - 1e-9);
            assertThat(part(design, "nut").quantity())
                    .isEqualTo(part(design, "screw").quantity());
        }
    }

    /** A screw's head in the servo's near ear lies under the driver's flange, so the driver stands over it. */
    @Test
    void theDriverStandsOverTheHeadsInTheServosEars() {
        Design design = drive("T2.5", FIVE_TO_TWO[0], FIVE_TO_TWO[1], "centre-distance: 70", "servo: micro-180");
        assertThat(bought(design, "servo-screw")).startsWith("M1.6 x ");
        assertThat(part(design, "servo-screw").quantity()).isEqualTo(2);
        assertThat(member(design, "driver-flange").part().zFrom())
                .as("head of 1.6 mm and room")
                .isCloseTo(1.8, within(1e-9));
        Design wide = drive(
                "T2.5",
                FIVE_TO_TWO[0],
                FIVE_TO_TWO[1],
                "centre-distance: 70",
                "servo: micro-180",
                "clearances: {axial: 2.5}");
        assertThat(bought(wide, "servo-screw"))
                .as("where there is room a thicker one")
                .startsWith("M2 x ");
        assertThat(member(wide, "driver-flange").part().zFrom()).isCloseTo(2.5, within(1e-9));
        Design byHand = drive("T2.5", FIVE_TO_TWO[0], FIVE_TO_TWO[1], "centre-distance: 70");
        assertThat(member(byHand, "driver-flange").part().zFrom())
                .as("no servo, no heads")
                .isCloseTo(1, within(1e-9));
    }

    /** Stacked pulleys are held by screws: their heads go under the stack, nuts and ends under the front plate. */
    @Test
    void headsAndEndsOfJoiningScrewsClearThePlates() {
        Design design = Designs.of("fabrication:\n  pulley: {process: co2-laser, stock: acrylic-3}\n"
                + Designs.drive("T5", "driver: {teeth: 24}", "driven: {teeth: 36}", "centre-distance: 90"));
        Part screws = part(design, "driven-screw");
        assertThat(screws.quantity()).isEqualTo(3);
        assertThat(part(design, "driven-nut").quantity()).isEqualTo(3);
        double bottom = member(design, "driven-flange").part().zFrom();
        double top = member(design, "driven-flange-above").part().zTo();
        double length = Double.parseDouble(screws.source().stock().replaceAll("M2 x ([0-9.]+), ISO 4762", "$1"));
        assertThat(bottom).as("head of 2 mm over the base").isGreaterThanOrEqualTo(2.2 - 1e-9);
        assertThat(member(design, "front-plate").part().zFrom()).isGreaterThanOrEqualTo(bottom + length + 1 - 1e-9);
        assertThat(length).isGreaterThanOrEqualTo(top - bottom + 1.6 + 0.4 - 1e-9);
    }

    @Test
    void axlesAreCutFromRodThatIsSoldThroughBothPlates() {
        Design design = drive("T2.5", FIVE_TO_TWO[0], "driven: {teeth: 40, bore: {axle: 5}}", "centre-distance: 70");
        double through = member(design, "front-plate").part().zTo()
                - member(design, "base-plate").part().zFrom();
        assertThat(bought(design, "driven-axle"))
                .isEqualTo("5 mm ground steel rod, EN 10278, cut to " + ringleaf.part.Words.mm(through));
        assertThat(bought(design, "driven-washers")).isEqualTo("shim washers for 5 mm, DIN 988, 1 mm together");
        Design odd = drive("T2.5", FIVE_TO_TWO[0], "driven: {teeth: 40, bore: {axle: 5.2}}", "centre-distance: 70");
        assertThat(odd.findings())
                .anyMatch(f -> f.check().equals("rod-size")
                        && f.status() == Finding.Status.WARN
                        && Spoken.of(f).contains("5 and 6 mm are"));
    }

    @Test
    void aPulleyByItselfListsItsJoiningScrews() {
        Design design = Designs.of(
                "fabrication:\n  pulley: {process: co2-laser, stock: acrylic-3}\n" + Designs.pulley("T5", 24));
        assertThat(bought(design, "screw")).matches("M2 x [0-9]+, ISO 4762");
        assertThat(bought(design, "nut")).isEqualTo("M2 nut, ISO 4032");
    }
}
