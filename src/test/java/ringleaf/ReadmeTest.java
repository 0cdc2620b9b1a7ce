package ringleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Kinds;
import ringleaf.spec.FabricationFields;
import ringleaf.spec.field.FieldHelp;

/** The README says what is true now. */
class ReadmeTest {
    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }

    @Test
    void everyFieldStandsInItAsTheCodeDeclaresIt() throws IOException {
        for (Kind kind : Kinds.all()) {
            assertThat(readme()).contains(FieldHelp.markdown(kind.fields()));
        }
        assertThat(readme()).contains(FieldHelp.markdown(FabricationFields.GENERAL));
        assertThat(readme()).contains(FieldHelp.markdown(FabricationFields.ofFamily()));
    }

    @Test
    void theQuickStartIsOneBlockOfTwoCommands() throws IOException {
        String readme = readme();
        int from = readme.indexOf("```sh\n");
        String block = readme.substring(from + 6, readme.indexOf("```", from + 6));
        assertThat(block.lines().toList()).hasSize(2);
        assertThat(block.lines().toList().get(1)).contains("mvn").contains("verify");
        assertThat(readme.indexOf("```sh\n", from + 6)).isEqualTo(-1);
    }

    @Test
    void everyPresetIsNamed() throws IOException {
        try (var files = Files.list(Path.of("presets"))) {
            List<String> names = files.map(f -> f.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .toList();
            for (String name : names) {
                assertThat(readme()).contains("`" + name + "`");
            }
        }
    }
}
