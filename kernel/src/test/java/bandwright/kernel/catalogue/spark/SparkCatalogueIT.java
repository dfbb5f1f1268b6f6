// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue.spark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.kernel.app.Ran;

import static org.assertj.core.api.Assertions.assertThat;

/** The runnable jar on a Spark of a master and two workers, one of which is lost on the way. */
class SparkCatalogueIT {
    private static final Path JAR = Path.of("target", "bandwright.jar").toAbsolutePath();

    /** Narrow ones cannot be made, heavy ones fail. */
    private static final String DESIGN = """
            finger-size = US 7
            breadth = 4 mm between 3 mm and 8 mm
            alloy = red-gold-585
            profile flat-one = flat-court(width: breadth, height: 1.8 mm, inside: 0.2 mm)
            band shank { finger finger-size  profile flat-one  metal alloy }
            stone-row lights on shank { stone round diamond 1.2 mm  around full  spacing at least 0.2 mm  across -1.6 mm, 1.6 mm }
            require weight(shank) <= 9 g because "comfort"
            """;

    private static final List<String> PLAN = List.of(
            "--over",
            "finger-size=US 3..13 step 0.1",
            "--over",
            "breadth=3 mm..8 mm step 0.02 mm",
            "--over",
            "alloy=red-gold-585, yellow-gold-750, silver-925, platinum-950-ru",
            "--measure",
            "weight(shank)",
            "--measure",
            "count(lights)");

    @TempDir
    Path folder;

    @Test
    void a_hundred_thousand_rows_of_two_workers_one_of_them_lost_are_those_of_one_machine() throws Exception {
        Path design = Files.writeString(folder.resolve("band.ring"), DESIGN);
        Path out = folder.resolve("catalogue");
        try (SparkHome spark = SparkHome.in(folder)) {
            spark.startMaster();
            spark.startWorker("one");
            Process lost = spark.startWorker("two");
            Process sweep = spark.submit(words(
                    List.of("--master", spark.master(), JAR.toString(), "sweep", design.toString()),
                    PLAN,
                    List.of("--spark", "--out", out.toString())));
            while (sweep.isAlive() && written(out.resolve("csv")) < 2) {
                TimeUnit.MILLISECONDS.sleep(20);
            }
            assertThat(sweep.isAlive())
                    .as("a worker is lost in the middle of the work: %s", spark.said())
                    .isTrue();
            lost.descendants().forEach(ProcessHandle::destroyForcibly);
            lost.destroyForcibly();

            assertThat(sweep.waitFor(10, TimeUnit.MINUTES)).isTrue();
            assertThat(sweep.exitValue()).as(spark.said()).isZero();

            Path local = folder.resolve("local.csv");
            Ran.command(words(List.of("sweep", design.toString(), "--out", local.toString()), PLAN, List.of())
                    .toArray());
            assertThat(whole(out)).isEqualTo(Files.readString(local));
            assertThat(Files.readString(out.resolve("catalogue.json"))).contains("\"rows\" : 101404");

            Process read = spark.submit(List.of(
                    "--class",
                    ParquetRows.class.getName(),
                    "--jars",
                    JAR.toString(),
                    Path.of("target", "test-classes").toAbsolutePath().toString(),
                    out.resolve("parquet").toString(),
                    folder.resolve("rows.txt").toString()));
            assertThat(read.waitFor(5, TimeUnit.MINUTES)).isTrue();
            List<String> rows = new ArrayList<>(Files.readAllLines(local));
            rows.remove(0);
            rows.sort(null);
            assertThat(Files.readAllLines(folder.resolve("rows.txt"))).isEqualTo(rows);
        }
    }

    private static List<String> words(List<String> first, List<String> second, List<String> third) {
        return Stream.of(first, second, third).flatMap(List::stream).toList();
    }

    /** How many tasks have written their lines so far. */
    private static long written(Path csv) throws IOException {
        if (!Files.isDirectory(csv)) {
            return 0;
        }
        try (Stream<Path> files = Files.walk(csv)) {
            return files.filter(file -> file.getFileName().toString().startsWith("part-"))
                    .count();
        } catch (UncheckedIOException moved) {
            return 0;
        }
    }

    private static String whole(Path out) throws IOException {
        StringBuilder text = new StringBuilder(Files.readString(out.resolve("header.csv")));
        try (Stream<Path> parts = Files.list(out.resolve("csv"))) {
            for (Path part : parts.filter(file -> file.getFileName().toString().startsWith("part-"))
                    .sorted()
                    .toList()) {
                text.append(Files.readString(part, StandardCharsets.UTF_8));
            }
        }
        return text.toString();
    }
}
