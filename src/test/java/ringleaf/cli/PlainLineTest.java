package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** What is read without the options' library means what the library reads. */
class PlainLineTest {
    private static final List<String> WORDS = List.of(
            "make", "check", "my.yaml", "harbour-light", "-", "--", "-o", "--output", "out", "--set", "a.b=c", "blades=14",
            "--formats", "svg,dxf", "--dxf", "r12", "--states", "61", "--shared", "own", "--thorough", "--kerf",
            "--anyway", "--page-size", "a4", "--slice", "--output=out", "-oout", "@args", "", "--nothing", "-h", "--help", "\"quoted\"", "-V", "a b");
    private static final List<String> OPTIONS = List.of(
            Syntax.OUTPUT, Syntax.SET, Syntax.FORMATS, Syntax.DXF, Syntax.STATES, Syntax.SHARED, Syntax.THOROUGH,
            Syntax.KERF, MakeCommand.ANYWAY, MakeCommand.PAGE_SIZE);

    @ParameterizedTest
    @ValueSource(strings = {"make my.yaml", "make my.yaml -o out", "make --set a=1 my.yaml --set b=2 --kerf --states 61"})
    void plainLinesAreTaken(String line) {
        assertThat(PlainLine.of(line.split(" "))).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "make", "check my.yaml", "make --kerf", "make my.yaml other.yaml", "make my.yaml -o", "make my.yaml -o a -o b",
        "make my.yaml --kerf --kerf", "make my.yaml --states=61", "make -", "make my.yaml -o --kerf", "make @file"
    })
    void everythingElseIsLeftToTheLibrary(String line) {
        assertThat(PlainLine.of(line.split(" "))).isEmpty();
    }

    @Test
    void randomLinesMeanTheSame() {
        long seed = 20261125;
        Random random = new Random(seed);
        int taken = 0;
        for (int i = 0; i < 20_000; i++) {
            List<String> line = new ArrayList<>(List.of("make"));
            int length = 1 + random.nextInt(6);
            for (int k = 0; k < length; k++) {
                line.add(WORDS.get(random.nextInt(WORDS.size())));
            }
            String[] args = line.toArray(new String[0]);
            Optional<Typed> plain = PlainLine.of(args);
            if (plain.isPresent()) {
                taken++;
                assertThat(told(plain.get())).as("seed %d, line %d: %s", seed, i, line).isEqualTo(told(parsed(args)));
            }
        }
        assertThat(taken).as("lines that both read").isGreaterThan(1000);
    }

    private static Typed parsed(String[] args) {
        try {
            List<CommandLine> chain = Syntax.line(args).parseArgs(args).asCommandLineList();
            return new ParsedLine(chain.get(chain.size() - 1).getParseResult());
        } catch (ParameterException e) {
            throw new AssertionError("the library refuses " + List.of(args) + ": " + e.getMessage(), e);
        }
    }

    private static List<Object> told(Typed typed) {
        List<Object> all = new ArrayList<>(Arrays.asList(typed.positional(0), typed.positional(1)));
        for (String option : OPTIONS) {
            boolean flag = option.equals(Syntax.THOROUGH) || option.equals(Syntax.KERF) || option.equals(MakeCommand.ANYWAY);
            all.add(option + " " + typed.has(option));
            if (option.equals(Syntax.SET)) {
                all.add(typed.values(option));
            } else if (!flag) {
                all.add(option + " " + typed.value(option));
            }
        }
        return all;
    }
}
