// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;

import org.junit.jupiter.api.Test;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.cell.java.JavaCells;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.NotebookCell;

import static org.assertj.core.api.Assertions.assertThat;

/** A design that is typed in any order is the one that its cells make from the top. */
class LiveDesignTest {
    private static final String RING = """
            thickness = 2.2 mm
            profile slim = flat(width: 3.6 mm, height: thickness, edge: 0.2 mm)
            band shank { finger ISO 54  profile slim  metal silver-925 }
            stone-row lights on shank { stone round diamond 1.7 mm  around full  spacing at least 0.2 mm  sink 0.1 mm }
            """;

    private static final List<String> A_CHANGE_OF_MIND = List.of(
            RING,
            "thickness - 0.1 mm\ncount(lights)",
            "prongs pins for lights on shank { diameter 0.65 mm  rise 0.34 mm  root 0.6 mm  reach 0.12 mm }",
            "show weights",
            """
            forget pins
            thickness = 2.7 mm
            stone-row lights on shank { stone round diamond 1.5 mm  around 120 deg centred 0 deg  spacing 0.1 mm  sink 0.3 mm }
            """,
            "thickness - 0.1 mm\ncount(lights)\nshow weights");

    private static NotebookCell cell(int number, String source) {
        return new NotebookCell("c" + number, CellKind.CODE, source, Set.of(), Map.of());
    }

    private static List<NotebookCell> cells(List<String> sources) {
        List<NotebookCell> cells = new ArrayList<>();
        for (String source : sources) {
            cells.add(cell(cells.size(), source));
        }
        return cells;
    }

    private static LiveDesign empty() {
        return new LiveDesign(new CellLanguages(List.of()));
    }

    private static LiveDesign of(List<String> sources) {
        LiveDesign design = empty();
        design.follow(cells(sources));
        return design;
    }

    /** What a cell says of itself, and what it answers. */
    private static String said(LiveDesign design, int number) {
        LiveDesign.Question question = design.question("c" + number);
        Outcome outcome = question.language().define(question.before(), question.id(), question.text());
        return design.told("c" + number).stream().map(Diagnostic::message).toList() + " "
                + outcome.workbench().run(question.id(), question.text()).answers();
    }

    private static List<String> messages(LiveDesign design, int number) {
        return design.told("c" + number).stream().map(Diagnostic::message).toList();
    }

    @Test
    void a_cell_above_a_change_of_mind_tells_of_the_ring_before_it() {
        LiveDesign live = of(A_CHANGE_OF_MIND);
        Workbench run = Workbench.empty();
        for (int i = 0; i < A_CHANGE_OF_MIND.size(); i++) {
            SourceText text = new SourceText("cell " + (i + 1), A_CHANGE_OF_MIND.get(i));
            Outcome fromTheTop = run.run("c" + i, text);
            run = fromTheTop.workbench();
            LiveDesign.Question question = live.question("c" + i);
            Outcome here = question.before().run(question.id(), question.text());
            assertThat(here.answers()).as("cell %s", i + 1).hasToString(String.valueOf(fromTheTop.answers()));
            assertThat(live.told("c" + i)).as("cell %s", i + 1).containsExactlyElementsOf(fromTheTop.diagnostics());
            assertThat(live.adopt(question, here, true)).isTrue();
            assertThat(live.isStale("c" + i)).isFalse();
        }
        assertThat(live.workbench().report()).hasToString(String.valueOf(run.report()));
    }

    @Test
    void in_whatever_order_it_was_typed_it_is_the_same() {
        LiveDesign wanted = of(A_CHANGE_OF_MIND);
        Random random = new Random(20261127);
        for (int round = 0; round < 12; round++) {
            List<String> sources = new ArrayList<>(Collections.nCopies(A_CHANGE_OF_MIND.size(), ""));
            LiveDesign design = empty();
            design.follow(cells(sources));
            List<Integer> order = new ArrayList<>();
            for (int i = 0; i < sources.size(); i++) {
                order.add(i);
                order.add(i);
            }
            Collections.shuffle(order, random);
            Set<Integer> begun = new HashSet<>();
            for (int i : order) {
                String whole = A_CHANGE_OF_MIND.get(i);
                sources.set(i, begun.add(i) ? whole.substring(0, random.nextInt(whole.length())) : whole);
                design.follow(cells(sources));
            }
            for (int i = 0; i < sources.size(); i++) {
                assertThat(said(design, i))
                        .as("round %s, typed in order %s, cell %s", round, order, i + 1)
                        .isEqualTo(said(wanted, i));
            }
        }
    }

    @Test
    void what_is_said_of_a_cell_goes_when_another_cell_mends_it() {
        List<String> sources = new ArrayList<>(List.of("", "w = h + 1 mm", "show w"));
        LiveDesign design = of(sources);
        assertThat(messages(design, 1)).containsExactly("nothing defines h yet");
        sources.set(0, "h = 2 mm");
        design.follow(cells(sources));
        assertThat(messages(design, 1)).isEmpty();
        sources.set(0, "h = 2 deg");
        design.follow(cells(sources));
        assertThat(messages(design, 0)).isNotEmpty();
        sources.set(1, "w = h + 1 deg");
        design.follow(cells(sources));
        assertThat(messages(design, 0))
                .as("it was refused for what the other cell said")
                .isEmpty();
        sources.set(0, "");
        design.follow(cells(sources));
        assertThat(messages(design, 1)).containsExactly("nothing defines h yet");
    }

    @Test
    void a_cell_that_replaced_a_name_and_is_taken_away_gives_it_back() {
        List<NotebookCell> cells = new ArrayList<>(cells(List.of("a = 2 mm", "show a", "a = 3 mm", "show a")));
        LiveDesign design = empty();
        design.follow(cells);
        assertThat(said(design, 1)).contains("2 mm").doesNotContain("3 mm");
        assertThat(said(design, 3)).contains("3 mm");
        cells.remove(2);
        design.follow(cells);
        assertThat(said(design, 3)).contains("2 mm");
        assertThat(messages(design, 0)).isEmpty();
    }

    @Test
    void the_ring_stays_while_a_cell_of_a_changed_mind_is_being_mended() {
        List<String> sources = new ArrayList<>(A_CHANGE_OF_MIND);
        LiveDesign design = of(sources);
        double before = Objects.requireNonNull(design.workbench().numbers()).totalWeightG();
        sources.set(0, RING.replace("2.2 mm", "2.2 mm mm"));
        design.follow(cells(sources));
        assertThat(messages(design, 0)).isNotEmpty();
        assertThat(design.workbench().numbers().totalWeightG()).isEqualTo(before);
        sources.set(0, RING);
        design.follow(cells(sources));
        assertThat(messages(design, 0)).isEmpty();
    }

    @Test
    void a_page_that_stays_open_keeps_no_story_of_its_own_steps() {
        List<String> sources = new ArrayList<>(
                List.of("a = 1 mm because \"as ordered\"", "a = 2 mm because \"she wants more\"", "show decisions"));
        LiveDesign design = of(sources);
        for (String typed : List.of("2", "3", "35", "4", "2")) {
            sources.set(1, "a = " + typed + " mm because \"she wants more\"");
            design.follow(cells(sources));
        }
        List<NotebookCell> cells = new ArrayList<>(cells(sources));
        for (int i = 0; i < 3; i++) {
            NotebookCell second = cells.remove(1);
            design.follow(cells);
            cells.add(1, second);
            design.follow(cells);
        }
        assertThat(said(design, 2)).isEqualTo(said(of(sources), 2)).contains("she wants more");
    }

    @Test
    void a_cell_of_a_changed_mind_that_is_being_typed_leaves_the_cells_above_as_they_were() {
        List<String> sources = new ArrayList<>(List.of("a = 1 mm", "show a", "a = 3 mm", "show a"));
        LiveDesign design = of(sources);
        sources.set(2, "a = 3 mm +");
        design.follow(cells(sources));
        assertThat(said(design, 1)).contains("1 mm").doesNotContain("3 mm");
        assertThat(said(design, 3)).contains("3 mm");
    }

    @Test
    void a_cell_that_is_taken_after_all_and_changes_a_mind_counts_as_in_a_run() {
        List<String> sources = new ArrayList<>(List.of("x = 1 mm", "show x", "x = 2 mm\ny = h + 1 mm", "h = 2 deg"));
        LiveDesign design = of(sources);
        sources.set(3, "h = 2 mm");
        design.follow(cells(sources));
        assertThat(said(design, 1)).isEqualTo(said(of(sources), 1)).contains("1 mm");
    }

    @Test
    void limits_and_other_nameless_statements_that_are_said_again_change_a_mind_too() {
        List<String> sources = List.of(
                RING,
                "limit casting-wall 3 mm because \"thick\"",
                "show checks",
                "limit casting-wall 0.2 mm because \"thin\"",
                "show checks");
        LiveDesign design = of(sources);
        assertThat(said(design, 2)).contains("at least 3 mm");
        assertThat(said(design, 4)).contains("at least 0.2 mm");
    }

    @Test
    void the_order_of_cells_counts_where_they_are_moved() {
        List<NotebookCell> cells = new ArrayList<>(cells(List.of("title \"A\"", "title \"B\"", RING)));
        LiveDesign design = empty();
        design.follow(cells);
        cells.add(0, cells.remove(1));
        design.follow(cells);
        LiveDesign fresh = empty();
        fresh.follow(cells);
        assertThat(design.workbench().numbers().title())
                .isEqualTo(fresh.workbench().numbers().title());
    }

    @Test
    void two_cells_that_are_right_together_are_taken_beside_a_third_that_is_not() {
        List<String> sources = new ArrayList<>(List.of("h = 2 mm", "w = h + 1 mm", "z = = 1"));
        LiveDesign design = of(sources);
        sources.set(0, "h = 2 deg");
        design.follow(cells(sources));
        sources.set(1, "w = h + 1 deg");
        design.follow(cells(sources));
        assertThat(messages(design, 0)).isEmpty();
        assertThat(messages(design, 1)).isEmpty();
        assertThat(messages(design, 2)).isNotEmpty();
    }

    @Test
    void a_cell_that_becomes_a_program_says_nothing_of_what_it_said() {
        List<String> sources = new ArrayList<>(List.of("a = 2 mm", "show a"));
        LiveDesign design = new LiveDesign(new CellLanguages(List.of(new JavaCells())));
        design.follow(cells(sources));
        sources.set(0, "java\nint i = 1;");
        design.follow(cells(sources));
        assertThat(design.workbench().valueOf("a")).isEmpty();
        assertThat(design.isStale("c0")).isTrue();
    }

    @Test
    void a_program_whose_word_a_ring_cell_has_taken_back_is_to_be_run_again() {
        List<String> sources = new ArrayList<>(List.of("a = 2 mm", "java\ndesign.set(\"a\", mm(3));", "show a"));
        try (CellLanguages languages = new CellLanguages(List.of(new JavaCells()))) {
            LiveDesign design = new LiveDesign(languages);
            design.follow(cells(sources));
            LiveDesign.Question question = design.question("c1");
            Outcome outcome = question.language().run(question.before(), "c1", question.text(), CellConsole.SILENT);
            assertThat(design.adopt(question, outcome, true)).isTrue();
            assertThat(said(design, 2)).contains("3 mm");
            assertThat(design.isStale("c1")).isFalse();
            sources.set(0, "a = 4 mm");
            design.follow(cells(sources));
            assertThat(said(design, 2).contains("3 mm") || design.isStale("c1"))
                    .as("what a program has set holds, or the program is marked")
                    .isTrue();
        }
    }
}
