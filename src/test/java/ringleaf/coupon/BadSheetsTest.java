// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.spec.text.Problems;

/** Sheets that are none of ours, not whole, or whose readings cannot be true together. */
class BadSheetsTest {
    private static final MadeUpMachine MACHINE = new MadeUpMachine("co2-laser", "acrylic-3");
    private static final String GOOD = MACHINE.sheet(3);

    private static String refusal(String sheet) {
        Problems problems = new Problems();
        assertThat(MACHINE.measured(sheet, problems)).isEmpty();
        return problems.text();
    }

    private static String changed(String from, String to) {
        assertThat(GOOD).contains(from);
        return GOOD.replace(from, to);
    }

    /** The line of a feature with other words behind its drawn size. */
    private static String line(String name, UnaryOperator<String> change) {
        int at = GOOD.indexOf("  " + name + ": {");
        int end = GOOD.indexOf('\n', at);
        return GOOD.substring(0, at) + change.apply(GOOD.substring(at, end)) + GOOD.substring(end);
    }

    private static String measured(String name, String readings) {
        return line(name, l -> l.replaceFirst("measured: .*}", "measured: " + readings + "}"));
    }

    @Test
    void theGoodOneIsTaken() {
        Problems problems = new Problems();
        assertThat(MACHINE.measured(GOOD, problems)).as(problems.text()).isPresent();
    }

    @Test
    void theEmptySheetNamesEveryGap() {
        String text = refusal(CouponSheet.of(MACHINE.coupon));
        for (String gap : new String[] {
            "pin", "P1", "P6", "BX", "H5", "S4", "tongue-enters", "pin-slides", "pin-held", "pin-turns", "W1", "D8"
        }) {
            assertThat(text).contains(": " + gap + ": is not filled in");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "title: Harbour light | this is no sheet of a coupon",
                "[1, 2, 3] | this is no sheet of a coupon",
                "{ringleaf-coupon: 2} | this sheet has the form 2, and this version reads form 1",
                "{ringleaf-coupon: [1]} | this sheet has the form a list",
                "{ringleaf-coupon: 1} | is missing",
            })
    void whatIsNotOursIsRefused(String sheet, String words) {
        assertThat(refusal(sheet)).contains(words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "P2: {drawn: 4mm | P2: {drawn: 4.1mm | the drawn sizes here are not those of piece",
                "stock: acrylic-3 | stock: acrylic-2 | the drawn sizes here are not those of piece",
                "C9: 3.21mm, | '' | the drawn sizes here are not those of piece",
                "units: mm | units: furlongs | furlongs is not one of mm",
                "units: mm | units: in | most readings look as if they were in millimetres",
                "outside: {step: 0.01mm, error: 0.0mm} | outside: {step: 0.01mm} | outside.error: is missing",
                "tongue-enters: | tongue-enter: | unknown key; did you mean tongue-enters?",
            })
    void whatWasChangedIsSeen(String from, String to, String words) {
        assertThat(refusal(changed(from, to))).contains(words);
    }

    @Test
    void readingsInAnotherUnitAreSeenOneByOneAndAllTogether() {
        assertThat(refusal(measured("P3", "[0.2287, 0.2290]")))
                .contains("P3: 0.229 mm was read where 6 mm was drawn; in inches it would be 5.809 mm");
        assertThat(refusal(measured("P3", "[5,81, 5,80]"))).contains("P3: 81 mm was read where 6 mm was drawn");
        assertThat(refusal(measured("P3", "[581 thou, 5.8]"))).contains("P3: 14.757 mm was read where 6 mm was drawn");
        StringBuilder inches = new StringBuilder();
        for (String line : GOOD.split("\n", -1)) {
            int at = line.startsWith("#") ? -1 : line.indexOf("measured: [");
            if (at < 0 || line.contains("pin:")) {
                inches.append(line).append('\n');
                continue;
            }
            inches.append(line, 0, at + 11);
            String[] values = line.substring(at + 11, line.indexOf(']')).split(", ");
            for (int i = 0; i < values.length; i++) {
                double value = Double.parseDouble(values[i]) / 25.4;
                inches.append(i == 0 ? "" : ", ").append(String.format(Locale.ROOT, "%.4f", value));
            }
            inches.append("]}\n");
        }
        assertThat(refusal(inches.toString())).contains("units: most readings look as if they were in inches");
        // Written in inches and said so, the same sheet gives the same kerf.
        String said = inches.toString()
                .replace("units: mm", "units: in")
                .replace("measured: [3.0, 3.0]", "measured: [3mm, 3mm]");
        Problems problems = new Problems();
        Measured again = MACHINE.measured(said, problems).orElseThrow(() -> new AssertionError(problems.text()));
        Measured first = MACHINE.measured(GOOD, new Problems()).orElseThrow();
        assertThat(MadeUpMachine.value(again, "kerf").value())
                .isCloseTo(MadeUpMachine.value(first, "kerf").value(), org.assertj.core.api.Assertions.within(0.001));
    }

    @Test
    void slipsAreSeen() {
        assertThat(refusal(measured("H4", "[8.21, 8.71, 8.20]")))
                .contains("H4: 8.71 mm does not go with the other readings of this line")
                .contains("8.71, ");
        assertThat(refusal(measured("H4", "[8.61, 8.62, 8.60]")))
                .contains("H4: its mean 8.61 mm is")
                .contains("larger than");
        assertThat(refusal(measured("P1", "[2.8]"))).contains("has one reading, and two are the least");
        assertThat(refusal(measured("P1", "[a, b]"))).contains("P1");
        assertThat(refusal(measured("P1", "[-2.8, -2.8]"))).contains("P1");
    }

    @Test
    void laddersThatRunBackwardsAreSeen() {
        String text = refusal(line("W5", l -> l.replace("whole: yes", "whole: no")));
        assertThat(text).contains("W5: is not whole at 3.14 mm, while W1 is at 0.98 mm");
        assertThat(refusal(line("D8", l -> l.replace("open: yes", "open: maybe"))))
                .contains("maybe is neither yes nor no");
        String none = GOOD.replace("whole: yes", "whole: no");
        assertThat(refusal(none)).contains("W8: not even 4.76 mm came out whole");
    }

    @Test
    void fitsThatCannotBeAreSeen() {
        assertThat(refusal(GOOD.replaceFirst("pin-turns: +F\\d+", "pin-turns: F1")))
                .contains("is said to hold the pin");
        String narrow = GOOD.replaceFirst("pin-turns: +F\\d+", "pin-turns: F2")
                .replaceFirst("pin-held: +F\\d+", "pin-held: F1");
        assertThat(refusal(narrow)).contains("pin-turns: F2 is").contains("cannot turn in it");
        assertThat(refusal(GOOD.replaceFirst("tongue-enters: +C\\d+", "tongue-enters: C1")))
                .contains("cannot enter it");
        assertThat(refusal(GOOD.replaceFirst("pin-slides: +C\\d+", "pin-slides: C11")))
                .contains("C11 is none of C1 to C10");
        assertThat(refusal(
                        GOOD.replace("pin: {drawn: 3mm, measured: [3.0, 3.0]}", "pin: {drawn: 3mm, measured: none}")))
                .contains("a pin was tried, and its diameter was not measured");
    }

    @Test
    void aMachineThatCorrectsAlreadyIsSeen() {
        MadeUpMachine corrects = new MadeUpMachine("co2-laser", "acrylic-3");
        corrects.kerf = -0.12;
        corrects.leastWeb = 0.5;
        Problems problems = new Problems();
        assertThat(corrects.measured(corrects.sheet(5), problems)).isEmpty();
        assertThat(problems.text()).contains("corrects the kerf already");
    }

    @Test
    void slotsAndPinsThatContradictEachOtherAreSeen() {
        String text = GOOD;
        for (Feature slot : MACHINE.coupon.of(Feature.Kind.SLOT)) {
            String narrow = "[" + (slot.drawn() - 0.2) + ", " + (slot.drawn() - 0.21) + "]";
            text = text.replaceFirst("(" + slot.name() + ": \\{drawn: [^,]+, measured: )\\[[^]]*]", "$1" + narrow);
        }
        assertThat(refusal(text)).contains("slots come out").contains("contradict each other");
    }

    @Test
    void aPieceThatWasScaledIsSeen() {
        MadeUpMachine scaled = new MadeUpMachine("co2-laser", "acrylic-3");
        scaled.scaleX = 0.02;
        scaled.scaleY = 0.02;
        Problems problems = new Problems();
        assertThat(scaled.measured(scaled.sheet(2), problems)).isEmpty();
        assertThat(problems.text()).contains("BX: the piece came out at 10").contains("BY: ");
    }

    @Test
    void whatIsLostIsLeftOutUntilTooMuchIs() {
        Problems problems = new Problems();
        assertThat(MACHINE.measured(measured("H2", "none"), problems))
                .as(problems.text())
                .isPresent();
        String most = GOOD.replaceAll("(  [H][345]: \\{drawn: [^,]+, measured: )\\[[^]]*]", "$1none");
        assertThat(refusal(most)).contains("2 of holes were measured, and 3 are the least");
    }
}
