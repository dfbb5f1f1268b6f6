// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.dsl.Answer;
import bandwright.dsl.diagnostic.Severity;
import bandwright.kernel.Samples;
import bandwright.kernel.display.Displays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

/** Asks Jupyter's own library about what we write; skipped where it is not installed (Debian: python3-nbformat). */
class SchemaTest {
    private static final String PYTHON = "/usr/bin/python3";

    @TempDir
    Path folder;

    @BeforeAll
    static void needs_the_library() throws Exception {
        assumeTrue(
                Files.isExecutable(Path.of(PYTHON)) && python("import nbformat").isEmpty(),
                "nbformat for Python is not installed");
    }

    @Test
    void the_example_is_valid() throws Exception {
        assertThat(check(Samples.HARBOUR_LIGHT)).isEmpty();
    }

    @Test
    void a_notebook_with_every_kind_of_output_is_valid() throws Exception {
        String cell = "{\"cell_type\": \"code\", \"source\": \"show ring\"}";
        Notebook notebook = (Notebook) NotebookReader.parse("it", Samples.notebook(0, "{}", cell));
        List<Output> outputs = Displays.outputs(
                List.of(Samples.diagnostic(Severity.WARNING), Samples.diagnostic(Severity.ERROR)),
                List.of(
                        Samples.drawn(),
                        new Answer.Pictured(Samples.picture()),
                        new Answer.Tabled(Samples.table()),
                        Samples.viewed(),
                        new Answer.Words("", "42 mm")));

        Notebook executed = notebook.withResults(Map.of("cell-1", new CellResult(1, outputs)));

        assertThat(check(Samples.file(folder, "all.ipynb", executed.json()))).isEmpty();
    }

    @Test
    void jupyter_writes_the_same_bytes() throws Exception {
        String script = "import nbformat, sys; nbformat.write(nbformat.read(sys.argv[1], 4), sys.argv[2])";
        Path again = folder.resolve("again.ipynb");

        assertThat(python(script, Samples.HARBOUR_LIGHT.toString(), again.toString()))
                .isEmpty();

        assertThat(again).hasSameTextualContentAs(Samples.HARBOUR_LIGHT);
    }

    private static String check(Path notebook) throws Exception {
        String script =
                "import nbformat, sys; nbformat.validate(nbformat.read(sys.argv[1], as_version=nbformat.NO_CONVERT))";
        return python(script, notebook.toString());
    }

    /** What the script complains of; nothing if all is well. */
    private static String python(String script, String... arguments) throws IOException, InterruptedException {
        List<String> command = new java.util.ArrayList<>(List.of(PYTHON, "-c", script));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return process.waitFor() == 0 ? "" : "failed: " + said;
    }
}
