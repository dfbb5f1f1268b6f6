// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.bench.BlankTable;
import bandwright.dsl.bench.CastingTable;
import bandwright.dsl.bench.SizeTable;
import bandwright.dsl.bench.Steps;
import bandwright.dsl.bench.sheet.BenchSheet;
import bandwright.dsl.bench.sheet.SheetStory;
import bandwright.dsl.bench.sheet.SheetWishes;
import bandwright.dsl.check.Findings;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.explain.Explainer;
import bandwright.dsl.export.Content;
import bandwright.dsl.export.Plans;
import bandwright.dsl.export.ViewsPlan;
import bandwright.dsl.export.glb.GlbWriter;
import bandwright.dsl.model.Fault;
import bandwright.dsl.offer.Offer;
import bandwright.dsl.pattern.AllowanceReader;
import bandwright.dsl.pattern.AsCast;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.Explain;
import bandwright.dsl.syntax.Export;
import bandwright.dsl.syntax.ExportProperty;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Printer;
import bandwright.dsl.syntax.Quote;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.syntax.Sheet;
import bandwright.dsl.syntax.Show;
import bandwright.dsl.syntax.ShowSubject;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.View;
import bandwright.dsl.syntax.Viewpoint;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.drawing.CheckMark;
import bandwright.dsl.view.drawing.LayoutDrawing;
import bandwright.dsl.view.drawing.Section;
import bandwright.dsl.view.drawing.SectionDrawing;
import bandwright.dsl.view.drawing.ViewsDrawing;
import bandwright.dsl.view.render.Camera;
import bandwright.dsl.view.ring.CheckTable;
import bandwright.dsl.view.ring.RingLayout;
import bandwright.dsl.view.ring.RingPictures;
import bandwright.dsl.view.ring.RingSection;
import bandwright.dsl.view.ring.RingTables;
import bandwright.dsl.view.ring.RingTurntable;
import bandwright.dsl.view.ring.RingViews;

/** Answers the statements of a cell that ask; those that make something have no answer. */
final class Asking {
    /** Millimetres of paper for one of the ring. */
    private static final double SECTION_SCALE = 10;

    private static final double LAYOUT_SCALE = 4;

    private final Resolution design;
    private final Workshop workshop;
    private final Supplier<Ring> ring;
    private final SourceText source;
    private final Exploring exploring;

    private final Supplier<Findings> findings;
    private final Supplier<Findings> beside;

    Asking(
            Resolution design,
            Workshop workshop,
            Supplier<Ring> ring,
            Supplier<Findings> findings,
            Supplier<Findings> beside,
            SourceText source,
            Exploring exploring) {
        this.findings = findings;
        this.beside = beside;
        this.workshop = workshop;
        this.design = design;
        this.ring = ring;
        this.source = source;
        this.exploring = exploring;
    }

    /** Whether a statement is a question. */
    static boolean asks(Statement statement) {
        return statement instanceof Show
                || statement instanceof Require
                || statement instanceof View
                || statement instanceof Export
                || statement instanceof Sheet
                || Exploring.asks(statement);
    }

    List<Answer> answer(Statement statement) {
        if (statement instanceof Show show) {
            return show(show);
        } else if (statement instanceof Require require) {
            return List.of(new Answer.Required(Requirements.judge(design, require, source)));
        } else if (statement instanceof View view) {
            return List.of(view(view));
        } else if (Exploring.asks(statement)) {
            return exploring.answer(statement);
        }
        if (statement instanceof Explain explain) {
            return List.of(new Answer.Explained(new Explainer(design, workshop).explain(explain.value(), source)));
        }
        if (statement instanceof Quote quote) {
            return List.of(new Answer.Tabled(Offer.of(quote, design, workshop, source)));
        }
        if (statement instanceof Export export) {
            return List.of(new Exporting(source, new ContentMaker()).answer(export));
        }
        if (statement instanceof Sheet sheet) {
            return List.of(sheet(sheet));
        }
        return List.of();
    }

    private List<Answer> show(Show show) {
        ShowSubject subject = show.subject();
        if (subject instanceof ShowSubject.Parts parts) {
            return checked(picture(parts.parts(), show));
        }
        if (show.state() != null || show.viewpoint() != null) {
            refuseOther(show);
        }
        if (subject instanceof ShowSubject.Section section) {
            return checked(section(section));
        } else if (subject instanceof ShowSubject.Weights weights) {
            return weights(weights, show);
        } else if (subject instanceof ShowSubject.Casting casting) {
            return tabled(casting(casting.block(), show.span(), "show casting {"));
        } else if (subject instanceof ShowSubject.Topic topic) {
            return topic(topic, show);
        } else if (subject instanceof ShowSubject.Value value) {
            return value(value, show);
        }
        if (subject instanceof ShowSubject.Views views) {
            return checked(views(views, show));
        }
        ShowSubject.Layout layout = (ShowSubject.Layout) subject;
        return List.of(layout(design.rowNamed(layout.row(), source)));
    }

    private Table casting(@Nullable Block<ExportProperty> block, Span asked, String braces) {
        return CastingTable.of(
                whole(asked).design(), workshop, new AllowanceReader(design, source, block), beside.get(), braces);
    }

    /** What files hold, from the same things that answers are made of. */
    private final class ContentMaker implements Exporting.Maker {
        @Override
        public Content.Model model(@Nullable Block<ExportProperty> block, Span asked) {
            return new ModelContent(design, workshop, source, block).of(whole(asked));
        }

        @Override
        public Content.Plan plan(ShowSubject subject, Span asked) {
            whole(asked);
            if (subject instanceof ShowSubject.Views views) {
                return ViewsPlan.of(RingViews.of(ring.get(), partsOf(views)), design.fingerprint());
            }
            return subject instanceof ShowSubject.Layout layout
                    ? Plans.of(RingLayout.of(ring.get(), design.rowNamed(layout.row(), source)), design.fingerprint())
                    : Plans.of(cut((ShowSubject.Section) subject), design.fingerprint());
        }

        @Override
        public Content.Rows rows(Statement question, @Nullable Block<ExportProperty> block) {
            if (question instanceof Show show && show.subject() instanceof ShowSubject.Casting) {
                return new Content.Rows(casting(block, show.span(), "export \"…\" { casting "));
            }
            for (Answer answer : answer(question)) {
                if (answer instanceof Answer.Tabled tabled) {
                    return new Content.Rows(tabled.table());
                } else if (answer instanceof Answer.Varied varied) {
                    return new Content.Rows(varied.table());
                }
            }
            throw new IllegalStateException("a question without a table: " + question);
        }
    }

    private Answer sheet(Sheet sheet) {
        return new Exporting(source, new ContentMaker()).sheet(sheet, () -> {
            SheetReader reader = new SheetReader(design, source, sheet.block());
            SheetWishes wishes = reader.wishes();
            Ring whole = whole(sheet.span());
            return BenchSheet.of(
                    whole,
                    workshop,
                    findings.get(),
                    new SheetStory(
                            design.fingerprint(),
                            design.definitions().requirements().stream()
                                    .map(entry ->
                                            Requirements.judge(design, entry).sentence())
                                    .toList(),
                            CastingTable.of(
                                    whole.design(), workshop, reader.allowances(), findings.get(), "sheet \"…\" {"),
                            SizeTable.of(whole, design.ownLimits()),
                            exploring.decisionTable(sheet.span())),
                    wishes);
        });
    }

    private Answer layout(String row) {
        List<CheckMark> checks = RingLayout.checks(ring.get(), row, pointedAt());
        return Charts.drawn(LayoutDrawing.of(RingLayout.of(ring.get(), row), checks, LAYOUT_SCALE));
    }

    private List<Answer> weights(ShowSubject.Weights weights, Show show) {
        if (weights.inAllMetals()) {
            return tabled(RingTables.weightsInAllMetals(whole(show)));
        }
        List<Answer> answers = new ArrayList<>(tabled(RingTables.weights(whole(show))));
        answers.addAll(exploring.measurements());
        return answers;
    }

    private List<Answer> topic(ShowSubject.Topic topic, Show show) {
        return switch (topic.word()) {
            case STONES -> tabled(RingTables.stones(whole(show)));
            case FINGERPRINT -> {
                // That of no ring would pass for one.
                whole(show);
                yield List.of(new Answer.Words("fingerprint", design.fingerprint()));
            }
            case SIZE -> tabled(sizes(show));
            case BLANK -> tabled(BlankTable.of(whole(show)));
            case OPTIONS -> exploring.options(show.span());
            case CHECKS -> checks(show);
            case DECISIONS -> exploring.decisions(show.span());
            case STEPS -> tabled(Steps.table(whole(show).design(), workshop, beside.get()));
        };
    }

    /** Of the bands, or, while there is none, of the finger sizes that are defined. */
    private Table sizes(Show show) {
        if (!design.bands().isEmpty()) {
            return SizeTable.of(whole(show), design.ownLimits());
        }
        Map<String, FingerSize> fingers = new LinkedHashMap<>();
        for (String name : design.definitions().names(Kind.DEFINITION)) {
            if (design.valueOf(name) instanceof Value.Size size) {
                fingers.put(name, size.size());
            }
        }
        if (fingers.isEmpty()) {
            whole(show);
        }
        return SizeTable.of(fingers);
    }

    private static List<Answer> tabled(Table table) {
        return List.of(new Answer.Tabled(table));
    }

    private List<Answer> checks(Show show) {
        whole(show);
        Findings found = findings.get();
        return List.of(new Answer.Words("", found.summary()), new Answer.Tabled(CheckTable.of(found)));
    }

    /** A picture and, where checks failed, a quiet line about them. */
    private List<Answer> checked(Answer picture) {
        try {
            Optional<String> failed = beside.get().beside();
            return failed.isEmpty() ? List.of(picture) : List.of(picture, new Answer.Words("", failed.get()));
        } catch (Fault fault) {
            // A limit that waits for a definition is told where it stands; the picture needs none.
            return List.of(picture);
        }
    }

    private List<Answer> value(ShowSubject.Value subject, Show show) {
        if (subject.value() instanceof Expression.Reference reference) {
            Name name = reference.name();
            Kind kind = design.definitions().kind(name.text()).orElse(null);
            if (name.isRing() || (kind != null && kind.isPart())) {
                return checked(picture(List.of(name), show));
            }
            boolean alone = show.span().start() == subject.span().start();
            ShownWords.meant(name.text(), alone, source.place(name.span()), design)
                    .ifPresent(meant -> {
                        throw new Fault(meant);
                    });
        }
        String value = design.evaluate(subject.value(), source).text();
        return List.of(new Answer.Words(
                Printer.print(subject.value()),
                exploring
                        .measuredOf(subject.value())
                        .map(measured -> value + "; " + measured)
                        .orElse(value)));
    }

    private Answer picture(List<Name> names, Show show) {
        Set<String> parts = parts(names);
        Camera camera = camera(show.viewpoint());
        String side = side(show.viewpoint());
        if (show.state() != Show.State.CAST) {
            return new Answer.Pictured(RingPictures.picture(ring.get(), parts, camera, side));
        }
        refuseNotCast(names);
        return new Answer.Pictured(RingPictures.asCast(ring.get(), parts, camera, side));
    }

    private void refuseNotCast(List<Name> names) {
        List<String> cast = AsCast.of(ring.get().design()).parts();
        for (Name name : names) {
            if (!name.isRing() && !cast.contains(name.text())) {
                throw new Fault(Diagnostic.error("not-in-pattern", source.place(name.span()))
                        .with(name.text())
                        .build());
            }
        }
    }

    /** A state and a side are those of a picture of parts; of anything else they would be passed over without a word. */
    private void refuseOther(Show show) {
        // A name that means nothing yet is told as such.
        boolean part = show.subject() instanceof ShowSubject.Value value
                && value.value() instanceof Expression.Reference reference
                && design.definitions()
                        .kind(reference.name().text())
                        .map(Kind::isPart)
                        .orElse(true);
        boolean views = show.subject() instanceof ShowSubject.Views
                && show.state() == Show.State.CAST
                && show.viewpoint() == null;
        if (!part && !views) {
            throw new Fault(Diagnostic.error("no-picture", source.place(show.span()))
                    .with(show.state() == null ? "from" : "as")
                    .expected(
                            show.subject() instanceof ShowSubject.Views
                                    ? "show views"
                                    : show.state() == null ? "show ring from top" : "show ring as cast")
                    .build());
        }
    }

    private Answer view(View view) {
        Set<String> parts = parts(view.parts());
        byte[] glb = GlbWriter.writeSmall(ring.get(), parts, design.fingerprint());
        return new Answer.Viewed(
                RingTurntable.of(ring.get(), parts, pointedAt(), glb),
                RingPictures.picture(ring.get(), parts, Camera.THREE_QUARTER, "three-quarter"));
    }

    /**
     * What is pointed at in the model and in drawings: what the line under a picture knows, so that none has to wait for the search of a
     * long wall. Where a limit waits for a definition, nothing.
     */
    private Findings pointedAt() {
        try {
            return beside.get();
        } catch (Fault fault) {
            return new Findings(List.of());
        }
    }

    private String side(@Nullable Viewpoint viewpoint) {
        if (viewpoint == null) {
            return "three-quarter";
        }
        return switch (viewpoint.side()) {
            case THREE_QUARTER -> "three-quarter";
            case TOP -> "top";
            case FRONT -> "front";
            case SIDE -> "side";
            case ANGLE -> QuantityFormat.format(Quantity.degrees(degrees(viewpoint.angle())));
        };
    }

    private Camera camera(@Nullable Viewpoint viewpoint) {
        if (viewpoint == null) {
            return Camera.THREE_QUARTER;
        }
        return switch (viewpoint.side()) {
            case THREE_QUARTER -> Camera.THREE_QUARTER;
            case TOP -> Camera.TOP;
            case FRONT -> Camera.FRONT;
            case SIDE -> Camera.SIDE;
            case ANGLE -> RingPictures.facing(degrees(viewpoint.angle()));
        };
    }

    private Answer section(ShowSubject.Section section) {
        Section cut = cut(section);
        List<CheckMark> checks = RingSection.checks(ring.get(), partsOf(section), degrees(section.at()), pointedAt());
        return Charts.drawn(SectionDrawing.of(cut, checks, SECTION_SCALE));
    }

    private Answer views(ShowSubject.Views views, Show show) {
        Set<String> parts = partsOf(views);
        if (show.state() != Show.State.CAST) {
            return Charts.drawn(ViewsDrawing.of(RingViews.of(ring.get(), parts)));
        }
        refuseNotCast(views.parts());
        return Charts.drawn(ViewsDrawing.of(RingViews.asCast(ring.get(), parts)));
    }

    private Set<String> partsOf(ShowSubject.Views views) {
        return views.parts().isEmpty() ? allParts(views.span()) : parts(views.parts());
    }

    private Section cut(ShowSubject.Section section) {
        return RingSection.of(ring.get(), partsOf(section), degrees(section.at()));
    }

    private Set<String> partsOf(ShowSubject.Section section) {
        return section.parts().isEmpty() ? allParts(section.span()) : parts(section.parts());
    }

    private double degrees(@Nullable Expression angle) {
        if (angle == null) {
            return 0;
        }
        if (angle instanceof Expression.Reference reference) {
            refusePart(reference.name());
        }
        Value value = design.evaluate(angle, source);
        if (value instanceof Value.Amount amount
                && amount.quantity().dimension().equals(Dimension.ANGLE)) {
            return amount.quantity().value();
        }
        Place place = source.place(angle.span());
        Diagnostic.Builder fault = Diagnostic.error("wrong-kind", place).with("an angle", value.kind());
        throw new Fault((angle.isBareNumber() ? fault.suggest(place, place.text() + " deg") : fault).build());
    }

    /** {@code show section shank}: where an angle may stand without at, a part needs its of. */
    private void refusePart(Name name) {
        boolean part = name.isRing()
                || design.definitions().kind(name.text()).filter(Kind::isPart).isPresent();
        if (part) {
            Place place = source.place(name.span());
            throw new Fault(Diagnostic.error("missing-of", place)
                    .with("section", name.text())
                    .suggest(place, "of " + name.text())
                    .build());
        }
    }

    /** The ring, if there is one to be looked at; otherwise a note that the question waits for it. */
    private Ring whole(Show show) {
        return whole(show.span());
    }

    private Ring whole(Span asked) {
        allParts(asked);
        return ring.get();
    }

    private Set<String> allParts(Span span) {
        if (design.bands().isEmpty()) {
            throw new Fault(Diagnostic.note("no-ring-yet", source.place(span)).build());
        }
        Set<String> all = new LinkedHashSet<>();
        ring.get().sections().forEach(section -> all.add(section.name()));
        return all;
    }

    private Set<String> parts(List<Name> names) {
        Set<String> parts = new LinkedHashSet<>();
        for (Name name : names) {
            if (name.isRing()) {
                parts.addAll(allParts(name.span()));
            } else {
                parts.add(design.partNamed(name, source));
            }
        }
        return parts;
    }
}
