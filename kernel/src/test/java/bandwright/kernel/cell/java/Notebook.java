// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.cell.CellLanguages;
import bandwright.kernel.notebook.Output;

/** Cells of both languages, one after the other, and what came of them as text. */
final class Notebook implements AutoCloseable {
    final JavaCells java = new JavaCells();
    final Deque<String> typed = new ArrayDeque<>();
    private final CellLanguages languages = new CellLanguages(List.of(java));
    private Workbench workbench = Workbench.empty();
    private int count;

    /** What a cell printed and showed while it ran, what was told about it, and what it answered. */
    record Ran(String printed, Outcome outcome) {
        String told() {
            return PlainRenderer.render(outcome.diagnostics());
        }

        String answers() {
            return outcome.answers().stream().map(Answer::plainText).collect(Collectors.joining("\n"));
        }

        String code() {
            return outcome.diagnostics().isEmpty()
                    ? ""
                    : outcome.diagnostics().get(0).code();
        }
    }

    Workbench workbench() {
        return workbench;
    }

    Ran run(String text) {
        return run("cell " + (count + 1), text);
    }

    Ran run(String cellId, String text) {
        count++;
        SourceText cell = new SourceText("cell " + count, text);
        StringBuilder printed = new StringBuilder();
        Outcome outcome = languages.of(cell).run(workbench, cellId, cell, console(printed));
        workbench = outcome.workbench();
        return new Ran(printed.toString(), outcome);
    }

    private CellConsole console(StringBuilder printed) {
        return new CellConsole() {
            @Override
            public synchronized void write(Output.Channel channel, String text) {
                printed.append(channel == Output.Channel.STDERR ? "!" + text : text);
            }

            @Override
            public synchronized void show(Output.Display display) {
                printed.append(display.data().keySet()).append(display.data().get("text/plain"));
            }

            @Override
            public Optional<String> ask(String prompt, boolean hidden) {
                return Optional.ofNullable(typed.poll()).map(answer -> prompt + answer);
            }
        };
    }

    /** Runs a cell and interrupts it after a while. */
    Ran interrupted(String text) throws InterruptedException {
        Ran[] ran = new Ran[1];
        Thread thread = new Thread(() -> ran[0] = run(text));
        thread.start();
        Thread.sleep(700);
        thread.interrupt();
        thread.join(20_000);
        return ran[0];
    }

    @Override
    public void close() {
        languages.close();
    }
}
