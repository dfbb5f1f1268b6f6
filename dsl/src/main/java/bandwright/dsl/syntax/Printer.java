// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

/** The canonical text of a tree. Parsing it gives the same tree, spans apart. */
public final class Printer implements Statement.Visitor<String> {
    /** Words that {@code show} takes for its own before it looks for a name. */
    private static final Set<String> OWN_WORDS = Set.of(
            "section",
            "views",
            "layout",
            "weights",
            "stones",
            "checks",
            "decisions",
            "blank",
            "steps",
            "options",
            "fingerprint",
            "casting",
            "size");

    private static final Set<String> SIDES = Set.of("top", "front", "side", "three-quarter");

    private final ExpressionPrinter expressions = new ExpressionPrinter();
    private final PropertyPrinter properties = new PropertyPrinter(expressions);

    private Printer() {}

    /** One statement after the other; every line ends with {@code \n}. */
    public static String print(Cell cell) {
        return cell.statements().stream().map(Printer::print).collect(Collectors.joining());
    }

    /** A statement and its line end. */
    public static String print(Statement statement) {
        return statement.accept(new Printer()) + "\n";
    }

    /** A value. */
    public static String print(Expression expression) {
        return new ExpressionPrinter().print(expression);
    }

    /** A value with other texts in place of some of its parts: to show a formula with its numbers. */
    public static String print(Expression expression, Function<Expression, Optional<String>> instead) {
        return new ExpressionPrinter(instead).print(expression);
    }

    @Override
    public String title(Title title) {
        return "title \"" + title.text() + "\"" + because(title.because());
    }

    @Override
    public String definition(Definition definition) {
        Range range = definition.range();
        // A range belongs to the definition; a comparison with two bounds needs parentheses to be one.
        boolean amount = range != null || definition.value() instanceof Expression.Between;
        String value = amount ? expressions.amount(definition.value()) : expressions.print(definition.value());
        return definition.name() + " = " + value + range(range) + because(definition.because());
    }

    @Override
    public String profile(Profile profile) {
        return "profile " + profile.name() + " = " + shape(profile.shape()) + because(profile.because());
    }

    @Override
    public String band(Band band) {
        return "band " + band.name() + properties.block(band.block(), "") + because(band.because());
    }

    @Override
    public String groove(Groove groove) {
        return "cut " + groove.name() + " from " + PropertyPrinter.names(groove.from())
                + properties.block(groove.block(), "") + because(groove.because());
    }

    @Override
    public String seats(Seats seats) {
        return "cut " + seats.name() + " for " + seats.row() + " from " + PropertyPrinter.names(seats.from())
                + properties.block(seats.block(), "") + because(seats.because());
    }

    @Override
    public String stoneRow(StoneRow row) {
        return "stone-row " + row.name() + " on " + row.part() + properties.block(row.block(), "")
                + because(row.because());
    }

    @Override
    public String prongs(Prongs prongs) {
        return "prongs " + prongs.name() + " for " + prongs.row() + " on " + prongs.part()
                + properties.block(prongs.block(), "") + because(prongs.because());
    }

    @Override
    public String metal(MetalDefinition metal) {
        return "metal " + metal.name() + properties.block(metal.block(), "") + because(metal.because());
    }

    @Override
    public String stoneMaterial(StoneMaterial material) {
        return "stone-material " + material.name() + properties.block(material.block(), "")
                + because(material.because());
    }

    @Override
    public String forget(Forget forget) {
        return "forget " + forget.name();
    }

    @Override
    public String show(Show show) {
        Show.State state = show.state();
        Viewpoint viewpoint = show.viewpoint();
        return "show " + subject(show.subject())
                + (state == null ? "" : " as " + state.name().toLowerCase(Locale.ROOT))
                + (viewpoint == null ? "" : " from " + viewpoint(viewpoint));
    }

    @Override
    public String view(View view) {
        return "view " + PropertyPrinter.names(view.parts());
    }

    @Override
    public String vary(Vary vary) {
        return vary.axes().stream().map(this::axis).collect(Collectors.joining(", ", "vary ", ""))
                + asked(vary.asked());
    }

    @Override
    public String whatIf(WhatIf whatIf) {
        return whatIf.changes().stream()
                        .map(change -> change.name() + " = " + expressions.print(change.value()))
                        .collect(Collectors.joining(", ", "what-if ", ""))
                + asked(whatIf.asked());
    }

    @Override
    public String option(Option option) {
        Stream<String> differences = option.differences().stream().map(this::definition);
        return "option \"" + option.name() + "\"" + braces(differences) + because(option.because());
    }

    @Override
    public String find(Find find) {
        String extreme = find.extreme().name().toLowerCase(Locale.ROOT);
        return "find " + extreme + " " + find.handle() + " with " + expressions.print(find.condition());
    }

    @Override
    public String measured(Measured measured) {
        return "measured " + expressions.amount(measured.measure()) + " = " + expressions.amount(measured.value())
                + because(measured.because());
    }

    @Override
    public String explain(Explain explain) {
        return "explain " + expressions.print(explain.value());
    }

    @Override
    public String require(Require require) {
        return "require " + expressions.print(require.condition()) + because(require.because());
    }

    @Override
    public String limit(Limit limit) {
        return "limit " + limit.name() + " " + expressions.amount(limit.value()) + because(limit.because());
    }

    @Override
    public String quote(Quote quote) {
        return "quote" + properties.block(quote.block(), "") + because(quote.because());
    }

    @Override
    public String export(Export export) {
        return "export \"" + export.file() + "\"" + optional(export.block());
    }

    private String optional(@Nullable Block<ExportProperty> block) {
        return block == null ? "" : properties.block(block, "");
    }

    @Override
    public String sheet(Sheet sheet) {
        return "sheet \"" + sheet.file() + "\"" + optional(sheet.block());
    }

    private String range(@Nullable Range range) {
        return range == null
                ? ""
                : " between " + expressions.amount(range.low()) + " and " + expressions.amount(range.high())
                        + expressions.optional(" step ", range.step());
    }

    private static String because(@Nullable Because because) {
        return because == null ? "" : " because \"" + because.reason() + "\"";
    }

    private String shape(ProfileShape shape) {
        if (shape instanceof ProfileShape.Form form) {
            return form.form() + expressions.arguments(form.sizes());
        }
        ProfileShape.Outline outline = (ProfileShape.Outline) shape;
        return outline.segments().stream()
                .map(segment -> "  " + segment(segment) + "\n")
                .collect(Collectors.joining("", "outline {\n  start " + point(outline.start()) + "\n", "}"));
    }

    private String segment(ProfileShape.Segment segment) {
        String through = segment instanceof ProfileShape.Arc arc ? "arc through " + point(arc.through()) : "line";
        return through + " to " + point(segment.to());
    }

    private String point(ProfileShape.Point point) {
        return "(" + expressions.amount(point.across()) + ", " + expressions.amount(point.out()) + ")";
    }

    private String subject(ShowSubject subject) {
        if (subject instanceof ShowSubject.Parts parts) {
            return PropertyPrinter.names(parts.parts());
        } else if (subject instanceof ShowSubject.Section section) {
            String of = section.parts().isEmpty() ? "" : " of " + PropertyPrinter.names(section.parts());
            return "section" + of + expressions.optional(" at ", section.at());
        } else if (subject instanceof ShowSubject.Layout layout) {
            return "layout of " + layout.row();
        } else if (subject instanceof ShowSubject.Views views) {
            return views.parts().isEmpty() ? "views" : "views of " + PropertyPrinter.names(views.parts());
        } else if (subject instanceof ShowSubject.Weights weights) {
            return weights.inAllMetals() ? "weights in all metals" : "weights";
        } else if (subject instanceof ShowSubject.Casting casting) {
            return casting.block() == null ? "casting" : "casting" + properties.block(casting.block(), "");
        } else if (subject instanceof ShowSubject.Topic topic) {
            return topic.word().name().toLowerCase(Locale.ROOT);
        }
        String value = expressions.print(((ShowSubject.Value) subject).value());
        String first = value.split("[^\\p{L}\\p{M}0-9-]", 2)[0];
        return OWN_WORDS.contains(first) ? "(" + value + ")" : value;
    }

    private String viewpoint(Viewpoint viewpoint) {
        Expression angle = viewpoint.angle();
        if (angle == null) {
            return viewpoint.side().name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
        String text = expressions.amount(angle);
        return SIDES.contains(text) ? "(" + text + ")" : text;
    }

    private String axis(Axis axis) {
        if (axis instanceof Axis.Stretch stretch) {
            return stretch.name() + " from " + expressions.amount(stretch.from()) + " to "
                    + expressions.amount(stretch.to()) + expressions.optional(" step ", stretch.step());
        } else if (axis instanceof Axis.Values values) {
            return values.values().stream()
                    .map(expressions::amount)
                    .collect(Collectors.joining(", ", values.name() + " over ", ""));
        } else {
            return axis.name().text();
        }
    }

    private String asked(Asked asked) {
        Stream<String> definitions = asked.definitions().stream().map(this::definition);
        Stream<String> values = asked.values().stream().map(this::askedValue);
        return asked.isEmpty() ? "" : braces(Stream.concat(definitions, values));
    }

    /** A comparison that begins {@code name =} would be read as a definition. */
    private String askedValue(Expression value) {
        String text = expressions.print(value);
        boolean likeDefinition = value instanceof Expression.Comparison comparison
                && comparison.first() instanceof Expression.Reference
                && comparison.links().get(0).operator() == ComparisonOperator.EQUAL;
        return likeDefinition ? "(" + text + ")" : text;
    }

    private static String braces(Stream<String> items) {
        List<String> lines = items.map(item -> "\n  " + item).toList();
        return " {" + String.join(",", lines) + "\n}";
    }
}
