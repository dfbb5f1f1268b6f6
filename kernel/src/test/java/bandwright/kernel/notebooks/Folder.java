// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebooks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import bandwright.kernel.Samples;
import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;
import bandwright.kernel.notebook.NotebookReader;

/** What the project's folder of notebooks holds; what runs have left in it does not count. */
final class Folder {
    static final Path ROOT = Samples.REPOSITORY.resolve("notebooks");

    private Folder() {}

    /** Files with that ending, in a room of the folder or, where none is named, everywhere; in alphabetical order. */
    static List<Path> files(String room, String ending) {
        try (Stream<Path> files = Files.walk(ROOT.resolve(room))) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .filter(file -> !file.toString().endsWith(".executed.ipynb"))
                    .filter(file -> !file.toString().contains(".ipynb_checkpoints"))
                    .sorted()
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static Notebook notebook(Path file) {
        return (Notebook) NotebookReader.read(file);
    }

    static List<NotebookCell> markdown(Path file) {
        return notebook(file).cells().stream()
                .filter(cell -> cell.kind() == CellKind.MARKDOWN)
                .toList();
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** A file's name without its ending. */
    static String name(Path file) {
        return file.getFileName().toString().replaceFirst("\\.[a-z]+$", "");
    }
}
