// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import bandwright.dsl.export.FileName;
import bandwright.kernel.files.AtomicFiles;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookFault;
import bandwright.kernel.notebook.NotebookReader;
import bandwright.kernel.notebook.Reading;

/**
 * The notebooks and ring texts of one folder: names of files in it, no paths. What is typed goes at once into a draft, a hidden file beside
 * the notebook, and from there into the notebook; a draft that is found at the opening is what a killed server could not put away.
 */
final class NotebookFolder {
    private static final String DRAFT = ".draft";

    private final Path folder;

    NotebookFolder(Path folder) throws IOException {
        this.folder = folder.toRealPath();
    }

    Path path() {
        return folder;
    }

    /** In the order of the alphabet; hidden files and links are left out. */
    List<String> names() throws DeskFault {
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = new ArrayList<>();
            files.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .map(file -> String.valueOf(file.getFileName()))
                    .filter(NotebookFolder::isOurs)
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .forEach(names::add);
            return names;
        } catch (IOException failure) {
            throw new DeskFault("the folder cannot be read");
        }
    }

    private static boolean isOurs(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return small.endsWith(".ipynb") || small.endsWith(".ring");
    }

    boolean exists(String name) throws DeskFault {
        return Files.exists(place(name), LinkOption.NOFOLLOW_LINKS);
    }

    Notebook read(String name) throws DeskFault {
        Reading reading = NotebookReader.read(place(name));
        if (reading instanceof NotebookFault fault) {
            throw new DeskFault(fault.message().replace(folder + java.io.File.separator, ""));
        }
        return (Notebook) reading;
    }

    /** What was typed and not put away; nothing if all was. */
    Optional<Notebook> draft(String name) throws DeskFault {
        Path draft = draftPlace(name);
        if (!Files.isRegularFile(draft, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try {
            return NotebookReader.parse(name, Files.readString(draft)) instanceof Notebook notebook
                    ? Optional.of(notebook)
                    : Optional.empty();
        } catch (IOException failure) {
            return Optional.empty();
        }
    }

    /** Keeps what is typed, safe from the end of this program; the notebook itself stays as it is. */
    void keep(String name, Notebook notebook) throws DeskFault {
        write(draftPlace(name), notebook.json());
    }

    /** Writes the notebook, and forgets the draft. */
    void save(String name, Notebook notebook) throws DeskFault {
        boolean text = name.toLowerCase(Locale.ROOT).endsWith(".ring");
        write(place(name), text ? notebook.cells().get(0).source() : notebook.json());
        try {
            Files.deleteIfExists(draftPlace(name));
        } catch (IOException stays) {
            // It says the same as the notebook.
            return;
        }
    }

    /** What is on the disk now. */
    String text(String name) throws DeskFault {
        try {
            return Files.readString(place(name));
        } catch (IOException failure) {
            throw new DeskFault(name + " cannot be read");
        }
    }

    /** Whether the file is still as it was. */
    boolean holds(String name, String text) throws DeskFault {
        return exists(name) && text(name).equals(text);
    }

    /** Writes a text beside a file whose name is taken by something else; tells where. */
    String keepOther(String name, String text) throws DeskFault {
        int end = name.lastIndexOf('.');
        int number = 1;
        String other;
        do {
            other = name.substring(0, end) + "-other-" + number + name.substring(end);
            number++;
        } while (exists(other));
        create(other, text);
        return other;
    }

    void create(String name, String text) throws DeskFault {
        if (exists(name)) {
            throw new DeskFault(name + " is there already");
        }
        write(place(name), text);
    }

    void rename(String from, String to) throws DeskFault {
        if (exists(to)) {
            throw new DeskFault(to + " is there already");
        }
        if (!ending(from).equals(ending(to))) {
            throw new DeskFault("the name must end in ." + ending(from));
        }
        try {
            Files.move(place(from), place(to));
        } catch (IOException failure) {
            throw new DeskFault(from + " cannot be renamed");
        }
    }

    private static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    private static void write(Path place, String text) throws DeskFault {
        try {
            AtomicFiles.write(Map.of(place, text));
        } catch (IOException failure) {
            throw new DeskFault(place.getFileName() + " cannot be written");
        }
    }

    private Path draftPlace(String name) throws DeskFault {
        Path place = place(name);
        return place.resolveSibling("." + place.getFileName() + DRAFT);
    }

    /** Where a file of a name is or would be: in the folder itself, and no link that leads elsewhere. */
    private Path place(String name) throws DeskFault {
        Optional<String> fault = FileName.fault(name);
        if (fault.isPresent()) {
            throw new DeskFault("\"" + name + "\" cannot be a name here: " + fault.get());
        }
        if (name.indexOf('/') >= 0 || !isOurs(name)) {
            throw new DeskFault(
                    "\"" + name + "\" cannot be a name here: names end in .ipynb or .ring, and name no folder");
        }
        try {
            Path place = folder.resolve(name);
            if (Files.isSymbolicLink(place)) {
                throw new DeskFault(name + " is a link");
            }
            return place;
        } catch (InvalidPathException failure) {
            throw new DeskFault("this system can write no such name");
        }
    }
}
