// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explore;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

import bandwright.dsl.check.Finding;
import bandwright.dsl.check.Verdict;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.resolve.Entry;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.view.Contrast;
import bandwright.dsl.view.Contrast.Group;

/** Compares two designs that come from different texts: what they call by one name is set side by side. */
public final class Contrasting {
    private static final SourceText NO_TEXT = new SourceText("the comparison", "");
    private static final Span NO_SPAN = new Span(0, 0);
    private static final String NOT_WORKED_OUT = "not worked out";
    private static final List<String> OF_PARTS = List.of("weight", "volume", "width", "height", "wall");
    private static final List<String> OF_ROWS = List.of("count", "gap", "carats");

    private final ContrastSide left;
    private final ContrastSide right;
    private final List<Contrast.Line> lines = new ArrayList<>();

    private Contrasting(ContrastSide left, ContrastSide right) {
        this.left = left;
        this.right = right;
    }

    public static Contrast of(ContrastSide left, ContrastSide right) {
        return new Contrasting(left, right).contrast();
    }

    private Contrast contrast() {
        definitions();
        statements();
        fingers();
        parts();
        rows();
        requirements();
        checks();
        return new Contrast(left.name(), right.name(), lines);
    }

    private void definitions() {
        for (String name : both(side -> side.design().definitions().names(Kind.DEFINITION))) {
            add(
                    Group.DEFINITIONS,
                    name,
                    figure(
                            side -> is(side, name, Kind.DEFINITION),
                            side -> side.design().valueOf(name)));
        }
    }

    /** What has a name and is no definition: whether both say the same of it, and if not, which lines only one of them says. */
    private void statements() {
        Set<String> names = new TreeSet<>(
                both(side -> List.copyOf(side.design().definitions().names())));
        for (String name : names) {
            Optional<String> one = statement(left, name);
            Optional<String> other = statement(right, name);
            if (one.isEmpty() && other.isEmpty()) {
                continue;
            }
            boolean both = one.isPresent() && other.isPresent();
            boolean same = one.equals(other);
            lines.add(new Contrast.Line(
                    Group.STATEMENTS,
                    name,
                    both && !same ? linesOnlyIn(one, other) : kind(left, one, name),
                    both && !same ? linesOnlyIn(other, one) : kind(right, other, name),
                    same ? "same" : both ? "differs" : onlyIn(one.isPresent()),
                    "",
                    same));
        }
    }

    /** The text of the statement whose own name it is; parts that a cut makes are told with the cut. */
    private static Optional<String> statement(ContrastSide side, String name) {
        return side.design()
                .definitions()
                .find(name)
                .filter(entry -> !(entry.statement() instanceof Definition)
                        && entry.made().get(0).name().equals(name))
                .map(Entry::text);
    }

    private static String linesOnlyIn(Optional<String> text, Optional<String> other) {
        List<String> known = other.orElse("").lines().map(String::strip).toList();
        return text.orElse("")
                .lines()
                .map(String::strip)
                .filter(line -> !known.contains(line))
                .collect(Collectors.joining(", "));
    }

    private static String kind(ContrastSide side, Optional<String> statement, String name) {
        return statement.isEmpty()
                ? ""
                : side.design().definitions().kind(name).map(Kind::words).orElse("");
    }

    private static boolean is(ContrastSide side, String name, Kind kind) {
        return side.design().definitions().kind(name).orElse(null) == kind;
    }

    private void fingers() {
        for (String band : both(side -> side.bands().stream().map(Band::name).toList())) {
            add(
                    Group.MEASURES,
                    "finger of " + band,
                    figure(
                            side -> side.band(band).isPresent(),
                            side -> new Value.Size(
                                    side.band(band).orElseThrow().finger().size())));
        }
    }

    private void parts() {
        List<String> parts = both(ContrastSide::parts);
        for (String part : parts) {
            add(
                    Group.MEASURES,
                    "metal of " + part,
                    figure(
                            side -> side.parts().contains(part),
                            side -> new Value.Words(side.design().metal(part).name())));
            OF_PARTS.forEach(word -> call(word, part, side -> side.parts().contains(part)));
        }
        if (!parts.isEmpty()) {
            call("weight", "ring", side -> !side.parts().isEmpty());
        }
    }

    private void rows() {
        for (String row : both(side -> side.rows().stream().map(StoneRow::name).toList())) {
            Function<ContrastSide, Boolean> has = side -> side.row(row).isPresent();
            add(
                    Group.MEASURES,
                    "stone of " + row,
                    figure(has, side -> new Value.Words(stone(side.row(row).orElseThrow()))));
            OF_ROWS.forEach(word -> call(word, row, has));
        }
    }

    private static String stone(StoneRow row) {
        String length = QuantityFormat.format(Quantity.millimetres(row.aroundMm()));
        String width = QuantityFormat.format(Quantity.millimetres(row.widthMm()));
        return row.cut().word() + " " + row.material().name() + " "
                + (row.cut().hasTwoSizes() ? length + " by " + width : length);
    }

    private void call(String word, String subject, Function<ContrastSide, Boolean> has) {
        Question.Item item = Question.call(word, subject, NO_SPAN);
        add(Group.MEASURES, item.label(), figure(has, side -> side.design().evaluate(item.expression(), NO_TEXT)));
    }

    private void requirements() {
        for (String text : both(Contrasting::conditions)) {
            add(
                    Group.REQUIREMENTS,
                    text,
                    figure(
                            side -> conditions(side).contains(text),
                            side -> new Value.Words(holds(side, text) ? "passed" : "FAILED")));
        }
    }

    private static List<String> conditions(ContrastSide side) {
        return side.design().definitions().requirements().stream()
                .map(Contrasting::condition)
                .toList();
    }

    private static String condition(Entry entry) {
        return Printer.print(((Require) entry.statement()).condition());
    }

    private static boolean holds(ContrastSide side, String text) {
        Entry entry = side.design().definitions().requirements().stream()
                .filter(each -> condition(each).equals(text))
                .findFirst()
                .orElseThrow();
        return side.design().evaluate(((Require) entry.statement()).condition(), entry.source())
                        instanceof Value.Truth truth
                && truth.holds();
    }

    /** Those that fail in either. */
    private void checks() {
        for (String name : both(side -> side.findings().with(Verdict.FAILED).stream()
                .map(Contrasting::check)
                .toList())) {
            add(
                    Group.CHECKS,
                    name,
                    figure(
                            side -> !side.parts().isEmpty(),
                            side -> new Value.Words(side.findings().all().stream()
                                    .filter(finding -> check(finding).equals(name))
                                    .findFirst()
                                    .map(Contrasting::verdict)
                                    .orElse("no finding"))));
        }
    }

    private static String check(Finding finding) {
        return finding.title() + ", " + finding.about();
    }

    private static String verdict(Finding finding) {
        return finding.verdict().word() + (finding.measured() == null ? "" : ": " + finding.measured());
    }

    /** What a figure is in both: nothing where a side has no such thing. */
    private record Figure(boolean inLeft, Optional<Value> left, boolean inRight, Optional<Value> right) {}

    private Figure figure(Function<ContrastSide, Boolean> has, Function<ContrastSide, Value> value) {
        boolean inLeft = has.apply(left);
        boolean inRight = has.apply(right);
        return new Figure(
                inLeft,
                inLeft ? attempt(left, value) : Optional.empty(),
                inRight,
                inRight ? attempt(right, value) : Optional.empty());
    }

    private static Optional<Value> attempt(ContrastSide side, Function<ContrastSide, Value> value) {
        try {
            return Optional.of(value.apply(side));
        } catch (Fault fault) {
            return Optional.empty();
        }
    }

    private void add(Group group, String name, Figure figure) {
        String difference = Texts.difference(figure.left(), figure.right());
        boolean none = difference.equals("0") || difference.startsWith("0 ");
        boolean both = figure.inLeft() && figure.inRight();
        boolean alike = both && Texts.text(figure.left()).equals(Texts.text(figure.right()));
        boolean same = both && (difference.isEmpty() ? alike : none);
        lines.add(new Contrast.Line(
                group,
                name,
                text(figure.inLeft(), figure.left()),
                text(figure.inRight(), figure.right()),
                both ? (same ? "same" : difference.isEmpty() ? "differs" : difference) : onlyIn(figure.inLeft()),
                same ? "" : Texts.percent(figure.left(), figure.right()),
                same));
    }

    private String onlyIn(boolean inLeft) {
        return "only in " + (inLeft ? left.name() : right.name());
    }

    private static String text(boolean there, Optional<Value> value) {
        return there ? value.map(Value::text).orElse(NOT_WORKED_OUT) : "";
    }

    /** The names of the first, then those that the second alone has. */
    private List<String> both(Function<ContrastSide, List<String>> names) {
        Set<String> all = new LinkedHashSet<>(names.apply(left));
        all.addAll(names.apply(right));
        return List.copyOf(all);
    }
}
