// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.ServoLaw;
import ringleaf.mechanism.Trial;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;
import ringleaf.part.Part;

/** A slide that was read and solved, and what can be asked of it. */
record PlannedSlide(SlideLayout layout) implements Kind.Planned {
    @Override
    public Design design(int states) {
        SlideSpec spec = layout.spec();
        SlideParts parts = new SlideParts(layout);
        Members members = parts.members();
        Joints joints = SlideJoints.of(layout, members);
        SlideMotion motion = new SlideMotion(layout, states);
        SlideDimensions dimensions = new SlideDimensions(layout);
        return new Design(
                spec.name(),
                Slide.NAME,
                dimensions.choices(),
                dimensions.all(),
                parts.parts(members),
                new SlideAssembly(layout, members, joints, motion).assemble(),
                motion.table(),
                new SlideChecks(layout).all(),
                travel(states),
                List.of(),
                joints.rows());
    }

    private Map<String, Double> travel(int states) {
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("states", (double) states);
        travel.put("carriage", layout.spec().stroke());
        travel.put("servo", Math.toDegrees(layout.swing()));
        return travel;
    }

    @Override
    public Trial trial(int states, Memo memo) {
        return new SlideTrial(layout);
    }

    /** Sizes and calculated checks without drawing it. */
    private record SlideTrial(SlideLayout layout) implements Trial {
        @Override
        public List<Choice> choices() {
            return new SlideDimensions(layout).choices();
        }

        @Override
        public List<Dimension> dimensions() {
            return new SlideDimensions(layout).all();
        }

        @Override
        public List<Finding> findings() {
            return new SlideChecks(layout).all();
        }

        @Override
        public String bound() {
            return "";
        }

        @Override
        public List<Part> parts() {
            SlideParts parts = new SlideParts(layout);
            return parts.parts(parts.members());
        }
    }

    @Override
    public Optional<ServoLaw> servoLaw() {
        return Optional.of(new SlideLaw(layout));
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(new SlideBuilt(layout));
    }
}
