// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.mechanism.aperture.Apertures.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.machine.Fit;
import ringleaf.mechanism.AsBuilt.Deviation;
import ringleaf.part.Assembly;
import ringleaf.part.Design;
import ringleaf.part.FitRow;
import ringleaf.part.Part;
import ringleaf.part.Requirement;

/** What is told of a joint in one place is what is told of it in every other, and what is cut. */
class JointsAgreeTest {
    private static final Offset<Double> SAME = within(1e-9);

    @Test
    void ofAnyAperture() {
        for (long seed = 20261201; seed < 20261213; seed++) {
            Random random = new Random(seed);
            String[] styles = {"one-glued", "two-holes", "base-posts"};
            String style = styles[(int) (seed % 3)];
            List<String> lines = new ArrayList<>(List.of(
                    "full-opening: " + (40 + random.nextInt(40)),
                    "least-opening: 20",
                    "blades: " + (8 + random.nextInt(8)),
                    "blade-thickness: 0.4",
                    "pin-style: " + style,
                    "hand: " + (random.nextBoolean() ? "left" : "right")));
            if (random.nextBoolean()) {
                double bore = 0.3 + random.nextInt(30) / 100.0;
                double slot = 0.3 + random.nextInt(30) / 100.0;
                lines.add(String.format(Locale.ROOT, "clearances: {bore: %.2f, slot: %.2f}", bore, slot));
            }
            String made =
                    style.equals("one-glued") ? "fabrication:\n  blade: {process: resin-print, stock: resin}\n" : "";
            String text = made + spec(lines.toArray(new String[0]));
            ApertureDesign sizes = Apertures.sizes(text);
            agree("seed " + seed, sizes, Apertures.design(text, 5), style);
        }
    }

    private static void agree(String seed, ApertureDesign sizes, Design design, String style) {
        Clearances rooms = sizes.spec().clearances();
        String turns = style.equals("base-posts") ? "blade" : "base-plate";
        agree(seed, rooms.pivot(), row(design, turns, "pivot-bore"), "clearances-bore", sizes, design);
        agree(seed, rooms.drive(), row(design, "drive-ring", "slot"), "clearances-slot", sizes, design);
        Requirement.PinInHole bores = asked(design.assembly(), "pin-clearance");
        Requirement.PinInHole slots = asked(design.assembly(), "pin-in-slot");
        assertThat(bores.fits()).as(seed).hasSize(sizes.spec().blades());
        assertThat(slots.fits()).as(seed).hasSize(sizes.spec().blades());
        assertThat(bores.clearance()).as(seed).isCloseTo(rooms.pivot().room().mm() / 2, SAME);
        assertThat(slots.clearance())
                .as(seed)
                .isCloseTo(Math.min(rooms.drive().room().mm() / 2, rooms.slotEnd()), SAME);
        for (Requirement.Fit fit : bores.fits()) {
            Box box = fit.hole().box();
            assertThat(box.width()).as(seed).isCloseTo(rooms.pivot().width(), SAME);
            assertThat(box.centre().distance(fit.pin())).as(seed).isLessThan(1e-9);
            assertThat(isCut(design.assembly(), fit))
                    .as(seed + ": each bore is cut")
                    .isTrue();
        }
    }

    /** The table of fits, the dimension, the study of yield: one room, and one width. */
    private static void agree(String seed, Fit fit, FitRow row, String dimension, ApertureDesign sizes, Design design) {
        assertThat(row.size() - row.nominal()).as(seed).isCloseTo(fit.room().mm(), SAME);
        assertThat(row.fit()).as(seed).isEqualTo(fit.name().label());
        assertThat(Apertures.dimension(design, dimension)).as(seed).isCloseTo(row.size() - row.nominal(), SAME);
        List<Deviation> off = new ApertureBuilt(sizes).deviations();
        double hole = nominal(off, fit.hole().orElseThrow().name());
        double pin = nominal(off, fit.pin().orElseThrow().name());
        assertThat(hole).as(seed).isCloseTo(row.size(), SAME);
        assertThat(hole - pin).as(seed).isCloseTo(fit.play(0, 0), SAME);
        assertThat(fit.play(0.1, 0.03)).as(seed).isCloseTo(fit.play(0, 0) + 0.07, SAME);
    }

    private static boolean isCut(Assembly assembly, Requirement.Fit fit) {
        Part part = assembly.members().get(fit.holeMember()).part();
        List<Contour> holes = new ArrayList<>();
        part.layers().forEach(layer -> layer.regions().forEach(region -> holes.addAll(region.holes())));
        return holes.stream()
                .map(hole ->
                        hole.placed(assembly.members().get(fit.holeMember()).home()))
                .anyMatch(hole -> hole.centroid().distance(fit.hole().centroid()) < 1e-6
                        && Math.abs(hole.box().width() - fit.hole().box().width()) < 1e-9);
    }

    private static double nominal(List<Deviation> off, String name) {
        return off.stream()
                .filter(d -> d.name().equals(name))
                .findFirst()
                .orElseThrow()
                .nominal();
    }

    private static FitRow row(Design design, String part, String name) {
        return design.joints().stream()
                .filter(j -> j.part().equals(part) && j.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Requirement.PinInHole asked(Assembly assembly, String check) {
        return assembly.requirements().stream()
                .filter(r -> r instanceof Requirement.PinInHole && r.check().equals(check))
                .map(Requirement.PinInHole.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
