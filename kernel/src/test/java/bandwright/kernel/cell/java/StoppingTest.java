// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import bandwright.kernel.Samples;
import bandwright.kernel.cell.java.Notebook.Ran;

import static org.assertj.core.api.Assertions.assertThat;

class StoppingTest {
    private static Notebook notebook = new Notebook();

    @BeforeAll
    static void has_a_variable_and_a_ring() {
        notebook.run(Samples.RING);
        notebook.run("java\nint kept = 77;");
    }

    @AfterAll
    static void closes_it() {
        notebook.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "while (true) { }",
                "for (int i = 0; ; i++) { if (i < 0) i = 0; }",
                "while (true) { try { while (true) { } } catch (Throwable all) { } }",
                "while (true) { try { Thread.sleep(60_000); } catch (InterruptedException passed_over) { } }",
                "Thread.sleep(60_000);",
                "try { Thread.sleep(60_000); } catch (InterruptedException passed_over) { } Thread.sleep(60_000);",
                "var lock = new Object(); synchronized (lock) { lock.wait(); }",
                "Stream.iterate(1, x -> x).forEach(x -> { });",
                "IntStream.range(0, 4).parallel().forEach(i -> { while (true) { } });",
                "var busy = new Thread(() -> { while (true) { } }); busy.start(); busy.join();",
                "while (true) design.with(\"a\", mm(4)).measure(\"weight(shank)\");",
                "class Loop { Loop() { while (true) { } } } new Loop();",
                "int i = 0; do { switch (i) { case 0: continue; default: i = 0; } } while (i < 1);",
                "design.set(\"a\", mm(5)); while (true) { }"
            })
    void a_cell_ends_on_request_frees_the_processor_and_keeps_state(String code) throws Exception {
        Ran ran = notebook.interrupted("java\n" + code);

        assertThat(ran.code()).isEqualTo("interrupted");
        assertThat(isStillBusy()).isFalse();
        assertThat(notebook.run("java\nkept").answers()).isEqualTo("77");
        assertThat(notebook.run("a").answers()).isEqualTo("a = 4 mm");
    }

    /** Whether a thread of a cell, or one that streams share, uses the processor. */
    private static boolean isStillBusy() throws InterruptedException {
        long before = used();
        Thread.sleep(300);
        return used() - before > 100_000_000;
    }

    private static long used() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long sum = 0;
        for (long id : threads.getAllThreadIds()) {
            var info = threads.getThreadInfo(id);
            boolean ofCells = info != null && info.getThreadName().matches("cell in Java|Thread-\\d+|ForkJoinPool.*");
            sum += ofCells ? Math.max(0, threads.getThreadCpuTime(id)) : 0;
        }
        return sum;
    }

    @Test
    void a_cell_that_wants_too_much_memory_is_told_so_and_lets_go_of_it() {
        Ran ran = notebook.run("java\nvar hog = new ArrayList<long[]>();\nwhile (true) hog.add(new long[8_000_000]);");

        assertThat(ran.told())
                .startsWith("error out-of-memory: the cell wanted more memory than the ")
                .contains(", line 3, column 1", "install-kernel --heap 2g");
        assertThat(notebook.run("java\nhog == null").answers()).isEqualTo("true");
        assertThat(notebook.run("java\nkept").answers()).isEqualTo("77");
        assertThat(notebook.run("weight(shank)").answers()).contains("5.245 g");
    }

    @Test
    void what_a_variable_held_is_let_go_of_when_it_is_made_anew() {
        for (int i = 0; i < 60; i++) {
            assertThat(notebook.run("large", "java\nvar large = new long[16_000_000];")
                            .told())
                    .isEmpty();
        }
        notebook.run("large", "java\n");
    }
}
