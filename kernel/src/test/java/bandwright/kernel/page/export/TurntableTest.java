// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.Samples;
import bandwright.kernel.cell.CellState;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.notebook.NotebookReader;
import bandwright.kernel.page.Npm;
import bandwright.kernel.run.CellRun;
import bandwright.kernel.run.NotebookRun;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The model to turn, by judges that are not ours: the validator of the file format's makers, and a browser. Both come from npm into {@code target};
 * where npm, its network or the browser (Debian: npm, chromium) is missing the test is skipped.
 */
class TurntableTest {
    /** A ring whose seats, arcs, halves and cuts make meshes of every kind. */
    private static final String HALVES = """
            profile dome = d-shape(width: 5 mm, height: 2.2 mm, side: 1.25 mm)
            band shank { finger ISO 57  profile dome  metal silver-925 }
            cut trough from shank {
              width 1.9 mm  depth 1 mm
              keep stripe in red-gold-585
              let-in in halves at 90 deg
            }
            stone-row lights on stripe { stone round ruby 1.3 mm  around 100 deg  spacing at least 0.2 mm  sink 0.3 mm }
            cut seats for lights from stripe { hole 0.6 mm  clearance 0.01 mm }
            view ring
            """;

    /** Of it nothing repeats: its mesh is packed. */
    private static final String ARC = """
            profile bar = flat(width: 4 mm, height: 2.2 mm)
            band shank { finger ISO 57  profile bar  metal yellow-gold-750 }
            stone-row lights on shank { stone round diamond 1.5 mm  around 300 deg  spacing at least 0.2 mm  sink 0.2 mm }
            cut seats for lights from shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.01 mm }
            view ring
            """;

    @TempDir
    Path folder;

    @BeforeAll
    static void needs_npm() throws Exception {
        Npm.need();
    }

    @Test
    void the_validator_has_nothing_to_say() throws Exception {
        for (String text : List.of(harbourLight(), HALVES, ARC)) {
            Answer.Viewed viewed = viewed(text);
            Path glb =
                    Files.write(folder.resolve("ring.glb"), viewed.turntable().glb());

            assertThat(Npm.run(List.of("node", Npm.script("validate.js"), Npm.MODULES.toString(), glb.toString())))
                    .isEqualTo("0 errors, 0 warnings\n");
        }
    }

    @Test
    void the_validator_has_nothing_to_say_of_exported_files() throws Exception {
        String files = """
                export "ring.glb"
                export "plate.glb" { as cast  laid out spacing 3 mm }
                export "pattern.glb" { parts shank  shrinkage around 1.2 % across 1 % out 1.4 %  stock 0.1 mm outside }
                """;
        for (String text : List.of(harbourLight(), HALVES)) {
            Outcome outcome = Workbench.empty().run("it", new SourceText("it", text + files));
            List<Answer.Exported> exported = outcome.answers().stream()
                    .filter(Answer.Exported.class::isInstance)
                    .map(Answer.Exported.class::cast)
                    .toList();
            assertThat(exported).hasSize(3);
            for (Answer.Exported each : exported) {
                Path glb = Files.write(
                        folder.resolve("exported.glb"), each.files().get(0).bytes());

                assertThat(Npm.run(List.of("node", Npm.script("validate.js"), Npm.MODULES.toString(), glb.toString())))
                        .as(each.files().get(0).name())
                        .isEqualTo("0 errors, 0 warnings\n");
            }
        }
    }

    @Test
    void a_person_turns_cuts_and_takes_apart_the_ring_on_the_page() throws Exception {
        Npm.needBrowser();
        Path page = Files.writeString(folder.resolve("page.html"), page(viewed(harbourLight())));
        Path pictures = Files.createDirectories(Path.of("target", "turntable")).toAbsolutePath();

        String said = Npm.run(List.of(
                "node",
                Npm.script("turntable.js"),
                Npm.MODULES.toString(),
                Npm.CHROMIUM.toString(),
                page.toString(),
                pictures.toString()));

        assertThat(said).isEqualTo("all is well\n");
    }

    private static String harbourLight() throws IOException {
        Notebook notebook = (Notebook) NotebookReader.parse("it", Files.readString(Samples.HARBOUR_LIGHT));
        StringBuilder text = new StringBuilder();
        notebook.cells().stream()
                .filter(cell -> cell.kind() == CellKind.CODE)
                .flatMap(cell -> cell.source().lines())
                .filter(line -> Stream.of("show", "require", "view").noneMatch(line::startsWith))
                .forEach(line -> text.append(line).append('\n'));
        return text.append("view ring\n").toString();
    }

    static Answer.Viewed viewed(String text) {
        Outcome outcome = Workbench.empty().run("it", new SourceText("it", text));
        return outcome.answers().stream()
                .filter(Answer.Viewed.class::isInstance)
                .map(Answer.Viewed.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError(outcome.diagnostics().toString()));
    }

    static String page(Answer.Viewed viewed) {
        NotebookCell cell = new NotebookCell("c", CellKind.CODE, "view ring", java.util.Set.of(), java.util.Map.of());
        CellRun run = new CellRun(cell, 1, CellState.DONE, List.of(), List.of(viewed));
        Notebook empty = (Notebook) NotebookReader.parse("it", Samples.notebook(5, "{}"));
        return PageWriter.write(
                new NotebookRun(empty, List.of(run), Workbench.empty(), Samples.report(true)), "a ring to turn");
    }
}
