// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import bandwright.kernel.Samples;

import static org.assertj.core.api.Assertions.assertThat;

class MeasureVerbTest {
    @TempDir
    Path folder;

    @Test
    void json_has_these_keys_and_plain_decimals() {
        assertThat(MeasureFormat.JSON.write(Samples.report(true))).isEqualTo("""
                        {
                          "title": "Harbour light",
                          "parts": [
                            {
                              "name": "shank",
                              "metal": "white-gold-585-pd",
                              "volume_mm3": 250.123457,
                              "density_g_cm3": 14.2,
                              "density_source": "a <source>",
                              "weight_g": 3.551753,
                              "closed": true,
                              "triangles": 1200
                            },
                            {
                              "name": "stripe",
                              "metal": "red-gold-585",
                              "volume_mm3": 0,
                              "density_g_cm3": 13.2,
                              "density_source": "another",
                              "weight_g": 1200000,
                              "closed": true,
                              "triangles": 800
                            }
                          ],
                          "total_weight_g": 1200003.551753,
                          "stone_rows": [
                            {
                              "name": "lights",
                              "part": "stripe",
                              "stone": "round diamond 1.5 mm",
                              "count": 37,
                              "diameter_mm": 1.5,
                              "gap_mm": 0.153846,
                              "pitch_mm": 1.65,
                              "carats_each": 0.0135,
                              "carats_total": 0.4995
                            },
                            {
                              "name": "star",
                              "part": "stripe",
                              "stone": "round ruby 2 mm",
                              "count": 1,
                              "diameter_mm": 2,
                              "gap_mm": null,
                              "pitch_mm": null,
                              "carats_each": 0.04,
                              "carats_total": 0.04
                            }
                          ],
                          "requires": [
                            {
                              "text": "gap(lights) >= 0.12 mm",
                              "passed": true,
                              "measured": "0.154 mm",
                              "margin": 0.034,
                              "margin_unit": "mm",
                              "margin_percent": 28.25,
                              "because": "the setter's tool needs <room>",
                              "trouble": null
                            }
                          ],
                          "checks": [],
                          "finger": {
                            "size": "ISO 57",
                            "inner_diameter_mm": 18.143663,
                            "inner_circumference_mm": 57
                          },
                          "fingerprint": "0123456789abcdef"
                        }
                        """);
    }

    @Test
    void csv_has_a_row_for_each_figure() {
        assertThat(MeasureFormat.CSV.write(Samples.report(false)))
                .startsWith("kind,name,figure,value,unit\nring,Harbour light,title,Harbour light,\n")
                .contains(
                        "part,shank,volume,250.123457,mm^3\n",
                        "ring,all parts,weight,1200003.551753,g\n",
                        "stone-row,lights,count,37,\n",
                        "stone-row,star,gap,,mm\n",
                        "require,gap(lights) >= 0.12 mm,passed,false,\n",
                        "require,gap(lights) >= 0.12 mm,margin,-0.034,mm\n",
                        "require,gap(lights) >= 0.12 mm,margin share,-28.25,%\n");
    }

    @Test
    void a_margin_is_negative_where_a_requirement_failed() {
        assertThat(MeasureFormat.JSON.write(Samples.report(false)))
                .contains("\"margin\": -0.034,", "\"margin_percent\": -28.25,");
    }

    @Test
    void nothing_to_measure_gives_one_and_says_so() {
        Ran none = Ran.command("measure", Samples.file(folder, "none.ring", "breadth = 5 mm\n"));
        Ran empty = Ran.command("measure", Samples.file(folder, "empty.ring", ""));

        assertThat(none.exitCode()).isEqualTo(1);
        assertThat(none.err()).startsWith("bandwright: there is no ring to measure");
        assertThat(empty.exitCode()).isEqualTo(1);
        assertThat(empty.err()).isEqualTo("bandwright: there is nothing to run\n");
    }

    @Test
    void a_ring_that_still_waits_gives_one() {
        String text = Samples.RING.replace("profile dome  ", "profile nobody  ");

        Ran ran = Ran.command("measure", Samples.file(folder, "ring.ring", text));

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.err()).containsOnlyOnce("nothing defines nobody");
    }

    @Test
    void a_wrong_verb_beside_help_gives_two() {
        Ran polish = Ran.command("polish", "--help");

        assertThat(polish.exitCode()).isEqualTo(2);
        assertThat(polish.err())
                .isEqualTo("bandwright: there is no verb polish; the verbs are compare, completion, handout,"
                        + " install-kernel, kernel, mark, measure, page, run, sweep, uninstall-kernel\n");
        assertThat(Ran.command("a.ring").err()).contains("did you mean 'bandwright run a.ring'?");
    }

    @Test
    void a_value_without_quotes_is_told_of_them() {
        Ran ran = Ran.command("measure", Samples.HARBOUR_LIGHT, "--set", "finger-size=US", "8");

        assertThat(ran.exitCode()).isEqualTo(2);
        assertThat(ran.err()).contains("'8' is one word too many; put quotes", "--set \"finger-size=US 8\"");
    }

    @Test
    void text_sums_up() {
        assertThat(MeasureFormat.TEXT.write(Samples.report(true)))
                .startsWith("title   Harbour light\nfinger  ISO 57, 18.144 mm across, 57 mm round\n")
                .contains(
                        "white-gold-585-pd",
                        "250.123",
                        "Requirements: 1 passed, 0 failed",
                        "0.034 mm (28.3 %) to spare")
                .endsWith("fingerprint  0123456789abcdef\n");
    }

    @Test
    void numbers_go_to_the_screen_or_into_a_file() throws IOException {
        Path input = Samples.file(folder, "ring.ring", Samples.RING);
        Path out = folder.resolve("numbers.json");

        Ran shown = Ran.command("measure", input, "--format", "json");
        Ran written = Ran.command("measure", input, "--format", "JSON", "--out", out);

        assertThat(shown.exitCode()).isZero();
        assertThat(written).isEqualTo(new Ran(0, "", ""));
        assertThat(out).hasContent(shown.out());
        assertThat(new ObjectMapper().readTree(shown.out()).path("parts").isArray())
                .isTrue();
    }

    @Test
    void a_cell_with_an_error_gives_one() {
        Path input = Samples.file(folder, "ring.ring", "java\nint x = ;\n");

        Ran ran = Ran.command("measure", input, "--format", "json");

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.out()).startsWith("{");
        assertThat(ran.err()).contains("--> ring.ring, line 2, column 9");
    }

    @Test
    void wrong_use_gives_two_and_one_sentence() {
        Path input = Samples.file(folder, "ring.ring", "a = 1 mm\n");

        Object[][] uses = {
            {"measure", folder.resolve("gone.ring")},
            {"measure", input, "--set", "a"},
            {"measure", input, "--set", "=1 mm"},
            {"measure", input, "--set", "a="},
            {"measure", input, "--format", "xml"},
            {"measure", input, "--out", input},
            {"measure"},
            {"measure", input, "--unknown"},
            {"polish"},
        };
        for (Object[] use : uses) {
            Ran ran = Ran.command(use);
            assertThat(ran.exitCode()).as(ran.err()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err()).startsWith("bandwright: ").doesNotContain("Exception");
        }
        assertThat(input).hasContent("a = 1 mm\n");
    }

    @Test
    void an_unknown_name_or_a_wrong_unit_gives_two() {
        for (String setting : new String[] {"no-such-name=1 mm", "breadth=3 g", "breadth=20 mm", "breadth=("}) {
            Ran ran = Ran.command("measure", Samples.HARBOUR_LIGHT, "--set", setting);
            assertThat(ran.exitCode()).as(setting).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err()).contains("error ").contains("--set " + setting + " cannot be done");
        }
    }

    @Test
    void another_size_is_another_ring() throws IOException {

        JsonNode before = numbers();
        JsonNode after = numbers("--set", "finger-size=US 10", "--set", "breadth=5 mm");

        assertThat(after.path("total_weight_g").asDouble())
                .isGreaterThan(before.path("total_weight_g").asDouble());
        assertThat(after.path("finger").path("size").asText()).isEqualTo("US 10");
        assertThat(after.path("fingerprint")).isNotEqualTo(before.path("fingerprint"));
    }

    @Test
    void help_version_and_completion_are_there() {
        assertThat(Ran.command("--help").out()).contains("run", "measure", "Exit codes:");
        assertThat(Ran.command("measure", "--help").out()).contains("--set=NAME=VALUE", "text, json, csv");
        assertThat(Ran.command("--version").out()).startsWith("bandwright ");
        assertThat(Ran.command("completion").out()).contains("--in-place", "complete -F");
        assertThat(Ran.command())
                .matches(ran -> ran.exitCode() == 2 && ran.err().startsWith("Usage: bandwright"));
    }

    private static JsonNode numbers(Object... options) throws IOException {
        Object[] words = new Object[4 + options.length];
        System.arraycopy(new Object[] {"measure", Samples.HARBOUR_LIGHT, "--format", "json"}, 0, words, 0, 4);
        System.arraycopy(options, 0, words, 4, options.length);
        Ran ran = Ran.command(words);
        assertThat(ran.exitCode()).as(ran.err()).isIn(0, 3);
        return new ObjectMapper().readTree(ran.out());
    }
}
