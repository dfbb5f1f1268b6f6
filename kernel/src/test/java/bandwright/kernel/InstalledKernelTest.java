// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

/**
 * The program, packaged and installed as a user does it. What Jupyter makes of it is asked by scripts, which are skipped where its
 * libraries are not installed (Debian: python3-jupyter-client, python3-nbclient, python3-jupyter-kernel-test, jupyter-console, jupyter-notebook, tmux, chromium).
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class InstalledKernelTest {
    private static final String PYTHON = "/usr/bin/python3";
    private static final Path SCRIPTS =
            Samples.REPOSITORY.resolve("kernel/src/test/python").toAbsolutePath();
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    @TempDir
    private static Path folder;

    private static Path jar = Path.of("");
    private static Path data = Path.of("");
    private static Said installed = new Said(-1, "");

    /** What a program said, on both channels. */
    private record Said(int exitCode, String words) {}

    @BeforeAll
    static void installs() throws Exception {
        boolean anyName = System.getProperty("sun.jnu.encoding", "").equals("UTF-8");
        data = folder.resolve(anyName ? "Jupyters größter Ordner" : "a folder with spaces");
        jar = ProgramJar.write(folder.resolve("program.jar"));
        installed = run(JAVA, "-jar", jar.toString(), "install-kernel");
    }

    @Test
    @Order(1)
    void it_says_where_it_went() throws Exception {
        Path kernel = data.resolve("kernels").resolve("bandwright");

        assertThat(installed.words()).contains("installed  " + kernel);
        assertThat(installed.exitCode()).isZero();
        try (Stream<Path> files = Files.list(kernel)) {
            assertThat(files.map(file -> file.getFileName().toString().replaceAll("-[0-9a-f]{16}", "-HASH")))
                    .containsExactlyInAnyOrder(
                            "kernel.json",
                            "bandwright.jar",
                            "classes-HASH.jsa",
                            "logo-32x32.png",
                            "logo-64x64.png",
                            "logo-svg.svg");
        }
        assertThat(kernel.resolve("kernel.json"))
                .content()
                .contains("\"display_name\" : \"Bandwright\"", "\"interrupt_mode\" : \"message\"", "-Xmx1g", JAVA);
    }

    @Test
    @Order(2)
    void it_can_be_installed_again_with_more_memory() throws Exception {
        Said again = run(JAVA, "-jar", jar.toString(), "install-kernel", "--user", "--heap", "512m");
        Said wrong = run(JAVA, "-jar", jar.toString(), "install-kernel", "--heap", "much");

        assertThat(again.exitCode()).isZero();
        assertThat(data.resolve("kernels/bandwright/kernel.json")).content().contains("-Xmx512m");
        assertThat(wrong.exitCode()).isEqualTo(2);
        assertThat(wrong.words()).contains("--heap wants an amount of memory");
    }

    @Test
    @Order(3)
    void jupyters_own_tests_pass() throws Exception {
        needs("jupyter_client", "jupyter_kernel_test");

        assertThat(script("conformance.py")).isEmpty();
    }

    @Test
    @Order(4)
    void a_notebook_runs_through_it() throws Exception {
        needs("nbclient", "nbformat");
        Path executed = folder.resolve("executed.ipynb");

        assertThat(script("notebook.py", Samples.HARBOUR_LIGHT.toString(), executed.toString()))
                .isEmpty();

        assertThat(executed).content().contains("image/svg+xml");
    }

    @Test
    @Order(4)
    void the_course_says_the_same_through_it() throws Exception {
        needs("nbclient", "nbformat");
        Path expected = Path.of("src/test/golden/notebooks").toAbsolutePath();
        Path work = Files.createDirectories(folder.resolve("course"));
        List<String> arguments = new ArrayList<>(List.of(expected.toString(), work.toString()));
        try (Stream<Path> notebooks = Files.list(Samples.HARBOUR_LIGHT.resolveSibling("course"))) {
            notebooks
                    .filter(file -> file.toString().endsWith(".ipynb"))
                    .sorted()
                    .forEach(file -> arguments.add(file.toAbsolutePath().toString()));
        }

        assertThat(script("course.py", arguments.toArray(String[]::new))).isEmpty();

        assertThat(work.resolve("rona-sheet.pdf")).isNotEmptyFile();
    }

    @Test
    @Order(5)
    void its_process_starts_stops_and_ends_as_it_should() throws Exception {
        needs("jupyter_client");
        assumeTrue(Files.isDirectory(Path.of("/proc/self")), "there is no /proc to see processes in");

        assertThat(script("process.py")).isEmpty();
    }

    @Test
    @Order(6)
    void cells_in_java_do_what_they_should() throws Exception {
        needs("jupyter_client");
        assumeTrue(Files.isDirectory(Path.of("/proc/self")), "there is no /proc to see processes in");

        assertThat(script("java_cells.py")).isEmpty();
    }

    @Test
    @Order(7)
    void long_sessions_stay_level_and_short_ones_leave_nothing_behind() throws Exception {
        needs("jupyter_client");
        assumeTrue(Files.isDirectory(Path.of("/proc/self")), "there is no /proc to see processes in");
        String times = System.getenv("BANDWRIGHT_LONG_TESTS") == null ? "10" : "100";

        assertThat(script("endurance.py", times)).isEmpty();
    }

    @Test
    @Order(8)
    void the_plain_console_talks_to_it() throws Exception {
        needs("jupyter_console");
        program("tmux");

        assertThat(script("console.py")).isEmpty();
    }

    @Test
    @Order(9)
    void a_notebook_runs_in_a_browser() throws Exception {
        needs("notebook.notebookapp", "tornado");
        program("chromium");
        Path work = Files.createDirectories(folder.resolve("work"));
        Path picture = folder.resolve("browser.png");

        assertThat(script("browser.py", Samples.HARBOUR_LIGHT.toString(), work.toString(), picture.toString()))
                .isEmpty();

        assertThat(picture).isNotEmptyFile();
    }

    @Test
    @Order(10)
    void it_goes_into_any_prefix_and_out_again() throws Exception {
        String prefix = folder.resolve("prefix").toString();
        Path kernel = folder.resolve("prefix/share/jupyter/kernels/bandwright");

        assertThat(run(JAVA, "-jar", jar.toString(), "install-kernel", "--prefix", prefix)
                        .exitCode())
                .isZero();
        assertThat(kernel.resolve("kernel.json")).exists();
        Said gone = run(JAVA, "-jar", jar.toString(), "uninstall-kernel", "--prefix", prefix);
        assertThat(gone.words()).isEqualTo("removed  " + kernel + "\n");
        assertThat(kernel).doesNotExist();
        assertThat(run(JAVA, "-jar", jar.toString(), "uninstall-kernel", "--prefix", prefix)
                        .exitCode())
                .isEqualTo(2);
    }

    private static void needs(String... modules) throws Exception {
        String imports = "import " + String.join(", ", modules);
        assumeTrue(
                Files.isExecutable(Path.of(PYTHON))
                        && run(PYTHON, "-c", imports).exitCode() == 0,
                "Python without " + String.join(", ", modules));
    }

    private static void program(String name) {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin", name)), "there is no " + name);
    }

    /** What the script complains of; nothing if all is well. */
    private static String script(String name, String... arguments) throws Exception {
        List<String> command =
                new ArrayList<>(List.of(PYTHON, SCRIPTS.resolve(name).toString()));
        command.addAll(List.of(arguments));
        Said said = run(command.toArray(String[]::new));
        return said.exitCode() == 0 ? "" : "failed: " + said.words();
    }

    private static Said run(String... command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment()
                .putAll(Map.of(
                        "JUPYTER_DATA_DIR", data.toString(),
                        "JUPYTER_CONFIG_DIR", folder.resolve("config").toString(),
                        "JUPYTER_RUNTIME_DIR", folder.resolve("runtime").toString(),
                        "BANDWRIGHT_DATA_DIR", folder.resolve("history").toString()));
        builder.environment().keySet().removeAll(List.of("JUPYTER_PATH", "JAVA_TOOL_OPTIONS"));
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Said(process.waitFor(), said);
    }
}
