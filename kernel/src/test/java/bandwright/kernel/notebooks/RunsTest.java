// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebooks;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import bandwright.kernel.cell.CellState;
import bandwright.kernel.display.Displays;
import bandwright.kernel.notebook.Output;
import bandwright.kernel.run.CellRun;
import bandwright.kernel.run.NotebookRun;
import bandwright.kernel.run.NotebookRunner;
import bandwright.kernel.run.Progress;
import bandwright.kernel.run.Verdict;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Every notebook and every ring text of the folder, run from first to last: what it says and draws is what is stored in {@code
 * src/test/golden/notebooks}. {@code -Dgolden=update} writes it anew. Nothing is exported.
 */
class RunsTest {
    private static final Path EXPECTED = Path.of("src/test/golden/notebooks");
    private static final String SVG = "image/svg+xml";
    private static final String PNG = "image/png";

    @TestFactory
    Stream<DynamicTest> notebooks_say_what_is_stored() {
        return Folder.files("", ".ipynb").stream()
                .map(file -> DynamicTest.dynamicTest(Folder.name(file), () -> saysWhatIsStored(file)));
    }

    @TestFactory
    Stream<DynamicTest> finished_rings_say_what_is_stored_pass_their_checks_and_look_as_shown() {
        return Folder.files("designs", ".ring").stream()
                .map(file -> DynamicTest.dynamicTest(Folder.name(file), () -> {
                    NotebookRun run = saysWhatIsStored(file);

                    assertThat(said(run).get("")).containsPattern("none of \\d+ checks failed");
                    looksAsShown(run, file.resolveSibling(Folder.name(file) + ".png"));
                }));
    }

    private static NotebookRun saysWhatIsStored(Path file) throws IOException {
        NotebookRun run = NotebookRunner.run(Folder.notebook(file), Progress.SILENT);

        assertThat(run.cells()).extracting(CellRun::state).isSubsetOf(CellState.DONE, CellState.NOT_RUN);
        assertThat(run.verdict()).isEqualTo(Verdict.GOOD);
        for (Map.Entry<String, String> each : said(run).entrySet()) {
            String drawing = each.getKey();
            Path expected = EXPECTED.resolve(Folder.name(file) + (drawing.isEmpty() ? ".out" : "." + drawing + ".svg"));
            boolean known = Files.exists(expected);
            if (!known || "update".equals(System.getProperty("golden"))) {
                Files.createDirectories(EXPECTED);
                Files.writeString(expected, each.getValue());
            }
            assertThat(known)
                    .as("%s was missing and has been written; look at it and run again", expected)
                    .isTrue();
            assertThat(each.getValue()).isEqualTo(Files.readString(expected));
        }
        assertThat(drawings(Folder.name(file)))
                .as("drawings that no run makes any more")
                .isSubsetOf(said(run).keySet());
        return run;
    }

    /** The stored ones of a notebook, by the names that {@link #said} gives them. */
    private static List<String> drawings(String name) throws IOException {
        try (Stream<Path> files = Files.list(EXPECTED)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> file.startsWith(name + ".") && file.endsWith(".svg"))
                    .map(file -> file.substring(name.length() + 1, file.length() - ".svg".length()))
                    .sorted()
                    .toList();
        }
    }

    /** All words under the empty name, and each drawing under that of its cell and how manieth it is there. */
    private static Map<String, String> said(NotebookRun run) {
        Map<String, String> said = new TreeMap<>();
        StringBuilder words = new StringBuilder();
        for (CellRun cell : run.cells()) {
            int drawings = 0;
            for (Output output : Displays.outputs(cell.diagnostics(), cell.answers())) {
                words.append("--- ").append(cell.cell().id()).append('\n');
                if (output instanceof Output.Stream stream) {
                    words.append(stream.text());
                } else if (output instanceof Output.Display display) {
                    words.append(display.data().get("text/plain")).append('\n');
                    String svg = display.data().get(SVG);
                    if (svg != null) {
                        said.put(cell.cell().id() + "-" + ++drawings, svg);
                    }
                }
            }
        }
        said.put("", words.toString());
        return said;
    }

    /** The first picture of the run has the pixels of the stored one; how a file is packed may differ. */
    private static void looksAsShown(NotebookRun run, Path stored) throws IOException {
        List<Output> outputs = run.cells().stream()
                .flatMap(cell -> Displays.outputs(cell.diagnostics(), cell.answers()).stream())
                .toList();
        byte[] png = outputs.stream()
                .filter(Output.Display.class::isInstance)
                .map(output -> ((Output.Display) output).data())
                .filter(data -> data.containsKey(PNG) && !data.containsKey(SVG))
                .map(data -> Base64.getDecoder().decode(data.get(PNG)))
                .findFirst()
                .orElseThrow();
        boolean known = Files.exists(stored);
        if (!known || "update".equals(System.getProperty("golden"))) {
            Files.write(stored, png);
        }
        assertThat(known)
                .as("%s was missing and has been written; look at it and run again", stored)
                .isTrue();
        assertThat(pixels(png)).isEqualTo(pixels(Files.readAllBytes(stored)));
    }

    private static int[] pixels(byte[] png) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
