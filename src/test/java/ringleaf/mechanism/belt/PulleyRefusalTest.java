// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.draw.mesh.PartMesh;
import ringleaf.geom.Tolerance;
import ringleaf.part.Design;
import ringleaf.part.Finding.Status;
import ringleaf.part.Part;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** A refusal names the field that is wrong and a value that is then taken. */
class PulleyRefusalTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // belt | teeth | what is wrong | the path that is named | what works, in its place
                "T5   | 24 | backlash: 5                                     | backlash      | backlash: 1.25",
                "T5   | 24 | clearance: 3                                    | clearance     | clearance: 1.2",
                "T2.5 | 24 | hub-screws: {screw: M2, circle: 20}             | hub-screws.circle | hub-screws: {screw: M2, circle: 12.803}",
                "T2.5 | 24 | hub-screws: {screw: M2, circle: 5}              | hub-screws.circle | hub-screws: {screw: M2, circle: 9.3}",
                "T2.5 | 24 | 'bore: {form: bearing, bearing: \"623\"}, hub-height: 5, hub-diameter: 10' | hub-diameter | 'bore: {form: bearing, bearing: \"623\"}, hub-height: 5, hub-diameter: 11.6'",
                "T5   | 30 | 'hub-height: 5, hub-diameter: 90'               | hub-diameter  | 'hub-height: 5, hub-diameter: 43.3'",
                "T5   | 30 | hub-diameter: 12                                | hub-diameter  | 'hub-diameter: 12, hub-height: 5'",
                "T2.5 | 40 | 'lightening: {form: spokes, count: 12, spoke-width: 8}' | lightening.spoke-width | 'lightening: {form: spokes, count: 5}'"
            })
    void theFieldThatIsWrongIsNamedAndWhatIsAdvisedWorks(
            String belt, int teeth, String wrong, String path, String works) {
        String refusal = Designs.refusal(flow(belt, teeth, wrong));
        assertThat(refusal.lines().filter(l -> l.startsWith("arm.yaml")).toList())
                .singleElement()
                .asString()
                .contains(": " + path + ": ");
        Design design = Designs.of(flow(belt, teeth, works));
        assertThat(design.findings()).noneMatch(f -> f.failed());
        assertThat(Judge.judge(design.assembly(), Options.DEFAULT).findings()).noneMatch(f -> f.failed());
    }

    private static String flow(String belt, int teeth, String more) {
        return "mechanisms:\n  p: {kind: pulley, belt: \"" + belt + "\", teeth: " + teeth + ", " + more + "}\n";
    }

    /** Screws that find no room are told with the largest that do. */
    @Test
    void screwsThatDoNotFitAreToldWithTheLargestThatDo() {
        String refusal = Designs.refusal(flow("T2.5", 20, "bore: {axle: 5}, hub-screws: {screw: M3}"));
        assertThat(refusal).contains("hub-screws.screw", "the nearest that works is screw: M2");
        assertThat(Designs.refusal(flow("T2.5", 20, "bore: {axle: 5}, hub-screws: {screw: M2}")))
                .isEmpty();
    }

    /** Hub screws stand round the bore that is made, not round one that is not: solids of every part close. */
    @Test
    void partsOfOddPulleysAreClosedSolids() {
        String[] specs = {
            Designs.drive("T5", "driver: {teeth: 15}", "driven: {teeth: 33}"),
            Designs.drive(
                    "5M",
                    "driver: {teeth: 20}",
                    "driven: {teeth: 40, hub-screws: {screw: M2}, lightening: {form: spokes, count: 8}}"),
            flow("T2.5", 24, "bore: {form: bearing, bearing: \"623\"}, hub-height: 5, hub-diameter: 12"),
            flow("MXL", 27, "hub-height: 3")
        };
        for (String spec : specs) {
            for (Part part : Designs.of(spec).parts()) {
                if (!part.source().isBought()) {
                    assertThat(PartMesh.of(part, new Tolerance(0.01)).isPresent())
                            .as(part.name() + " of\n" + spec)
                            .isTrue();
                }
            }
        }
    }

    /** No play and no room are what was asked for: told every time, and never a matter of rounding. */
    @Test
    void noPlayAndNoRoomWarnWhateverTheBelt() {
        for (String belt : new String[] {"MXL", "XL", "L", "T2.5", "T5", "T10", "3M", "5M", "8M", "curvilinear-2"}) {
            for (int teeth : new int[] {22, 31, 40, 61}) {
                Design design = Designs.of(flow(belt, teeth, "backlash: 0, clearance: 0"));
                String name = belt + ", " + teeth;
                assertThat(design.findings()).as(name).noneMatch(f -> f.failed());
                assertThat(Designs.finding(design, "tip-clearance").status())
                        .as(name)
                        .isEqualTo(Status.WARN);
                assertThat(Judge.judge(design.assembly(), Options.DEFAULT).findings())
                        .as(name)
                        .noneMatch(f -> f.failed());
            }
        }
    }

    /** A rim of sheets is as wide as whole sheets. */
    @Test
    void aFaceWidthOfPartOfASheetIsRefused() {
        String sheets = "fabrication:\n  pulley: {process: co2-laser, stock: acrylic-3}\n";
        assertThat(Designs.refusal(sheets + flow("T5", 24, "face-width: 11")))
                .contains("face-width", "9mm or 12mm works");
        assertThat(Designs.refusal(sheets + flow("T5", 24, "face-width: 9"))).isEmpty();
    }

    /** What is solved has the limits of what is spelt out, so that no valid spec grows without end. */
    @Test
    void solvedTeethAreNoMoreThanGivenOnesMayBe() {
        String drive = "title: A\nmechanisms:\n  arm: {kind: belt-drive, belt: T2.5, plates: none, %s}\n";
        String refusal = Designs.refusal(drive.formatted("ratio: 20, driver: {teeth: 40}"));
        assertThat(refusal)
                .contains("ratio: 20 takes 40 and 800 teeth, and 400 are the most of one pulley")
                .contains("the nearest that works is 400:40");
        assertThat(Designs.refusal(drive.formatted("ratio: 400:40, driver: {teeth: 40}, belt-teeth: 620")))
                .isEmpty();
        assertThat(Designs.refusal(drive.formatted("ratio: 2, belt-teeth: 1001")))
                .contains("is above the most of 1000");
        // a belt of one's own without stocked lengths, over the longest distance
        String own =
                "belt: {pitch: 2, tooth-height: 0.75, tooth-width: 1.3, belt-height: 1.4, pitch-line: 0.25, root-radius: 0.2}";
        String far = Designs.refusal(
                drive.replace("belt: T2.5", own).formatted("ratio: 2, centre-distance: 4000, driver: {teeth: 20}"));
        assertThat(far).contains("centre-distance").contains("spans the wheels at 4000 mm");
    }
}
