// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

class DecisionsTest {
    private static final String RING = """
            finger-size = ISO 57
            breadth     = 4.6 mm   between 3 mm and 8 mm   because "level with the ring worn beside it"
            profile dome = d-shape(width: breadth, height: 1.9 mm, side: 1.25 mm)
            band shank { finger finger-size  profile dome  metal silver-925 }
            stone-row lights on shank { stone round diamond 1.5 mm  around 90 deg  spacing at least 0.15 mm  sink 0.25 mm }
            """;

    private int cells;

    private Workbench run(Workbench before, String text) {
        cells++;
        return before.run("cell-" + cells, new SourceText("cell " + cells, text))
                .workbench();
    }

    private static String story(Workbench workbench) {
        return workbench.run("asks", new SourceText("asks", "show decisions")).answers().stream()
                .map(Answer::plainText)
                .collect(Collectors.joining());
    }

    @Test
    void a_story_is_told_in_order_with_what_each_decision_did() {
        Workbench workbench = run(Workbench.empty(), RING);
        for (String change : List.of(
                "finger-size = ISO 60 because \"she tried it on\"",
                "breadth = 5.5 mm because \"wider looks better\"\ntitle \"Wide\"",
                "lining = 0.2 mm because \"for the engraver\"",
                "# nothing but a remark\nbreadth = 5.5 mm because \"as before\"",
                "forget lights")) {
            workbench = run(workbench, change);
        }
        GoldenFiles.check(Path.of("src/test/golden/explore/decisions.text"), story(workbench));
    }

    @Test
    void a_cell_that_is_run_again_tells_what_it_changed() {
        Workbench first =
                Workbench.empty().run("one", new SourceText("cell 1", RING)).workbench();
        Workbench again = first.run(
                        "one",
                        new SourceText(
                                "cell 1", RING.replace("ISO 57", "ISO 58").replace("dome", "arch")))
                .workbench();
        assertThat(story(again))
                .contains("finger-size  ISO 57")
                .contains("arch")
                .contains("taken away");
        assertThat(story(first.run("one", new SourceText("cell 1", "# a remark\n" + RING))
                        .workbench()))
                .isEqualTo(story(first));
    }

    @Test
    void a_cell_with_an_error_decides_nothing() {
        Workbench workbench = run(Workbench.empty(), RING);
        assertThat(story(run(workbench, "breadth = 1 mm because \"too narrow\"")))
                .isEqualTo(story(workbench));
        assertThat(story(Workbench.empty())).contains("nothing was decided so far");
    }
}
