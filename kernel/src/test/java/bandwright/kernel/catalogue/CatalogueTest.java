// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;

import bandwright.dsl.Sweep;
import bandwright.dsl.Workbench;
import bandwright.dsl.view.Table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

class CatalogueTest {
    private static final Catalogue.Heard NOBODY = (rows, total) -> {};

    private final Sweep sweep = Designs.sweep(Designs.PLAN);

    @TempDir
    Path folder;

    private Path file;
    private Path part;

    @BeforeEach
    void paths() {
        file = folder.resolve("rings.csv");
        part = folder.resolve("rings.csv.part");
    }

    private Catalogue catalogue(Path place) {
        return new Catalogue(sweep, Designs.heading(Designs.PLAN), place);
    }

    private byte[] whole() throws Exception {
        Path other = folder.resolve("whole.csv");
        catalogue(other).write(true, 1, NOBODY);
        return Files.readAllBytes(other);
    }

    @Test
    void every_combination_is_a_row_with_its_values_failed_requirements_or_reason() throws Exception {
        List<String> lines = new String(whole(), StandardCharsets.UTF_8).lines().toList();

        assertThat(lines).hasSize(1 + 9 * 3 * 7);
        assertThat(lines.get(0))
                .isEqualTo("breadth (mm),finger-size,alloy,weight(shank) (g),count(lights),failed,reason");
        assertThat(lines).anyMatch(line -> line.startsWith("6,US 9,platinum-950-ru,") && line.endsWith(",1,"));
        assertThat(lines).anyMatch(line -> line.startsWith("3,US 5,silver-925,,,,") && line.contains("cannot be made"));
        assertThat(lines.subList(1, 4))
                .as("metals move fastest, for they share the shape")
                .allMatch(line -> line.startsWith("3,US 5,"));
    }

    @Test
    void a_row_says_what_the_design_says_with_those_values() throws Exception {
        for (long row : new long[] {50, 77, 104, 188}) {
            List<String> cells = sweep.row(row);
            Workbench alone = Designs.workbench(Designs.TEXT)
                    .withValue("breadth", cells.get(0) + " mm")
                    .workbench()
                    .withValue("finger-size", cells.get(1))
                    .workbench()
                    .withValue("alloy", cells.get(2))
                    .workbench();

            assertThat(alone.report().totalWeightG()).isCloseTo(Double.parseDouble(cells.get(3)), offset(1e-6));
        }
    }

    @Test
    void wherever_it_was_stopped_it_ends_the_same() throws Exception {
        byte[] whole = whole();
        Random random = new Random(11);
        for (int round = 0; round < 12; round++) {
            catalogue(file).write(true, 1, NOBODY);
            Files.delete(file);
            Files.write(part, Arrays.copyOf(whole, random.nextInt(whole.length + 1)));
            Files.write(
                    folder.resolve("rings.csv.json"),
                    Designs.heading(Designs.PLAN).begun(sweep));

            catalogue(file).resume(2, NOBODY);

            assertThat(file).hasBinaryContent(whole);
            assertThat(part).doesNotExist();
            assertThat(folder.resolve("rings.csv.json")).hasSameBinaryContentAs(folder.resolve("whole.csv.json"));
        }
    }

    @Test
    void stopped_between_its_last_two_steps_it_is_finished_by_going_on() throws Exception {
        whole();
        catalogue(file).write(false, 2, NOBODY);
        Path side = folder.resolve("rings.csv.json");
        byte[] finished = Files.readAllBytes(side);
        Files.write(side, Designs.heading(Designs.PLAN).begun(sweep));

        catalogue(file).resume(2, NOBODY);

        assertThat(side).hasBinaryContent(finished);
        assertThat(file).hasSameBinaryContentAs(folder.resolve("whole.csv"));
    }

    @Test
    void what_is_there_is_not_written_over_unasked() throws Exception {
        Files.writeString(file, "mine");
        assertThatThrownBy(() -> catalogue(file).write(false, 1, NOBODY)).hasMessageContaining("say --replace");
        assertThat(file).hasContent("mine");

        Files.delete(file);
        Files.writeString(part, "half");
        assertThatThrownBy(() -> catalogue(file).write(false, 1, NOBODY)).hasMessageContaining("say --replace");
        Files.write(
                folder.resolve("rings.csv.json"), Designs.heading(Designs.PLAN).begun(sweep));
        assertThatThrownBy(() -> catalogue(file).write(false, 1, NOBODY)).hasMessageContaining("say --resume");
        assertThat(part).hasContent("half");
    }

    @Test
    void one_of_another_plan_or_design_is_not_gone_on_with() throws Exception {
        catalogue(file).write(false, 1, NOBODY);
        Files.move(file, part);
        Files.write(
                folder.resolve("rings.csv.json"), Designs.heading(Designs.PLAN).begun(sweep));
        byte[] before = Files.readAllBytes(part);
        Plan other = new Plan(Designs.PLAN.over(), List.of("weight(shank)"));

        assertThatThrownBy(() -> new Catalogue(Designs.sweep(other), Designs.heading(other), file).resume(1, NOBODY))
                .hasMessageContaining("is a catalogue of something else");
        assertThat(part).hasBinaryContent(before);
    }

    @Test
    void rows_that_are_none_of_ours_are_not_gone_on_with() throws Exception {
        Files.write(
                folder.resolve("rings.csv.json"), Designs.heading(Designs.PLAN).begun(sweep));
        String header = Table.csvLine(
                sweep.columns().stream().map(Table.Column::heading).toList());
        for (String foreign : List.of("a,b\n1,2\nmy torn line", "no line end", header + "9,US 5,silver-925,,,,\n")) {
            Files.writeString(part, foreign);
            assertThatThrownBy(() -> catalogue(file).resume(1, NOBODY))
                    .hasMessageContaining("does not hold the rows that this plan makes");
            assertThat(part).hasContent(foreign);
        }
    }

    @Test
    void an_older_catalogue_is_never_taken_for_the_new_one() throws Exception {
        Plan other = new Plan(List.of(new Over("finger-size", "US 5..9")), List.of("weight(shank)"));
        new Catalogue(Designs.sweep(other), Designs.heading(other), file).write(false, 1, NOBODY);
        // As if stopped at once: what is known of the new one is written, and none of its rows.
        Files.write(
                folder.resolve("rings.csv.json"), Designs.heading(Designs.PLAN).begun(sweep));

        assertThatThrownBy(() -> catalogue(file).resume(1, NOBODY)).hasMessageContaining("of something else");

        whole();
        catalogue(file).write(true, 1, NOBODY);
        assertThat(file).hasSameBinaryContentAs(folder.resolve("whole.csv"));
    }

    @Test
    void of_two_that_write_one_catalogue_the_later_one_is_refused() throws Exception {
        byte[] whole = whole();
        List<String> told = new ArrayList<>();
        catalogue(file).write(false, 1, (rows, total) -> {
            if (rows > 0 && told.isEmpty()) {
                for (boolean replace : new boolean[] {true, false}) {
                    assertThatThrownBy(() -> catalogue(file).write(replace, 1, NOBODY))
                            .isInstanceOf(CatalogueFault.class)
                            .satisfies(fault -> told.add(fault.getMessage()));
                }
            }
        });

        assertThat(told.get(0)).contains("is being written by another program");
        assertThat(file).hasBinaryContent(whole);
    }

    @Test
    void a_row_that_was_damaged_in_the_middle_is_found() throws Exception {
        byte[] whole = whole();
        Files.write(
                folder.resolve("rings.csv.json"), Designs.heading(Designs.PLAN).begun(sweep));
        byte[] damaged = Arrays.copyOf(whole, whole.length / 2);
        Arrays.fill(damaged, 300, 340, (byte) 0);
        Files.write(part, damaged);

        assertThatThrownBy(() -> catalogue(file).resume(1, NOBODY)).hasMessageContaining("does not hold the rows");
        assertThat(part).hasBinaryContent(damaged);
    }

    @Test
    void without_anything_there_is_nothing_to_go_on_with() {
        assertThatThrownBy(() -> catalogue(file).resume(1, NOBODY)).hasMessageContaining("nothing to go on with");
    }

    @Test
    void a_disk_too_small_is_told_before_any_work() throws IOException {
        try (FileSystem disk = disk(2_000)) {
            Path small = disk.getPath("/shop/rings.csv");

            assertThatThrownBy(() -> catalogue(small).write(false, 1, NOBODY))
                    .hasMessageContaining("the disk has room for");
            assertThat(disk.getPath("/shop/rings.csv.part")).doesNotExist();
        }
    }

    @Test
    void a_disk_that_fills_up_on_the_way_leaves_what_can_be_gone_on_with() throws Exception {
        byte[] whole = whole();
        Path rest = folder.resolve("rings.csv.part");
        try (FileSystem disk = disk(2 * whole.length)) {
            Path place = disk.getPath("/shop/rings.csv");
            // Somebody else fills the disk once the work has begun.
            Catalogue.Heard neighbour = (rows, total) -> {
                if (rows > 0 && rows < total) {
                    fill(disk.getPath("/shop/neighbour"));
                }
            };
            assertThatThrownBy(() -> catalogue(place).write(false, 1, neighbour))
                    .hasMessageContaining("cannot be written")
                    .hasMessageContaining("say --resume to go on");
            Files.write(rest, Files.readAllBytes(disk.getPath("/shop/rings.csv.part")));
            Files.write(folder.resolve("rings.csv.json"), Files.readAllBytes(disk.getPath("/shop/rings.csv.json")));
        }
        assertThat(Files.size(rest)).isGreaterThan(100);

        catalogue(file).resume(1, NOBODY);

        assertThat(file).hasBinaryContent(whole);
    }

    private static void fill(Path neighbour) {
        try {
            for (int i = 0; i < 10_000; i++) {
                Files.write(neighbour, new byte[64], StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            }
        } catch (IOException full) {
            // As meant.
            return;
        }
    }

    private static FileSystem disk(int bytes) {
        return Jimfs.newFileSystem(Configuration.unix().toBuilder()
                .setAttributeViews("posix")
                .setBlockSize(64)
                .setMaxSize(bytes)
                .setMaxCacheSize(0)
                .build());
    }
}
