// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

/** Why a catalogue cannot be begun, gone on with, or finished: one sentence. */
public final class CatalogueFault extends Exception {
    private static final long serialVersionUID = 1L;

    public CatalogueFault(String sentence) {
        super(sentence);
    }

    /** @param cause goes into the sentence where it says more than it */
    CatalogueFault(String sentence, Exception cause) {
        super(sentence, cause);
    }
}
