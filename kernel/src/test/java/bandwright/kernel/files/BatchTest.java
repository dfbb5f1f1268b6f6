// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.dsl.Answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** What happens on the way when others write to the folder too. */
class BatchTest {
    @TempDir
    Path folder;

    private Writing writing(String name, boolean replace) {
        Answer.Exported export = ExportFolderTest.export(name, "new", replace);
        return new Writing(export, export.files().get(0), folder.resolve(name));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void what_was_put_is_taken_back_when_the_next_one_cannot_be() throws IOException {
        Files.writeString(folder.resolve("a.stl"), "old");
        Writing replaced = writing("a.stl", true);
        Writing fresh = writing("b.stl", false);
        Writing late = writing("c.stl", false);
        try (Batch batch = new Batch()) {
            batch.stage(replaced);
            batch.stage(fresh);
            batch.stage(late);
            batch.put(replaced);
            batch.put(fresh);
            assertThat(folder.resolve("a.stl")).hasContent("new");
            Files.writeString(folder.resolve("c.stl"), "theirs");
            assertThatThrownBy(() -> batch.put(late)).isInstanceOf(FileAlreadyExistsException.class);
        }
        assertThat(names()).containsExactly("a.stl", "c.stl");
        assertThat(folder.resolve("a.stl")).hasContent("old");
        assertThat(folder.resolve("c.stl")).hasContent("theirs");
    }

    @Test
    void a_folder_that_came_in_between_is_not_replaced() throws IOException {
        Writing first = writing("a.stl", true);
        Writing second = writing("b.stl", true);
        try (Batch batch = new Batch()) {
            batch.stage(first);
            batch.stage(second);
            batch.put(first);
            Files.createDirectory(folder.resolve("b.stl"));
            Files.writeString(folder.resolve("b.stl").resolve("kept"), "theirs");
            assertThatThrownBy(() -> batch.put(second)).isInstanceOf(IOException.class);
        }
        assertThat(names()).containsExactly("b.stl");
        assertThat(folder.resolve("b.stl").resolve("kept")).hasContent("theirs");
    }

    @Test
    void another_file_that_took_the_place_meanwhile_is_not_taken_back() throws IOException {
        Writing first = writing("a.stl", false);
        try (Batch batch = new Batch()) {
            batch.stage(first);
            batch.put(first);
            Files.delete(folder.resolve("a.stl"));
            Files.writeString(folder.resolve("a.stl"), "theirs");
        }
        assertThat(folder.resolve("a.stl")).hasContent("theirs");
    }

    @Test
    void the_same_file_that_came_in_between_is_as_good() throws IOException {
        Writing first = writing("a.stl", false);
        try (Batch batch = new Batch()) {
            batch.stage(first);
            Files.writeString(folder.resolve("a.stl"), "new");
            batch.put(first);
        }
        // It is theirs, and stays.
        assertThat(names()).containsExactly("a.stl");
    }

    @Test
    void what_is_kept_stays_and_no_helper_does() throws IOException {
        Files.writeString(folder.resolve("a.stl"), "old");
        Writing writing = writing("a.stl", true);
        try (Batch batch = new Batch()) {
            batch.stage(writing);
            batch.put(writing);
            batch.keep();
        }
        assertThat(names()).containsExactly("a.stl");
        assertThat(folder.resolve("a.stl")).hasContent("new");
    }
}
