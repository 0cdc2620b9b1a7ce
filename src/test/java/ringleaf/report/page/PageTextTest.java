// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.draw.PlainText;

class PageTextTest {
    private static String html(String text) {
        return PageText.html(new StringBuilder(), text).toString();
    }

    private static String json(String text) {
        return PageText.json(new StringBuilder(), text).toString();
    }

    @Test
    void markupBecomesReferences() {
        assertThat(html("plain (text) \\ 1.5")).isEqualTo("plain (text) \\ 1.5");
        assertThat(html("<a href=\"x\">'&'</a>")).isEqualTo("&#60;a href=&#34;x&#34;&#62;&#39;&#38;&#39;&#60;/a&#62;");
        assertThat(html("\u00d864 \ud83d\udd26")).isEqualTo("&#216;64 &#128294;");
    }

    @Test
    void nothingInTheDataEndsTheElementThatHoldsIt() {
        assertThat(json("</script><!--")).isEqualTo("\"\\u003c/script\\u003e\\u003c!--\"");
        assertThat(json("a\u2028b\u2029\"\\'")).isEqualTo("\"a b \\u0022\\u005c'\"");
    }

    @Test
    void aReaderOfJsonFindsTheSameTextAgain() throws Exception {
        long seed = 20260824;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            StringBuilder text = new StringBuilder();
            for (int k = random.nextInt(12); k >= 0; k--) {
                text.appendCodePoint(random.nextInt(4) == 0 ? random.nextInt(0x110000) : random.nextInt(0x80));
            }
            String written = json(text.toString());
            assertThat(written).as("seed " + seed + ", " + i).matches("[\\x20-\\x7e&&[^<>&]]*");
            assertThat(new ObjectMapper().readValue(written, String.class))
                    .as("seed " + seed + ", " + i)
                    .isEqualTo(PlainText.line(text.toString()));
        }
    }

    @Test
    void whatIsNoNumberIsNull() {
        assertThat(PageText.number(new StringBuilder(), Double.NaN, 3).toString())
                .isEqualTo("null");
        assertThat(PageText.number(new StringBuilder(), -1.23456, 3).toString()).isEqualTo("-1.235");
    }
}
