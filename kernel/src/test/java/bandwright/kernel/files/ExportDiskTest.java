// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.files;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Feature;
import com.google.common.jimfs.Jimfs;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.PlainRenderer;

import static org.assertj.core.api.Assertions.assertThat;

/** Exports on disks that are full, or know no second names for a file. */
class ExportDiskTest {
    private static final int BLOCK = 1024;

    private static Configuration disk(int blocks) {
        return Configuration.unix().toBuilder()
                .setAttributeViews("posix")
                .setBlockSize(BLOCK)
                .setMaxSize((long) blocks * BLOCK)
                .setMaxCacheSize(0)
                .build();
    }

    private static Outcome write(Path folder, Answer.Exported... exports) {
        Workbench before = Workbench.empty();
        return new ExportFolder(folder).written(before, new Outcome(before, List.of(), List.of(exports)));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static String much(int blocks) {
        return "x".repeat(blocks * BLOCK);
    }

    @Test
    void a_full_disk_is_told_and_the_old_file_stays_whole() throws IOException {
        try (FileSystem disk = Jimfs.newFileSystem(disk(8))) {
            Path folder = Files.createDirectories(disk.getPath("/bench"));
            Files.writeString(folder.resolve("ring.stl"), "the old ring");

            Outcome outcome = write(folder, ExportFolderTest.export("ring.stl", much(20), true));

            assertThat(PlainRenderer.render(outcome.diagnostics())).contains("there is no room left on the disk");
            assertThat(Files.readString(folder.resolve("ring.stl"))).isEqualTo("the old ring");
            assertThat(names(folder)).containsExactly("ring.stl");
        }
    }

    @Test
    void of_two_files_none_is_written_where_one_does_not_fit() throws IOException {
        try (FileSystem disk = Jimfs.newFileSystem(disk(8))) {
            Path folder = Files.createDirectories(disk.getPath("/bench"));

            Outcome outcome = write(
                    folder,
                    ExportFolderTest.export("small.stl", much(2), false),
                    ExportFolderTest.export("large.stl", much(9), false));

            assertThat(outcome.hasErrors()).isTrue();
            assertThat(names(folder)).isEmpty();
            assertThat(write(folder, ExportFolderTest.export("small.stl", much(2), false))
                            .hasErrors())
                    .as("what was taken back is free again")
                    .isFalse();
        }
    }

    @Test
    void a_disk_without_links_takes_files_and_gives_old_ones_back() throws IOException {
        Configuration plain =
                disk(64).toBuilder().setSupportedFeatures(Feature.FILE_CHANNEL).build();
        try (FileSystem disk = Jimfs.newFileSystem(plain)) {
            Path folder = Files.createDirectories(disk.getPath("/bench"));
            assertThat(write(folder, ExportFolderTest.export("ring.stl", "one", false))
                            .hasErrors())
                    .isFalse();
            assertThat(write(folder, ExportFolderTest.export("ring.stl", "two", true))
                            .hasErrors())
                    .isFalse();
            assertThat(Files.readString(folder.resolve("ring.stl"))).isEqualTo("two");

            Outcome outcome = write(
                    folder,
                    ExportFolderTest.export("ring.stl", "three", true),
                    ExportFolderTest.export("large.stl", much(70), false));

            assertThat(outcome.hasErrors()).isTrue();
            assertThat(Files.readString(folder.resolve("ring.stl"))).isEqualTo("two");
            assertThat(names(folder)).containsExactly("ring.stl");
        }
    }
}
