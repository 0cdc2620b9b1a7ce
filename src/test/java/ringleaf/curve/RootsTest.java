// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class RootsTest {
    @Test
    void rootsAreThoseThatAreKnown() {
        assertThat(Roots.between(x -> x * x - 2, 0, 2, 0)).isCloseTo(Math.sqrt(2), within(4e-16));
        assertThat(Roots.between(x -> x * x - 2, 2, 0, 0)).isCloseTo(Math.sqrt(2), within(4e-16));
        assertThat(Roots.between(Math::cos, 1, 2, 0)).isCloseTo(Math.PI / 2, within(4e-16));
        assertThat(Roots.between(x -> Math.signum(x - 0.3), 0, 1, 0)).isCloseTo(0.3, within(1e-15));
        assertThat(Roots.between(x -> x - 1, 1, 2, 0)).isEqualTo(1);
        assertThat(Roots.between(x -> x * x + 1, -1, 1, 0)).isNaN();
    }

    @Test
    void theLeastValueIsFoundAsNearAsValuesTell() {
        assertThat(Roots.least(x -> (x - 0.7) * (x - 0.7) + 3, 0, 2)).isCloseTo(0.7, within(1e-7));
        assertThat(Roots.least(Math::cos, 2, 4)).isCloseTo(Math.PI, within(1e-7));
    }

    @Test
    void aConditionEndsWhereItEndsAndWhatIsFoundHolds() {
        double up = Roots.last(x -> x * x < 2, 0, 2);
        assertThat(up * up).isLessThan(2);
        assertThat(Math.nextUp(up) * Math.nextUp(up)).isGreaterThanOrEqualTo(2);
        double down = Roots.last(x -> x * x > 2, 2, 0);
        assertThat(down).isEqualTo(Math.nextUp(up));
        assertThat(Roots.last(x -> x <= 0, 0, 1, 10)).isZero();
        assertThat(Roots.last(x -> x < 0.3, 0, 1, 10)).isBetween(0.299, 0.3);
    }

    @Test
    void whatIsMadeIsWhatIsMadeLast() {
        assertThat(Roots.lastMade(x -> x < 0.3 ? Optional.of(x) : Optional.empty(), 0, 1, 12)
                        .orElseThrow())
                .isBetween(0.2997, 0.3);
        assertThat(Roots.lastMade(Optional::of, 0, 1, 12)).contains(1.0);
        assertThat(Roots.lastMade(x -> Optional.<Double>empty(), 0, 1, 12)).isEmpty();
    }

    /** Brent's interpolation goes astray where there is no value on the way; signs still find the root. */
    @Test
    void aGapWithoutValuesOnTheWayDoesNotEndTheSearch() {
        double root = Roots.between(x -> x < 2 ? x < 1.2 ? -1 : Double.NaN : x - 2.5, 1, 3, 0);
        assertThat(root).isBetween(1.2, 2.5);
        double first = Roots.between(x -> x < 2.2 ? x < 1.2 ? -1 : Double.NaN : x - 2.5, 1, 3, 0);
        assertThat(first).isBetween(1.19, 2.5);
    }
}
