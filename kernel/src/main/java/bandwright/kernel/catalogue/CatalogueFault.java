// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

/** Why a catalogue cannot be begun, gone on with, or finished: one sentence. */
public final class CatalogueFault extends Exception {
    private static final long serialVersionUID = 1L;

    public CatalogueFault(String sentence) {
        super(sentence);
    }

    /** @param cause what lies behind it, for whoever looks into the program */
    CatalogueFault(String sentence, Exception cause) {
        super(sentence, cause);
    }
}
