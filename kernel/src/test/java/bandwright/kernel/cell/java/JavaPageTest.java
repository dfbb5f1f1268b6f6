// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.io.IOException;
import java.nio.file.Files;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

import bandwright.kernel.Samples;

import static org.assertj.core.api.Assertions.assertThat;

/** The page on cells in Java: its examples, run as the cells of one notebook, give what stands below them. */
class JavaPageTest {
    private static final Pattern EXAMPLE =
            Pattern.compile("```(ring|java)\n(.*?)```\n(?:```text\n(.*?)```\n)?", Pattern.DOTALL);

    @Test
    void every_example_gives_what_the_page_says() throws IOException {
        String page = Files.readString(Samples.REPOSITORY.resolve("kernel/docs/java-cells.md"));
        Matcher example = EXAMPLE.matcher(page);
        int count = 0;
        try (Notebook notebook = new Notebook()) {
            while (example.find()) {
                count++;
                Notebook.Ran ran = notebook.run(example.group(2));
                assertThat(ran.outcome().hasErrors()).as(ran.told()).isFalse();
                String given = (ran.printed() + ran.answers()).strip();
                String expected =
                        example.group(3) == null ? "" : example.group(3).strip();
                assertThat(given).as(example.group(2)).isEqualTo(expected);
            }
        }
        assertThat(count).isGreaterThan(6);
    }
}
