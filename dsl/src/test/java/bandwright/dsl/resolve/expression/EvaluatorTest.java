// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.model.Fault;
import bandwright.dsl.parse.RingParser;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class EvaluatorTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "40 mm + 2 mm | 42 mm",
                "5mm * 2 mm | 10 mm^2",
                "(5 mm)^2 | 25 mm^2",
                "(25 mm^2)^0.5 | 5 mm",
                "sqrt(25 mm^2) | 5 mm",
                "2^3^2 | 512",
                "- 2^2 | -4",
                "1/4 mm + 7 1/2 mm | 7.75 mm",
                "4.6 mm * 110 % | 5.06 mm",
                "10 % | 0.1",
                "1 ct + 1 pt | 1.01 ct",
                "1 ozt in g | 31.103 g",
                "3 g * 41 EUR/g | 123 EUR",
                "US 7 + 1/4 | US 7 1/4",
                "1/4 + US 7 | US 7 1/4",
                "US 7 - 1/4 | US 6 3/4",
                "UK N 1/2 + 1 | UK O 1/2",
                "US 8 - US 7 1/4 | 0.75",
                "ISO 54 in CH | CH 14",
                "diameter(DE 17.25) | 17.25 mm",
                "circumference(CH 14) | 54 mm",
                "US 7 > ISO 54 | true",
                "max(US 7, ISO 60, UK A) | ISO 60",
                "min(4 mm, 1 cm, 3 mm) | 3 mm",
                "abs(2 mm - 5 mm) | 3 mm",
                "round(1.15, 0.1) | 1.2",
                "round(-2.5) | -3",
                "round(2.5) | 3",
                "round(4.44 mm, 0.25 mm) | 4.5 mm",
                "round(US 7.1) | US 7",
                "sin(30 deg) = 0.5 | true",
                "tan(45 deg) | 1",
                "0.7 mm <= 1 mm <= 2 mm | true",
                "0.7 mm <= 3 mm <= 2 mm | false",
                "0.1 mm + 0.2 mm = 0.3 mm | true",
                "0.1 mm + 0.2 mm <= 0.3 mm | true",
                "1 mm = 1.02 mm within 0.02 mm | true",
                "1 mm <> 1.03 mm within 0.02 mm | true",
                "1 mm = 1.000001 mm | false",
                "(2 mm between 1 mm and 2 mm) | true",
                "not 1 > 2 and 2 > 1 | true",
                "false and nothing > 2 | false",
                "true or nothing | true",
                "if 1 > 2 then nothing else 3 g | 3 g",
                "\"a\" = \"a\" | true",
                "known * 2 | 8 mm",
                "1 mm / 3 mm | 0.333",
                "fineness(silver-925) | 925",
                "density(diamond) in g/cm^3 | 3.52 g/cm^3",
                "measured-thing(ring) | measured-thing"
            })
    void expressions_are_worth(String text, String shown) {
        assertThat(evaluate(text).text()).isEqualTo(shown);
    }

    @Test
    void both_sides_of_an_operation_are_told() {
        assertThatThrownBy(() -> evaluate("(1 mm + 1 g) * sin(30)"))
                .isInstanceOfSatisfying(
                        Fault.class,
                        fault -> assertThat(fault.diagnostics())
                                .extracting(Diagnostic::code)
                                .containsExactly("unit-mismatch", "angle-wanted"));
    }

    private static Value evaluate(String text) {
        SourceText source = new SourceText("cell 1", "x = " + text);
        Definition definition =
                (Definition) RingParser.parse(source).cell().statements().get(0);
        return new Evaluator(new Known(), source).evaluate(definition.value());
    }

    /** Knows one length, one metal and one stone. */
    private record Known() implements Scope {
        @Override
        public Value value(Name name, SourceText source) {
            Map<String, Value> known = Map.of(
                    "known",
                    new Value.Amount(Quantity.millimetres(4)),
                    "silver-925",
                    new Value.MetalValue(MetalCatalogue.find("silver-925").orElseThrow()),
                    "diamond",
                    new Value.StoneValue(StoneCatalogue.find("diamond").orElseThrow()));
            Value value = known.get(name.text());
            if (value == null) {
                throw new AssertionError("nobody should ask for " + name);
            }
            return value;
        }

        @Override
        public Optional<Place> definedAt(String name) {
            return Optional.empty();
        }

        @Override
        public boolean isMeasured(String name) {
            return name.equals(Name.RING);
        }

        @Override
        public Value measure(Expression.Call call, SourceText source) {
            return new Value.Words(call.function().text());
        }
    }
}
