// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;

import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.parse.antlr.BandParserBaseVisitor;
import bandwright.dsl.syntax.ProfileShape;

/** Cross-sections. */
final class ProfileBuilder extends BandParserBaseVisitor<ProfileShape> {
    private final ExpressionBuilder expressions;

    ProfileBuilder(ExpressionBuilder expressions) {
        this.expressions = expressions;
    }

    @Override
    public ProfileShape visitForm(BandParser.FormContext tree) {
        return new ProfileShape.Form(Trees.name(tree.form), expressions.arguments(tree.argument()), Trees.span(tree));
    }

    @Override
    public ProfileShape visitOutline(BandParser.OutlineContext tree) {
        List<ProfileShape.Segment> segments = Trees.list(tree.segment(), this::segment);
        return new ProfileShape.Outline(point(tree.start), segments, Trees.span(tree));
    }

    private ProfileShape.Segment segment(BandParser.SegmentContext tree) {
        if (tree instanceof BandParser.LineContext line) {
            return new ProfileShape.Line(point(line.to), Trees.span(line));
        }
        BandParser.ArcContext arc = (BandParser.ArcContext) tree;
        return new ProfileShape.Arc(point(arc.through), point(arc.to), Trees.span(arc));
    }

    private ProfileShape.Point point(BandParser.PointContext tree) {
        return new ProfileShape.Point(expressions.visit(tree.across), expressions.visit(tree.out), Trees.span(tree));
    }
}
