// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

import bandwright.dsl.source.SourceText;
import bandwright.kernel.Samples;
import bandwright.kernel.cell.java.Notebook.Ran;

import static org.assertj.core.api.Assertions.assertThat;

class JavaCellsTest {
    private static final PrintStream OUT = System.out;

    private static Notebook notebook = new Notebook();

    @TempDir
    private Path folder;

    @BeforeAll
    static void makes_a_ring() {
        notebook.run("ring", Samples.RING);
    }

    @AfterAll
    static void closes_it() {
        notebook.close();
        assertThat(System.out).isSameAs(OUT);
    }

    @Test
    void it_prints_on_both_channels_and_shows_its_last_value() {
        Ran ran = notebook.run("java\nSystem.out.println(\"größer \\uD83D\\uDC8D\");\nSystem.err.print(\"x\");\n6 * 7");

        assertThat(ran.printed()).isEqualTo("größer \uD83D\uDC8D\n!x");
        assertThat(ran.answers()).isEqualTo("42");
        assertThat(ran.told()).isEmpty();
    }

    @Test
    void a_declaration_and_an_assignment_show_nothing() {
        Ran ran = notebook.run("java\nint counted = 4;\ncounted = 5;");

        assertThat(ran.outcome().answers()).isEmpty();
        assertThat(notebook.run("java\ncounted").answers()).isEqualTo("5");
    }

    @Test
    void it_measures_variants_and_leaves_the_design() {
        Ran ran = notebook.run("""
                java
                for (int width = 4; width <= 5; width++) {
                    var wider = design.with("a", mm(width));
                    System.out.println(mm(width) + " " + wider.measure("weight(shank)"));
                }
                design.get("a")
                """);

        assertThat(ran.printed()).isEqualTo("4 mm 5.245 g\n5 mm 6.556 g\n");
        assertThat(ran.answers()).isEqualTo("4 mm");
    }

    @Test
    void what_it_sets_is_a_definition_of_the_cell() {
        Ran ran = notebook.run(
                "java", "java\n\ndesign.set(\"b\", mm(5.5), \"it fits\");\ndesign.set(\"size\", us(7.25));");

        assertThat(ran.told()).isEmpty();
        assertThat(notebook.run("b\nsize").answers()).isEqualTo("b = 5.5 mm\nsize = US 7 1/4");
        assertThat(notebook.workbench()
                        .documentation(new SourceText("", "b"), 1)
                        .orElseThrow()
                        .text())
                .contains("it fits", "line 3");

        notebook.run("java", "java\ndesign.set(\"c\", 3);");
        assertThat(notebook.run("c").answers()).isEqualTo("c = 3");
        assertThat(notebook.run("b").told()).contains("nothing defines b yet");
    }

    @Test
    void what_it_sets_twice_holds_as_it_was_set_last() {
        notebook.run(
                "java\nfor (int i = 1; i <= 3; i++) design.set(\"turns\", i);\ndesign.set(\"twice\", \"turns * 2\");");

        assertThat(notebook.run("turns\ntwice").answers()).isEqualTo("turns = 3\ntwice = 6");
    }

    @Test
    void a_cell_that_fails_changes_nothing() {
        Ran ran = notebook.run("java\ndesign.set(\"unkept\", mm(1));\nint[] none = {};\nnone[3]++;");

        assertThat(ran.told())
                .startsWith("error java-exception: ArrayIndexOutOfBoundsException: Index 3 out of bounds");
        assertThat(ran.told()).contains("--> cell", ", line 4, column 1\n4 | none[3]++;\n  | ^^^^^^^^^^");
        assertThat(notebook.run("unkept").told()).contains("nothing defines unkept yet");
    }

    @Test
    void what_the_design_cannot_be_is_an_exception_that_may_be_caught() {
        Ran ran = notebook.run(
                "java\ntry { design.set(\"a\", deg(4)); } catch (DesignException refused) { System.out.println(refused.code()); }\n"
                        + "design.get(\"a\")");

        assertThat(ran.printed()).isEqualTo("wrong-kind-of-size\n");
        assertThat(ran.answers()).isEqualTo("4 mm");
    }

    @Test
    void units_that_do_not_fit_are_told_in_the_languages_own_words() {
        Ran ran = notebook.run("java\nmm(5)\n    .plus(g(2));");

        assertThat(ran.told())
                .startsWith("error unit-mismatch: a length and a weight cannot be added\n")
                .contains("two of the same kind");
    }

    @Test
    void what_the_compiler_refuses_is_underlined() {
        Ran ran = notebook.run("java\n// \uD83D\uDC8D\nvar s = \"\uD83D\uDC8D\"; int wrong = s;\n");

        assertThat(ran.told())
                .startsWith("error java-compile: incompatible types: String cannot be converted to int\n");
        assertThat(ran.told())
                .contains(
                        ", line 3, column 26\n3 | var s = \"\uD83D\uDC8D\"; int wrong = s;\n  |                          ^\n");
    }

    @Test
    void a_cell_that_cannot_be_read_to_its_end_runs_not_at_all() {
        Ran ran = notebook.run("java\nSystem.out.println(1);\nint broken = (;");

        assertThat(ran.printed()).isEmpty();
        assertThat(ran.told()).contains("java-compile: illegal start of expression", "line 3, column 15");
    }

    @Test
    void an_exception_names_the_users_lines_alone() {
        notebook.run("java\nint half(int x) {\n    return x / 0;\n}");
        Ran ran = notebook.run("java\nint caller() { return half(1); }\n\ncaller()");

        assertThat(ran.told()).startsWith("error java-exception: ArithmeticException: / by zero\n");
        assertThat(ran.told()).contains(", line 3, column 5\n3 |     return x / 0;");
        assertThat(ran.told()).containsPattern("Called from cell \\d+, line 2, from cell \\d+, line 4\\.");
        assertThat(ran.told()).doesNotContain("REPL", "invoke", "java.base");
    }

    @Test
    void a_method_that_calls_itself_without_end_is_told() {
        Ran ran = notebook.run("java\nint deep(int x) { return deep(x + 1) + 1; }\ndeep(0)");

        assertThat(ran.told()).contains("StackOverflowError", "calls itself without an end");
        assertThat(notebook.run("java\n1 + 1").answers()).isEqualTo("2");
    }

    @Test
    void what_is_not_there_yet_is_waited_for() {
        Ran early = notebook.run("java\nint early() { return late() + 1; }");
        notebook.run("java\nint late() { return 41; }");

        assertThat(early.told()).contains("warning java-waits: early cannot be used before there is method late()");
        assertThat(notebook.run("java\nearly()").answers()).isEqualTo("42");
    }

    @Test
    void what_a_cell_no_longer_declares_is_gone() {
        notebook.run("changing", "java\nint first = 1;\nint second = 2;");
        notebook.run("changing", "java\nint second = 3;");

        assertThat(notebook.run("java\nsecond").answers()).isEqualTo("3");
        assertThat(notebook.run("java\nfirst").told()).contains("cannot find symbol");
    }

    @Test
    void a_cell_run_again_keeps_what_hangs_on_it() {
        notebook.run("types", "java\nrecord Pair(int one, int two) {}");
        notebook.run("java\nvar kept = new Pair(1, 2);");
        notebook.run("types", "java\nrecord Pair(int one, int two) {}");

        assertThat(notebook.run("java\nkept.two()").answers()).isEqualTo("2");
    }

    @Test
    void records_and_maps_are_tables() {
        Ran records = notebook.run(
                "java\nrecord Line(String name, Quantity weight) {}\nList.of(new Line(\"wide\", g(6.5)), new Line(\"slim\", g(5)))");
        Ran map = notebook.run("java\nnew TreeMap<>(Map.of(\"b\", 2, \"a\", 1))");

        assertThat(records.answers())
                .isEqualTo("name  weight (g)\n----  ----------\nwide         6.5\nslim           5\n");
        assertThat(map.answers()).isEqualTo("key  value\n---  -----\na        1\nb        2\n");
    }

    @Test
    void pictures_and_charts_are_drawn() {
        Ran ran = notebook.run("java\ndisplay(design.show(\"section at 0 deg\"));\n"
                + "chart(\"Weights\", \"a\", List.of(mm(4), mm(5)), \"weight\", List.of(g(5), g(6)))");

        assertThat(ran.printed()).startsWith("[image/svg+xml, image/png, text/plain]");
        assertThat(ran.answers()).contains("Weights", "least 5 at 4 mm");
    }

    @Test
    void a_table_of_variants_says_why_in_the_row_of_one_that_cannot_be() {
        Ran ran = notebook.run("java\ndesign.table(\"a\", List.of(mm(4), mm(-1)), \"weight(shank)\")");

        assertThat(ran.answers()).contains("5.245 g", "-1 mm", "width must be more than 0, not -1 mm");
    }

    @Test
    void ring_text_runs_inside_a_cell() {
        Ran ran = notebook.run("java\ndesign.run(\"third = a / 3\\nshow third\")");

        assertThat(ran.answers()).isEqualTo("third = 1.333 mm");
        assertThat(notebook.run("third").answers()).isEqualTo("third = 1.333 mm");
    }

    @Test
    void ring_text_calls_a_function_of_a_cell() {
        Ran ran = notebook.run("functions", """
                java
                design.function("tip-room", width -> width.times(0.8));
                design.function("between-two", (one, other) -> one.plus(other).dividedBy(2));
                """);
        notebook.run("user", "room = tip-room(a)");
        var before = notebook.workbench().fingerprintOf(new SourceText("", "show room"));

        assertThat(ran.told()).isEmpty();
        assertThat(notebook.run("room\nbetween-two(a, 6 mm)").answers())
                .isEqualTo("room = 3.2 mm\nbetween-two(a, 6 mm) = 5 mm");
        assertThat(notebook.run("vary a over 4 mm, 5 mm, 6 mm { room }").answers())
                .contains("3.2", "4.8");

        notebook.run("functions", "java\ndesign.function(\"tip-room\", width -> width.times(0.5));");
        assertThat(notebook.run("room").answers()).isEqualTo("room = 2 mm");
        assertThat(notebook.workbench().fingerprintOf(new SourceText("", "show room")))
                .isNotEqualTo(before);
        assertThat(notebook.run("between-two(a, a)").told()).contains("unknown-function");
        var asked = notebook.workbench().fingerprintOf(new SourceText("", "tip-room(3 mm)"));
        notebook.run("functions", "java\ndesign.function(\"tip-room\", width -> width.times(0.6));");
        assertThat(notebook.workbench().fingerprintOf(new SourceText("", "tip-room(3 mm)")))
                .isNotEqualTo(asked);
        assertThat(notebook.run("functions", "java").told()).contains("unknown-function");
        notebook.run("user", "");
        notebook.run("functions", "java");
    }

    @Test
    void what_a_function_is_given_wrong_is_told_where_ring_text_calls_it() {
        notebook.run("functions", """
                java
                design.function("shy", x -> design.get("a"));
                var wider = design.with("a", mm(5));
                design.function("sly", x -> wider.get("a"));
                design.function("broken", x -> { throw new IllegalStateException("on purpose"); });
                design.function("adding", x -> x.plus(g(1)));
                """);

        assertThat(notebook.run("broken(a)").told()).contains("broken of a cell in Java gave no value", "on purpose");
        assertThat(notebook.run("shy(a)").told()).contains("it cannot ask the design");
        assertThat(notebook.run("sly(a)").told()).contains("it cannot ask the design");
        assertThat(notebook.run("adding(a)").told()).contains("a length and a weight cannot be added");
        assertThat(notebook.run("adding(US 7)").told()).contains("a finger size");
        assertThat(notebook.run("adding()").told()).contains("wrong-arguments");
        assertThat(notebook.run("java\ndesign.function(\"weight\", x -> x);").told())
                .contains("weight is a word of ring text already");
        assertThat(notebook.run("java\ndesign.function(\"a b\", x -> x);").told())
                .contains("is no name of ring text");
        notebook.run("functions", "java");
    }

    @Test
    void the_user_is_asked() {
        notebook.typed.add("first line");
        notebook.typed.add("second");

        Ran ran = notebook.run("java\nnew Scanner(System.in).nextLine() + \"|\" + ask(\"name? \")");
        Ran nobody = notebook.run("java\nask(\"name? \")");

        assertThat(ran.answers()).isEqualTo("first line|name? second");
        assertThat(nobody.told()).contains("nobody can be asked for input here");
    }

    @Test
    void a_jar_of_this_machine_can_be_used() throws Exception {
        Path jar = folder.resolve("shop.jar");
        try (JarOutputStream stream = new JarOutputStream(Files.newOutputStream(jar))) {
            stream.putNextEntry(new JarEntry("shop/Rates.class"));
            stream.write(rates());
        }

        Ran ran = notebook.run("java\njar(\"" + jar + "\");\nimport shop.Rates;\nRates.hour()");

        assertThat(ran.told()).isEmpty();
        assertThat(ran.answers()).isEqualTo("60");
        assertThat(notebook.run("java\njar(\"https://somewhere/shop.jar\");").told())
                .contains("jar takes a file on this machine");
        assertThat(notebook.run("java\njar(\"no.jar\");").told()).contains("there is no file");
    }

    private static byte[] rates() {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        writer.visit(Opcodes.V17, Opcodes.ACC_PUBLIC, "shop/Rates", null, "java/lang/Object", null);
        MethodVisitor hour = writer.visitMethod(Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC, "hour", "()I", null, null);
        hour.visitCode();
        hour.visitIntInsn(Opcodes.BIPUSH, 60);
        hour.visitInsn(Opcodes.IRETURN);
        hour.visitMaxs(0, 0);
        hour.visitEnd();
        return writer.toByteArray();
    }

    @Test
    void numbers_alone_need_no_console() {
        SourceText cell = new SourceText("cell", "java\nSystem.out.println(1);\ndesign.set(\"quiet\", 2);\n3");

        var outcome = notebook.java.define(notebook.workbench(), "quiet", cell);

        assertThat(outcome.answers()).isEmpty();
        assertThat(outcome.workbench().value(new SourceText("", "quiet")).worth())
                .isNotNull();
    }

    @Test
    void a_thread_that_outlives_its_cell_prints_into_the_cell_that_runs() throws Exception {
        notebook.run("java\nvar go = new java.util.concurrent.CountDownLatch(1);\n"
                + "var behind = new Thread(() -> { try { go.await(); } catch (InterruptedException e) { return; }"
                + " System.out.println(\"late\"); });\nbehind.start();");

        assertThat(notebook.run("java\ngo.countDown();\nbehind.join();").printed())
                .isEqualTo("late\n");
    }

    @Test
    void what_it_asked_of_the_design_is_known_as_ring_text() {
        notebook.run("asking", "java\ndesign.measure(\"weight(shank)\");\ndesign.show(\"section at 0 deg\");");

        SourceText questions = notebook.java.questions("asking", new SourceText("", "java"));

        assertThat(questions.text()).isEqualTo("show weight(shank)\nshow section at 0 deg");
    }
}
