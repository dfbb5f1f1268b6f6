// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
import bandwright.kernel.run.CellRun;
import bandwright.kernel.run.NotebookRun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

/**
 * The model to turn, by judges that are not ours: the validator of the file format's makers, and a browser. Both come from npm into {@code target};
 * where npm, its network or the browser (Debian: npm, chromium) is missing the test is skipped.
 */
class TurntableTest {
    private static final Path MODULES = Path.of("target", "npm").toAbsolutePath();

    /** Pinned, and both stand alone: they ask for no further packages. */
    private static final List<String> PACKAGES = List.of("gltf-validator@2.0.0-dev.3.10", "playwright-core@1.65.1");

    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");

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

    @TempDir
    Path folder;

    @BeforeAll
    static void needs_npm() throws Exception {
        if (PACKAGES.stream()
                .allMatch(name -> Files.isDirectory(
                        MODULES.resolve("node_modules").resolve(name.substring(0, name.indexOf('@')))))) {
            return;
        }
        Files.createDirectories(MODULES);
        List<String> command = new ArrayList<>(List.of(
                "npm", "install", "--silent", "--no-save", "--no-audit", "--no-fund", "--ignore-scripts", "--prefix"));
        command.add(MODULES.toString());
        command.addAll(PACKAGES);
        assumeTrue(run(command).isEmpty(), "npm is missing or reaches no registry");
    }

    @Test
    void the_validator_has_nothing_to_say() throws Exception {
        for (String text : List.of(harbourLight(), HALVES)) {
            Answer.Viewed viewed = viewed(text);
            Path glb =
                    Files.write(folder.resolve("ring.glb"), viewed.turntable().glb());

            assertThat(run(List.of("node", script("validate.js"), MODULES.toString(), glb.toString())))
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

                assertThat(run(List.of("node", script("validate.js"), MODULES.toString(), glb.toString())))
                        .as(each.files().get(0).name())
                        .isEqualTo("0 errors, 0 warnings\n");
            }
        }
    }

    @Test
    void a_person_turns_cuts_and_takes_apart_the_ring_on_the_page() throws Exception {
        assumeTrue(Files.isExecutable(CHROMIUM), "there is no Chromium");
        Path page = Files.writeString(folder.resolve("page.html"), page(viewed(harbourLight())));
        Path pictures = Files.createDirectories(Path.of("target", "turntable")).toAbsolutePath();

        String said = run(List.of(
                "node",
                script("turntable.js"),
                MODULES.toString(),
                CHROMIUM.toString(),
                page.toString(),
                pictures.toString()));

        assertThat(said).isEqualTo("all is well\n");
    }

    private static String script(String name) {
        return Path.of("src", "test", "javascript", name).toAbsolutePath().toString();
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

    /** What a program says; where it cannot be started, that. */
    private static String run(List<String> command) throws InterruptedException {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            int code = process.waitFor();
            return code == 0 || !said.isEmpty() ? said : "failed with " + code;
        } catch (IOException missing) {
            return missing.toString();
        }
    }
}
