// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.parse;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.antlr.v4.runtime.Token;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.Span;

import static bandwright.dsl.parse.antlr.BandLexer.*;

/**
 * What people write out of habit, from the bench or from other notations, and what they would write here: a karat for a metal, a
 * colon for an equals sign, two slashes for a comment.
 */
final class Habits {
    private static final String ROW = "stone-row name on part";
    private static final String GROOVE = "cut name from part";

    /** Where properties belong that somebody has written outside; those that read as a definition are not among them. */
    private static final Map<String, String> BLOCKS = Map.of(
            "stone", ROW,
            "spacing", ROW,
            "around", ROW,
            "finger", "band name",
            "keep", GROOVE,
            "let-in", GROOVE,
            "joined", GROOVE,
            "channel", "cut name for row from part");

    /** An example of a name, for statements that were written without one, by their first word and the next. */
    private static final Map<List<Integer>, String> NAMES = Map.of(
            List.of(PRONGS, FOR), "pins",
            List.of(CUT, FOR), "seats",
            List.of(CUT, FROM), "groove",
            List.of(STONE_ROW, ON), "lights",
            List.of(BAND, LBRACE), "shank");

    /** What some call the numbers that are the inner circumference in millimetres. */
    private static final String EUROPEAN = "EU";

    private static final Set<String> SIZES = Set.of("size", "finger", "ring-size", "finger-size");

    private final List<Token> words;
    private final Expectation expectation;
    private final Report report;
    private final int index;

    Habits(List<Token> words, Expectation expectation, Report report) {
        this.words = words;
        this.expectation = expectation;
        this.report = report;
        this.index = expectation.index();
    }

    /** What is said about the fault, if it is one of these. */
    Optional<Diagnostic.Builder> said() {
        if (type(-1) == METAL && type(0) == NUMBER) {
            return Optional.of(metalByNumber());
        } else if (index == 0 && type(0) == SLASH && (type(1) == SLASH || type(1) == STAR)) {
            return Optional.of(fault("foreign-comment", index, index + 1)
                    .suggest(report.source().place(span(index, index + 1)), "#"));
        } else if (index == 1 && Words.isName(type(-1)) && type(0) == COLON) {
            return Optional.of(colonForEquals());
        } else if (index == 1 && type(-1) == NAME && Words.isName(type(0)) && type(1) == EQ) {
            return Optional.of(wordBeforeDefinition());
        } else if (expectation.kinds().contains(FROM) && isPartOrRangeWithoutFrom()) {
            return Optional.of(fault("missing-from", index, index)
                    .with(text(index - 1))
                    .suggest(report.after(words.get(index - 1)), " from"));
        } else if (index == 2 && words.get(0).getType() == SHOW && type(0) == OF && index + 1 < words.size()) {
            return Optional.of(fault("show-of-whole", index, index + 1)
                    .with(text(1))
                    .suggest(report.source().place(new Span(end(1), end(index + 1))), ""));
        } else if (index == 1 && words.get(0).getType() == EXPORT && isPart(type(0))) {
            // The point before its ending is no sign of the language; one error is enough.
            report.forgive(span(index, words.size() - 1));
            return Optional.of(fault("export-without-quotes", index, words.size() - 1)
                    .suggest(report.source().place(span(index, words.size() - 1)), "\"" + file() + "\""));
        } else if (lacksColon()) {
            return Optional.of(fault("missing-colon", index, index)
                    .with(text(index - 1))
                    .suggest(report.after(words.get(index - 1)), ":"));
        } else if (type(-1) == NAME
                && text(index - 1).matches("[A-Z]")
                && text(index).matches("\\d+/\\d+")) {
            Diagnostic.Builder fault =
                    fault("size-without-system", index - 1, index).with(text(index - 1));
            return Optional.of(fault.suggest(
                    report.source().place(span(index - 1, index)), "UK " + text(index - 1) + " " + text(index)));
        } else if (isStoneWithout() && StoneCut.find(text(index - 1)).isPresent()) {
            return Optional.of(fault("stone-without-material", index - 1, index - 1)
                    .with(text(index - 1))
                    .suggest(report.source().place(span(index - 1, index - 1)), text(index - 1) + " diamond"));
        } else if (isStoneWithout()) {
            return Optional.of(fault("stone-without-cut", index - 1, index - 1)
                    .suggest(report.source().place(span(index - 1, index - 1)), "round " + text(index - 1)));
        } else if (index == 1
                && words.get(0).getType() == RING
                && type(0) == NAME
                && (type(1) == LBRACE || type(1) == Token.EOF)) {
            Diagnostic.Builder fault = fault("ring-for-band", 0, 0);
            return Optional.of(
                    type(1) == LBRACE
                            ? fault.suggest(report.source().place(span(0, 0)), "band")
                            : fault.suggestLine(
                                    "band " + text(1) + " { finger ISO 57  profile dome  metal silver-925 }"));
        } else if (index == 1 && NAMES.containsKey(List.of(type(-1), type(0)))) {
            return Optional.of(fault("statement-without-name", 0, index)
                    .with(text(0))
                    .suggest(report.after(words.get(0)), " " + NAMES.get(List.of(type(-1), type(0)))));
        } else if (index == 1 && BLOCKS.containsKey(text(0)) && !isValue()) {
            return Optional.of(fault("property-outside", 0, 0).with(text(0), BLOCKS.get(text(0)) + " { … }"));
        } else if (isMetalInWords()) {
            return Optional.of(metalInWords());
        } else if (type(-1) == NAME && text(index - 1).equals(EUROPEAN) && type(0) == NUMBER) {
            return Optional.of(fault("size-european", index - 1, index)
                    .suggest(report.source().place(span(index - 1, index)), "ISO " + text(index)));
        } else if (index == 1 && SIZES.contains(text(0)) && (type(0) == SYSTEM || text(1).equals(EUROPEAN))) {
            String system = type(0) == SYSTEM ? text(1) : "ISO";
            return Optional.of(fault("size-outside", 0, index)
                    .suggest(report.source().place(span(0, index)), "finger-size = " + system));
        } else if (type(0) == SIZE && expectation.properties().contains(FINGER)) {
            return Optional.of(fault("unknown-property", index, index)
                    .with(text(index))
                    .suggest(report.source().place(span(index, index)), "finger"));
        } else if (index == 2
                && words.get(0).getType() == SHOW
                && (type(-1) == SECTION || type(-1) == LAYOUT || type(-1) == VIEWS)
                && Words.isName(type(0))) {
            return Optional.of(missingOf());
        } else if (index == 3 && words.get(0).getType() == SHOW && type(-2) == SECTION && type(0) == AT) {
            return Optional.of(missingOf());
        } else if (index == 1 && type(-1) == NAME && type(0) == OF && isPart(type(1)) && words.size() == 3) {
            return Optional.of(fault("measure-without-brackets", 0, 2)
                    .with(text(0))
                    .suggest(report.source().place(span(0, 2)), text(0) + "(" + text(2) + ")"));
        } else if (isMeasureWithoutBrackets()) {
            return Optional.of(fault("measure-without-brackets", index - 1, index)
                    .with(text(index - 1))
                    .suggest(report.source().place(span(index - 1, index)), text(index - 1) + "(" + text(index) + ")"));
        }
        return Optional.empty();
    }

    /** {@code proffile dome = …} is a slip in the first word; elsewhere it is one word too many. */
    private Diagnostic.Builder wordBeforeDefinition() {
        List<String> near = NearNames.nearest(text(0).toLowerCase(Locale.ROOT), Words.openers());
        return near.isEmpty()
                ? fault("word-before-definition", 0, 0)
                        .with(text(0))
                        .suggest(report.source().place(new Span(start(0), start(1))), "")
                : fault("unknown-statement", 0, 0).with(text(0)).suggest(report.place(words.get(0)), near.get(0));
    }

    /** {@code cut groove shank …}, {@code vary width 3 mm to 5 mm}. */
    private boolean isPartOrRangeWithoutFrom() {
        int first = words.get(0).getType();
        return index == 2 && (first == CUT ? Words.isName(type(0)) : first == VARY && isValue());
    }

    /** {@code export stl}: the file's ending alone gets a name before it. */
    private String file() {
        String said = report.source().text(span(index, words.size() - 1)).replace(" ", "");
        return said.contains(".") ? said : "ring." + said.toLowerCase(Locale.ROOT);
    }

    /** {@code stone round 1.5 mm}: a cut or a material is missing. */
    private boolean isStoneWithout() {
        return type(-2) == STONE && Words.isName(type(-1)) && type(0) == NUMBER;
    }

    /** Whether the fault is a plain value: then the word before it may be the name of a definition. */
    private boolean isValue() {
        return Words.startsValue(type(0)) && !Words.isName(type(0));
    }

    /** {@code 14k}, {@code 585}, {@code 18k-yellow}: the recipes that are sold under it. */
    private Diagnostic.Builder metalByNumber() {
        int last = index;
        // 18 k, 18k gold, 18 ct white gold: all on one line.
        while (last < index + 3
                && last + 1 < words.size()
                && (words.get(last + 1).getType() == NAME || words.get(last + 1).getType() == UNIT)
                && words.get(last + 1).getLine() == words.get(index).getLine()) {
            last++;
        }
        String mark = report.source().text(span(index, last));
        List<String> recipes = MetalMarks.recipes(
                mark.replaceFirst("^(\\d+) +(?=\\p{L})", "$1").replace(' ', '-'));
        Diagnostic.Builder fault = fault("metal-by-number", index, last).with(mark);
        return recipes.isEmpty() ? fault : fault.expected(MetalMarks.listed(recipes));
    }

    /** {@code platinum 950}, {@code white gold 585}: a metal as people say it, in the words of its name. */
    private boolean isMetalInWords() {
        return index > 0
                && type(-1) == NAME
                && (type(0) == NUMBER || type(0) == NAME)
                && !inWords(end()).isEmpty();
    }

    private Diagnostic.Builder metalInWords() {
        List<String> recipes = inWords(end());
        Diagnostic.Builder fault =
                fault("metal-by-number", index - 1, end()).with(report.source().text(span(index - 1, end())));
        return recipes.size() == 1
                ? fault.suggest(report.source().place(span(index - 1, end())), recipes.get(0))
                : fault.expected(MetalMarks.listed(recipes));
    }

    /** The last word of such a metal: its number, if there is one in the next few words. */
    private int end() {
        int end = index;
        while (end + 1 < words.size() && words.get(end).getType() == NAME && end < index + 2) {
            end++;
        }
        return end;
    }

    private List<String> inWords(int last) {
        if (words.get(last).getType() != NUMBER) {
            return List.of();
        }
        List<String> said = words.subList(index - 1, last + 1).stream()
                .map(word -> word.getText().toLowerCase(Locale.ROOT))
                .toList();
        return MetalCatalogue.names().stream()
                .filter(name -> List.of(name.split("-", -1)).containsAll(said))
                .toList();
    }

    /** {@code show section ring at 90 deg}, {@code show layout lights}. */
    private Diagnostic.Builder missingOf() {
        return fault("missing-of", 1, 2).with(text(1), text(2)).suggest(report.after(words.get(1)), " of");
    }

    /** {@code show weights in platinum}: one metal is asked about by a change of the design. */
    static Diagnostic.Builder weightsInOne(Place place) {
        String word = place.text();
        List<String> known = MetalCatalogue.names().stream()
                .filter(name ->
                        name.equals(word) || List.of(name.split("-", -1)).contains(word))
                .toList();
        Diagnostic.Builder fault =
                Diagnostic.error("weights-in-one", place).with(word).suggest(place, "all metals");
        return known.isEmpty()
                ? fault
                : fault.expected("all metals; of " + word + " there are " + MetalMarks.listed(known));
    }

    private Diagnostic.Builder colonForEquals() {
        int last = type(1) == EQ ? index + 1 : index;
        Span sign = span(index, last);
        return fault("colon-for-equals", index, last)
                .with(text(index - 1))
                .suggest(
                        report.source().place(new Span(Report.span(words.get(0)).end(), sign.end())), " =");
    }

    private boolean lacksColon() {
        return expectation.kinds().contains(COLON)
                && Words.isName(type(-1))
                && (type(-2) == LPAREN || type(-2) == COMMA)
                && (type(0) == NUMBER || type(0) == NAME);
    }

    private static boolean isPart(int type) {
        return Words.isName(type) || type == RING;
    }

    /** {@code weight shank}, alone or after {@code show}. */
    private boolean isMeasureWithoutBrackets() {
        boolean opener =
                index == 1 && !NearNames.nearest(text(0), Words.openers()).isEmpty();
        boolean alone = (index == 1 && !opener) || (index == 2 && words.get(0).getType() == SHOW);
        boolean required = index == 2 && words.get(0).getType() == REQUIRE;
        return type(-1) == NAME
                && OtherWords.statement(text(index - 1)).isEmpty()
                && isPart(type(0))
                && (required || (alone && index + 1 == words.size()));
    }

    private Diagnostic.Builder fault(String code, int first, int last) {
        return Diagnostic.error(code, report.source().place(span(first, last)));
    }

    private Span span(int first, int last) {
        return Report.span(words.get(first)).to(Report.span(words.get(last)));
    }

    private int end(int at) {
        return Report.span(words.get(at)).end();
    }

    private int start(int at) {
        return Report.span(words.get(at)).start();
    }

    private String text(int at) {
        return words.get(at).getText();
    }

    private int type(int offset) {
        int at = index + offset;
        return at < 0 || at >= words.size() ? Token.EOF : words.get(at).getType();
    }
}
