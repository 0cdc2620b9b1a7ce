// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is written is what a public reader of JSON reads. */
class JsonTextTest {
    private static final String SIGNS = "aZ 0\"\\/\b\f\n\r\t\u0000\u001f\u007f\u00e4\u2028\ud83d\ude00{}[]:,";

    @Test
    void layout() {
        byte[] json = new JsonText()
                .beginObject()
                .name("a")
                .raw("1.5")
                .name("none")
                .beginArray()
                .endArray()
                .name("list")
                .beginArray()
                .text("x")
                .beginObject()
                .endObject()
                .endArray()
                .endObject()
                .toBytes();
        assertThat(new String(json, StandardCharsets.UTF_8)).isEqualTo("""
                {
                  "a": 1.5,
                  "none": [],
                  "list": [
                    "x",
                    {}
                  ]
                }
                """);
    }

    @Test
    void randomTreesAreReadBack() throws IOException {
        long seed = 8259;
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            JsonNode tree = tree(random, 0);
            JsonText text = new JsonText();
            write(tree, text);
            assertThat(new ObjectMapper().readTree(text.toBytes()))
                    .as("seed %d, tree %d", seed, i)
                    .isEqualTo(tree);
        }
    }

    private static JsonNode tree(Random random, int depth) {
        int kind = depth > 4 ? 2 : random.nextInt(4);
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        if (kind == 0) {
            ObjectNode object = nodes.objectNode();
            for (int i = random.nextInt(5); i > 0; i--) {
                object.set(string(random) + i, tree(random, depth + 1));
            }
            return object;
        }
        if (kind == 1) {
            ArrayNode array = nodes.arrayNode();
            for (int i = random.nextInt(5); i > 0; i--) {
                array.add(tree(random, depth + 1));
            }
            return array;
        }
        return kind == 2 ? nodes.textNode(string(random)) : nodes.numberNode(random.nextInt());
    }

    private static String string(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(12); i > 0; i--) {
            text.appendCodePoint(SIGNS.codePointAt(
                    SIGNS.offsetByCodePoints(0, random.nextInt(SIGNS.codePointCount(0, SIGNS.length())))));
        }
        return text.toString();
    }

    private static void write(JsonNode node, JsonText text) {
        if (node.isObject()) {
            text.beginObject();
            for (Iterator<Map.Entry<String, JsonNode>> all = node.fields(); all.hasNext(); ) {
                Map.Entry<String, JsonNode> field = all.next();
                text.name(field.getKey());
                write(field.getValue(), text);
            }
            text.endObject();
        } else if (node.isArray()) {
            text.beginArray();
            for (JsonNode item : node) {
                write(item, text);
            }
            text.endArray();
        } else if (node.isTextual()) {
            text.text(node.textValue());
        } else {
            text.raw(node.asText());
        }
    }
}
