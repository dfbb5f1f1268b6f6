// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CyclicBarrier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.kernel.Samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

class ExportFolderTest {
    private static final Workbench BEFORE = Workbench.empty();

    @TempDir
    Path outside;

    private Path folder;

    @BeforeEach
    void makeFolder() throws IOException {
        folder = Files.createDirectory(outside.resolve("notebook"));
    }

    static Answer.Exported export(String name, String content, boolean replace) {
        SourceText source = new SourceText("cell 1", "export \"" + name + "\"");
        ExportFile file = new ExportFile(name, content.getBytes(StandardCharsets.UTF_8));
        return new Answer.Exported(List.of(file), replace, "words", source.place(new Span(7, source.length())));
    }

    private static Answer.Exported export(String name, String content) {
        return export(name, content, false);
    }

    private List<Diagnostic> write(Answer.Exported... exports) {
        return write(folder, exports);
    }

    private static List<Diagnostic> write(Path folder, Answer.Exported... exports) {
        Workbench after = BEFORE.define("a", new SourceText("a", "a = 1 mm")).workbench();
        Outcome ran = new Outcome(after, List.of(), List.of(exports));
        Outcome outcome = new ExportFolder(folder).written(BEFORE, ran);
        if (outcome.hasErrors()) {
            assertThat(outcome.workbench()).isSameAs(BEFORE);
            assertThat(outcome.answers()).isEmpty();
        } else {
            assertThat(outcome).isSameAs(ran);
        }
        return outcome.diagnostics();
    }

    private String refused(Answer.Exported... exports) {
        List<String> before = everything();
        List<Diagnostic> told = write(exports);
        assertThat(everything()).isEqualTo(before);
        return told.stream().map(Diagnostic::code).collect(Collectors.joining(" "));
    }

    /** Every file below, hidden ones too, and what it holds. */
    private List<String> everything() {
        try (Stream<Path> paths = Files.walk(outside)) {
            return paths.sorted()
                    .map(path -> outside.relativize(path)
                            + (Files.isRegularFile(path) ? ": " + text(path) : Files.isDirectory(path) ? "/" : " ->"))
                    .toList();
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }

    private static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }

    @Test
    void files_go_into_the_folder_and_nothing_else_is_left_there() throws IOException {
        Files.createDirectory(folder.resolve("sub"));

        assertThat(write(export("a.stl", "one"), export("sub/b.stl", "two"))).isEmpty();

        assertThat(everything())
                .containsExactly("/", "notebook/", "notebook/a.stl: one", "notebook/sub/", "notebook/sub/b.stl: two");
    }

    @Test
    void the_folder_itself_is_made() {
        assertThat(write(folder.resolve("new/er"), export("a.stl", "one"))).isEmpty();
        assertThat(folder.resolve("new/er/a.stl")).hasContent("one");
    }

    @Test
    void names_that_lead_elsewhere_are_refused_even_if_the_language_let_them_pass() throws IOException {
        Files.createDirectory(folder.resolve("sub"));
        for (String name : List.of(
                "../a.stl", "sub/../../a.stl", outside.resolve("a.stl").toString(), "/a.stl", "../notebook-2/a.stl")) {
            assertThat(refused(export(name, "one", true))).as(name).isIn("file-outside", "file-folder");
        }
        for (String name : List.of("..", "sub/..", ".", "sub")) {
            assertThat(refused(export(name, "one", true))).as(name).isIn("file-outside", "file-not-written");
        }
    }

    @Test
    void a_name_the_system_cannot_write_is_told() {
        assertThat(refused(export("a\0b.stl", "one"))).isEqualTo("file-not-written");
        assertThat(refused(export("x".repeat(300) + ".stl", "one"))).isEqualTo("file-not-written");
    }

    @Test
    void names_in_other_scripts_are_written_and_two_spellings_are_one_name() {
        assumeThat(System.getProperty("sun.jnu.encoding")).isEqualTo("UTF-8");
        assertThat(write(export("Škoda 環 💍.stl", "one"))).isEmpty();
        assertThat(folder.resolve("Škoda 環 💍.stl")).hasContent("one");
        assertThat(refused(export("caf\u00E9.stl", "one"), export("cafe\u0301.stl", "two")))
                .isEqualTo("file-twice");
        assertThat(refused(export("a.stl", "one"), export("A.STL", "two"))).isEqualTo("file-twice");
    }

    @Test
    void an_older_file_stays_unless_it_may_be_replaced() {
        assertThat(write(export("a.stl", "one"))).isEmpty();
        assertThat(write(export("a.stl", "one"))).isEmpty();
        assertThat(refused(export("a.stl", "two"))).isEqualTo("file-exists");
        assertThat(refused(export("b.stl", "new"), export("a.stl", "two"))).isEqualTo("file-exists");

        assertThat(write(export("a.stl", "two", true))).isEmpty();

        assertThat(everything()).containsExactly("/", "notebook/", "notebook/a.stl: two");
    }

    @Test
    void a_replaced_file_keeps_its_rights() throws IOException {
        Path file = Files.writeString(folder.resolve("a.stl"), "one");
        assumeThat(Files.getFileStore(file).supportsFileAttributeView("posix")).isTrue();
        var rights = java.nio.file.attribute.PosixFilePermissions.fromString("rw-rw-r--");
        Files.setPosixFilePermissions(file, rights);

        assertThat(write(export("a.stl", "two", true))).isEmpty();

        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(rights);
    }

    @Test
    void a_folder_that_takes_no_files_is_told() throws IOException {
        Path file = Files.writeString(outside.resolve("file"), "a file");
        for (Path closed : List.of(file, file.resolve("below"))) {
            assertThat(write(closed, export("a.stl", "one")))
                    .extracting(Diagnostic::code)
                    .containsExactly("file-not-written");
        }
        Path locked = Files.createDirectory(outside.resolve("locked"));
        assertThat(locked.toFile().setWritable(false)).isTrue();
        // Who may do everything is stopped by no rights.
        if (!Files.isWritable(locked)) {
            assertThat(write(locked, export("a.stl", "one")).get(0).message()).contains("may not be written to");
        }
        Path processes = Path.of("/proc/self");
        if (Files.isDirectory(processes)) {
            assertThat(write(processes, export("a.stl", "one")))
                    .extracting(Diagnostic::code)
                    .containsExactly("file-not-written");
        }
    }

    @Test
    void a_second_file_that_fails_takes_the_first_back() throws IOException {
        Files.writeString(folder.resolve("a.stl"), "old");
        // Such a name can be written, but not with what tells a file that is not whole yet.
        String endless = "x".repeat(248) + ".stl";

        assertThat(refused(export("a.stl", "new", true), export("b.stl", "new"), export(endless, "new")))
                .isEqualTo("file-not-written");
    }

    @Test
    void links_lead_nowhere_outside() throws IOException {
        Path elsewhere = Files.createDirectory(outside.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("a.stl"), "theirs");
        Files.createSymbolicLink(folder.resolve("sub"), elsewhere);
        Files.createSymbolicLink(folder.resolve("link.stl"), elsewhere.resolve("a.stl"));
        Files.createSymbolicLink(folder.resolve("nowhere.stl"), elsewhere.resolve("new.stl"));

        assertThat(refused(export("sub/a.stl", "ours", true))).isEqualTo("file-outside");
        assertThat(refused(export("sub/new.stl", "ours"))).isEqualTo("file-outside");
        assertThat(refused(export("link.stl", "ours", true))).isEqualTo("file-outside");
        assertThat(refused(export("nowhere.stl", "ours", true))).isEqualTo("file-outside");
    }

    @Test
    void links_inside_are_followed_and_two_names_for_one_place_refused() throws IOException {
        Files.createDirectory(folder.resolve("sub"));
        Files.writeString(folder.resolve("sub/a.stl"), "old");
        Files.createSymbolicLink(folder.resolve("same"), folder.resolve("sub"));
        Files.createSymbolicLink(folder.resolve("link.stl"), folder.resolve("sub/a.stl"));

        assertThat(refused(export("sub/a.stl", "one", true), export("same/a.stl", "two", true)))
                .isEqualTo("file-twice");
        assertThat(refused(export("link.stl", "one", true), export("sub/a.stl", "two", true)))
                .isEqualTo("file-twice");

        assertThat(write(export("link.stl", "new", true))).isEmpty();
        assertThat(folder.resolve("link.stl")).isSymbolicLink();
        assertThat(folder.resolve("sub/a.stl")).hasContent("new");
    }

    @Test
    void of_two_at_once_each_is_whole() throws Exception {
        String one = "1".repeat(1 << 20);
        String two = "2".repeat(1 << 20);
        for (boolean replace : List.of(false, true)) {
            for (int round = 0; round < 20; round++) {
                String name = replace + "-" + round + ".stl";
                List<Diagnostic> told = atOnce(export(name, one, replace), export(name, two, replace));
                assertThat(text(folder.resolve(name))).isIn(one, two);
                assertThat(told).extracting(Diagnostic::code).allMatch("file-exists"::equals);
                assertThat(told).hasSizeLessThanOrEqualTo(1);
                assertThat(told.isEmpty()).isEqualTo(replace);
            }
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).hasSize(40);
        }
        for (int round = 0; round < 20; round++) {
            String name = "same-" + round + ".stl";
            assertThat(atOnce(export(name, one), export(name, one))).isEmpty();
        }
    }

    private List<Diagnostic> atOnce(Answer.Exported... exports) throws InterruptedException {
        CyclicBarrier start = new CyclicBarrier(exports.length);
        List<Diagnostic> told = java.util.Collections.synchronizedList(new ArrayList<>());
        List<Thread> threads = new ArrayList<>();
        for (Answer.Exported export : exports) {
            Thread thread = new Thread(() -> {
                try {
                    start.await();
                } catch (InterruptedException | java.util.concurrent.BrokenBarrierException failure) {
                    throw new IllegalStateException(failure);
                }
                told.addAll(write(export));
            });
            thread.start();
            threads.add(thread);
        }
        for (Thread thread : threads) {
            thread.join();
        }
        return told;
    }

    @Test
    void a_cell_with_an_error_writes_nothing() {
        Diagnostic error = Diagnostic.error("file-twice", export("a.stl", "one").place())
                .with("a.stl")
                .build();
        Outcome ran = new Outcome(BEFORE, List.of(error), List.of(export("a.stl", "one")));

        assertThat(new ExportFolder(folder).written(BEFORE, ran)).isSameAs(ran);

        assertThat(everything()).containsExactly("/", "notebook/");
    }

    /** What each refusal says; and no code is without one. */
    @Test
    void every_refusal_is_told_as_expected() throws IOException {
        Files.writeString(folder.resolve("there.stl"), "old");
        Files.createDirectory(folder.resolve("folder.stl"));
        Files.createSymbolicLink(folder.resolve("out"), outside);
        List<Diagnostic> told = write(
                export("there.stl", "new"),
                export("missing/a.stl", "new"),
                export("out/a.stl", "new"),
                export("folder.stl", "new"),
                export("twice.stl", "one"),
                export("Twice.stl", "two"));

        Path expected = Path.of("src/test/golden/files/refusals.out");
        String said = told.stream().map(PlainRenderer::render).collect(Collectors.joining("\n"));
        if (!Files.exists(expected) || "update".equals(System.getProperty("golden"))) {
            Files.createDirectories(Path.of("src/test/golden/files"));
            Files.writeString(expected, said);
        }
        assertThat(said).isEqualTo(Files.readString(expected));
        Set<String> refused = new TreeSet<>();
        told.forEach(each -> refused.add(each.code()));
        assertThat(refused).isEqualTo(codes());
    }

    /** The codes of this room, from the texts. */
    private static Set<String> codes() throws IOException {
        String all = Files.readString(
                Samples.REPOSITORY.resolve("dsl/src/main/resources/bandwright/dsl/diagnostic/messages.properties"));
        return all.split("# --- files:", 2)[1]
                .split("\n# --- ", 2)[0]
                .lines()
                .filter(line -> line.matches("[a-z-]+ = .*"))
                .map(line -> line.substring(0, line.indexOf(' ')))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
