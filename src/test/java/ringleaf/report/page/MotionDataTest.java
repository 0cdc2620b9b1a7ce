// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.function.IntFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Motion;

/** The numbers that a page gets, read by a JSON library and put together again, are the motion. */
class MotionDataTest {
    private record Bodies(int states, List<IntFunction<Placement>> all, List<Integer> notable) implements Motion {
        @Override
        public Placement pose(int body, int state) {
            return all.get(body).apply(state);
        }

        @Override
        public String label(int state) {
            return "state " + state;
        }
    }

    private static Motion motion(int states) {
        return new Bodies(
                states,
                List.of(
                        state -> Placement.IDENTITY,
                        state -> Placement.turn(-0.011 * state),
                        state -> Placement.turnAbout(new Point(38.2, -1), 0.003 * state),
                        // More than one turn, and a half turn on the way, about a far point.
                        state -> Placement.turnAbout(new Point(-400, 250), 0.05 * state),
                        state -> Placement.shift(0.7 * state, -2 * Math.sqrt(state)),
                        state -> new Placement(0.2 * Math.sin(0.1 * state), new Point(state, 3)),
                        // So little that no pivot is to be made out.
                        state -> Placement.turnAbout(new Point(10, 10), 1e-6 * state)),
                List.of(1, states / 3));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 181, 361, 362, 3601})
    void whatIsWrittenIsTheMotion(int states) throws Exception {
        Motion motion = motion(states);
        MotionData data = new MotionData(motion);
        int[] shown = data.states();
        assertThat(shown.length).isBetween(Math.min(states, 180), MotionData.MOST_STATES + 2);
        assertThat(shown[0]).isZero();
        assertThat(shown[shown.length - 1]).isEqualTo(states - 1);
        assertThat(shown).isSorted().contains(1, states / 3);
        StringBuilder out = new StringBuilder("{");
        data.append(out, 7);
        JsonNode json = new ObjectMapper().readTree(out.append('}').toString());
        for (int body = 0; body < 7; body++) {
            JsonNode own = json.at("/bodies/" + body);
            boolean pivoted = own.size() == 3;
            if (body <= 4) {
                assertThat(own.size()).isEqualTo(body == 0 ? 0 : body == 4 ? 2 : 3);
            }
            for (int i = 0; i < shown.length; i++) {
                Placement truth = motion.pose(body, shown[i]);
                double angle =
                        own.isEmpty() ? 0 : Math.toRadians(sum(json, own.get(0).asInt(), i));
                assertThat(angle).isEqualTo(truth.angle(), within(1e-6));
                Placement read = !pivoted
                        ? new Placement(
                                angle,
                                own.isEmpty()
                                        ? Point.ORIGIN
                                        : new Point(
                                                sum(json, own.at("/1/0").asInt(), i),
                                                sum(json, own.at("/1/1").asInt(), i)))
                        : Placement.turnAbout(
                                new Point(own.get(1).asDouble(), own.get(2).asDouble()), angle);
                for (Point point : List.of(new Point(0, 0), new Point(60, 0), new Point(-20, 70))) {
                    Point off = read.apply(point).minus(truth.apply(point));
                    // Half a ten thousandth of a degree at 550 mm from the pivot.
                    assertThat(off.norm()).isLessThan(6e-4);
                }
            }
        }
    }

    private static double sum(JsonNode json, int series, int upTo) {
        long sum = 0;
        for (int i = 0; i <= upTo; i++) {
            sum += json.at("/series/" + series).get(i).asLong();
        }
        return sum / 1e4;
    }
}
