// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import ringleaf.part.Figure;
import ringleaf.part.Saying;
import ringleaf.part.ShownUnit;

class SentencesTest {
    /** 1 in is 25.4 mm exactly (ISO 31-1:1992, annex A). */
    @Test
    void lengthsAreToldInTheUnitAskedFor() {
        Saying said = Saying.of("verify.depth", Figure.mm(25.4), Figure.mm(12.7));
        assertThat(Sentences.of(said, ShownUnit.MM)).isEqualTo("The stack is 25.4 mm deep; 12.7 mm is allowed.");
        assertThat(Sentences.of(said, ShownUnit.IN)).isEqualTo("The stack is 1 in deep; 0.5 in is allowed.");
        assertThat(Sentences.of(said, ShownUnit.THOU)).isEqualTo("The stack is 1000 thou deep; 500 thou is allowed.");
    }

    /** A name that looks like a length stays a name. */
    @Test
    void namesStayAsTheyAre() {
        Saying said = Saying.of("verify.no-neck", "plate of 3 mm", Figure.mm(25.4));
        assertThat(Sentences.of(said, ShownUnit.IN))
                .isEqualTo("The plate of 3 mm has one plain outline and no neck under 1 in.");
    }

    @Test
    void oneIsToldApartFromMany() {
        assertThat(Sentences.of(Saying.of("verify.built", 1, Saying.NONE), ShownUnit.MM))
                .isEqualTo("1 part comes to their places past what is there already.");
        assertThat(Sentences.of(
                        Saying.of("verify.built", 7, Saying.of("verify.leaves-threaded", 2, "leaf", Figure.mm(0.5))),
                        ShownUnit.MM))
                .isEqualTo("7 parts come to their places past what is there already; 2 leafs go in under others,"
                        + " whose tips have to be lifted by 0.5 mm.");
    }

    /** Braces that are no marks belong to what is typed into a spec. */
    @Test
    void otherBracesStay() {
        assertThat(Sentences.of(Saying.of("verify.setup-mend", Figure.number(21, 0), "two", "one"), ShownUnit.IN))
                .isEqualTo("; place: {at: {x: 21mm}} for two would stand clear of one");
    }

    @Test
    void whatHasNoWordsIsAFault() {
        assertThatThrownBy(() -> Sentences.of(Saying.of("verify.nothing-of-it"), ShownUnit.MM))
                .hasMessageContaining("verify.nothing-of-it");
    }
}
