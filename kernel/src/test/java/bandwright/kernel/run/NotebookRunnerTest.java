// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import bandwright.kernel.Samples;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.display.Displays;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookReader;
import bandwright.kernel.notebook.Output;

import static org.assertj.core.api.Assertions.assertThat;

class NotebookRunnerTest {
    private static final String MARKDOWN =
            "{\"cell_type\": \"markdown\", \"id\": \"words\", \"metadata\": {}, \"source\": \"# Words\"}";
    private static final String SKIPPED = "{\"cell_type\": \"code\", \"id\": \"skipped\", \"metadata\": {\"tags\":"
            + " [\"skip-execution\"]}, \"execution_count\": 7, \"outputs\": [], \"source\": \"breadth = \"}";

    @Test
    void cells_are_counted_from_one_and_others_passed_over() {
        Notebook notebook = notebook(
                MARKDOWN,
                Samples.code("a", "a = 1 mm"),
                SKIPPED,
                Samples.code("blank", " "),
                Samples.code("b", "b = 2 mm"));
        List<String> heard = new ArrayList<>();

        NotebookRun run = NotebookRunner.run(notebook, listener(heard));

        assertThat(heard).containsExactly("start 1 of 2", "1 done", "start 2 of 2", "2 done");
        assertThat(run.cells()).extracting(CellRun::number).containsExactly(0, 1, 0, 0, 2);
        assertThat(run.executed().json()).contains("\"execution_count\": 2", "\"execution_count\": 7");
    }

    @Test
    void java_cells_run_too_and_each_run_begins_anew() {
        Notebook notebook = notebook(
                Samples.code(
                        "a",
                        "java\nSystem.out.print(1); System.out.println(2);\ndesign.set('b', mm(3));\ndisplay(g(5));"
                                .replace('\'', '"')),
                Samples.code("c", "java\nint once = 1;\nint x = \"no\";"),
                Samples.code("d", "show b"));

        NotebookRun run = NotebookRunner.run(notebook, Progress.SILENT);
        NotebookRun again = NotebookRunner.run(notebook, Progress.SILENT);

        assertThat(run.cells())
                .extracting(CellRun::state)
                .containsExactly(CellState.DONE, CellState.ERROR, CellState.DONE);
        assertThat(run.executed().json()).contains("\"12\\n\"", "\"ename\": \"java-compile\"", "b = 3 mm");
        assertThat(again.executed().json()).isEqualTo(run.executed().json());
        assertThat(run.cells().get(0).answers())
                .extracting(bandwright.dsl.Answer::plainText)
                .containsExactly("12\n", "5 g");
        assertThat(NotebookRunner.run(notebook(Samples.code("a", "java\nonce")), Progress.SILENT)
                        .cells()
                        .get(0)
                        .state())
                .isEqualTo(CellState.ERROR);
    }

    @Test
    void what_a_cell_keeps_or_takes_away_stands_beside_a_slip_in_a_question() {
        for (String kept : List.of(
                "title \"Quay\"",
                "forget a",
                "option \"wide\" { a = 5 mm }",
                "limit casting-wall 0.7 mm because \"ours\"")) {
            NotebookRun run = NotebookRunner.run(
                    notebook(Samples.code("a", Samples.RING.strip()), Samples.code("b", kept + "\nshow 5 mm + 2 g")),
                    Progress.SILENT);

            assertThat(run.cells().get(1).state()).as(kept).isEqualTo(CellState.UNANSWERED);
            assertThat(run.refusals()).as(kept).isEmpty();
        }
    }

    @Test
    void a_question_alone_that_is_wrong_is_an_error_of_its_cell() {
        NotebookRun run = NotebookRunner.run(
                notebook(Samples.code("a", Samples.RING.strip()), Samples.code("b", "show 5 mm + 2 g")),
                Progress.SILENT);

        assertThat(run.cells().get(1).state()).isEqualTo(CellState.ERROR);
        assertThat(run.report().parts()).hasSize(1);
    }

    @Test
    void a_name_that_starts_with_java_is_no_java_cell() {
        NotebookRun run = NotebookRunner.run(
                notebook(Samples.code("a", "java-width = 1 mm\n" + Samples.RING.strip())), Progress.SILENT);

        assertThat(run.verdict()).isEqualTo(Verdict.GOOD);
    }

    @Test
    void running_twice_gives_the_same_bytes() {
        Notebook notebook = (Notebook) NotebookReader.read(Samples.HARBOUR_LIGHT);

        String once = NotebookRunner.run(notebook, Progress.SILENT).executed().json();
        Notebook again = (Notebook) NotebookReader.parse("again", once);

        assertThat(NotebookRunner.run(again, Progress.SILENT).executed().json()).isEqualTo(once);
    }

    @Test
    void an_error_does_not_stop_the_cells_below() {

        NotebookRun run = NotebookRunner.run(
                notebook(Samples.code("a", "a = 1 mm + 2 g"), Samples.code("b", "show 40 mm + 2 mm")), Progress.SILENT);

        assertThat(run.cells()).extracting(CellRun::state).containsExactly(CellState.ERROR, CellState.DONE);
        assertThat(run.executed().json()).contains("42 mm");
    }

    @Test
    void a_failed_requirement_marks_its_cell() {

        NotebookRun run = NotebookRunner.run(
                notebook(Samples.code("a", Samples.RING.strip() + "\nrequire 1 mm >= 2 mm")), Progress.SILENT);

        assertThat(run.cells()).extracting(CellRun::state).containsExactly(CellState.REQUIRE_FAILED);
        assertThat(run.verdict()).isEqualTo(Verdict.REQUIRE_FAILED);
    }

    @Test
    void variants_become_a_table_and_a_chart_each_in_an_output_of_its_own() {
        List<String> heard = new ArrayList<>();
        Notebook notebook = notebook(
                Samples.code("a", Samples.RING.strip() + "\nvary a from 3 mm to 4 mm step 0.5 mm { weight(shank) }"));

        NotebookRun run = NotebookRunner.run(notebook, listener(heard));

        assertThat(run.verdict()).isEqualTo(Verdict.GOOD);
        assertThat(heard).contains("1: 3 of 3");
        List<Output.Display> outputs =
                Displays.outputs(
                                run.cells().get(0).diagnostics(),
                                run.cells().get(0).answers())
                        .stream()
                        .map(Output.Display.class::cast)
                        .toList();
        assertThat(outputs).hasSize(2);
        assertThat(outputs.get(0).data()).containsOnlyKeys("text/html", "text/csv", "text/plain");
        assertThat(outputs.get(1).data()).containsOnlyKeys("image/svg+xml", "image/png", "text/plain");
        assertThat(run.executed().json()).contains("Variants of a", "weight(shank) (g)");
    }

    @Test
    void an_error_weighs_more_than_a_failed_requirement() {
        assertThat(Verdict.of(Samples.report(true))).isEqualTo(Verdict.GOOD);
        assertThat(Verdict.of(Samples.report(false))).isEqualTo(Verdict.REQUIRE_FAILED);
        assertThat(Verdict.of(Samples.reportWithTrouble())).isEqualTo(Verdict.ERROR);
    }

    private static Notebook notebook(String... cells) {
        return (Notebook) NotebookReader.parse("it", Samples.notebook(5, "{}", cells));
    }

    private static Progress listener(List<String> heard) {
        return new Progress() {
            @Override
            public void started(int number, int total) {
                heard.add("start " + number + " of " + total);
            }

            @Override
            public void working(int number, int total, int done, int of) {
                heard.add(number + ": " + done + " of " + of);
            }

            @Override
            public void finished(int number, int total, CellState state) {
                heard.add(number + " " + state.words());
            }
        };
    }
}
