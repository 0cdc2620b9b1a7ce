// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SpecSourceTest {
    private final Problems problems = new Problems();

    private Optional<SpecSource> read(byte[] bytes) throws IOException {
        return SpecSource.read("a.yaml", new ByteArrayInputStream(bytes), problems);
    }

    @Test
    void readsNoFurtherThanTheLimit() throws IOException {
        long[] given = new long[1];
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return given[0]++ < 20_000_000 ? 'a' : -1;
            }
        };
        assertThat(SpecSource.read("huge.yaml", endless, problems)).isEmpty();
        assertThat(problems.text()).startsWith("huge.yaml: is larger than 1 MiB, the most that is read");
        assertThat(given[0]).isEqualTo(SpecSource.SIZE_LIMIT + 1L);
    }

    @Test
    void tellsEmptyBinaryAndForeignEncodingsApart() throws IOException {
        Object[][] cases = {
            {new byte[0], "is empty"},
            {" \n\n".getBytes(StandardCharsets.UTF_8), "is empty"},
            {new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 0, 1}, "is a binary file"},
            {"title: x\ncafé: 1".getBytes(StandardCharsets.ISO_8859_1), "is not UTF-8 text (byte 13, in line 2)"},
            {"title: x".getBytes(StandardCharsets.UTF_16), "is written in UTF-16"},
            {new byte[] {'a', ':', (byte) 0xED, (byte) 0xA0, (byte) 0x80}, "is not UTF-8 text (byte 3, in line 1)"},
            {"a: 1\nb: \u001b[31mx".getBytes(StandardCharsets.UTF_8), "2:4: a control character (U+001B) stands here"}
        };
        for (Object[] each : cases) {
            Problems own = new Problems();
            assertThat(SpecSource.read("a.yaml", new ByteArrayInputStream((byte[]) each[0]), own))
                    .isEmpty();
            assertThat(own.text()).contains((String) each[1]).doesNotContain("\u001b");
        }
    }

    @Test
    void passesOverAByteOrderMark() throws IOException {
        SpecSource source =
                read("\uFEFFtitle: x".getBytes(StandardCharsets.UTF_8)).orElseThrow();
        assertThat(source.text()).isEqualTo("title: x");
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void givesLinesWhateverEndsThem() {
        SpecSource source = SpecSource.of("a", "one\r\ntwo\rthree\n\nfive");
        assertThat(source.line(1)).isEqualTo("one");
        assertThat(source.line(2)).isEqualTo("two");
        assertThat(source.line(3)).isEqualTo("three");
        assertThat(source.line(4)).isEmpty();
        assertThat(source.line(5)).isEqualTo("five");
        assertThat(source.line(6)).isEmpty();
    }
}
