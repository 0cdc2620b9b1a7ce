// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import ringleaf.curve.JtsShapes;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** Trial pieces: cut out of the real parts, whole, and moving as the whole mechanism does. */
class TrialPieceTest {
    private static String spec(String... more) {
        List<String> lines =
                new ArrayList<>(List.of("full-opening: 40", "least-opening: 30", "blades: 8", "blade-thickness: 0.15"));
        lines.addAll(List.of(more));
        return Apertures.spec(lines.toArray(new String[0]));
    }

    private static Part part(Design design, String name) {
        return design.parts().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hand: left | 2",
                "hand: left | 3",
                "hand: right | 3",
                "hand: left | 5",
                "hand: left | 8",
                "drive: {by: pinion} | 3",
                "drive-pin: lever | 3",
                "pin-style: base-posts | 3",
                "slot: linear-opening | 2"
            })
    void piecesHoldTheRealBoresAndSlotsAndPassTheJudge(String field, int blades) {
        String text = spec(field.contains("posts") ? "ring-thickness: 2" : "lap: 0.6", field)
                .replace(
                        "blade-thickness: 0.15",
                        field.contains("posts") ? "blade-thickness: 0.8" : "blade-thickness: 0.15");
        Design whole = Apertures.design(text, 21);
        Design trial = Apertures.trialPiece(text, 21, blades);
        for (String piece : new String[] {TrialPiece.BASE, TrialPiece.RING}) {
            Part real = part(whole, piece.equals(TrialPiece.BASE) ? "base-plate" : "drive-ring");
            Part cut = part(trial, piece);
            assertThat(cut.source()).isEqualTo(real.source());
            assertThat(cut.layers()).hasSameSizeAs(real.layers());
            int last = cut.layers().size() - 1;
            for (int i = 0; i <= last; i++) {
                Layer layer = cut.layers().get(i);
                assertThat(layer.zFrom()).isEqualTo(real.layers().get(i).zFrom());
                assertThat(layer.zTo()).isEqualTo(real.layers().get(i).zTo());
                assertThat(layer.regions()).as("one piece").hasSize(1);
                Region region = layer.regions().get(0);
                assertThat(region.holes()).hasSize(i == last ? blades + 1 : 1);
                List<Contour> realHoles = real.layers().get(i).regions().get(0).holes();
                for (Contour hole : region.holes()) {
                    boolean axis = hole.centroid().norm() < 1e-9;
                    assertThat(axis || realHoles.stream().anyMatch(h -> same(h, hole)))
                            .isTrue();
                }
                // nothing of it lies outside the real part but what fills openings
                Geometry filled = JtsShapes.polygon(
                        Region.of(real.layers().get(i).regions().get(0).outer()), Tolerance.JUDGE);
                assertThat(JtsShapes.polygon(region, Tolerance.JUDGE)
                                .difference(filled)
                                .getArea())
                        .isLessThan(0.05);
            }
        }
        assertThat(part(trial, "blade").quantity()).isEqualTo(blades);
        assertThat(part(trial, "drive-pin").quantity()).isEqualTo(blades);
        List<Finding> judged = Judge.judge(trial.assembly(), Options.DEFAULT).findings();
        assertThat(Apertures.failed(judged)).as(judged.toString()).isEmpty();
        assertThat(judged.stream().map(Finding::check)).contains("pin-in-slot", "minimum-web", "minimum-web");
        assertThat(String.join("\n", trial.assembly().buildOrder()))
                .contains("Slope:")
                .contains("Friction:")
                .contains("Lay blade " + blades + " first");
    }

    private static boolean same(Contour a, Contour b) {
        return a.segments().size() == b.segments().size()
                && a.centroid().distance(b.centroid()) < 1e-9
                && Math.abs(a.area() - b.area()) < 1e-9;
    }

    @Test
    void membersMoveAsInTheWhole() {
        Design whole = Apertures.design(spec("drive: {by: pinion}"), 21);
        Design trial = Apertures.trialPiece(spec("drive: {by: pinion}"), 21, 3);
        for (Member member : trial.assembly().members()) {
            String twin = member.name().equals(TrialPiece.RING) ? "drive-ring" : member.name();
            whole.assembly().members().stream()
                    .filter(m -> m.name().equals(twin))
                    .forEach(m -> {
                        for (int state : new int[] {0, 10, 20}) {
                            Point p = new Point(17, 3);
                            assertThat(member.placed(trial.assembly().motion(), state)
                                            .apply(p))
                                    .isEqualTo(m.placed(whole.assembly().motion(), state)
                                            .apply(p));
                        }
                    });
        }
        assertThat(trial.assembly().members()).hasSize(3 + 3 * 3);
    }

    @Test
    void piecesAreSmallAndStrongEnoughToHold() {
        Design whole = Apertures.design(spec(), 21);
        Design trial = Apertures.trialPiece(spec(), 21, 3);
        Region base = part(trial, TrialPiece.BASE).layers().get(0).regions().get(0);
        double all = part(whole, "base-plate")
                .layers()
                .get(0)
                .regions()
                .get(0)
                .outer()
                .area();
        assertThat(base.area()).isLessThan(0.35 * all);
        // narrowest anywhere but at the bores: shrunk by 1.4 mm it is still one piece from hub to rim
        Geometry shrunk =
                JtsShapes.polygon(Region.of(base.outer()), new Tolerance(0.001)).buffer(-2.8);
        assertThat(shrunk.getNumGeometries()).isEqualTo(1);
        Part washer = part(trial, TrialPiece.WASHER);
        Part blade = part(trial, "blade");
        assertThat(washer.quantity() * (washer.zTo() - washer.zFrom()))
                .isCloseTo(Apertures.dimension(whole, "cavity-depth"), within(1e-9));
        assertThat(washer.zFrom()).isCloseTo(blade.layers().get(0).zFrom(), within(1e-9));
    }

    @Test
    void aSmallOpeningIsClosedOnlyToTheWasherAndThatIsSaid() {
        String text = spec("pin-diameter: 1")
                .replace("full-opening: 40", "full-opening: 25")
                .replace("least-opening: 30", "least-opening: 3");
        Design trial = Apertures.trialPiece(text, 21, 3);
        assertThat(trial.findings().stream().map(Finding::check)).contains("trial-opening");
        assertThat(String.join("\n", trial.assembly().buildOrder())).contains("the washer stops the blades");
        assertThat(Apertures.failed(
                        Judge.judge(trial.assembly(), Options.DEFAULT).findings()))
                .isEmpty();
    }

    @Test
    void jigsForTheBladesComeWithIt() {
        Design trial = Apertures.trialPiece(spec("jigs: {blades: 3}"), 5, 3);
        assertThat(trial.parts().stream().map(Part::name))
                .contains("pivot-jig", "drive-jig")
                .doesNotContain(StackingJig.NAME);
    }
}
