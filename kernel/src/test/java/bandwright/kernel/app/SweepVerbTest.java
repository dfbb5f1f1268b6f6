// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.kernel.ProgramJar;

import static org.assertj.core.api.Assertions.assertThat;

class SweepVerbTest {
    private static final String BAND = """
            finger-size = US 7
            breadth = 4 mm between 3 mm and 8 mm
            alloy = red-gold-585
            profile flat-one = flat-court(width: breadth, height: 1.8 mm, inside: 0.2 mm)
            band shank { finger finger-size  profile flat-one  metal alloy }
            require weight(shank) >= 3 g because "it should feel like something"
            """;

    /** 101 by 251 by 4, some 100,000. */
    private static final List<String> LARGE = List.of(
            "--over", "finger-size=US 3..13 step 0.1",
            "--over", "breadth=3 mm..8 mm step 0.02 mm",
            "--over", "alloy=red-gold-585, yellow-gold-750, silver-925, platinum-950-ru",
            "--measure", "weight(shank)");

    @TempDir
    Path folder;

    private Path design;

    @BeforeEach
    void design() throws IOException {
        design = Files.writeString(folder.resolve("band.ring"), BAND);
    }

    private Ran sweep(Object... more) {
        List<Object> words = new ArrayList<>(List.of("sweep", design, "--out", folder.resolve("rings.csv")));
        words.addAll(List.of(more));
        return Ran.command(words.toArray());
    }

    @Test
    void rows_and_what_they_are_of_are_written() throws IOException {
        Ran ran = sweep("--over", "breadth=3 mm..4 mm step 0.5 mm", "--measure", "weight(shank)");

        assertThat(ran.err()).isEmpty();
        assertThat(ran.exitCode()).isZero();
        assertThat(ran.out()).isEqualTo("wrote " + folder.resolve("rings.csv") + "\n");
        assertThat(Files.readAllLines(folder.resolve("rings.csv"))).hasSize(4);
        assertThat(folder.resolve("rings.csv.json"))
                .content()
                .contains("\"design_fingerprint\"", "\"csv_sha256\"", "\"rows\" : 3", "weight(shank) >= 3 g");
        assertThat(folder.resolve("rings.csv.part")).doesNotExist();
    }

    @Test
    void bad_plans_are_told_before_any_work_and_leave_nothing() {
        List<List<Object>> wrong = List.of(
                List.of("nothing varies"),
                List.of("nothing defines wide yet", "--over", "wide=3 mm..4 mm"),
                List.of("breadth is a length, and a weight was given", "--over", "breadth=3 g..4 g"),
                List.of("a range goes from the smaller to the larger", "--over", "breadth=4 mm..3 mm"),
                List.of("are more than 100,000", "--over", "breadth=3 mm..8 mm step 0.00001 mm"),
                List.of(
                        "are more than 10,000,000,000",
                        "--over",
                        "breadth=3 mm..8 mm step 0.0001 mm",
                        "--over",
                        "finger-size=US 3..13 step 0.0002",
                        "--over",
                        "alloy=silver-925, red-gold-585, red-gold-750, platinum-950-ru, palladium-950"),
                List.of("stripe", "--over", "breadth", "--measure", "weight(stripe)"),
                List.of("--plan", "--over", "breadth", "--plan", folder.resolve("none.json")),
                List.of("cannot be read", "--plan", folder.resolve("none.json")),
                List.of("say one of them", "--over", "breadth", "--resume", "--replace"),
                List.of("nothing to go on with", "--over", "breadth", "--resume"));
        for (List<Object> given : wrong) {
            Ran ran = sweep(given.subList(1, given.size()).toArray());

            assertThat(ran.exitCode()).as("%s", given).isEqualTo(ExitCode.USAGE);
            assertThat(ran.err()).contains(String.valueOf(given.get(0)));
            assertThat(folder).isDirectoryNotContaining("glob:**rings*");
        }
    }

    @Test
    void a_place_that_cannot_be_written_is_told_before_any_work() throws IOException {
        Path blocked = Files.writeString(folder.resolve("a-file"), "x").resolve("rings.csv");

        Ran ran = Ran.command("sweep", design, "--over", "breadth", "--out", blocked);

        assertThat(ran.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(ran.err()).contains("cannot be written");
    }

    @Test
    void a_design_with_an_error_has_no_catalogue() throws IOException {
        Files.writeString(design, BAND + "band other { width 3 mm }\n");

        assertThat(sweep("--over", "breadth").exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(folder).isDirectoryNotContaining("glob:**rings*");
    }

    @Test
    void a_hundred_thousand_rows_killed_twice_and_gone_on_with_are_those_of_a_run_in_peace() throws Exception {
        Path peaceful = folder.resolve("peaceful.csv");
        assertThat(start(peaceful).waitFor()).isZero();
        long length = Files.size(peaceful);
        Random random = new Random(20261127);
        Path disturbed = folder.resolve("disturbed.csv");
        Path part = folder.resolve("disturbed.csv.part");
        long least = 0;
        for (int kill = 0; kill < 2; kill++) {
            Process running = kill == 0 ? start(disturbed) : start(disturbed, "--resume");
            least += 1 + random.nextLong(length / 3);
            while (running.isAlive() && (!Files.exists(part) || Files.size(part) < least)) {
                TimeUnit.MILLISECONDS.sleep(5);
            }
            assertThat(running.isAlive()).as("killed in the middle of its work").isTrue();
            running.destroyForcibly().waitFor();
            assertThat(Files.size(part)).isBetween(least, length - 1);
        }

        assertThat(start(disturbed, "--resume", "--threads", "1").waitFor()).isZero();

        assertThat(disturbed).hasSameBinaryContentAs(peaceful);
        assertThat(folder.resolve("disturbed.csv.json")).hasSameBinaryContentAs(folder.resolve("peaceful.csv.json"));
        assertThat(Files.readAllLines(peaceful)).hasSize(1 + 101 * 251 * 4);
    }

    private Process start(Path out, String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-cp",
                ProgramJar.classPath(),
                Main.class.getName(),
                "sweep",
                design.toString(),
                "--out",
                out.toString()));
        words.addAll(LARGE);
        words.addAll(List.of(more));
        return new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("told.txt").toFile())
                .start();
    }
}
