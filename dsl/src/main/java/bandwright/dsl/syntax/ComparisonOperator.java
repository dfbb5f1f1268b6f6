// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

/** How two values are compared. */
public enum ComparisonOperator {
    EQUAL("="),
    UNEQUAL("<>"),
    LESS("<"),
    AT_MOST("<="),
    MORE(">"),
    AT_LEAST(">=");

    private final String symbol;

    ComparisonOperator(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }
}
