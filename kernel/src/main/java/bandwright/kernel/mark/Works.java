// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.mark;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** The works in a folder and the folders in it. */
public final class Works {
    /** What could draw on a screen or turn a line round. */
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cc}\\u2028-\\u202E\\u2066-\\u2069]");

    private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}\\u2028-\\u202E\\u2066-\\u2069&&[^\n\t]]");

    private Works() {}

    /**
     * One file.
     *
     * @param name its way from the folder, with {@code /} between, and nothing in it that could not be printed
     * @param isLink whether it is a link, which is not followed: it could lead anywhere
     */
    public record Work(Path file, String name, boolean isLink) {}

    /**
     * All notebooks and texts, in the order of their names; hidden files and folders are left out, and so is the key.
     *
     * @throws IOException if the folder cannot be read
     */
    public static List<Work> in(Path folder, Path key) throws IOException {
        List<Work> works = new ArrayList<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path each, BasicFileAttributes attributes) {
                return !each.equals(folder) && isHidden(each) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path each, BasicFileAttributes attributes) throws IOException {
                boolean isKey = !attributes.isSymbolicLink() && Files.isSameFile(each, key);
                if (isNotebook(each) && !isHidden(each) && !isKey) {
                    works.add(new Work(
                            each,
                            printable(folder.relativize(each)),
                            !Files.isRegularFile(each, LinkOption.NOFOLLOW_LINKS)));
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path each, IOException failure) throws IOException {
                if (each.equals(folder)) {
                    throw failure;
                }
                return FileVisitResult.CONTINUE;
            }
        });
        works.sort(Comparator.comparing(Work::name).thenComparing(Work::file));
        return works;
    }

    private static boolean isHidden(Path file) {
        return String.valueOf(file.getFileName()).startsWith(".");
    }

    private static boolean isNotebook(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.endsWith(".ipynb") || name.endsWith(".ring");
    }

    /** A text of somebody else without what could draw on a screen; lines stay lines. */
    static String printable(String text) {
        return UNSEEN.matcher(text).replaceAll("\uFFFD");
    }

    private static String printable(Path relative) {
        List<String> names = new ArrayList<>();
        relative.forEach(name -> names.add(UNPRINTABLE.matcher(name.toString()).replaceAll("\uFFFD")));
        return String.join("/", names);
    }
}
