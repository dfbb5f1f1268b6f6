// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;

class HistoryFileTest {
    @TempDir
    Path folder;

    @Test
    void history_goes_on_where_the_last_session_ended() {
        open().add(1, "show \"a\nb\"", "shown");

        History second = open();
        second.add(1, "x = 1 mm", "");

        assertThat(second.entries())
                .containsExactly(new History.Entry(1, 1, "show \"a\nb\"", ""), new History.Entry(2, 1, "x = 1 mm", ""));
    }

    @Test
    void damaged_lines_are_passed_over() throws Exception {
        open().add(1, "a", "");
        Path file = folder.resolve("history.jsonl");
        Files.writeString(file, "nonsense\n{\"session\": \n" + Files.readString(file) + "{}");

        assertThat(open().entries()).extracting(History.Entry::input).containsExactly("a", "");
    }

    @Test
    void a_large_file_is_cut_to_its_end() throws Exception {
        String text = "x".repeat(1000);
        StringBuilder lines = new StringBuilder();
        for (int line = 1; line <= 3000; line++) {
            lines.append("{\"session\":1,\"line\":").append(line).append(",\"input\":\"" + text + "\"}\n");
        }
        Path file = Files.writeString(folder.resolve("history.jsonl"), lines);

        assertThat(open().entries())
                .hasSize(1000)
                .last()
                .extracting(History.Entry::line)
                .isEqualTo(3000);
        assertThat(Files.size(file)).isLessThan(1_100_000);
    }

    @Test
    void without_a_home_or_a_folder_it_lasts_as_long_as_the_process() {
        Path noFolder = Path.of("/dev/null/no");
        History history = HistoryFile.open(Map.of("BANDWRIGHT_DATA_DIR", noFolder.toString()), "Linux");
        history.add(1, "a", "");

        assertThat(history.entries()).hasSize(1);
        assertThat(HistoryFile.open(Map.of(), "Linux").entries()).isEmpty();
    }

    @Test
    void every_platform_has_its_folder() {
        assertThat(HistoryFile.folder(Map.of("HOME", "/h"), "Linux")).contains(Path.of("/h/.local/share/bandwright"));
        assertThat(HistoryFile.folder(Map.of("HOME", "/h", "XDG_DATA_HOME", "/x"), "Linux"))
                .contains(Path.of("/x/bandwright"));
        assertThat(HistoryFile.folder(Map.of("HOME", "/h"), "Mac OS X"))
                .contains(Path.of("/h/Library/Application Support/bandwright"));
        assertThat(HistoryFile.folder(Map.of("APPDATA", "/a"), "Windows 11")).contains(Path.of("/a/bandwright"));
    }

    private History open() {
        return HistoryFile.open(Map.of("BANDWRIGHT_DATA_DIR", folder.toString()), "Linux");
    }
}
