// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.fasterxml.jackson.databind.ObjectMapper;

import bandwright.kernel.Samples;

import static org.assertj.core.api.Assertions.assertThat;

class NotebookReaderTest {
    @TempDir
    Path folder;

    @Test
    void a_missing_file_says_so() {
        assertThat(fault(folder.resolve("gone.ipynb")))
                .startsWith("there is no file")
                .endsWith("gone.ipynb");
    }

    @Test
    void a_folder_says_so() {
        assertThat(fault(folder)).endsWith("is a folder, not a file");
    }

    @Test
    void binary_data_says_so() throws IOException {
        Path broken = Files.write(folder.resolve("ring.ring"), new byte[] {(byte) 0xFF, (byte) 0xFE, 0x41});
        Path zeros = Files.write(folder.resolve("zeros.ipynb"), new byte[8]);

        assertThat(fault(broken)).endsWith("holds binary data, not UTF-8 text");
        assertThat(fault(zeros)).endsWith("holds binary data, not UTF-8 text");
    }

    @Test
    void text_in_utf_16_says_how_to_save_it() throws IOException {
        Path marked = Files.writeString(folder.resolve("ring.ring"), "\uFEFFa = 1 mm\n", StandardCharsets.UTF_16LE);

        assertThat(fault(marked)).endsWith("is text in UTF-16; save it as UTF-8");
    }

    @Test
    void a_file_of_fifty_megabytes_is_refused() throws IOException {
        Path large = Files.writeString(folder.resolve("large.ring"), "# a comment\n".repeat(4_500_000));

        assertThat(fault(large)).endsWith("is larger than 20 MB");
    }

    @Test
    void another_ending_says_which_are_read() {
        assertThat(fault(Samples.file(folder, "ring.txt", "x = 1"))).endsWith("ends neither in .ipynb nor in .ring");
    }

    @Test
    void invalid_json_says_where() {
        assertThat(fault(Samples.file(folder, "a.ipynb", "{\n \"cells\": [,]\n}")))
                .contains("is not valid JSON: line 2, column");
        assertThat(fault(Samples.file(folder, "b.ipynb", "{} {}"))).contains("is not valid JSON");
        assertThat(fault(Samples.file(folder, "c.ipynb", "[".repeat(5000)))).contains("is not valid JSON");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[]                                                        | is JSON, but no notebook",
                "''                                                        | is JSON, but no notebook",
                "{}                                                        | it has no number nbformat",
                "{\"nbformat\": 4}                                         | it has no list of cells",
                "{\"nbformat\": 3, \"worksheets\": []}                     | is a notebook of format 3.0; formats 4.0 to 4.5",
                "{\"nbformat\": 4, \"nbformat_minor\": 6, \"cells\": []}   | is a notebook of format 4.6; formats 4.0 to 4.5",
                "{\"nbformat\": 4, \"cells\": [1]}                         | entry 1 of its cells is no cell",
                "{\"nbformat\": 4, \"cells\": [{\"cell_type\": \"code\"}]} | entry 1 of its cells is no cell",
            })
    void json_that_is_no_notebook_says_why(String json, String words) {
        assertThat(((NotebookFault) NotebookReader.parse("it", json)).message()).contains(words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"kernelspec\": {\"name\": \"python3\", \"display_name\": \"P\"}} | python3",
                "{\"kernelspec\": {\"name\": \"ir\", \"language\": \"R\"}}           | R",
                "{\"language_info\": {\"name\": \"julia\"}}                          | julia",
            })
    void a_notebook_of_another_language_says_which(String metadata, String language) {
        assertThat(((NotebookFault) NotebookReader.parse("it", Samples.notebook(5, metadata))).message())
                .isEqualTo("it is a notebook of another language: " + language);
    }

    @Test
    void foreign_metadata_survives_untouched() throws IOException {
        String metadata = "{\"zebra\": {\"b\": [1, 2.50, 1e300, 12345678901234567890], \"a\": \"\\u001b ß 😀\"},"
                + " \"kernelspec\": {\"name\": \"bandwright\", \"display_name\": \"Bandwright\"}}";
        String cell = "{\"cell_type\": \"markdown\", \"id\": \"m\", \"metadata\": {\"slide\": {\"type\": null}},"
                + " \"source\": \"one\\ntwo\", \"attachments\": {}}";

        Notebook notebook = (Notebook) NotebookReader.parse("it", Samples.notebook(5, metadata, cell));

        ObjectMapper mapper = new ObjectMapper();
        var before = mapper.readTree(Samples.notebook(5, metadata, cell));
        var after = mapper.readTree(notebook.json());
        assertThat(after.path("metadata").path("zebra"))
                .isEqualTo(before.path("metadata").path("zebra"));
        assertThat(after.path("cells").path(0).path("metadata"))
                .isEqualTo(before.path("cells").path(0).path("metadata"));
        assertThat(notebook.json()).contains("2.50", "12345678901234567890", "\\u001b ß 😀");
    }

    @Test
    void a_written_notebook_is_read_and_written_the_same() throws IOException {
        String text = Files.readString(Samples.HARBOUR_LIGHT);

        Notebook notebook = (Notebook) NotebookReader.read(Samples.HARBOUR_LIGHT);

        assertThat(notebook.json()).isEqualTo(text);
    }

    @Test
    void an_older_notebook_gets_ids_that_depend_on_position_alone() {
        String cell = "{\"cell_type\": \"code\", \"metadata\": {}, \"source\": \"\"}";
        String clash = "{\"cell_type\": \"code\", \"id\": \"cell-1\", \"metadata\": {}, \"source\": \"\"}";

        Notebook notebook = (Notebook) NotebookReader.parse("it", Samples.notebook(2, "{}", cell, clash, clash));

        assertThat(notebook.cells()).extracting(NotebookCell::id).containsExactly("cell-1-a", "cell-1", "cell-3");
        assertThat(notebook.json()).contains("\"nbformat_minor\": 5");
        assertThat(notebook.json())
                .isEqualTo(
                        ((Notebook) NotebookReader.parse("it", Samples.notebook(2, "{}", cell, clash, clash))).json());
    }

    @Test
    void a_ring_text_is_a_notebook_of_one_cell() throws IOException {
        byte[] text = "\uFEFFbreadth = 4 mm\nshow ring".getBytes(StandardCharsets.UTF_8);
        Path file = Files.write(folder.resolve("plain.ring"), text);

        Notebook notebook = (Notebook) NotebookReader.read(file);

        assertThat(notebook.isOneText()).isTrue();
        assertThat(notebook.cellName(1)).isEqualTo("plain.ring");
        assertThat(notebook.cells()).extracting(NotebookCell::source).containsExactly("breadth = 4 mm\nshow ring");
        assertThat(notebook.json()).contains("    \"breadth = 4 mm\\n\",\n    \"show ring\"\n");
    }

    @Test
    void only_pixels_are_taken_as_attachments() {
        String cell =
                "{\"cell_type\": \"markdown\", \"id\": \"m\", \"metadata\": {}, \"source\": \"x\", \"attachments\":"
                        + " {\"a.png\": {\"image/png\": \"AAA=\\n\"}, \"b\": {\"image/svg+xml\": \"PHN2Zz4=\"},"
                        + " \"c\": {\"image/png\": \"\\\"><script>\"}}}";

        Notebook notebook = (Notebook) NotebookReader.parse("it", Samples.notebook(5, "{}", cell));

        assertThat(notebook.cells().get(0).attachments()).isEqualTo(Map.of("a.png", "data:image/png;base64,AAA="));
    }

    @Test
    void results_replace_what_a_cell_had() {
        String source = Samples.notebook(5, "{}", Samples.code("one", "1 mm"), Samples.code("two", "2 mm"));
        Notebook notebook = (Notebook) NotebookReader.parse("it", source);
        Output output = new Output.Stream(Output.Channel.STDERR, "a\nb");

        Notebook executed = notebook.withResults(Map.of("two", new CellResult(1, List.of(output))));

        assertThat(executed.json())
                .contains(
                        "\"name\": \"stderr\",\n     \"output_type\": \"stream\",\n     \"text\": [\n      \"a\\n\",\n      \"b\"");
        assertThat(notebook.json()).doesNotContain("stderr");
    }

    private static String fault(Path file) {
        return ((NotebookFault) NotebookReader.read(file)).message();
    }
}
