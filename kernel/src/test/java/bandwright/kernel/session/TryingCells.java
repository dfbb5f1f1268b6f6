// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import bandwright.dsl.Answer;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.edit.Completeness;
import bandwright.dsl.edit.Completion;
import bandwright.dsl.edit.Documentation;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.cell.CellLanguage;
import bandwright.kernel.notebook.Output;

/** A language for tests, whose cells use all that a console offers. The second line says what to do. */
final class TryingCells implements CellLanguage {
    @Override
    public boolean reads(SourceText text) {
        return text.lineText(1).equals("trying");
    }

    @Override
    public Outcome run(Workbench workbench, String cellId, SourceText text, CellConsole console) {
        String[] words = text.lineText(2).split(" ", -1);
        List<Answer> answers = List.of();
        switch (words[0]) {
            case "print" -> {
                for (int line = 1; line <= Integer.parseInt(words[1]); line++) {
                    console.write(Output.Channel.STDOUT, "line " + line + "\n");
                }
                console.write(Output.Channel.STDERR, "done\n");
            }
            case "show" -> {
                console.show("an-id", display("first"));
                console.update("an-id", display("second"));
                console.clear(true);
                console.show(display("third"));
            }
            case "ask" ->
                answers =
                        List.of(new Answer.Words("", console.ask("name? ", true).orElse("nobody")));
            case "work" -> work(Long.parseLong(words[1]));
            case "fail" -> throw new IllegalStateException("on purpose");
            default -> throw new IllegalArgumentException(words[0]);
        }
        return new Outcome(workbench, List.of(), answers);
    }

    /** Heeds no interrupt. */
    private static void work(long milliseconds) {
        long end = System.nanoTime() + milliseconds * 1_000_000;
        while (System.nanoTime() < end) {
            Thread.onSpinWait();
        }
    }

    private static Output.Display display(String text) {
        return new Output.Display(Map.of("text/plain", text));
    }

    @Override
    public Outcome define(Workbench workbench, String cellId, SourceText text) {
        return new Outcome(workbench, List.of(), List.of());
    }

    @Override
    public Completion completion(Workbench workbench, SourceText text, int offset) {
        return new Completion(new Span(offset, offset), List.of());
    }

    @Override
    public Optional<Documentation> documentation(Workbench workbench, SourceText text, int offset) {
        return Optional.empty();
    }

    @Override
    public Optional<Completeness> completeness(SourceText text) {
        return Optional.empty();
    }
}
