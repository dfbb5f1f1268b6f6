// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

import bandwright.dsl.check.LimitTable;
import bandwright.dsl.material.Elements;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.parse.Expected;
import bandwright.dsl.parse.TextWord;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.resolve.expression.Functions;
import bandwright.dsl.resolve.profile.Form;

import static bandwright.dsl.edit.Proposal.Sort.*;

/** What each place of a statement has to offer. The grammar says that a name fits; the words before it say of what. */
final class Vocabulary {
    private static final Proposal RING = new Proposal("ring", WORD, WordHelp.brief("ring"));

    private final Resolution design;
    private final Expected expected;
    private final Values values;

    Vocabulary(Resolution design, Expected expected) {
        this.design = design;
        this.expected = expected;
        this.values = new Values(design);
    }

    List<Proposal> proposals() {
        List<Proposal> all = new ArrayList<>();
        if (expected.unit()
                && (before(1).is(TextWord.Role.NUMBER) || before(1).text().equals("/"))) {
            Unit.symbols().forEach(unit -> all.add(new Proposal(unit, UNIT, "")));
        }
        Proposal.Sort sort = sort();
        expected.words().forEach(word -> all.add(new Proposal(word, sort, WordHelp.brief(word))));
        if (expected.name() || expected.value()) {
            all.addAll(names());
        }
        return all;
    }

    private Proposal.Sort sort() {
        if (expected.statement()) {
            return STATEMENT;
        }
        boolean inBlock =
                expected.before().stream().anyMatch(before -> before.text().equals("{"));
        return inBlock ? PROPERTY : WORD;
    }

    /** The word so many places back; an empty one before the first. */
    private TextWord before(int back) {
        int at = expected.before().size() - back;
        return at < 0
                ? new TextWord(TextWord.Role.LINE_END, expected.typed(), "")
                : expected.before().get(at);
    }

    private String opener() {
        return expected.before().isEmpty() ? "" : expected.before().get(0).text();
    }

    private List<Proposal> names() {
        String last = before(1).text();
        boolean inBraces =
                expected.before().stream().anyMatch(word -> word.text().equals("{"));
        switch (last) {
            case "limit" -> {
                return LimitTable.BUILT_IN.all().stream()
                        .map(limit -> new Proposal(limit.key(), NAME, limit.text()))
                        .toList();
            }
            case "forget" -> {
                return made(kind -> true);
            }
            case "title", "=" -> {
                return opener().equals("profile") ? forms() : valuesAndMeasures();
            }
            case "profile" -> {
                return inBraces ? made(kind -> kind == Kind.PROFILE) : List.of();
            }
            case "metal" -> {
                return inBraces ? metals() : List.of();
            }
            case "in" -> {
                return inBraces && opener().equals("cut") ? metals() : List.of();
            }
            case "band", "cut", "stone-row", "prongs", "stone-material", "leaving", "keep" -> {
                return List.of();
            }
            case "on", "from" -> {
                return inBraces || opener().equals("vary") ? values() : made(Kind::isPart);
            }
            case "for", "layout", "of" -> {
                return opener().equals("show") ? showable(last) : made(kind -> kind == Kind.STONE_ROW);
            }
            case "vary", "what-if", "largest", "smallest" -> {
                return made(kind -> kind == Kind.DEFINITION);
            }
            case "show", "view" -> {
                return Stream.concat(showable(last).stream(), valuesAndMeasures().stream())
                        .toList();
            }
            case "parts" -> {
                return with(RING, made(Kind::isPart));
            }
            case "stone" -> {
                return Stream.of(StoneCut.values())
                        .map(cut -> new Proposal(cut.word(), WORD, ""))
                        .toList();
            }
            case "(" -> {
                return inParentheses();
            }
            default -> {
                return after(last, inBraces);
            }
        }
    }

    private List<Proposal> after(String last, boolean inBraces) {
        if (inBraces && before(2).text().equals("stone") && StoneCut.find(last).isPresent()) {
            return stones();
        } else if (inBraces && opener().equals("metal") && !expected.value()) {
            return Elements.all().stream()
                    .map(element -> new Proposal(element.name(), WORD, element.symbol()))
                    .toList();
        } else if (last.equals(",") && opener().equals("cut") && !inBraces) {
            return made(Kind::isPart);
        } else if (last.equals(",") && opener().equals("profile")) {
            return formSizes();
        } else if (last.equals(",") && List.of("vary", "what-if").contains(opener()) && !inBraces) {
            return made(kind -> kind == Kind.DEFINITION);
        }
        return valuesAndMeasures();
    }

    private List<Proposal> inParentheses() {
        String call = before(2).text();
        if (opener().equals("profile") && Form.find(call).isPresent()) {
            return formSizes();
        } else if (design.measureWords().contains(call)) {
            return with(RING, made(kind -> kind.isPart() || kind == Kind.STONE_ROW));
        }
        return valuesAndMeasures();
    }

    private List<Proposal> formSizes() {
        return expected.before().stream()
                .flatMap(word -> Form.find(word.text()).stream())
                .findFirst()
                .map(form -> form.sizes().stream()
                        .filter(size -> expected.before().stream()
                                .noneMatch(word -> word.text().equals(size)))
                        .map(size -> new Proposal(size + ": ", PROPERTY, ""))
                        .toList())
                .orElse(List.of());
    }

    private List<Proposal> showable(String last) {
        if (last.equals("layout") || before(2).text().equals("layout")) {
            return made(kind -> kind == Kind.STONE_ROW);
        }
        return with(RING, made(Kind::isPart));
    }

    private static List<Proposal> with(Proposal one, List<Proposal> others) {
        return Stream.concat(Stream.of(one), others.stream()).toList();
    }

    private List<Proposal> valuesAndMeasures() {
        List<Proposal> all = new ArrayList<>(values());
        design.measureWords().forEach(word -> all.add(new Proposal(word + "(", MEASURE, WordHelp.brief(word))));
        Functions.WORDS.stream()
                .filter(word -> !design.measureWords().contains(word))
                .forEach(word -> all.add(new Proposal(word + "(", FUNCTION, WordHelp.brief(word))));
        return all;
    }

    private List<Proposal> values() {
        List<Proposal> all = new ArrayList<>(
                made(kind -> kind == Kind.DEFINITION || kind == Kind.METAL || kind == Kind.STONE_MATERIAL));
        if (!expected.statement()) {
            Arrays.stream(SizeSystem.values())
                    .forEach(system -> all.add(new Proposal(system.word(), SYSTEM, system.fullName())));
        }
        return all;
    }

    private List<Proposal> metals() {
        List<Proposal> all = new ArrayList<>(made(kind -> kind == Kind.METAL || kind == Kind.DEFINITION));
        MetalCatalogue.all().forEach(metal -> all.add(new Proposal(metal.name(), METAL, metal.title())));
        return all;
    }

    private List<Proposal> stones() {
        List<Proposal> all = new ArrayList<>(made(kind -> kind == Kind.STONE_MATERIAL));
        StoneCatalogue.all().forEach(stone -> all.add(new Proposal(stone.name(), STONE, stone.title())));
        return all;
    }

    private static List<Proposal> forms() {
        return Stream.of(Form.values())
                .map(form -> new Proposal(form.word() + "(", FORM, String.join(", ", form.sizes())))
                .toList();
    }

    private List<Proposal> made(Predicate<Kind> wanted) {
        return design.definitions().names().stream()
                .filter(name -> wanted.test(design.definitions().kind(name).orElseThrow()))
                .map(name -> new Proposal(name, NAME, values.brief(name)))
                .toList();
    }
}
