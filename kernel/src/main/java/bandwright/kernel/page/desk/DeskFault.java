// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

/** What a person asked cannot be done; the message is a sentence for them. */
final class DeskFault extends Exception {
    private static final long serialVersionUID = 1L;

    DeskFault(String sentence) {
        super(sentence);
    }

    String sentence() {
        return String.valueOf(getMessage());
    }
}
