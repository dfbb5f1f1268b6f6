// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.install;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/**
 * The kernel's folder among Jupyter's. It holds all that is needed: the description, our own pictures, the jar.
 *
 * @param folder as an absolute path
 */
public record Installation(Path folder) {
    private static final List<String> PICTURES = List.of("logo-32x32.png", "logo-64x64.png", "logo-svg.svg");
    private static final String JAR = "bandwright.jar";
    private static final String DESCRIPTION = "kernel.json";

    /** @param data Jupyter's folder for data, see {@link DataFolder} */
    public static Installation in(Path data) {
        return new Installation(data.resolve("kernels")
                .resolve(KernelSpec.NAME)
                .toAbsolutePath()
                .normalize());
    }

    /**
     * Puts the kernel there, in the place of an older one.
     *
     * @param java the program that will run it
     * @param jar our program; a copy is installed
     * @param heap the most memory for designs, as Java writes it
     * @return whether it will start fast, see {@link Archive}
     */
    public boolean install(Path java, Path jar, String heap, boolean posix) throws InstallFault {
        try {
            Files.createDirectories(folder);
            Path copy = folder.resolve(JAR);
            if (!Files.exists(copy) || !Files.isSameFile(copy, jar)) {
                put(jar, copy);
            }
            for (String picture : PICTURES) {
                picture(picture);
            }
            removeArchives();
            KernelSpec spec = new KernelSpec(java, copy, heap, Archive.of(copy));
            boolean fast = Archive.make(spec);
            // Last: from here on Jupyter lists it.
            Files.writeString(folder.resolve(DESCRIPTION), spec.json(posix));
            return fast;
        } catch (IOException failure) {
            throw new InstallFault("the kernel cannot be written into " + folder + ": " + failure.getMessage());
        }
    }

    /** Beside its place first: a kernel that runs keeps the old file. */
    private static void put(Path from, Path to) throws IOException {
        Path part = to.resolveSibling("." + to.getFileName() + ".part");
        Files.copy(from, part, StandardCopyOption.REPLACE_EXISTING);
        Files.move(part, to, StandardCopyOption.REPLACE_EXISTING);
    }

    private void picture(String name) throws IOException {
        try (InputStream stream = Installation.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is missing");
            }
            Files.copy(stream, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private void removeArchives() throws IOException {
        try (DirectoryStream<Path> archives = Files.newDirectoryStream(folder, "*.jsa")) {
            for (Path archive : archives) {
                Files.delete(archive);
            }
        }
    }

    /** Takes away what was installed; files that others put there stay. */
    public void uninstall() throws InstallFault {
        if (!Files.exists(folder.resolve(DESCRIPTION))) {
            throw new InstallFault("no kernel is installed in " + folder);
        }
        try {
            Files.delete(folder.resolve(DESCRIPTION));
            Files.deleteIfExists(folder.resolve(JAR));
            for (String picture : PICTURES) {
                Files.deleteIfExists(folder.resolve(picture));
            }
            removeArchives();
            try (DirectoryStream<Path> left = Files.newDirectoryStream(folder)) {
                if (!left.iterator().hasNext()) {
                    Files.delete(folder);
                }
            }
        } catch (IOException failure) {
            throw new InstallFault("the kernel cannot be removed from " + folder + ": " + failure.getMessage());
        }
    }
}
