// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

import bandwright.design.DesignException;
import bandwright.design.Quantity;
import bandwright.design.Shown;
import bandwright.design.Size;
import bandwright.design.Value;
import bandwright.design.Variant;
import bandwright.design.host.Hosts;
import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.Worked;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.view.Table;

/** Answers what a cell asks of a design, and keeps in mind what was asked. */
abstract sealed class AskedDesign implements Variant permits CellDesign, VariantDesign {
    private static final String QUESTION = "a question of a cell in Java";

    private final Workhand hand;
    private final Set<String> asked;

    /** @param asked what was asked, as statements of ring text; added to */
    AskedDesign(Workhand hand, Set<String> asked) {
        this.hand = hand;
        this.asked = asked;
    }

    /** The design that is asked. */
    abstract Workbench workbench();

    final <T> T work(Function<Workbench, T> work) {
        // A variant that a cell has kept must not be asked either: the one who works for both would wait for itself.
        Hosts.refuseFunctions();
        Workbench present = workbench();
        return hand.call(() -> work.apply(present));
    }

    private void note(String statement) {
        synchronized (asked) {
            asked.add(statement.replaceAll("\\R", " "));
        }
    }

    private Worked.Worth worth(String expression) {
        note("show " + expression);
        SourceText text = new SourceText(QUESTION, expression);
        Worked worked = work(present -> present.value(text));
        Worked.Worth worth = worked.worth();
        if (worth == null) {
            throw new DesignException(worked.diagnostics());
        }
        return worth;
    }

    @Override
    public final Quantity get(String expression) {
        Worked.Worth worth = worth(expression);
        if (worth.quantity() == null) {
            throw wrongKind("a number or a quantity", worth);
        }
        return Quantity.of(worth.quantity());
    }

    @Override
    public final Size size(String expression) {
        Worked.Worth worth = worth(expression);
        if (worth.size() == null) {
            throw wrongKind("a finger size", worth);
        }
        return Size.of(worth.size());
    }

    @Override
    public final boolean holds(String condition) {
        Worked.Worth worth = worth(condition);
        if (!worth.kind().equals("true or false")) {
            throw wrongKind("true or false", worth);
        }
        return worth.text().equals("true");
    }

    @Override
    public final String text(String expression) {
        return worth(expression).text();
    }

    private static DesignException wrongKind(String wanted, Worked.Worth worth) {
        return new DesignException(List.of(
                Diagnostic.error("wrong-kind", null).with(wanted, worth.kind()).build()));
    }

    @Override
    public final Shown show(String subject) {
        String statement = "show " + subject;
        note(statement);
        Outcome outcome = work(present -> present.run(QUESTION, new SourceText(QUESTION, statement)));
        if (outcome.hasErrors() || outcome.unanswered() > 0) {
            throw new DesignException(outcome.diagnostics());
        }
        return new Shown(outcome.answers());
    }

    @Override
    public final Variant with(String name, String expression) {
        note("show " + name);
        Outcome outcome = work(present -> present.withValue(name, expression));
        if (outcome.hasErrors()) {
            throw new DesignException(outcome.diagnostics());
        }
        return new VariantDesign(outcome.workbench(), hand, asked);
    }

    @Override
    public final Table table(String name, List<? extends Value> values, String... expressions) {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.numbers(name, "")));
        for (String expression : expressions) {
            columns.add(Table.Column.numbers(expression, ""));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Value value : values) {
            rows.add(row(name, value, expressions));
        }
        return new Table("", columns, rows, List.of());
    }

    private List<String> row(String name, Value value, String... expressions) {
        List<String> row = new ArrayList<>(List.of(value.toString()));
        try {
            Variant variant = with(name, value);
            for (String expression : expressions) {
                row.add(variant.text(expression));
            }
        } catch (DesignException refused) {
            String reason = refused.getMessage() == null ? refused.code() : refused.getMessage();
            while (row.size() <= expressions.length) {
                row.add(row.contains(reason) ? "" : reason);
            }
        }
        return row;
    }
}
