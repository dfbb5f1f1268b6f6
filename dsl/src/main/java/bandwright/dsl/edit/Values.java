// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import bandwright.dsl.model.Fault;
import bandwright.dsl.resolve.Kind;
import bandwright.dsl.resolve.Resolution;

/** What a name stands for at present, in a few words. */
record Values(Resolution design) {
    String brief(String name) {
        Kind kind = design.definitions().kind(name).orElseThrow();
        if (kind != Kind.DEFINITION) {
            return kind.words();
        }
        try {
            return design.valueOf(name).text();
        } catch (Fault waiting) {
            return "not worked out yet";
        }
    }
}
