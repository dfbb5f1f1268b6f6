// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.edit.Formatter;
import bandwright.dsl.measure.RingMeasurer;
import bandwright.dsl.parse.ParseResult;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.resolve.Definitions;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.TreeText;

import static org.assertj.core.api.Assertions.assertThat;

/** Laws that hold for every valid text, tried on texts made by chance. */
class RandomProgramTest {
    private static final int PROGRAMS = 2_000;
    private static final int RINGS = 60;
    private static final String ASKED =
            "\nshow fingerprint\nbreadth\nthickness\nweight(ring)\nwidth(shank)\nmax(breadth, thickness)\nshow weights\n";

    @Test
    void a_text_and_what_is_printed_of_it_say_the_same() {
        Random random = new Random(54);
        for (int i = 0; i < PROGRAMS; i++) {
            String text = String.join("\n", RandomProgram.statements(random)) + ASKED;
            ParseResult parsed = RingParser.parse(new SourceText("text", text));
            assertThat(parsed.diagnostics()).as(text).isEmpty();
            String printed = Printer.print(parsed.cell());
            ParseResult again = RingParser.parse(new SourceText("printed", printed));
            assertThat(TreeText.of(again.cell())).as(text).isEqualTo(TreeText.of(parsed.cell()));
            assertThat(fingerprint(List.of(printed))).as(text).isEqualTo(fingerprint(List.of(text)));
            assertThat(fingerprint(List.of(Formatter.format(text)))).as(text).isEqualTo(fingerprint(List.of(text)));
        }
    }

    @Test
    void the_order_of_cells_and_of_runs_changes_nothing() {
        Random random = new Random(55);
        for (int i = 0; i < PROGRAMS; i++) {
            List<String> cells = new ArrayList<>(RandomProgram.statements(random));
            String first = fingerprint(cells);
            Collections.shuffle(cells, random);
            assertThat(fingerprint(cells)).as(cells.toString()).isEqualTo(first);
        }
    }

    @Test
    void two_runs_answer_the_same_bytes_whatever_the_order_of_cells() {
        Random random = new Random(56);
        int answered = 0;
        for (int i = 0; i < RINGS; i++) {
            List<String> cells = new ArrayList<>(RandomProgram.statements(random));
            String first = answers(cells);
            assertThat(answers(cells)).isEqualTo(first);
            if (first.isEmpty()) {
                // No ring can be made of it: which cell is then refused does depend on the order.
                continue;
            }
            Collections.shuffle(cells, random);
            assertThat(answers(cells)).as(cells.toString()).isEqualTo(first);
            answered += 1;
        }
        assertThat(answered).isGreaterThan(RINGS * 2 / 3);
    }

    /** Of the definitions alone: whether they make a ring that can be made is not asked. */
    private static String fingerprint(List<String> cells) {
        Definitions definitions = Definitions.EMPTY;
        for (String cell : cells) {
            SourceText text = new SourceText("a cell", cell);
            definitions =
                    definitions.with(cell, text, RingParser.parse(text).cell()).definitions();
        }
        return new Resolution(definitions, new RingMeasurer(new Workshop())).fingerprint();
    }

    private static String answers(List<String> cells) {
        Workbench workbench = Workbench.empty();
        // Named by what they say, so that another order keeps each cell's name.
        for (String cell : cells) {
            Outcome made = workbench.define(cell, new SourceText("a cell", cell));
            if (made.diagnostics().stream().anyMatch(Diagnostic::isError)) {
                return "";
            }
            workbench = made.workbench();
        }
        Outcome outcome = workbench.run("asks", new SourceText("asks", ASKED));
        return outcome.answers().stream().map(Answer::plainText).collect(Collectors.joining("\n"))
                + outcome.diagnostics().stream().map(Diagnostic::message).collect(Collectors.joining("\n"));
    }
}
