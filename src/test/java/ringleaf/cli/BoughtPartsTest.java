// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;

/** Whatever a preset buys is told as one orders it, and is in the catalogues. */
class BoughtPartsTest {
    private static final Catalogues READY = new Catalogues(SharedFiles.NONE, new Problems());
    private static final Pattern SCREW = Pattern.compile("(M[0-9.]+) x ([0-9.]+), ISO (4762|7045)");
    private static final Pattern NUT = Pattern.compile("(M[0-9.]+) nut, ISO 4032");
    private static final Pattern SPACER = Pattern.compile("round spacer for (M[0-9.]+), ([0-9.]+) x ([0-9.]+) mm long");
    private static final Pattern ROD = Pattern.compile("([0-9.]+) mm .*, (EN|DIN|ASTM) [A0-9-]+(, cut to [0-9.]+ mm)?");
    private static final Pattern DOWEL = Pattern.compile("dowel pin ([0-9.]+) x ([0-9.]+), ISO 2338");
    private static final Pattern BELT = Pattern.compile("belt ([^, ]+) \\(pitch [0-9.]+ mm\\), .*");
    private static final Pattern BEARING = Pattern.compile("ball bearing ([0-9a-z]+), .*");
    private static final Pattern BOARD = Pattern.compile("board (board-[0-9x]+), .*");
    private static final Pattern RUNS =
            Pattern.compile("linear bearing for a rod of ([0-9.]+) mm, ([0-9.]+) mm outside, ([0-9.]+) mm long");
    private static final Pattern SERVO = Pattern.compile("([a-z0-9-]+), travel .*");

    @TempDir
    Path folder;

    static List<String> presets() {
        return Presets.names();
    }

    @ParameterizedTest
    @MethodSource("presets")
    void whatAPresetBuysIsSold(String preset) throws IOException {
        assertThat(Ran.in(folder, "make", preset, "-o", "out", "--states", "7").exit())
                .isZero();
        List<String> told = new ArrayList<>();
        for (String line : Files.readAllLines(folder.resolve("out/parts.csv"))) {
            Matcher bought = Pattern.compile("[a-z-]+,[0-9]+,bought,(\"[^\"]*\"|[^,]*),.*")
                    .matcher(line);
            if (bought.matches()) {
                String goods = bought.group(1).replace("\"", "");
                told.add(goods);
                assertThat(isSold(goods)).as(line).isTrue();
            }
        }
        assertThat(told).isNotEmpty();
    }

    private static boolean isSold(String goods) {
        Matcher screw = SCREW.matcher(goods);
        Matcher nut = NUT.matcher(goods);
        Matcher spacer = SPACER.matcher(goods);
        Matcher rod = ROD.matcher(goods);
        Matcher belt = BELT.matcher(goods);
        Matcher servo = SERVO.matcher(goods);
        Matcher bearing = BEARING.matcher(goods);
        if (bearing.matches()) {
            return READY.bearings().get(bearing.group(1)).isPresent();
        }
        Matcher board = BOARD.matcher(goods);
        if (board.matches()) {
            return READY.boards().get(board.group(1)).isPresent();
        }
        Matcher runs = RUNS.matcher(goods);
        if (runs.matches()) {
            String name = runs.group(1) + "x" + runs.group(2) + "x" + runs.group(3);
            return READY.linearBearings().get(name).isPresent();
        }
        if (screw.matches()) {
            return screw(screw.group(1)).sold().lengths().contains(Double.valueOf(screw.group(2)));
        }
        if (nut.matches()) {
            return !screw(nut.group(1)).sold().nutStandard().isEmpty();
        }
        if (spacer.matches()) {
            Screw.Spacer sold = screw(spacer.group(1)).sold().spacer().orElseThrow();
            return sold.lengths().contains(Double.valueOf(spacer.group(3)))
                    && sold.outside() == Double.parseDouble(spacer.group(2));
        }
        Matcher dowel = DOWEL.matcher(goods);
        if (dowel.matches()) {
            return READY.soldDowels()
                    .of(Double.parseDouble(dowel.group(1)))
                    .orElseThrow()
                    .lengths()
                    .contains(Double.valueOf(dowel.group(2)));
        }
        if (belt.matches()) {
            return READY.belts().names().contains(belt.group(1));
        }
        if (rod.matches()) {
            return READY.soldRods().of(Double.parseDouble(rod.group(1))).isPresent();
        }
        return goods.startsWith("shim washers for ") && goods.contains("DIN 988")
                || servo.matches() && READY.servos().names().contains(servo.group(1));
    }

    private static Screw screw(String name) {
        return READY.screws().get(name).orElseThrow();
    }
}
