// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve.expression;

import bandwright.dsl.material.Metal;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;

/** What an expression is worth. */
public sealed interface Value {
    /** As the language shows it: {@code 42 mm}, {@code US 7 1/4}, {@code true}. */
    String text();

    /** Its kind in words, with an article: {@code a length}, {@code a finger size}. */
    String kind();

    record Amount(Quantity quantity) implements Value {
        @Override
        public String text() {
            return quantity.toString();
        }

        @Override
        public String kind() {
            return quantity.dimension().words();
        }
    }

    record Size(FingerSize size) implements Value {
        @Override
        public String text() {
            return size.text();
        }

        @Override
        public String kind() {
            return "a finger size";
        }
    }

    record Truth(boolean holds) implements Value {
        @Override
        public String text() {
            return Boolean.toString(holds);
        }

        @Override
        public String kind() {
            return "true or false";
        }
    }

    record Words(String text) implements Value {
        @Override
        public String kind() {
            return "a text";
        }
    }

    record MetalValue(Metal metal) implements Value {
        @Override
        public String text() {
            return metal.name();
        }

        @Override
        public String kind() {
            return "a metal";
        }
    }

    record StoneValue(StoneMaterial material) implements Value {
        @Override
        public String text() {
            return material.name();
        }

        @Override
        public String kind() {
            return "a stone material";
        }
    }

    static Value number(double value) {
        return new Amount(Quantity.number(value));
    }
}
