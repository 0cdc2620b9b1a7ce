// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class YamlReaderTest {
    private final Problems problems = new Problems();

    private Optional<Node> read(String text) {
        return YamlReader.read(SpecSource.of("a.yaml", text), problems);
    }

    @Test
    void keepsThePlaceOfEveryKeyAndValue() {
        Node.Mapping root = (Node.Mapping) read("a: 1\nb:\n  c: [x, 'y z']\n").orElseThrow();
        Node.Mapping b = (Node.Mapping) root.get("b");
        Node.Sequence c = (Node.Sequence) b.get("c");
        assertThat(b.entries().get("c").keyPlace().label()).isEqualTo("a.yaml:3:3");
        assertThat(c.items().get(1).place().label()).isEqualTo("a.yaml:3:10");
        assertThat(((Node.Scalar) c.items().get(1)).plain()).isFalse();
        assertThat(((Node.Scalar) c.items().get(1)).text()).isEqualTo("y z");
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void countsColumnsInCharactersThatPeopleSee() {
        Node.Mapping root = (Node.Mapping) read("{😀é: 1, b: 2}").orElseThrow();
        assertThat(root.entries().get("b").keyPlace().column()).isEqualTo(9);
    }

    @Test
    void readsLongTextsOfCharactersBeyondTheBasicPlane() {
        for (int shift = 0; shift < 3; shift++) {
            String value = "x".repeat(shift) + "😀".repeat(3000);
            Node.Mapping root =
                    (Node.Mapping) read("a: " + value + "\nb: '" + value + "'").orElseThrow();
            assertThat(((Node.Scalar) root.get("a")).text()).isEqualTo(value);
            assertThat(((Node.Scalar) root.get("b")).text()).isEqualTo(value);
        }
        assertThat(read("a: \uD83D")).as("half a character").isEmpty();
        assertThat(problems.text()).startsWith("a.yaml: is not readable as YAML");
    }

    @Test
    void namesEveryDuplicateKeyWithTheFirstPlace() {
        read("a: 1\nb: 2\na: 3\nc: {d: 1, d: 2}\n");
        assertThat(problems.text())
                .contains("a.yaml:3:1: the key a is given twice (first in line 1); keep one")
                .contains("a.yaml:4:11: the key d is given twice (first in line 4)");
        assertThat(problems.count()).isEqualTo(2);
    }

    @Test
    void refusesKeysThatAreNoNames() {
        read("? [a, b]\n: 1\n? {c: 1}\n: 2\n3: 4\n~: 5\ntrue: 6\n2.5: 7\n");
        assertThat(problems.text())
                .contains("1:3: a key is plain text here, and not a list")
                .contains("3:3: a key is plain text here, and not a map")
                .contains("5:1: the key 3 is not a name")
                .contains("6:1: a key is missing before the colon")
                .contains("7:1: the key true is not a name")
                .contains("8:1: the key 2.5 is not a name");
    }

    @Test
    void aDecimalCommaWithinBracesIsRecognised() {
        read("servo: {travel: 2,5}");
        assertThat(problems.text()).contains("the key 5 is not a name; a decimal comma within braces ends a value");
    }

    @Test
    void refusesTagsDocumentsAndUnknownAliases() {
        read("a: !!str 1\nb: !ruby/object:X {}\n");
        assertThat(problems.text())
                .contains("1:4: a tag (tag:yaml.org,2002:str)")
                .contains("2:4: a tag (!ruby/object:X)");
        Problems second = new Problems();
        assertThat(YamlReader.read(SpecSource.of("b.yaml", "a: 1\n---\nb: 2\n"), second))
                .isEmpty();
        assertThat(second.text()).startsWith("b.yaml:2:1: a second document starts here");
        Problems third = new Problems();
        assertThat(YamlReader.read(SpecSource.of("c.yaml", "a: &x [1, *x]"), third))
                .isEmpty();
        assertThat(third.text()).contains("the alias *x stands for nothing that is complete here");
    }

    @Test
    void anAliasStandsForItsValue() {
        Node.Mapping root = (Node.Mapping) read("a: &x {b: 1}\nc: *x\n").orElseThrow();
        assertThat(((Node.Mapping) root.get("c")).get("b")).isInstanceOf(Node.Scalar.class);
    }

    @Test
    void refusesAliasBombsBeforeTheyGrow() {
        StringBuilder text = new StringBuilder("a0: &a0 [1, 2, 3, 4, 5, 6, 7, 8, 9]\n");
        for (int i = 1; i < 30; i++) {
            String alias = "*a" + (i - 1);
            text.append("a").append(i).append(": &a").append(i).append(" [").append(alias);
            text.append((", " + alias).repeat(8)).append("]\n");
        }
        assertThat(read(text.toString())).isEmpty();
        assertThat(problems.text()).contains("more than 20000 values, aliases counted");
    }

    @Test
    void refusesDeepNestingWithoutRunningOutOfStack() {
        assertThat(read("a: " + "[".repeat(200_000))).isEmpty();
        assertThat(problems.text()).contains("a.yaml:1:53: nested deeper than 50 levels");
        Problems block = new Problems();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 200; i++) {
            text.append(" ".repeat(i)).append("a:\n");
        }
        assertThat(YamlReader.read(SpecSource.of("b.yaml", text.toString()), block))
                .isEmpty();
        assertThat(block.text()).contains("nested deeper than 50 levels");
    }

    @Test
    void refusesEndlessListsAndBrokenSyntaxWithAPlace() {
        assertThat(read("a: [" + "1,".repeat(30_000) + "]")).isEmpty();
        assertThat(problems.text()).contains("more than 20000 values");
        String[][] broken = {
            {"a: [1, 2\nb: 3\n", "not readable as YAML"},
            {"a: b: c\n", "1:5: not readable as YAML: a colon and a space stand where no key can be"},
            {"a:\n\tb: 1\n", "2:1: a tab stands in the indentation"},
            {"a: 'never closed\n", "not readable as YAML"},
            {"a: @x\n", "not readable as YAML"},
            {"%YAML 3.0\n---\na: 1\n", "YAML"}
        };
        for (String[] each : broken) {
            Problems own = new Problems();
            assertThat(YamlReader.read(SpecSource.of("a.yaml", each[0]), own))
                    .as(each[0])
                    .isEmpty();
            assertThat(own.text()).as(each[0]).contains(each[1]);
        }
    }
}
