// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The kinds of files there are, by the ending of their names. */
public final class Formats {
    private final Map<String, Format> byEnding = new LinkedHashMap<>();

    public Formats(List<Format> formats) {
        formats.forEach(format -> byEnding.put(format.ending(), format));
    }

    /** The format of a file, by what stands after the last point of its name, in whatever case. */
    public Optional<Format> of(String fileName) {
        int point = fileName.lastIndexOf('.');
        String ending = fileName.substring(point + 1).toLowerCase(Locale.ROOT);
        return point < 0 ? Optional.empty() : Optional.ofNullable(byEnding.get(ending));
    }

    /** All endings, in the order in which they were given. */
    public List<String> endings() {
        return List.copyOf(byEnding.keySet());
    }
}
