// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.display;

import java.util.List;

import org.junit.jupiter.api.Test;

import bandwright.dsl.Answer;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.view.Table;
import bandwright.kernel.Samples;
import bandwright.kernel.notebook.Output;

import static org.assertj.core.api.Assertions.assertThat;

class DisplaysTest {
    @Test
    void a_drawing_has_svg_pixels_and_words_but_no_html() {
        Output.Display display = Displays.display(Samples.drawn());

        assertThat(display.data()).containsOnlyKeys("image/svg+xml", "image/png", "text/plain");
        assertThat(display.data().get("image/png")).startsWith("iVBORw0KGgo").doesNotContain("\n");
    }

    @Test
    void a_picture_has_its_alternative_text() {
        Output.Display display = Displays.display(new Answer.Pictured(Samples.picture()));

        assertThat(display.data()).containsOnlyKeys("image/png", "text/plain");
        assertThat(display.data()).containsEntry("text/plain", "A band with \"37\" stones: white, red");
    }

    @Test
    void a_model_to_turn_has_its_file_and_a_picture_and_no_script() {
        assertThat(Displays.display(Samples.viewed()).data())
                .containsOnlyKeys("model/gltf-binary", "image/png", "text/plain")
                .containsEntry("model/gltf-binary", "AQID")
                .containsEntry("text/plain", "Model to turn");
    }

    @Test
    void a_table_has_html_and_words() {
        assertThat(Displays.display(new Answer.Tabled(Samples.table())).data())
                .containsEntry("text/html", Samples.table().html())
                .containsEntry("text/plain", Samples.table().plainText())
                .hasSize(2);
    }

    @Test
    void variants_show_their_first_rows_and_have_all_as_csv() {
        Table all = new Table(
                "Variants", Samples.table().columns(), List.of(List.of("a", "1"), List.of("b", "2")), List.of());
        Table first = new Table("Variants", all.columns(), all.rows().subList(0, 1), List.of("Shown is the first."));

        assertThat(Displays.display(new Answer.Varied(all, first, null)).data())
                .containsEntry("text/html", first.html())
                .containsEntry("text/csv", "part,weight (g)\na,1\nb,2\n")
                .containsEntry("text/plain", first.plainText())
                .hasSize(3);
    }

    @Test
    void a_file_too_long_for_a_notebook_stays_out_of_it() {
        Table all = new Table(
                "Variants", Samples.table().columns(), List.of(List.of("a".repeat(1_000_000), "1")), List.of());

        assertThat(Displays.display(new Answer.Varied(all, Samples.table(), null))
                        .data())
                .containsOnlyKeys("text/html", "text/plain");
    }

    @Test
    void words_and_requirements_are_plain() {
        assertThat(Displays.display(new Answer.Words("", "42 mm")).data()).containsOnlyKeys("text/plain");
        assertThat(Displays.display(new Answer.Required(Samples.requirement(false)))
                        .data()
                        .get("text/plain"))
                .startsWith("failed: gap(lights) >= 0.12 mm; it is 0.086 mm, 0.034 mm (28.3 %) off");
    }

    @Test
    void remarks_come_first_and_errors_last() {
        List<Output> outputs = Displays.outputs(
                List.of(
                        Samples.diagnostic(Severity.ERROR),
                        Samples.diagnostic(Severity.WARNING),
                        Samples.diagnostic(Severity.NOTE)),
                List.of(new Answer.Words("", "42 mm")));

        assertThat(outputs).hasSize(3);
        assertThat(((Output.Stream) outputs.get(0)).channel()).isEqualTo(Output.Channel.STDERR);
        assertThat(((Output.Stream) outputs.get(0)).text())
                .contains("warning unit-mismatch", "note unit-mismatch")
                .doesNotContain("error unit-mismatch");
        Output.Failure failure = (Output.Failure) outputs.get(2);
        assertThat(failure.name()).isEqualTo("unit-mismatch");
        assertThat(failure.message()).isEqualTo("a length and a <weight> cannot be added");
        assertThat(failure.traceback())
                .startsWith("error unit-mismatch: a length and a <weight> cannot be added")
                .noneMatch(line -> line.contains("\n"));
    }
}
