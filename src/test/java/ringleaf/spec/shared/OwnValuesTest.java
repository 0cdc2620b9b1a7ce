// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** A value in a user's own catalogue counts: nothing usual takes its place, and no other value hides it. */
class OwnValuesTest {
    private static final Pattern VALUE = Pattern.compile("\n    ([a-z-]+): \\{is: ([0-9.]+)([^,}\\[]*),");

    private static Catalogues with(String file, String text, Problems problems) {
        return new Catalogues(
                (asked, own) -> asked.equals(file) ? List.of(SpecSource.of("mine/" + file, text)) : List.of(),
                problems);
    }

    private static Stock stock(String name, String values, Problems problems) {
        return with("stock.yaml", "stock: {" + name + ": {" + values + "}}", problems)
                .stock()
                .get(name)
                .orElse(null);
    }

    private static Stock stock(String name, String values) {
        Problems problems = new Problems();
        Stock stock = stock(name, values, problems);
        assertThat(problems.text()).isEmpty();
        return stock;
    }

    /** Every figure of a ready entry, a little larger in an own file: what is made of the entry must change with it. */
    @ParameterizedTest
    @CsvSource({
        "processes.yaml, processes, co2-laser",
        "processes.yaml, processes, filament-print",
        "stock.yaml, stock, acrylic-3",
        "stock.yaml, stock, brass-0.15",
        "stock.yaml, stock, plain-sheet",
        "servos.yaml, servos, micro-180",
        "screws.yaml, screws, M3",
        "bearings.yaml, bearings, 623",
        "linear-bearings.yaml, linear-bearings, 5x10x15",
        "boards.yaml, boards, board-85x56",
        "belts.yaml, belts, T5"
    })
    void noOwnValueIsWithoutEffect(String file, String key, String name) throws IOException {
        Function<Catalogues, Object> read = catalogues -> switch (key) {
            case "processes" -> catalogues.processes().require(name);
            case "stock" -> catalogues.stock().require(name);
            case "servos" -> catalogues.servos().require(name);
            case "screws" -> catalogues.screws().require(name);
            case "bearings" -> catalogues.bearings().require(name);
            case "linear-bearings" -> catalogues.linearBearings().require(name);
            case "boards" -> catalogues.boards().require(name);
            default -> catalogues.belts().require(name);
        };
        String ready = figures(read.apply(new Catalogues(SharedFiles.NONE, new Problems())));
        String text = Files.readString(Path.of("shared", file));
        int from = text.indexOf("\n  " + (Character.isDigit(name.charAt(0)) ? "\"" + name + "\"" : name) + ":") + 2;
        assertThat(from).isGreaterThan(1);
        Matcher next = Pattern.compile("\n  [^ #]").matcher(text);
        String block = text.substring(from, next.find(from) ? next.start() + 1 : text.length());
        List<String> tried = new ArrayList<>();
        for (Matcher value = VALUE.matcher(block); value.find(); ) {
            double more = 1.002 * Double.parseDouble(value.group(2));
            String larger = value.group(1).endsWith("teeth")
                    ? String.valueOf((int) more + 1)
                    : String.format(
                            Locale.ROOT,
                            "%.6f%s",
                            more > 0 ? more : value.group(1).equals("holes-across") ? 4 : 0.01,
                            value.group(3));
            String own = key + ": {\"" + name + "\": {" + value.group(1) + ": " + larger + "}}";
            Problems problems = new Problems();
            Object made = read.apply(with(file, own, problems));
            assertThat(problems.text()).as(own).isEmpty();
            // the entry alone tells the value in any case: it is left out
            assertThat(figures(made)).as(own).isNotEqualTo(ready);
            tried.add(value.group(1));
        }
        assertThat(tried).hasSizeGreaterThan(2);
    }

    /** All components of a record but the entry they were read from, and what it comes to in another thickness. */
    private static String figures(Object made) {
        String all = made.toString().replaceAll("entry=Entry\\[.*", "");
        return made instanceof MakingProcess process ? all + process.cuttingSpeed() : all;
    }

    @Test
    void theOwnLimitOfSlopeHoldsInEveryThickness() {
        double own = Math.toRadians(5);
        assertThat(stock("mine", MINE + "thickness: 0.5, slope-limit: 5")
                        .ofThickness(0.5)
                        .slopeLimit())
                .isEqualTo(own);
        assertThat(stock("plain-sheet", "slope-limit: 5").ofThickness(0.5).slopeLimit())
                .isEqualTo(own);
        assertThat(stock("plain-sheet", "friction: 0.2").ofThickness(0.5).slopeLimit())
                .as("the usual one, which is told by the thickness")
                .isEqualTo(Stock.THICK_SLOPE);
    }

    private static final String MINE =
            "material: spring bronze, flatness: 0, density: 8.8g/cm3, stiffness: 110GPa, yield-stress: 600MPa,"
                    + " friction: 0.3, made-by: fibre-laser, ";

    @Test
    void ownStressGoesOverTheReadyStrainAndBothMustAgree() {
        assertThat(stock("acrylic-3", "yield-stress: 45MPa").yieldStrain()).isCloseTo(45 / 3000.0, within(1e-12));
        assertThat(stock("brass-0.15", "yield-strain: 0.5%").yieldStrain()).isCloseTo(0.005, within(1e-12));
        Problems problems = new Problems();
        assertThat(stock("acrylic-3", "yield-stress: 45MPa, yield-strain: 3%", problems))
                .isNull();
        assertThat(problems.text()).contains("acrylic-3.yield-stress: contradicts yield-strain");
        assertThat(stock("acrylic-3", "yield-stress: 45MPa, yield-strain: 1.5%").yieldStrain())
                .isCloseTo(0.015, within(1e-12));
    }

    @Test
    void ownKerfOfAProcessGoesOverTheReadyOneOfAStock() {
        Catalogues ready = new Catalogues(SharedFiles.NONE, new Problems());
        Stock acrylic = ready.stock().require("acrylic-3");
        assertThat(acrylic.kerf(ready.processes().require("co2-laser"))).isEqualTo(0.229);
        MakingProcess own = with("processes.yaml", "processes: {co2-laser: {kerf: 0.11}}", new Problems())
                .processes()
                .require("co2-laser");
        assertThat(acrylic.kerf(own)).isEqualTo(0.11);
        assertThat(stock("acrylic-3", "kerf: 0.13").kerf(own))
                .as("of the stock, where both are own")
                .isEqualTo(0.13);
    }
}
