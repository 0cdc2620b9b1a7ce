// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({
        "0,6,0",
        "-0.0,6,0",
        "-0.0000004,6,0",
        "1.5,6,1.5",
        "-0.5,6,-0.5",
        "12.000001,6,12.000001",
        "0.05,6,0.05",
        "100,6,100",
        "1234567.25,1,1234567.2",
        "3,0,3",
        "0.0000005000001,6,0.000001",
        "5e9,12,5000000000",
        "1e18,6,1000000000000000000",
        "-1e-20,9,0"
    })
    void roundsAndTrims(double value, int decimals, String text) {
        assertThat(Decimals.of(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "3247.220912345678,9,9,3247.22091",
        "0.123456789123,9,9,0.123456789",
        "123456789012.5,9,9,123456789000",
        "0,12,9,0",
        "-2.5,12,9,-2.5",
        "9999.99999,6,9,10000",
        "0.00000000049,12,9,0",
        "1e15,12,9,1000000000000000"
    })
    void keepsSignificantDigits(double value, int digits, int decimals, String text) {
        assertThat(Decimals.significant(value, digits, decimals)).isEqualTo(text);
    }

    @Test
    void agreesWithDecimalArithmetic() {
        long seed = 42;
        Random random = new Random(seed);
        for (int i = 0; i < 4000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(13) - 5);
            int decimals = random.nextInt(10);
            BigDecimal written = new BigDecimal(Decimals.of(value, decimals));
            BigDecimal off = written.subtract(new BigDecimal(value)).abs();
            BigDecimal half = new BigDecimal("0.5").movePointLeft(decimals).add(new BigDecimal(Math.ulp(value)));
            assertThat(off)
                    .as("seed " + seed + ", " + value + " to " + decimals)
                    .isLessThanOrEqualTo(half);
            int digits = 3 + random.nextInt(10);
            BigDecimal few = new BigDecimal(Decimals.significant(value, digits, 15));
            BigDecimal expected = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
            BigDecimal unit = BigDecimal.ONE.movePointLeft(Math.min(15, expected.scale()));
            assertThat(few.subtract(expected).abs())
                    .as("seed " + seed + ", " + value)
                    .isLessThanOrEqualTo(unit);
        }
    }

    @Test
    void neverWritesWhatIsNoNumber() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> Decimals.of(bad, 6)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Decimals.significant(bad, 9, 9)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void readsBackWhatItSaysItRoundsTo() {
        Random random = new Random(5);
        for (int i = 0; i < 1000; i++) {
            double value = (random.nextDouble() - 0.5) * 2000;
            assertThat(Decimals.rounded(value, 6)).isEqualTo(Double.parseDouble(Decimals.of(value, 6)));
        }
    }

    @Test
    void doesNotAskForTheLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Decimals.of(1234.5, 3)).isEqualTo("1234.5");
            assertThat(Decimals.significant(1e18 / 3, 12, 9)).isEqualTo("333333333333000000");
        } finally {
            Locale.setDefault(before);
        }
    }
}
