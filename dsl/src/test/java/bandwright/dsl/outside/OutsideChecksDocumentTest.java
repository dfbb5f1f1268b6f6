// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.outside;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** Keeps {@code docs/outside-checks.md} what the code computes; {@code -Dgolden=update} rewrites it. */
class OutsideChecksDocumentTest {
    private static final Path FILE =
            Path.of(System.getProperty("repository", ".."), "dsl", "docs", "outside-checks.md");

    @Test
    void the_committed_table_is_what_is_computed() throws IOException {
        String computed = document();
        boolean missing = Files.notExists(FILE);
        if (missing || "update".equals(System.getProperty("golden"))) {
            Files.createDirectories(FILE.getParent());
            Files.writeString(FILE, computed);
        }
        assertThat(missing)
                .as("%s was missing; it has been written: look at it", FILE)
                .isFalse();
        assertThat(Files.readString(FILE)).isEqualTo(computed);
    }

    private static String document() {
        StringBuilder text = new StringBuilder("""
                # Outside checks

                Figures that others have published, beside what our code makes of the same inputs. Written by a test; where a
                remark says "rival table", "misprint" or the like, the deviation is known and the test wants it to be there.
                The data files with full sources are in `src/test/resources/bandwright/dsl/outside`.
                """);
        section(text, "Worked examples", WorkedExamples.all());
        text.append("\nNot computed:\n\n");
        new TreeMap<>(WorkedExamples.NOT_OURS)
                .forEach((id, why) ->
                        text.append("- ").append(id).append(": ").append(why).append(".\n"));
        section(text, "Densities of alloys by the mixing rule", AlloyChecks.all());
        section(text, "Finger sizes", RingSizeChecks.tables());
        section(text, "Finger sizes said to be one", RingSizeChecks.equivalences());
        section(text, "Weights of round diamonds", RoundWeightChecks.tables());
        section(text, "Weights of sieved diamonds", RoundWeightChecks.sieves());
        section(text, "Weights of round and oval coloured stones", GemWeightChecks.all());
        section(text, "Densities that suppliers and casters state", TradeDensityChecks.all());
        text.append("\nNot compared:\n\n");
        new TreeMap<>(TradeDensityChecks.NOT_OURS)
                .forEach((row, why) ->
                        text.append("- ").append(row).append(": ").append(why).append(".\n"));
        return text.toString();
    }

    private static void section(StringBuilder text, String title, List<OutsideCheck> checks) {
        text.append("\n## ").append(title).append("\n\n");
        text.append("| what | published | ours | deviation | source | remark |\n");
        text.append("| --- | ---: | ---: | ---: | --- | --- |\n");
        for (OutsideCheck check : checks) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %s | %s |\n",
                    check.what(),
                    figure(check.published(), check.unit()),
                    figure(check.ours(), check.unit()),
                    deviation(check),
                    check.source(),
                    check.remark()));
        }
    }

    private static String deviation(OutsideCheck check) {
        double percent = 100 * check.deviation() / check.published();
        BigDecimal rounded = BigDecimal.valueOf(percent).setScale(2, RoundingMode.HALF_UP);
        return (rounded.signum() > 0 ? "+" : "") + (rounded.signum() == 0 ? "0.00" : rounded.toPlainString()) + " %";
    }

    private static String figure(double value, String unit) {
        // A ratio's unit is a dash in the data.
        return unit.equals("-") ? decimal(value) : decimal(value) + " " + unit;
    }

    private static String decimal(double value) {
        return BigDecimal.valueOf(value)
                .setScale(4, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
