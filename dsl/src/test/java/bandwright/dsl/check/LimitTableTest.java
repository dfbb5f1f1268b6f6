// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.model.OwnLimit;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

import static org.assertj.core.api.Assertions.assertThat;

class LimitTableTest {
    private static final Path PAGE = Path.of("src/test/resources/bandwright/dsl/check/checks.md");

    /** The page is written by hand but for its table, which is that of the limits in use. */
    @Test
    void the_page_lists_all_limits_with_their_sources() throws java.io.IOException {
        String page = java.nio.file.Files.readString(PAGE).replace("{{limits}}", table());

        GoldenFiles.check(Path.of("docs/checks.md"), page);
    }

    private static String table() {
        return LimitTable.BUILT_IN.all().stream()
                .map(limit -> line(
                                "`" + limit.key() + "`",
                                limit.text(),
                                word(limit),
                                limit.source(),
                                limit.how(),
                                limit.note())
                        + limit.rivals().stream()
                                .map(rival -> "\n"
                                        + line(
                                                "",
                                                limit.text(rival.value()),
                                                "rival",
                                                rival.source(),
                                                rival.how(),
                                                rival.note()))
                                .collect(Collectors.joining()))
                .collect(Collectors.joining(
                        "\n",
                        "| limit | value | | source | how | note |\n| --- | --- | --- | --- | --- | --- |\n",
                        ""));
    }

    private static String word(Limit limit) {
        return limit.severity().name().toLowerCase(java.util.Locale.ROOT);
    }

    private static String line(String... cells) {
        return java.util.stream.Stream.of(cells)
                .map(cell -> cell.replace("|", "\\|"))
                .collect(Collectors.joining(" | ", "| ", " |"));
    }

    @Test
    void every_limit_has_a_source_or_says_that_there_is_none() {
        for (Limit limit : LimitTable.BUILT_IN.all()) {
            assertThat(limit.source()).as(limit.key()).isNotBlank();
            assertThat(limit.source().equals("common practice, no source"))
                    .as(limit.key())
                    .isEqualTo(limit.how().equals("common practice"));
        }
    }

    @Test
    void a_users_limit_takes_the_place_of_the_built_in_one() {
        OwnLimit own = new OwnLimit(
                "casting-wall",
                new SourceText("cell", "x").place(new Span(0, 1)),
                Quantity.millimetres(0.5),
                "our caster holds this");

        LimitTable table = LimitTable.BUILT_IN.with(List.of(own));

        assertThat(table.get("casting-wall").value().value()).isEqualTo(0.5);
        assertThat(table.get("casting-wall").own()).isEqualTo(own);
        assertThat(LimitTable.BUILT_IN.get("casting-wall").own()).isNull();
    }
}
