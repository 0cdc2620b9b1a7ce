// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.geom.Mirror;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Callout;
import ringleaf.part.FitRow;
import ringleaf.part.LeafFamily;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Part;
import ringleaf.part.Requirement;

/** The mirror image of an assembly about the x axis: {@code hand: right}. */
final class Mirrored {
    private static final Mirror FLIP = Mirror.FLIP_Y;

    private Mirrored() {}

    static List<Part> parts(List<Part> parts) {
        return parts.stream().map(p -> p.mirrored(FLIP)).toList();
    }

    static List<FitRow> joints(List<FitRow> joints) {
        return joints.stream().map(j -> j.mirrored(FLIP)).toList();
    }

    /** The assembly with {@code mirrored} in place of its parts, in the same order. */
    static Assembly assembly(Assembly assembly, List<Part> parts, List<Part> mirrored) {
        Map<Part, Part> image = new IdentityHashMap<>();
        for (int i = 0; i < parts.size(); i++) {
            image.put(parts.get(i), mirrored.get(i));
        }
        List<Member> members = new ArrayList<>();
        for (Member m : assembly.members()) {
            members.add(new Member(m.name(), image.get(m.part()), m.body(), flip(m.home())));
        }
        Optional<LeafFamily> leaves = assembly.leaves()
                .map(l -> new LeafFamily(
                        l.name(), l.members(), l.zFrom(), l.zTo(), l.clear().mirrored(FLIP), shrunk -> l.opening()
                                .apply(shrunk)
                                .mirrored(FLIP)));
        List<Callout> callouts = new ArrayList<>();
        for (Callout c : assembly.callouts()) {
            callouts.add(new Callout(c.form(), c.view(), FLIP.apply(c.from()), FLIP.apply(c.to()), c.text()));
        }
        return new Assembly(
                        assembly.name(),
                        members,
                        new Flipped(assembly.motion()),
                        leaves,
                        assembly.requirements().stream()
                                .map(Mirrored::requirement)
                                .toList(),
                        callouts,
                        steps(assembly.steps()))
                .withBodies(assembly.bodies());
    }

    private static List<BuildStep> steps(List<BuildStep> steps) {
        List<BuildStep> mirrored = new ArrayList<>();
        for (BuildStep step : steps) {
            mirrored.add(step.mirrored(FLIP));
        }
        return mirrored;
    }

    private static Placement flip(Placement p) {
        return new Placement(-p.angle(), new Point(p.shift().x(), -p.shift().y()));
    }

    private static Requirement requirement(Requirement r) {
        if (r instanceof Requirement.KeepsClear k) {
            return new Requirement.KeepsClear(k.check(), k.area().mirrored(FLIP), k.states());
        }
        if (r instanceof Requirement.StaysInside s) {
            return new Requirement.StaysInside(s.check(), s.members(), s.room().mirrored(FLIP), s.clearance());
        }
        if (r instanceof Requirement.PinInHole p) {
            List<Requirement.Fit> fits = new ArrayList<>();
            for (Requirement.Fit fit : p.fits()) {
                fits.add(new Requirement.Fit(
                        fit.pinMember(),
                        FLIP.apply(fit.pin()),
                        fit.pinRadius(),
                        fit.holeMember(),
                        fit.hole().mirrored(FLIP)));
            }
            return new Requirement.PinInHole(p.check(), fits, p.clearance(), p.snug());
        }
        if (r instanceof Requirement.StudsClear s) {
            List<Requirement.Stud> studs = new ArrayList<>();
            for (Requirement.Stud stud : s.studs()) {
                studs.add(new Requirement.Stud(stud.member(), FLIP.apply(stud.at()), stud.radius()));
            }
            return new Requirement.StudsClear(s.check(), studs, s.members(), s.clearance());
        }
        if (r instanceof Requirement.Stops s) {
            return new Requirement.Stops(s.check(), s.member(), s.stop(), FLIP.apply(s.axis()), !s.forward(), s.most());
        }
        if (r instanceof Requirement.FitsRound f) {
            return new Requirement.FitsRound(
                    f.check(),
                    f.members(),
                    f.diameter(),
                    f.lobe().map(l -> new Requirement.Lobe(-l.direction(), l.half())));
        }
        if (r instanceof Requirement.FitsWidth f) {
            return new Requirement.FitsWidth(f.check(), f.members(), FLIP.apply(f.direction()), f.width());
        }
        if (r instanceof Requirement.Meshes m) {
            Requirement.Rolled rolled = m.rolled();
            return new Requirement.Meshes(
                    m.first().mirrored(FLIP),
                    m.second().mirrored(FLIP),
                    m.ratio(),
                    new Requirement.Rolled(-rolled.from(), -rolled.to(), rolled.steps(), rolled.words()),
                    m.gap(),
                    m.play(),
                    m.tolerance());
        }
        return r;
    }

    private record Flipped(Motion of) implements Motion {
        @Override
        public int states() {
            return of.states();
        }

        @Override
        public Placement pose(int body, int state) {
            return flip(of.pose(body, state));
        }

        @Override
        public boolean isEndless() {
            return of.isEndless();
        }

        @Override
        public String label(int state) {
            return of.label(state);
        }

        @Override
        public List<Integer> notable() {
            return of.notable();
        }
    }
}
