// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.parse.antlr.BandParser;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Because;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Property;

/** What all builders need: spans, names, texts, blocks. */
final class Trees {
    private Trees() {}

    static Span span(ParserRuleContext tree) {
        Token start = tree.getStart();
        Token stop = tree.getStop() == null ? start : tree.getStop();
        return Report.span(start).to(Report.span(stop));
    }

    static Name name(ParserRuleContext name) {
        return new Name(name.getText(), span(name));
    }

    static <T, R> List<R> list(List<T> trees, Function<? super T, ? extends R> build) {
        List<R> built = new ArrayList<>();
        trees.forEach(tree -> built.add(build.apply(tree)));
        return built;
    }

    static List<Name> names(List<? extends ParserRuleContext> names) {
        return list(names, Trees::name);
    }

    static @Nullable Because because(BandParser.@Nullable BecauseContext because) {
        return because == null ? null : new Because(text(because.reason), span(because));
    }

    /** A text without its quotes. */
    static String text(Token string) {
        String quoted = string.getText();
        return quoted.substring(1, quoted.length() - 1);
    }

    /** The property word a token is written as. */
    static Property.Word word(Token token) {
        return Property.Word.valueOf(token.getText().toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** The properties of a block; the second of a kind is an error that shows the first. */
    static <P extends Property> Block<P> block(ParserRuleContext statement, List<P> properties, Report report) {
        Map<String, P> first = new HashMap<>();
        for (P property : properties) {
            P earlier = first.putIfAbsent(property.word(), property);
            if (earlier != null) {
                report.add(Diagnostic.error("property-twice", report.source().place(property.span()))
                        .with(property.word())
                        .label(report.source().place(earlier.span()), "already said here"));
            }
        }
        return new Block<>(properties, span(statement));
    }
}
