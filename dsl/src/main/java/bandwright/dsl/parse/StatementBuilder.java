// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.antlr.v4.runtime.ParserRuleContext;

import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Band;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Explain;
import bandwright.dsl.syntax.Export;
import bandwright.dsl.syntax.ExportProperty;
import bandwright.dsl.syntax.Extreme;
import bandwright.dsl.syntax.Find;
import bandwright.dsl.syntax.Forget;
import bandwright.dsl.syntax.Groove;
import bandwright.dsl.syntax.Limit;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.MetalDefinition;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Profile;
import bandwright.dsl.syntax.Prongs;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.syntax.Quote;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.syntax.Seats;
import bandwright.dsl.syntax.Sheet;
import bandwright.dsl.syntax.Show;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.StoneMaterial;
import bandwright.dsl.syntax.StoneRow;
import bandwright.dsl.syntax.Title;
import bandwright.dsl.syntax.Vary;
import bandwright.dsl.syntax.View;
import bandwright.dsl.syntax.WhatIf;

/** From the parser's tree to a statement; families of properties are left to their own builders. */
final class StatementBuilder extends BandParserBaseVisitor<Statement> {
    private final Report report;
    private final ExpressionBuilder expressions;
    private final AskBuilder asks;
    private final SubjectBuilder subjects;
    private final BandBuilder bands;
    private final StonesBuilder stones;

    StatementBuilder(Report report) {
        this.report = report;
        this.expressions = new ExpressionBuilder(report);
        this.asks = new AskBuilder(expressions);
        this.subjects = new SubjectBuilder(expressions, asks, report);
        this.bands = new BandBuilder(expressions);
        this.stones = new StonesBuilder(expressions);
    }

    private <T, P extends Property> Block<P> block(
            ParserRuleContext statement, List<T> properties, Function<? super T, ? extends P> build) {
        return Trees.block(statement, Trees.list(properties, build), report);
    }

    // --- statements that make the ring ---

    @Override
    public Statement visitTitle(BandParser.TitleContext tree) {
        return new Title(Trees.text(tree.text), Trees.because(tree.because()), Trees.span(tree));
    }

    @Override
    public Statement visitHandle(BandParser.HandleContext tree) {
        return new Definition(
                Trees.name(tree.name()),
                expressions.visit(tree.value),
                asks.range(tree.range()),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitDefinition(BandParser.DefinitionContext tree) {
        return new Definition(
                Trees.name(tree.name()),
                expressions.visit(tree.value),
                null,
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitProfile(BandParser.ProfileContext tree) {
        return new Profile(
                Trees.name(tree.name()),
                new ProfileBuilder(expressions).visit(tree.shape()),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitBand(BandParser.BandContext tree) {
        return new Band(
                Trees.name(tree.name()),
                block(tree, tree.bandProperty(), bands::visit),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitGroove(BandParser.GrooveContext tree) {
        GrooveBuilder grooves = new GrooveBuilder(expressions);
        return new Groove(
                Trees.name(tree.name()),
                Trees.names(tree.names().name()),
                block(tree, tree.grooveProperty(), grooves::visit),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitSeats(BandParser.SeatsContext tree) {
        SeatsBuilder seats = new SeatsBuilder(expressions, report);
        return new Seats(
                Trees.name(tree.cut),
                Trees.name(tree.row),
                Trees.names(tree.names().name()),
                block(tree, tree.seatsProperty(), seats::visit),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitStoneRow(BandParser.StoneRowContext tree) {
        return new StoneRow(
                Trees.name(tree.row),
                Trees.name(tree.body),
                block(tree, tree.rowProperty(), stones::visit),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitProngs(BandParser.ProngsContext tree) {
        return new Prongs(
                Trees.name(tree.pins),
                Trees.name(tree.row),
                Trees.name(tree.body),
                block(tree, tree.prongsProperty(), stones::prongs),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitMetalDefinition(BandParser.MetalDefinitionContext tree) {
        return new MetalDefinition(
                Trees.name(tree.name()),
                block(tree, tree.metalProperty(), bands::metal),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitStoneMaterial(BandParser.StoneMaterialContext tree) {
        return new StoneMaterial(
                Trees.name(tree.name()),
                block(tree, tree.materialProperty(), bands::material),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitForget(BandParser.ForgetContext tree) {
        return new Forget(Trees.name(tree.name()), Trees.span(tree));
    }

    // --- statements that ask ---

    @Override
    public Statement visitShow(BandParser.ShowContext tree) {
        Show.State state = tree.state == null
                ? null
                : Show.State.valueOf(tree.state.getText().toUpperCase(Locale.ROOT));
        return new Show(subjects.visit(tree.subject()), state, subjects.viewpoint(tree.viewpoint()), Trees.span(tree));
    }

    @Override
    public Statement visitBare(BandParser.BareContext tree) {
        Span span = Trees.span(tree);
        return new Show(subjects.value(tree.expression()), null, null, span);
    }

    @Override
    public Statement visitView(BandParser.ViewContext tree) {
        return new View(Trees.names(tree.parts().part()), Trees.span(tree));
    }

    @Override
    public Statement visitVary(BandParser.VaryContext tree) {
        return new Vary(
                Trees.list(tree.axis(), asks::axis), asks.asked(tree.asked(), Trees.span(tree)), Trees.span(tree));
    }

    @Override
    public Statement visitWhatIf(BandParser.WhatIfContext tree) {
        return new WhatIf(
                Trees.list(tree.change(), asks::change), asks.asked(tree.asked(), Trees.span(tree)), Trees.span(tree));
    }

    @Override
    public Statement visitOption(BandParser.OptionContext tree) {
        return new Option(
                Trees.text(tree.text),
                Trees.list(tree.differences().difference(), asks::difference),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitFind(BandParser.FindContext tree) {
        Extreme extreme = tree.extreme.getType() == BandParser.LARGEST ? Extreme.LARGEST : Extreme.SMALLEST;
        return new Find(extreme, Trees.name(tree.name()), expressions.visit(tree.expression()), Trees.span(tree));
    }

    @Override
    public Statement visitMeasured(BandParser.MeasuredContext tree) {
        return new Measured(
                expressions.visit(tree.measure),
                expressions.visit(tree.value),
                Trees.because(tree.because()),
                Trees.span(tree));
    }

    @Override
    public Statement visitExplain(BandParser.ExplainContext tree) {
        return new Explain(expressions.visit(tree.expression()), Trees.span(tree));
    }

    @Override
    public Statement visitRequire(BandParser.RequireContext tree) {
        return new Require(expressions.visit(tree.expression()), Trees.because(tree.because()), Trees.span(tree));
    }

    @Override
    public Statement visitLimit(BandParser.LimitContext tree) {
        return new Limit(
                Trees.name(tree.key), expressions.visit(tree.value), Trees.because(tree.because()), Trees.span(tree));
    }

    @Override
    public Statement visitQuote(BandParser.QuoteContext tree) {
        return new Quote(
                block(tree, tree.quoteProperty(), asks::price), Trees.because(tree.because()), Trees.span(tree));
    }

    @Override
    public Statement visitExport(BandParser.ExportContext tree) {
        return new Export(
                Trees.text(tree.file),
                tree.LBRACE() == null ? null : block(tree, tree.exportProperty(), this::exported),
                Trees.span(tree));
    }

    private ExportProperty exported(BandParser.ExportPropertyContext tree) {
        return tree instanceof BandParser.ExportHeldContext held
                ? new ExportProperty.Held(
                        new HeldBuilder(expressions, asks, report).visit(held.held()), Trees.span(held))
                : asks.visit(tree);
    }

    @Override
    public Statement visitSheet(BandParser.SheetContext tree) {
        return new Sheet(
                Trees.text(tree.file),
                tree.LBRACE() == null ? null : block(tree, tree.sheetProperty(), asks::visit),
                Trees.span(tree));
    }
}
