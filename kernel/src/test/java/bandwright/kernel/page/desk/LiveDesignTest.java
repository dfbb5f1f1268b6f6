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
import bandwright.kernel.cell.CellLanguages;
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
        List<String> sources = new ArrayList<>(A_CHANGE_OF_MIND);
        LiveDesign design = of(sources);
        String once = String.valueOf(explained(design));
        for (int i = 0; i < 5; i++) {
            design.follow(cells(A_CHANGE_OF_MIND.subList(0, 5)));
            design.follow(cells(A_CHANGE_OF_MIND));
        }
        assertThat(explained(design)).isEqualTo(once);
    }

    private static String explained(LiveDesign design) {
        return String.valueOf(design.workbench()
                .run("asked", new SourceText("asked", "explain thickness"))
                .answers());
    }
}
