// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.kernel.files.AtomicFiles;

/** Where {@code run} writes. */
record RunFiles(Path notebook, Path page) {

    /**
     * Beside the input, in its place, or in a folder; never onto the input unless told.
     *
     * @param oneText whether the input is a text and no notebook
     */
    static RunFiles of(Path input, boolean oneText, @Nullable Path out, boolean inPlace) throws UsageFault {
        String name = stem(input);
        if (inPlace && oneText) {
            throw new UsageFault("--in-place needs a notebook; " + input + " is a text");
        }
        if (out != null && Files.exists(out) && !Files.isDirectory(out)) {
            throw new UsageFault(out + " is a file, not a folder");
        }
        Path notebook = notebook(input, name, out, inPlace);
        Path page = (out == null ? input : out.resolve(name)).resolveSibling(name + ".html");
        if (!inPlace && same(notebook, input)) {
            throw new UsageFault("this would overwrite " + input + "; say --in-place if that is meant");
        }
        if (inPlace && !same(notebook, input)) {
            throw new UsageFault("--in-place and --out name different places for the executed notebook");
        }
        if (same(page, input)) {
            throw new UsageFault("the page would overwrite " + input);
        }
        for (Path target : new Path[] {notebook, page}) {
            if (Files.isDirectory(target)) {
                throw new UsageFault(target + " is a folder; a file is to be written there");
            }
        }
        return new RunFiles(notebook, page);
    }

    private static Path notebook(Path input, String name, @Nullable Path out, boolean inPlace) {
        if (out != null) {
            // In place, a name ending in .IPYNB stays as it is.
            return inPlace ? out.resolve(input.toAbsolutePath().getFileName()) : out.resolve(name + ".ipynb");
        }
        return inPlace ? input : input.resolveSibling(name + ".executed.ipynb");
    }

    /** Whether both are one file on disk, under whatever name. */
    static boolean same(Path one, Path other) {
        try {
            return Files.exists(one) && Files.isSameFile(one, other);
        } catch (IOException unknown) {
            // Better to refuse than to write over what a person made.
            return true;
        }
    }

    /** Writes texts, all or none. */
    static void write(Map<Path, String> texts) throws UsageFault {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        texts.forEach((file, text) -> files.put(file, text.getBytes(StandardCharsets.UTF_8)));
        writeBytes(files);
    }

    /** Writes files, all or none. */
    static void writeBytes(Map<Path, byte[]> files) throws UsageFault {
        try {
            AtomicFiles.writeBytes(files);
        } catch (IOException failure) {
            throw new UsageFault(String.valueOf(failure.getMessage()));
        }
    }

    /** The file's name without its ending. */
    static String stem(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
