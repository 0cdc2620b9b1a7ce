// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.spec.text.Decimal;

class QuantityReaderTest {

    static List<String> reference() throws IOException {
        List<String> rows = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                QuantityReaderTest.class.getResourceAsStream("/reference/units.csv"), StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                if (!line.startsWith("#")) {
                    rows.add(line);
                }
            }
        }
        return rows;
    }

    @ParameterizedTest
    @MethodSource("reference")
    void readsEveryUnit(String row) {
        check(row);
    }

    @Test
    void readsAndWritesTheSameWhereDecimalsTakeACommaAndDigitsAreOthers() throws IOException {
        Locale before = Locale.getDefault();
        try {
            for (Locale locale : List.of(Locale.GERMANY, Locale.forLanguageTag("ar-EG-u-nu-arab"), new Locale("tr"))) {
                Locale.setDefault(locale);
                reference().forEach(QuantityReaderTest::check);
                assertThat(Decimal.of(1234.5678)).isEqualTo("1234.5678");
                assertThat(QuantityReader.shown(0.5, Quantity.LENGTH)).isEqualTo("0.5 mm");
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    private static void check(String row) {
        String[] cells = row.split(";");
        Quantity quantity = Quantity.valueOf(cells[0]);
        Unit bare = quantity == Quantity.LENGTH
                ? LengthUnit.valueOf(cells[1]).unit()
                : quantity.takesBare() ? quantity.shown() : null;
        QuantityReader.Result result = QuantityReader.read(cells[2], quantity, bare);
        assertThat(result.reason()).as(row).isEmpty();
        double expected = Double.parseDouble(cells[3]);
        double error = Double.parseDouble(cells[4]) * Math.abs(expected);
        assertThat(result.value()).as(row).isCloseTo(expected, within(error));
        assertThat(cells[2]).as("the schema's pattern takes it too").matches(SchemaText.pattern(quantity));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "2,5; holds a comma; write 2.5; 1",
                "1,234.5; holds a comma; ''; 1",
                "014; starts with a zero; write 14; 0",
                "00.5; starts with a zero; write 0; 0",
                "1_000; underscore; write 1000; 1",
                "1:30; base 60; write a decimal number; 1",
                "0x40; hexadecimal; ''; 0",
                "0o17; hexadecimal, octal; ''; 0",
                ".nan; not a finite number; write a length out; 0",
                "NaN; not a finite number; write a length out; 0",
                "-.inf; not a finite number; write a length out; 0",
                "Infinity; not a finite number; write a length out; 0",
                "1e999; too large a number; ''; 0",
                "64m; m is not a unit of a length (mm, cm, in, \", thou); ''; 2",
                "64inch; inch is not a unit; ''; 2",
                "64MM; MM is not a unit; did you mean mm?; 2",
                "12 tou; tou is not a unit; did you mean thou?; 3",
                "64 mm mm; a + or - is missing before mm; ''; 6",
                "86mm 12thou; a + or - is missing before 12thou; ''; 5",
                "2-1/2 in; can mean a mixed number or a difference; write a mixed number with a space; 0",
                "2 5/4 in; below 1; ''; 2",
                "1/0; a fraction over zero; ''; 1",
                "1.5/2; a fraction is made of whole numbers; ''; 0",
                "1½; ½ is not read; write 1/2; 1",
                "−5; − is not read; write the plain minus; 0",
                "5″; ″ is not read; write in or the plain; 1",
                "5'; ' is not read; write inches; 1",
                "--5; -5 is not a length; ''; 1",
                "5 +; nothing is not a length; ''; 3",
                "wide; wide is not a length (64, 64mm; ''; 0",
                "0.5.5; .5 is not a unit; ''; 3"
            })
    void refusesWithAReasonAndAPlace(String text, String reason, String hint, int offset) {
        QuantityReader.Result result = QuantityReader.read(text, Quantity.LENGTH, LengthUnit.MM.unit());
        assertThat(result.reason()).contains(reason);
        assertThat(result.hint()).startsWith(hint.equals("''") ? "" : hint);
        assertThat(result.offset()).as("offset").isEqualTo(offset);
    }

    @Test
    void asksForAUnitWhereABareNumberSaysTooLittle() {
        assertThat(QuantityReader.read("5", Quantity.TORQUE, null).reason()).contains("needs a unit");
        assertThat(QuantityReader.read("1Nm + 1Nm", Quantity.TORQUE, null).reason())
                .contains("a single number");
        assertThat(QuantityReader.read("5mm", Quantity.NUMBER, null).reason()).contains("a plain number, without mm");
        assertThat(QuantityReader.read("9".repeat(200), Quantity.LENGTH, LengthUnit.MM.unit())
                        .reason())
                .contains("longer than any number needs");
        assertThat(QuantityReader.read(" ", Quantity.LENGTH, LengthUnit.MM.unit())
                        .reason())
                .contains("is empty");
    }

    @Test
    void whateverItReadsTheSchemasPatternTakes() {
        long seed = 20_261_125L;
        Random random = new Random(seed);
        String[] pieces = {
            "1", "2.5", ".5", "3/8", "2 1/2", "mm", "in", "\"", "thou", "cm", " ", "+", "-", "e3", "deg", "rad", "Nm",
            "%", "x"
        };
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            int count = 1 + random.nextInt(6);
            for (int k = 0; k < count; k++) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            Quantity quantity = Quantity.values()[random.nextInt(3)];
            Unit bare = quantity.takesBare() ? quantity.shown() : null;
            if (!QuantityReader.read(text.toString(), quantity, bare).refused()) {
                read++;
                assertThat(text.toString()).as("seed %d, run %d", seed, i).matches(SchemaText.pattern(quantity));
            }
        }
        assertThat(read).as("enough of them were readable").isGreaterThan(1000);
    }
}
