// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Bolt;
import ringleaf.mechanism.Hardware;
import ringleaf.mechanism.Standoff;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Callout;
import ringleaf.part.Callout.Form;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Part;
import ringleaf.part.Placing;
import ringleaf.part.Requirement;
import ringleaf.part.View;
import ringleaf.part.Way;
import ringleaf.part.Words;

/** The plates with everything on them: each thing is a body of its own, so that things are held apart by the judge. */
final class PlateAssembly {
    static final String FRONT = "front-plate";
    static final String REAR = "rear-plate";
    static final String ONLY = "plate";
    private static final String VIEW = "front";

    private final PlateSpec spec;
    private final List<Member> members = new ArrayList<>();
    /** Number of the member that is a seat's thing, by the seat's place among all. */
    private final Map<Integer, Integer> things = new LinkedHashMap<>();
    /** Numbers of the members that are posts under a seat's thing. */
    private final Map<Integer, Integer> posts = new LinkedHashMap<>();

    PlateAssembly(PlateSpec spec) {
        this.spec = spec;
        member(0, plate(false));
        if (spec.plates() == 2) {
            member(0, plate(true));
        }
        for (int i = 0; i < spec.seats().size(); i++) {
            add(i, spec.seats().get(i));
        }
    }

    private void add(int number, Seat seat) {
        // what both plates have alike, like two bearings of one axle, stands on each
        for (boolean rear : new boolean[] {false, true}) {
            boolean post = seat.form() instanceof SeatForm.OfPost;
            if (!seat.isOn(rear) || rear && seat.onFront() && post) {
                continue;
            }
            List<Layer> layers = seat.thing(spec.lower(rear), spec.upper(rear));
            if (layers.isEmpty()) {
                continue;
            }
            String name = rear && seat.onFront() ? seat.name() + "-behind" : seat.name();
            things.putIfAbsent(number, members.size());
            member(members.size(), bought(name, seat.form().goods().orElse(""), layers));
            if (seat.form() instanceof SeatForm.OfBoard board) {
                posts.put(number, members.size());
                member(members.size(), bought(name + "-standoffs", "", standoffs(seat, board, rear)));
            }
        }
    }

    private List<Layer> standoffs(Seat seat, SeatForm.OfBoard board, boolean rear) {
        double from = seat.ahead() ? spec.upper(rear) : spec.lower(rear) - board.height();
        double radius = spec.standoffs().stream()
                .filter(s -> s.screw().equals(board.screw()))
                .mapToDouble(Standoff::outerRadius)
                .findFirst()
                .orElse(board.screw().hole());
        List<Region> rings = seat.screws().stream()
                .map(at -> Region.ring(at, board.screw().hole() / 2, radius))
                .toList();
        return List.of(new Layer(rings, from, from + board.height()));
    }

    private void member(int body, Part part) {
        members.add(new Member(part.name(), part, body, Placement.IDENTITY));
    }

    private static Part bought(String name, String goods, List<Layer> layers) {
        Part.Source source = new Part.Source("bought", goods);
        return new Part(name, Family.BOUGHT, 1, source, layers, "", List.of(), false);
    }

    private Part plate(boolean rear) {
        String name = spec.plates() == 1 ? ONLY : rear ? REAR : FRONT;
        return new Part(
                name,
                Family.PLATE,
                1,
                spec.plate().source(),
                List.of(Layer.of(spec.region(rear), spec.lower(rear), spec.upper(rear))),
                "",
                List.of(),
                !rear);
    }

    Assembly assemble(int states) {
        return new Assembly(
                spec.name(),
                members,
                new Still(states),
                Optional.empty(),
                requirements(),
                callouts(),
                steps(),
                List.of(View.of(VIEW, 0)),
                BodyName.numbered());
    }

    /** Nothing moves. */
    record Still(int states) implements Motion {
        @Override
        public Placement pose(int body, int state) {
            return Placement.IDENTITY;
        }
    }

    private List<Requirement> requirements() {
        List<Requirement> all = new ArrayList<>();
        List<Requirement.Pair> pairs = new ArrayList<>();
        things.forEach((number, member) -> {
            Seat seat = spec.seats().get(number);
            for (int m = member; m < members.size() && isOf(number, m); m++) {
                for (int plate = 0; plate < spec.plates(); plate++) {
                    if (seat.isOn(plate == 1)) {
                        double room = m == member ? seat.form().ownRoom() : Double.NEGATIVE_INFINITY;
                        pairs.add(new Requirement.Pair(m, plate, room));
                    }
                }
                if (m > member) {
                    pairs.add(new Requirement.Pair(m, member, Double.NEGATIVE_INFINITY));
                }
            }
        });
        for (int plate = 0; plate < spec.plates(); plate++) {
            all.add(new Requirement.LeastWeb(
                    "minimum-web",
                    members.get(plate).part().name(),
                    spec.plate().leastWeb()));
        }
        all.add(new Requirement.StaysApart("clearance", spec.beside().mm(), pairs));
        all.add(new Requirement.StaysAbove("clearance-above", above()));
        for (int plate = 0; plate < spec.plates(); plate++) {
            for (int number = 0; number < spec.seats().size(); number++) {
                reach(plate, number).ifPresent(all::add);
            }
        }
        return all;
    }

    /** Whatever lies over one another along the axis: things of different seats, and things over a plate that is not theirs. */
    private List<Requirement.Above> above() {
        List<Requirement.Above> all = new ArrayList<>();
        for (int a = spec.plates(); a < members.size(); a++) {
            Seat seat = spec.seats().get(seatOf(a));
            for (int b = 0; b < a; b++) {
                boolean own = b < spec.plates() ? seat.isOn(b == 1) : seatOf(b) == seatOf(a);
                if (!own) {
                    boolean over = middle(a) > middle(b);
                    all.add(new Requirement.Above(
                            over ? a : b, over ? b : a, spec.beside().mm(), 0));
                }
            }
        }
        return all;
    }

    private double middle(int member) {
        Part part = members.get(member).part();
        return part.zFrom() + part.zTo();
    }

    /** The seat that a member belongs to: the last whose thing comes before it. */
    private int seatOf(int member) {
        int seat = -1;
        for (Map.Entry<Integer, Integer> thing : things.entrySet()) {
            seat = thing.getValue() <= member ? thing.getKey() : seat;
        }
        return seat;
    }

    /** Whether a member belongs to a seat: its thing, or the posts and twins that follow it. */
    private boolean isOf(int number, int member) {
        Integer next = things.entrySet().stream()
                .filter(e -> e.getKey() > number)
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(members.size());
        return member < next;
    }

    /**
     * A driver comes to the heads of all screws that hold one seat's thing, past all else that stands on that side of its
     * plate: plates are put together when all is screwed to them.
     */
    private Optional<Requirement> reach(int plate, int number) {
        boolean rear = plate == 1;
        Seat seat = spec.seats().get(number);
        if (!seat.isOn(rear) || rear && seat.onFront() || seat.form().fastened().isEmpty()) {
            return Optional.empty();
        }
        double radius = seat.form().fastened().get().screw().headDiameter() / 2 + Hardware.HEAD_ROOM;
        List<Requirement.Stud> studs = seat.screws().stream()
                .map(at -> new Requirement.Stud(plate, at, radius))
                .toList();
        double face = seat.ahead() ? spec.lower(rear) : spec.upper(rear);
        List<Integer> inTheWay = new ArrayList<>();
        things.forEach((other, member) -> {
            Part part = members.get(member).part();
            boolean beyond = seat.ahead() ? part.zFrom() < face - 1e-6 : part.zTo() > face + 1e-6;
            if (other != number && beyond && spec.seats().get(other).isOn(rear)) {
                inTheWay.add(member);
            }
        });
        return studs.isEmpty() || inTheWay.isEmpty()
                ? Optional.empty()
                : Optional.of(new Requirement.StudsClear("driver-reach", studs, inTheWay, 0));
    }

    private List<BuildStep> steps() {
        List<BuildStep> steps = new ArrayList<>();
        steps.add(BuildStep.of("Deburr every plate."));
        for (boolean rear : new boolean[] {true, false}) {
            if (!rear || spec.plates() == 2) {
                equip(rear, steps);
            }
        }
        if (spec.plates() == 2) {
            List<Placing> joined = new ArrayList<>();
            for (Map.Entry<Integer, Integer> thing : things.entrySet()) {
                Seat seat = spec.seats().get(thing.getKey());
                if (seat.onFront() && seat.onRear() && seat.form() instanceof SeatForm.OfPost) {
                    joined.add(Placing.of(thing.getValue(), 1, Way.DOWN));
                }
            }
            joined.add(Placing.of(0, 1, Way.DOWN));
            steps.add(BuildStep.of(
                    "Put the spacers of " + Words.mm(spec.gap())
                            + " on their screws and the front plate on them, lead the" + " wires through, and tighten.",
                    joined));
        }
        steps.add(BuildStep.of("See that nothing is pinched, above all no wire, before anything is switched on."));
        return steps;
    }

    /** A plate is laid down and all that it has is set into it or screwed to it. */
    private void equip(boolean rear, List<BuildStep> steps) {
        int plate = rear ? 1 : 0;
        steps.add(BuildStep.of(
                "Lay the " + members.get(plate).part().name() + " down.",
                List.of(Placing.of(plate, Placing.NOTHING, Way.DOWN))));
        for (int i = 0; i < spec.seats().size(); i++) {
            Seat seat = spec.seats().get(i);
            if (!seat.isOn(rear) || !things.containsKey(i)) {
                continue;
            }
            boolean both = seat.onFront() && seat.onRear();
            if (both && seat.form() instanceof SeatForm.OfPost) {
                continue;
            }
            int thing = things.get(i) + (rear && both ? 1 : 0);
            Way way = seat.ahead() ? Way.DOWN : Way.UP;
            double press = seat.form()
                    .fitted()
                    .map(f -> Math.max(0, f.nominal() - f.bore()))
                    .orElse(0.0);
            List<Placing> placings = new ArrayList<>();
            if (posts.containsKey(i)) {
                placings.add(Placing.of(posts.get(i), plate, way));
            }
            placings.add(new Placing(List.of(thing), plate, way, press));
            steps.add(BuildStep.of(words(seat, rear), placings));
        }
    }

    private String words(Seat seat, boolean rear) {
        String plate = spec.plates() == 1 ? "the plate" : rear ? "the rear plate" : "the front plate";
        String side = seat.ahead() ? " before " : " behind ";
        String how = seat.form()
                .fastened()
                .map(f -> ", with " + f.at().size() + " screws " + f.screw().name())
                .orElse("");
        String goods = seat.form().goods().map(words -> " (" + words + ")").orElse("");
        return "Set " + seat.name() + goods + side + plate + how + ".";
    }

    private List<Callout> callouts() {
        Box box = spec.edge().box();
        List<Callout> all = new ArrayList<>();
        all.add(new Callout(
                Form.DISTANCE,
                VIEW,
                new Point(box.minX(), box.minY()),
                new Point(box.maxX(), box.minY()),
                Words.number(box.width(), 2)));
        all.add(new Callout(
                Form.DISTANCE,
                VIEW,
                new Point(box.minX(), box.minY()),
                new Point(box.minX(), box.maxY()),
                Words.number(box.height(), 2)));
        return all;
    }

    /** Screws of every seat, several seats of one size together. */
    List<Bolt> bolts(Map<Bolt, Integer> counts) {
        for (Seat seat : spec.seats()) {
            seat.form().fastened().ifPresent(f -> {
                double grip = f.grip() + spec.thickness() * (seat.onFront() && seat.onRear() ? 2 : 1);
                counts.merge(Bolt.of(seat.form().label() + "-screw", f.screw(), grip), f.at().size(), Integer::sum);
            });
        }
        return List.copyOf(counts.keySet());
    }

    /** What is made and what is bought. */
    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        for (int plate = 0; plate < spec.plates(); plate++) {
            parts.add(members.get(plate).part());
        }
        Map<String, Integer> goods = new LinkedHashMap<>();
        Map<String, String> labels = new LinkedHashMap<>();
        for (Seat seat : spec.seats()) {
            int each = seat.onFront() && seat.onRear() ? 2 : 1;
            seat.form().goods().ifPresent(words -> {
                goods.merge(words, each, Integer::sum);
                labels.putIfAbsent(words, seat.name());
            });
        }
        goods.forEach((words, count) -> parts.add(Part.bought(labels.get(words), count, words)));
        posts(parts);
        Map<Bolt, Integer> counts = new LinkedHashMap<>();
        Map<String, Integer> names = new LinkedHashMap<>();
        for (Bolt bolt : bolts(counts)) {
            int number = names.merge(bolt.name(), 1, Integer::sum);
            String name = number == 1 ? bolt.name() : bolt.name() + "-" + number;
            Bolt own = new Bolt(name, bolt.screw(), bolt.grip(), bolt.nuts());
            parts.add(own.part(counts.get(bolt)));
            parts.add(own.nuts(name.replace("-screw", "-nut"), counts.get(bolt)));
        }
        return parts;
    }

    /** Spacers and standoffs, those of one length together, drawn about the plate's middle where they are printed. */
    private void posts(List<Part> parts) {
        Map<Standoff, Integer> counts = new LinkedHashMap<>();
        spec.spacers().forEach(s -> counts.merge(s, 1, Integer::sum));
        for (Seat seat : spec.seats()) {
            if (seat.form() instanceof SeatForm.OfBoard board) {
                standoff(board.screw().name(), board.height())
                        .ifPresent(s -> counts.merge(s, seat.screws().size(), Integer::sum));
            } else if (seat.form() instanceof SeatForm.OfPost post && !seat.onRear()) {
                standoff(post.screw().name(), post.height()).ifPresent(s -> counts.merge(s, 1, Integer::sum));
            }
        }
        Map<String, Integer> names = new LinkedHashMap<>();
        counts.forEach((standoff, count) -> {
            int number = names.merge(standoff.name(), 1, Integer::sum);
            String name = number == 1 ? standoff.name() : standoff.name() + "-" + number;
            Standoff own = new Standoff(name, standoff.length(), standoff.screw(), standoff.making());
            parts.add(own.part(Point.ORIGIN, 0, count));
        });
    }

    private Optional<Standoff> standoff(String screw, double length) {
        return spec.standoffs().stream()
                .filter(s -> s.screw().name().equals(screw) && s.length() == length)
                .findFirst();
    }
}
