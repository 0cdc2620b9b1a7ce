// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.LeafFamily;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Part;
import ringleaf.part.Requirement;

/** Small made-up mechanisms with known answers. */
final class Mechanisms {
    private Mechanisms() {}

    static Part part(String name, Layer... layers) {
        return new Part(name, Family.PLATE, 1, new Part.Source("made-up", "made-up"), List.of(layers), List.of(), "");
    }

    static Part part(String name, Region region, double zFrom, double zTo) {
        return part(name, Layer.of(region, zFrom, zTo));
    }

    static Member member(String name, int body, Region region, double zFrom, double zTo) {
        return new Member(name, part(name, region, zFrom, zTo), body, Placement.IDENTITY);
    }

    static Motion motion(int states, List<IntFunction<Placement>> moving, Integer... notable) {
        return new Moving(states, moving, List.of(notable));
    }

    static Assembly assembly(Motion motion, List<Member> members, Requirement... requirements) {
        return new Assembly("made-up", members, motion, Optional.empty(), List.of(requirements), List.of(), List.of());
    }

    static Contour rectangle(double x0, double y0, double x1, double y1) {
        return Contour.polygon(List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
    }

    static Verdict judge(Assembly assembly) {
        return Judge.judge(assembly, Options.DEFAULT);
    }

    /** Body 0 stands; body k moves by the k-th function. */
    private record Moving(int states, List<IntFunction<Placement>> moving, List<Integer> notable) implements Motion {
        @Override
        public Placement pose(int body, int state) {
            return body == 0 ? Placement.IDENTITY : moving.get(body - 1).apply(state);
        }

        @Override
        public String label(int state) {
            return state == 0 ? "open" : state == states - 1 ? "closed" : "state " + state;
        }
    }

    /** The same assembly with everything turned about the origin. */
    static Assembly turned(Assembly a, double angle) {
        Placement turn = Placement.turn(angle);
        List<Member> members = new ArrayList<>();
        for (Member m : a.members()) {
            members.add(new Member(m.name(), m.part(), m.body(), m.home().then(turn)));
        }
        Motion motion = new Motion() {
            @Override
            public int states() {
                return a.motion().states();
            }

            @Override
            public Placement pose(int body, int state) {
                return turn.inverse().then(a.motion().pose(body, state)).then(turn);
            }

            @Override
            public String label(int state) {
                return a.motion().label(state);
            }

            @Override
            public List<Integer> notable() {
                return a.motion().notable();
            }
        };
        Optional<LeafFamily> leaves = a.leaves()
                .map(f -> new LeafFamily(
                        f.name(), f.members(), f.zFrom(), f.zTo(), f.clear().placed(turn), s -> f.opening()
                                .apply(s)
                                .placed(turn)));
        List<Requirement> requirements = new ArrayList<>();
        for (Requirement r : a.requirements()) {
            requirements.add(turned(r, turn));
        }
        return new Assembly(a.name(), members, motion, leaves, requirements, a.callouts(), a.steps());
    }

    private static Requirement turned(Requirement r, Placement turn) {
        if (r instanceof Requirement.PinInHole p) {
            List<Requirement.Fit> fits = new ArrayList<>();
            for (Requirement.Fit f : p.fits()) {
                fits.add(new Requirement.Fit(
                        f.pinMember(),
                        turn.apply(f.pin()),
                        f.pinRadius(),
                        f.holeMember(),
                        f.hole().placed(turn)));
            }
            return new Requirement.PinInHole(p.check(), fits, p.clearance());
        } else if (r instanceof Requirement.KeepsClear k) {
            return new Requirement.KeepsClear(k.check(), k.area().placed(turn), k.states());
        } else if (r instanceof Requirement.StaysInside s) {
            return new Requirement.StaysInside(s.check(), s.members(), s.room().placed(turn), s.clearance());
        }
        return r;
    }
}
