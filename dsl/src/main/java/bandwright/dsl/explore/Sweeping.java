// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;

import bandwright.dsl.construct.Workshop;
import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Vary;
import bandwright.dsl.view.Table;

/**
 * Every combination of some handles, for a catalogue: more than anybody looks through. Rows are numbered, and each is worked out
 * for itself, so any stretch of them can be worked out anywhere, on any thread, and gives the same texts.
 */
public final class Sweeping {
    /** More rows than this are a slip: at thousands a second they take weeks on any one machine. */
    public static final long MOST = 10_000_000_000L;

    private final Combinations combinations;
    private final Question question;
    private final VariantWorker worker;
    private final List<SweepColumn> axisColumns = new ArrayList<>();
    private final List<SweepColumn> itemColumns = new ArrayList<>();

    private Sweeping(Question question, List<VariedAxis> axes, Workshop workshop) {
        this.question = question;
        combinations = new Combinations(axes);
        worker = new VariantWorker(question, workshop, combinations.names());
        List<Variant> samples = LongStream.of(0, combinations.count() / 2, combinations.count() - 1)
                .distinct()
                .mapToObj(number -> worker.work(combinations.values(number)))
                .toList();
        worker.refuseHopeless(samples);
        for (VariedAxis axis : axes) {
            axisColumns.add(SweepColumn.of(
                    axis.name(), axis.values().stream().map(Optional::of).toList()));
        }
        for (int i = 0; i < question.items().size(); i++) {
            int item = i;
            List<Optional<Value>> values = new ArrayList<>(
                    samples.stream().map(sample -> sample.values().get(item)).toList());
            values.add(now(item));
            itemColumns.add(SweepColumn.of(question.items().get(item).label(), values));
        }
    }

    /**
     * @param plan what varies and what is asked for
     * @param source the text it stands in
     * @throws Fault if a name is not known, a value is of the wrong kind, there are more than {@link #MOST} rows, or what is asked
     *     for has a value neither in the design as it is nor in the first, the middle and the last row
     */
    static Sweeping of(Resolution design, Workshop workshop, Vary plan, SourceText source) {
        List<VariedAxis> axes = new AxisReader(design, source, MOST).read(plan.axes(), plan);
        return new Sweeping(Question.of(design, plan.asked(), source, plan.span()), axes, workshop);
    }

    private Optional<Value> now(int item) {
        try {
            return Optional.of(
                    question.design().evaluate(question.items().get(item).expression(), question.source()));
        } catch (Fault none) {
            return Optional.empty();
        }
    }

    public long rows() {
        return combinations.count();
    }

    /** How many rows that follow one another differ in nothing that changes a shape: metals and prices move fastest. */
    public long sharingShapes() {
        return combinations.sharingShapes();
    }

    /** What varies, what was asked for, which requirements fail, counted from 1, and why a row has no numbers. */
    public List<Table.Column> columns() {
        List<Table.Column> columns = new ArrayList<>();
        axisColumns.forEach(column -> columns.add(column.head()));
        itemColumns.forEach(column -> columns.add(column.head()));
        columns.add(Table.Column.words("failed"));
        columns.add(Table.Column.words("reason"));
        return columns;
    }

    /** The conditions of the design, in the order in which they are counted. */
    public List<String> requirements() {
        return question.requirements();
    }

    /** What varies in a row, without working it out: the first cells of {@link #row}. */
    public List<String> place(long number) {
        return place(combinations.values(number));
    }

    /**
     * The cells of a row, as many as there are columns, each on one line.
     *
     * @param number from 0 to below {@link #rows}
     */
    public List<String> row(long number) {
        Map<String, Value> values = combinations.values(number);
        List<String> cells = new ArrayList<>(place(values));
        Variant variant = worker.work(values);
        for (int i = 0; i < itemColumns.size(); i++) {
            cells.add(itemColumns.get(i).cell(variant.values().get(i)));
        }
        cells.add(variant.failedNumbers());
        cells.add(variant.reasonInWords());
        cells.replaceAll(cell -> cell.replace('\n', ' ').replace('\r', ' '));
        return cells;
    }

    private List<String> place(Map<String, Value> values) {
        List<String> cells = new ArrayList<>();
        for (SweepColumn column : axisColumns) {
            cells.add(column.cell(Optional.ofNullable(values.get(column.name()))));
        }
        return cells;
    }
}
