// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.protocol;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Remembers signatures, so that a message that was overheard cannot be sent again. Serves any number of threads. */
final class Replays {
    /** As many as a long day of work sends; the oldest are forgotten beyond. */
    private static final int REMEMBERED = 65_536;

    private final Map<String, Boolean> seen = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Boolean> eldest) {
            return size() > REMEMBERED;
        }
    };

    synchronized boolean isFirst(byte[] signature) {
        return seen.putIfAbsent(new String(signature, StandardCharsets.ISO_8859_1), true) == null;
    }
}
