// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import bandwright.dsl.check.LimitTable;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.diagnostic.Suggestion;
import bandwright.dsl.geometry.plane.Moments;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Fault;
import bandwright.dsl.parse.ParseResult;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Definition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

class ResolutionTest {
    private static final Path HARBOUR_LIGHT = Path.of("src", "test", "golden", "parse", "harbour-light.ring");

    /** Need several cells, or a text too long to keep as a file. */
    private static final Set<String> TESTED_ELSEWHERE = Set.of("redefined", "chain-too-long");

    @TestFactory
    Stream<DynamicTest> faults_get_the_expected_messages() {
        return GoldenFiles.tests("resolve", "err", input -> PlainRenderer.render(told(input.source())));
    }

    @TestFactory
    Stream<DynamicTest> sound_designs_become_the_expected_models() {
        return GoldenFiles.cases("resolve").stream()
                .filter(input -> told(input.source()).isEmpty())
                .map(input -> DynamicTest.dynamicTest(
                        input.name(),
                        () -> GoldenFiles.check(input.beside("model"), ModelText.of(design(input.source())))));
    }

    @TestFactory
    Stream<DynamicTest> a_suggested_edit_takes_its_fault_away() {
        return GoldenFiles.cases("resolve").stream().flatMap(input -> {
            List<Diagnostic> told = told(input.source());
            return told.stream()
                    .filter(diagnostic -> diagnostic.suggestion() != null
                            && diagnostic.suggestion().place() != null)
                    .map(diagnostic -> DynamicTest.dynamicTest(
                            input.name() + ": " + diagnostic.message(), () -> assertHelps(told, diagnostic)));
        });
    }

    private static void assertHelps(List<Diagnostic> before, Diagnostic diagnostic) {
        Suggestion suggestion = diagnostic.suggestion();
        assertThat(suggestion).isNotNull();
        Place place = suggestion.place();
        assertThat(place).isNotNull();
        SourceText source = place.source();
        String edited = source.text(new Span(0, place.span().start()))
                + suggestion.text()
                + source.text(new Span(place.span().end(), source.length()));
        assertThat(told(new SourceText(source.name(), edited))).as(edited).hasSizeLessThan(before.size());
    }

    @Test
    void every_message_about_meaning_has_a_golden_case() throws IOException {
        Set<String> shown = new TreeSet<>(TESTED_ELSEWHERE);
        for (GoldenFiles.Case input : GoldenFiles.cases("resolve")) {
            told(input.source()).forEach(diagnostic -> shown.add(diagnostic.code()));
        }
        assertThat(shown).isEqualTo(GoldenFiles.codes("resolve"));
    }

    @Test
    void the_whole_example_resolves_without_a_word() throws IOException {
        SourceText source = harbourLight();

        assertThat(told(source)).isEmpty();
        Resolution design = design(source);
        assertThat(design.parts()).containsExactly("shank", "stripe", "collar");
        assertThat(design.parts())
                .extracting(part -> design.metal(part).name())
                .containsExactly("white-gold-585-pd", "red-gold-585", "white-gold-585-pd");
    }

    @Test
    void its_band_has_the_volume_of_the_closed_formula() throws IOException {
        Band band = design(harbourLight()).bands().get(0);
        Moments moments = band.stations().get(0).section().outline().moments();
        double radius = band.finger().innerRadiusMm();

        assertThat(2 * Math.PI * (moments.aboutX() + radius * moments.area()))
                .isCloseTo(pappus(57, 4.6, 1.25, 1.9), within(1e-9))
                .isCloseTo(484.9776, within(1e-4));
    }

    /** A rectangle and a circular segment, each its area times the way of its centroid. */
    private static double pappus(double circumference, double width, double side, double height) {
        double rise = height - side;
        double radius = (width * width / 4 + rise * rise) / (2 * rise);
        double angle = 2 * Math.asin(width / (2 * radius));
        double segment = radius * radius / 2 * (angle - Math.sin(angle));
        double centroid = Math.pow(width, 3) / (12 * segment) - (radius - rise);
        double inner = circumference / (2 * Math.PI);
        return 2 * Math.PI * (width * side * (inner + side / 2) + segment * (inner + side + centroid));
    }

    @Test
    void the_order_of_cells_and_of_questions_does_not_show() throws IOException {
        List<String> statements =
                new ArrayList<>(List.of(Files.readString(HARBOUR_LIGHT).split("\n\n")));
        Definitions forward = cells(statements);
        Collections.reverse(statements);
        Definitions backward = cells(statements);

        Resolution one = new Resolution(forward, new StubMeasurer());
        Resolution other = new Resolution(backward, new StubMeasurer());
        assertThat(other.fingerprint()).isEqualTo(one.fingerprint());
        assertThat(ModelText.of(other)).isEqualTo(ModelText.of(one));
    }

    @Test
    void a_loop_is_told_the_same_whoever_is_asked_first() {
        SourceText source = new SourceText("cell 1", "b = c\nc = a\na = b + 1 mm\nd = a");
        Resolution asked = design(source);
        assertThatThrownBy(() -> asked.valueOf("d")).isInstanceOf(Fault.class);
        assertThatThrownBy(() -> asked.valueOf("c")).isInstanceOf(Fault.class);

        assertThat(asked.problems()).isEqualTo(design(source).problems());
        assertThat(asked.problems()).extracting(Diagnostic::code).containsExactly("definition-loop", "waits");
        assertThat(asked.problems().get(0).message()).contains("a -> b -> c -> a");
    }

    @Test
    void the_weight_of_one_band_may_shape_another_one() {
        Resolution design = design(new SourceText("cell 1", """
                profile small = flat(width: 3 mm, height: 1.5 mm)
                profile large = flat(width: weight(inner) / 1 g * 1 mm, height: 1.5 mm)
                band inner { finger ISO 54 profile small metal silver-925 }
                band outer { finger ISO 54 profile large metal silver-925 }
                """));

        assertThat(design.problems()).isEmpty();
        assertThat(design.bands()).extracting(Band::name).containsExactly("inner", "outer");
    }

    @Test
    void a_chain_longer_than_any_ring_is_an_error_and_no_accident() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 5000; i++) {
            text.append("x").append(i).append(" = x").append(i + 1).append(" + 1\n");
        }
        Resolution design = design(new SourceText("cell 1", text + "x5000 = 1"));

        assertThat(design.problems()).extracting(Diagnostic::code).contains("chain-too-long");
        assertThat(design.valueOf("x4900").text()).isEqualTo("101");
    }

    @Test
    void other_values_take_the_place_of_definitions_and_stay_in_their_range() {
        Resolution design = design(new SourceText("cell 1", "a = 4 mm between 3 mm and 5 mm\nb = a * 2"));

        Resolution wider = design.withValues(Map.of("a", new Value.Amount(Quantity.millimetres(4.5))));
        assertThat(wider.valueOf("b").text()).isEqualTo("9 mm");
        assertThat(design.valueOf("b").text()).isEqualTo("8 mm");
        Resolution tooWide = design.withValues(Map.of("a", new Value.Amount(Quantity.millimetres(6))));
        assertThatThrownBy(() -> tooWide.valueOf("a"))
                .isInstanceOfSatisfying(
                        Fault.class,
                        fault -> assertThat(fault.diagnostics())
                                .extracting(Diagnostic::code)
                                .containsExactly("value-outside-range"));
    }

    @Test
    void a_definition_with_a_range_is_a_handle() {
        Resolution design = design(new SourceText("cell 1", "a = US 7 between US 4 and US 10 step 1/2\nb = 2 mm"));

        assertThat(design.handle("a")).hasValueSatisfying(handle -> {
            assertThat(handle.low().text()).isEqualTo("US 4");
            assertThat(handle.high().text()).isEqualTo("US 10");
            assertThat(handle.step()).map(Value::text).contains("0.5");
        });
        assertThat(design.handle("b")).isEmpty();
    }

    @Test
    void what_is_not_there_yet_is_waiting_and_no_error() {
        List<Diagnostic> told = told(new SourceText("cell 1", "a = breadth + 1 mm\nbredth = 3 mm\nb = a"));

        assertThat(told).allMatch(Resolution::isWaiting).noneMatch(Diagnostic::isError);
        assertThat(told).extracting(Diagnostic::code).containsExactly("not-defined-yet", "waits");
    }

    @Test
    void a_part_depends_on_what_is_cut_from_it() throws IOException {
        Resolution design = design(harbourLight());

        assertThat(design.dependencies("stripe")).contains("seats", "pins", "trough", "shank", "breadth");
        assertThat(design.dependencies("dome")).containsExactly("breadth", "thickness");
        assertThat(design.dependencies("ring")).contains("pins", "finger-size");
    }

    @Test
    void a_fingerprint_follows_what_a_name_depends_on() {
        Resolution before = design(new SourceText("cell 1", "a = 4 mm\nb = a * 2\nc = 1"));
        Resolution after = design(new SourceText("cell 9", "c = 1\nb   = a*2\n\na = 5 mm"));

        assertThat(after.fingerprint("b")).isNotEqualTo(before.fingerprint("b")).hasSize(16);
        assertThat(after.fingerprint("c")).isEqualTo(before.fingerprint("c"));
        assertThat(after.fingerprint()).isNotEqualTo(before.fingerprint());
    }

    @Test
    void other_values_give_another_fingerprint() {
        Resolution design = design(new SourceText("cell 1", "a = 4 mm\nb = a * 2\nc = 1"));
        Resolution wider = design.withValues(Map.of("a", new Value.Amount(Quantity.millimetres(4.00001))));

        assertThat(wider.fingerprint()).isNotEqualTo(design.fingerprint());
        assertThat(wider.fingerprint("b")).isNotEqualTo(design.fingerprint("b"));
        assertThat(wider.fingerprint("c")).isEqualTo(design.fingerprint("c"));
    }

    @Test
    void a_definition_in_a_question_keeps_the_range_of_the_one_it_stands_for() {
        Definitions definitions = cell(new SourceText("cell 1", "a = 4 mm between 3 mm and 5 mm\nb = a * 2"))
                .definitions();
        SourceText question = new SourceText("cell 2", "a = 4.5 mm\n");
        Definition narrow =
                (Definition) RingParser.parse(question).cell().statements().get(0);

        Resolution asked = new Resolution(definitions.changed(question, List.of(narrow)), new StubMeasurer());
        assertThat(asked.valueOf("b").text()).isEqualTo("9 mm");
        SourceText further = new SourceText("cell 3", "a = 9 mm");
        Definition wide =
                (Definition) RingParser.parse(further).cell().statements().get(0);
        assertThat(new Resolution(definitions.changed(further, List.of(wide)), new StubMeasurer()).problems())
                .extracting(Diagnostic::code)
                .containsExactly("value-outside-range", "waits");
    }

    /** Words of sound and unsound texts, changed at random: whatever stands there, it is told and never thrown. */
    @Test
    void no_text_that_parses_makes_resolving_fail() {
        Random random = new Random(7);
        List<String> words = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (GoldenFiles.Case input : GoldenFiles.cases("resolve")) {
            texts.add(input.text());
            words.addAll(List.of(input.text().split("(?<=\\W)|(?=\\W)")));
        }
        words.addAll(List.of("0", "1/3", "900", "100000", "0.00001", "ring", "US", "%", "deg"));
        int resolved = 0;
        for (int i = 0; i < 1500; i++) {
            List<String> text = new ArrayList<>(
                    List.of(texts.get(random.nextInt(texts.size())).split("(?<=\\W)|(?=\\W)")));
            for (int change = 0; change <= random.nextInt(4); change++) {
                text.set(random.nextInt(text.size()), words.get(random.nextInt(words.size())));
            }
            SourceText source = new SourceText("cell 1", String.join("", text));
            Definitions.Change change =
                    Definitions.EMPTY.with("1", source, RingParser.parse(source).cell());
            resolved += change.definitions().names().isEmpty() ? 0 : 1;
            Resolution design = new Resolution(change.definitions(), new StubMeasurer());
            List<Diagnostic> problems = design.problems();
            assertThat(PlainRenderer.render(problems)).as(source.text()).isNotNull();
            for (String part : design.parts()) {
                try {
                    assertThat(design.metal(part)).isNotNull();
                } catch (Fault fault) {
                    assertThat(fault.diagnostics()).as(source.text()).isNotEmpty();
                }
            }
        }
        assertThat(resolved).isGreaterThan(750);
    }

    private static SourceText harbourLight() throws IOException {
        return new SourceText("harbour-light.ring", Files.readString(HARBOUR_LIGHT));
    }

    private static Definitions cells(List<String> texts) {
        Definitions definitions = Definitions.EMPTY;
        for (String text : texts) {
            SourceText source = new SourceText("cell", text);
            definitions = definitions
                    .with("cell " + text, source, RingParser.parse(source).cell())
                    .definitions();
        }
        return definitions;
    }

    private static Resolution design(SourceText source) {
        return new Resolution(cell(source).definitions(), new StubMeasurer(), LimitTable.BUILT_IN);
    }

    private static Definitions.Change cell(SourceText source) {
        ParseResult parsed = RingParser.parse(source);
        assertThat(parsed.diagnostics()).isEmpty();
        return Definitions.EMPTY.with("cell 1", source, parsed.cell());
    }

    private static List<Diagnostic> told(SourceText source) {
        Definitions.Change change = cell(source);
        List<Diagnostic> told = new ArrayList<>(change.diagnostics());
        told.addAll(new Resolution(change.definitions(), new StubMeasurer(), LimitTable.BUILT_IN).problems());
        return told;
    }
}
