// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTextTest {
    @Test
    void keepsWhatCanBeRead() {
        String text = "Harbour light Ø64 – 14 Blätter \uD83D\uDCA1";
        assertThat(PlainText.line(text)).isSameAs(text);
    }

    @Test
    void dropsWhatCannotStandOnALine() {
        assertThat(PlainText.line("a\nb\tc\r")).isEqualTo("a b c ");
        assertThat(PlainText.line("\u0000a\u001b[31m\u007f\u009fb")).isEqualTo("a[31mb");
        assertThat(PlainText.line("x\ud800y\udc00z")).isEqualTo("xyz");
        assertThat(PlainText.line("\uFFFE\uFFFF\uFEFF\uFDD0\u202Ea\u2066")).isEqualTo("a");
    }
}
