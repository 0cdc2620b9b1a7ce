// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Distances;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.Bolt;
import ringleaf.mechanism.Standoff;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/**
 * What holds an aperture together: the housing's screws, of which some run on into the servo plate, the standoffs on
 * these, and the screws of the servo's ears. Heads lie on the retainer, nuts behind.
 */
final class Fasteners {
    static final String STANDOFF = "standoff";
    static final String PACKING = "packing";
    /** Room behind a screw's end, mm; common practice, no source. */
    private static final double END_ROOM = 0.2;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Optional<ServoMount> plate;

    Fasteners(ApertureDesign design) {
        this.design = design;
        this.spec = design.spec();
        this.plate = design.mount().filter(ServoMount::hasPlate);
    }

    /** The screws that end behind the base. */
    private Bolt screw() {
        return Bolt.of("screw", spec.screw(), design.stack().depth());
    }

    /** Those that run on into the servo plate. */
    private Bolt longScrew(ServoMount mount) {
        return Bolt.of("screw-long", spec.screw(), design.stack().retainerTop() - mount.earFace());
    }

    private List<Point> longScrews() {
        return plate.isPresent() ? design.housing().servoScrews() : List.of();
    }

    private List<Point> shortScrews() {
        List<Point> others = new ArrayList<>(design.housing().screws());
        others.removeAll(longScrews());
        return others;
    }

    /** Between base and servo plate, or under the ears of a servo that sits on the base; none where they touch. */
    Optional<Standoff> standoff() {
        Optional<ServoMount> mount = design.mount();
        if (mount.isEmpty() || mount.get().standoff() <= 1e-9) {
            return Optional.empty();
        }
        double length = mount.get().standoff();
        if (plate.isPresent()) {
            return Optional.of(new Standoff(STANDOFF, length, spec.screw(), spec.spacer()));
        }
        Optional<Screw> ears = spec.hardware().screwThrough(servo().holeDiameter(), Double.MAX_VALUE);
        return ears.map(screw -> new Standoff(PACKING, length, screw, spec.spacer()));
    }

    /** Where the standoffs stand. */
    List<Point> standoffs() {
        return plate.isPresent()
                ? longScrews()
                : design.pinionPlan().orElseThrow().servoOutline().earHoles();
    }

    private Servo servo() {
        return design.pinionPlan().orElseThrow().servo();
    }

    /** Through servo plate and ears, the head before the plate; none where no head finds room there. */
    private Optional<Bolt> servoScrew(ServoMount mount) {
        return spec.hardware()
                .screwThrough(servo().holeDiameter(), mount.standoff())
                .map(screw -> Bolt.of("servo-screw", screw, mount.plateThickness() + servo().earThickness()));
    }

    private int earHoles() {
        return design.pinionPlan().orElseThrow().servoOutline().earHoles().size();
    }

    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        standoff()
                .ifPresent(s -> parts.add(s.part(
                        standoffs().get(0),
                        design.stack().coverBottom() - s.length(),
                        standoffs().size())));
        int all = design.housing().screws().size();
        parts.add(screw().part(all - longScrews().size()));
        plate.ifPresent(mount -> parts.add(longScrew(mount).part(longScrews().size())));
        parts.add(screw().nuts("nut", all));
        plate.flatMap(this::servoScrew).ifPresent(bolt -> {
            parts.add(bolt.part(earHoles()));
            parts.add(bolt.nuts("servo-nut", earHoles()));
        });
        return parts;
    }

    /** Whether all of it can be bought or made, and no screw ends in the air or against anything. */
    List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        String pins = spec.pinStyle() == PinStyle.ONE_GLUED ? "drive-pin" : "pins";
        found.add(spec.hardware().rod(pins, spec.pinDiameter()).isSold());
        design.pinionPlan()
                .flatMap(PinionPlan::stepUp)
                .ifPresent(step ->
                        found.add(spec.hardware().rod("axle", step.axle()).isSold()));
        found.add(screw().reaches());
        standoff().ifPresent(s -> found.add(s.isHad()));
        if (design.mount().isPresent() && plate.isEmpty()) {
            found.add(Finding.of("screw-head")
                    .about("base-plate", "spacer-ring")
                    .orWarn()
                    .plain(false)
                    .inWords("the ears of " + servo().name()
                            + " are screwed to the base itself, and heads before it would"
                            + " stand in the spacer or the cavity: countersink the base for flat heads, or screw them in"
                            + " from behind"));
        }
        plate.ifPresent(mount -> {
            found.add(longScrew(mount).reaches());
            if (isAnyUnderPlate()) {
                found.add(screw().clears("servo-plate", mount.standoff(), END_ROOM));
            }
            Optional<Bolt> ears = servoScrew(mount);
            ears.ifPresent(bolt -> found.add(bolt.reaches()));
            if (ears.isEmpty()) {
                found.add(Finding.of("screw-head")
                        .about("servo-plate", "base-plate")
                        .orWarn()
                        .plain(false)
                        .inWords("no screw that fits the holes of " + servo().name() + " has a head that goes into the "
                                + Words.mm(mount.standoff()) + " between them: countersink the servo plate"));
            }
        });
        return found;
    }

    private boolean isAnyUnderPlate() {
        double nut = spec.screw().nutAcross() / Math.sqrt(3);
        Region cut =
                new PlateParts(design).servoPlate().layers().get(0).regions().get(0);
        for (Point screw : shortScrews()) {
            Region disc = Region.disc(screw, nut);
            if (cut.box().meets(disc.box()) && Distances.between(disc, cut).distance() <= 0) {
                return true;
            }
        }
        return false;
    }
}
