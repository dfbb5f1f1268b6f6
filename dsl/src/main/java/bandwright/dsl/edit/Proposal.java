// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

/**
 * A word that may come next.
 *
 * @param text what to write
 * @param detail what it is, in a few words: a value, a form's sizes, a metal's title; may be empty
 */
public record Proposal(String text, Sort sort, String detail) {
    /** What a proposed word is; the order is that in which they are offered. */
    public enum Sort {
        NAME,
        PROPERTY,
        STATEMENT,
        FORM,
        METAL,
        STONE,
        MEASURE,
        FUNCTION,
        UNIT,
        SYSTEM,
        WORD
    }
}
