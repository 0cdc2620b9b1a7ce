// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class CounterTest {
    private static String shown(boolean terminal) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream err = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        try (Counter counter = Counter.of("sheets", terminal, err)) {
            counter.tried(0, 12);
            counter.tried(6, 12);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aTerminalSeesABarThatIsWipedInTheEnd() {
        String text = shown(true);
        assertThat(text).contains("\rsheets [" + "#".repeat(12) + ".".repeat(12) + "] 6 of 12 orders of laying tried");
        assertThat(text).doesNotContain("\n").endsWith(" \r");
    }

    @Test
    void elsewhereNothingIsSaid() {
        assertThat(shown(false)).isEmpty();
    }
}
