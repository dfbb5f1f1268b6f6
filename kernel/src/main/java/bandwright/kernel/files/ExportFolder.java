// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.export.ExportFile;

/**
 * The folder that a notebook's exports go to, and nowhere else. All files of a cell are written or none; a cell one of whose
 * files cannot be written is one with an error, and changes nothing.
 */
public final class ExportFolder {
    private final Path folder;

    /**
     * @param folder made when the first file is written, if it is not there
     */
    public ExportFolder(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /**
     * A cell's outcome after its files are written, or why they are not.
     *
     * @param before the workbench before the cell
     */
    public Outcome written(Workbench before, Outcome outcome) {
        List<Answer.Exported> exports = outcome.answers().stream()
                .filter(Answer.Exported.class::isInstance)
                .map(Answer.Exported.class::cast)
                .toList();
        if (exports.isEmpty() || outcome.hasErrors()) {
            return outcome;
        }
        List<Diagnostic> faults = write(exports);
        if (faults.isEmpty()) {
            return outcome;
        }
        List<Diagnostic> told = new ArrayList<>(outcome.diagnostics());
        told.addAll(faults);
        return new Outcome(before, told, List.of(), outcome.unanswered());
    }

    /** Where a file is or would be. */
    public Path place(ExportFile file) {
        return folder.resolve(file.name());
    }

    private List<Diagnostic> write(List<Answer.Exported> exports) {
        List<Diagnostic> faults = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        List<Writing> writings = new ArrayList<>();
        for (Answer.Exported export : exports) {
            for (ExportFile file : export.files()) {
                prepare(export, file, taken, writings).ifPresent(faults::add);
            }
        }
        if (!faults.isEmpty()) {
            return faults;
        }
        try (Batch batch = new Batch()) {
            for (Writing writing : writings) {
                try {
                    batch.stage(writing);
                } catch (IOException failure) {
                    return List.of(failed(writing, failure));
                }
            }
            for (Writing writing : writings) {
                try {
                    batch.put(writing);
                } catch (IOException failure) {
                    return List.of(failed(writing, failure));
                }
            }
            batch.keep();
        }
        return List.of();
    }

    /** Names that are one on some systems count as one everywhere. */
    private static String sameName(Path target) {
        return Normalizer.normalize(target.toString(), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }

    /** Finds out where a file goes; or why it must not. */
    private Optional<Diagnostic> prepare(
            Answer.Exported export, ExportFile file, Set<String> taken, List<Writing> writings) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            return Optional.of(fault("file-not-written", export, file.name(), "the notebook's folder is a file"));
        }
        try {
            Files.createDirectories(folder);
            Path inside = folder.toRealPath();
            Path target = inside.resolve(file.name());
            Path parent = target.getParent();
            if (parent == null || !Files.isDirectory(parent)) {
                return Optional.of(fault("file-folder", export, String.valueOf(inside.relativize(parent(target)))));
            }
            parent = parent.toRealPath();
            if (!parent.startsWith(inside)) {
                return Optional.of(fault("file-outside", export, file.name()));
            }
            target = parent.resolve(target.getFileName());
            if (Files.isSymbolicLink(target)) {
                // A link keeps pointing where it points, if that is a file in here.
                if (!Files.exists(target) || !target.toRealPath().startsWith(inside)) {
                    return Optional.of(fault("file-outside", export, file.name()));
                }
                target = target.toRealPath();
            }
            // By the place and not by the name: two names may lead to one place by a link.
            if (!taken.add(sameName(target))) {
                return Optional.of(fault("file-twice", export, file.name()));
            }
            if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                if (!Files.isRegularFile(target)) {
                    return Optional.of(fault("file-not-written", export, file.name(), "it is no file but a folder"));
                }
                if (isSame(target, file)) {
                    return Optional.empty();
                }
                if (!export.replace()) {
                    return Optional.of(fault("file-exists", export, file.name()));
                }
            }
            writings.add(new Writing(export, file, target));
            return Optional.empty();
        } catch (IOException failure) {
            return Optional.of(failed(new Writing(export, file, folder), failure));
        } catch (InvalidPathException failure) {
            return Optional.of(fault("file-not-written", export, file.name(), "this system can write no such name"));
        }
    }

    private static Path parent(Path target) {
        Path parent = target.getParent();
        return parent == null ? target : parent;
    }

    private static boolean isSame(Path target, ExportFile file) throws IOException {
        return Files.size(target) == file.bytes().length && Arrays.equals(Files.readAllBytes(target), file.bytes());
    }

    private static Diagnostic failed(Writing writing, IOException failure) {
        String name = writing.file().name();
        if (failure instanceof FileAlreadyExistsException) {
            // Somebody else was quicker.
            return fault("file-exists", writing.export(), name);
        }
        String why;
        String said = String.valueOf(failure.getMessage());
        if (failure instanceof AccessDeniedException) {
            why = "its folder, or the file that is there, may not be written to";
        } else if (failure instanceof NoSuchFileException) {
            why = "its folder takes no files";
        } else if (said.contains("No space") || said.contains("quota") || said.contains("disk space")) {
            why = "there is no room left on the disk";
        } else if (said.contains("Read-only")) {
            why = "the disk may only be read";
        } else {
            why = "the system says " + said;
        }
        return fault("file-not-written", writing.export(), name, why);
    }

    private static Diagnostic fault(String code, Answer.Exported export, String... words) {
        return Diagnostic.error(code, export.place()).with(words).build();
    }
}
