// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class PlanReaderTest {
    @TempDir
    Path folder;

    private Path file(String json) throws IOException {
        return Files.writeString(folder.resolve("plan.json"), json);
    }

    @Test
    void a_plan_file_says_what_the_options_say() throws Exception {
        Plan plan = PlanReader.read(file("""
                {"over": {"finger-size": "US 5..9", "breadth": ""}, "measure": ["weight(shank)", "count(lights)"]}
                """));

        assertThat(plan)
                .isEqualTo(new Plan(
                        List.of(new Over("finger-size", "US 5..9"), new Over("breadth", "")),
                        List.of("weight(shank)", "count(lights)")));
        assertThat(plan.text().text()).isEqualTo("""
                vary breadth, finger-size from US 5 to US 9 {
                  weight(shank)
                  count(lights)
                }
                """);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{ | is not valid JSON: line",
                "[] | is no plan",
                "{\"measure\": [\"weight(ring)\"]} | varies nothing",
                "{\"over\": {\"breadth\": 3}} | has no text at over breadth",
                "{\"over\": {\"breadth\": \"3 mm..4 mm\"}, \"measures\": []} | has a key measures; a plan holds measure and over",
                "{\"over\": {\"breadth\": \"3 mm..4 mm\"}, \"measure\": \"wall(ring)\"} | has no list for measure",
                "{\"over\": {\"breadth\": \"\", \"breadth\": \"\"}} | is not valid JSON",
            })
    void what_is_wrong_with_a_plan_is_one_sentence(String json, String sentence) throws IOException {
        Path plan = file(json);

        assertThatThrownBy(() -> PlanReader.read(plan))
                .isInstanceOf(CatalogueFault.class)
                .hasMessageStartingWith(plan.toString())
                .hasMessageContaining(sentence);
    }
}
