// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.export.FileName;
import bandwright.kernel.files.AtomicFiles;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookFault;
import bandwright.kernel.notebook.NotebookReader;
import bandwright.kernel.notebook.Reading;

/**
 * The notebooks and ring texts of one folder: names of files in it, no paths. What is typed goes at once into a draft, a hidden file beside
 * the notebook, and from there into the notebook; a draft that is found at the opening is what a killed server could not put away. What can be taken back
 * is kept beside it in the same way.
 */
final class NotebookFolder {
    private static final String DRAFT = ".draft";
    private static final String PAST = ".past";

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
        Path draft = hidden(name, DRAFT);
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
        write(hidden(name, DRAFT), notebook.json());
    }

    /** What was done to a notebook, as it was kept; nothing if nothing was, or it cannot be read. */
    PastJson.@Nullable Kept past(String name) throws DeskFault {
        Path past = hidden(name, PAST);
        if (!Files.isRegularFile(past, LinkOption.NOFOLLOW_LINKS)) {
            return null;
        }
        try {
            return PastJson.read(Files.readString(past));
        } catch (IOException failure) {
            return null;
        }
    }

    /** Keeps what can be taken back. */
    void keepPast(String name, Past past, String disk) throws DeskFault {
        write(hidden(name, PAST), PastJson.write(past, PastJson.mark(disk)));
    }

    /**
     * Writes the notebook, and forgets the draft.
     *
     * @return what was written
     */
    String save(String name, Notebook notebook) throws DeskFault {
        String text = text(notebook);
        write(place(name), text);
        forgetDraft(name);
        return text;
    }

    /** As a file holds it. */
    private static String text(Notebook notebook) {
        return notebook.isOneText() ? notebook.cells().get(0).source() : notebook.json();
    }

    void forgetDraft(String name) throws DeskFault {
        try {
            Files.deleteIfExists(hidden(name, DRAFT));
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

    /** A file that stands beside another, whose name is taken by something else. */
    record Other(String name, String text) {}

    /**
     * Writes a notebook beside a file whose name is taken by something else; what is there already is not written again.
     *
     * @param before what was written there for the same reason; it gives way as long as nobody else has changed it
     */
    Other keepOther(String name, Notebook notebook, @Nullable Other before) throws DeskFault {
        String text = text(notebook);
        if (before != null && holds(before.name(), before.text())) {
            write(place(before.name()), text);
            return new Other(before.name(), text);
        }
        int end = name.lastIndexOf('.');
        int number = 1;
        String other = name.substring(0, end) + "-other-1" + name.substring(end);
        while (exists(other) && !holds(other, text)) {
            number++;
            other = name.substring(0, end) + "-other-" + number + name.substring(end);
        }
        write(place(other), text);
        return new Other(other, text);
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
            for (String kept : List.of(DRAFT, PAST)) {
                if (Files.exists(hidden(from, kept), LinkOption.NOFOLLOW_LINKS)) {
                    Files.move(hidden(from, kept), hidden(to, kept), StandardCopyOption.REPLACE_EXISTING);
                }
            }
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

    private Path hidden(String name, String kept) throws DeskFault {
        Path place = place(name);
        return place.resolveSibling("." + place.getFileName() + kept);
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
