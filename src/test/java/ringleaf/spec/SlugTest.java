// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlugTest {

    @ParameterizedTest
    @CsvSource({
        "Harbour light, harbour-light",
        "  Cold-frame   vent!, cold-frame-vent",
        "Größe 2 é, gro-e-2-e",
        "<b>bold</b>, b-bold-b",
        "O'Neil lamp, oneil-lamp",
        "CON, con-design",
        "Com1, com1-design",
        "nul., nul-design",
        "Lens 64 mm, lens-64-mm",
        "ﬁeld, field",
        "-rf, rf"
    })
    void namesAFolder(String title, String slug) {
        assertThat(Slug.of(title)).contains(slug);
    }

    @Test
    void isTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(new Locale("tr"));
            assertThat(Slug.of("TITLE IN I")).contains("title-in-i");
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Titles in another script name a folder by the numbers of their letters, whatever the system's own script is. */
    @ParameterizedTest
    @CsvSource({"灯台, u706f-u53f0", "Маяк, u43c-u430-u44f-u43a", "π, u3c0", "大 Lamp, lamp", "٣, u663"})
    void titlesInOtherScriptsAreNumbered(String title, String folder) {
        assertThat(Slug.of(title)).contains(folder);
        assertThat(Slug.refusal(title)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'', is empty",
        "a/b, holds a /",
        "a\\b, holds a \\",
        "a .. b, holds ..",
        "!!!, has no letter and no digit"
    })
    void refusesTitlesThatAreNoFolder(String title, String reason) {
        assertThat(Slug.refusal(title)).contains(reason);
    }

    @Test
    void titlesHaveEightyCharactersAtMostAndNothingHidden() {
        assertThat(Slug.refusal("a".repeat(80))).isEmpty();
        assertThat(Slug.refusal("a".repeat(81))).contains("81 characters");
        assertThat(Slug.refusal("a\u202Eb")).contains("U+202E");
        assertThat(Slug.refusal("a\nb")).contains("U+000A");
        assertThat(Slug.refusal("<script>alert(1)<script>"))
                .as("markup is text")
                .isEmpty();
    }

    @Test
    void whateverTheTitleTheSlugIsSafe() {
        long seed = 99;
        Random random = new Random(seed);
        for (int run = 0; run < 5000; run++) {
            StringBuilder title = new StringBuilder();
            int length = 1 + random.nextInt(90);
            for (int i = 0; i < length; i++) {
                title.appendCodePoint(random.nextInt(4) == 0 ? random.nextInt(0xD7FF) : random.nextInt(128));
            }
            Slug.of(title.toString())
                    .ifPresent(slug -> assertThat(slug).as("seed %d", seed).matches("[a-z0-9]+(-[a-z0-9]+)*"));
            Slug.of(title.toString())
                    .ifPresent(slug -> assertThat(slug.length()).isLessThan(70));
        }
    }

    @ParameterizedTest
    @CsvSource({"shutter", "a", "vent-2", "x1234567890123456789012345678901234567890"})
    void mechanismsNames(String name) {
        assertThat(Slug.nameRefusal(name).isEmpty()).isEqualTo(name.length() <= 40);
    }

    @ParameterizedTest
    @CsvSource({"''", "Vent", "2vent", "-vent", "vent-", "ve nt", "../x", "a.b", "lpt1", "nul", "vént"})
    void badMechanismsNames(String name) {
        assertThat(Slug.nameRefusal(name)).isNotEmpty();
    }
}
