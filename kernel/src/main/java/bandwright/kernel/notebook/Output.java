// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a code cell shows below itself. */
public sealed interface Output {
    /**
     * One thing in several forms.
     *
     * @param data MIME types and texts, binary ones in base64; the front end picks the best it can show
     */
    record Display(Map<String, String> data) implements Output {
        public Display {
            data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
        }
    }

    /** Text beside the answers, such as warnings. */
    record Stream(Channel channel, String text) implements Output {}

    /** The two channels of text. */
    enum Channel {
        STDOUT,
        STDERR
    }

    /**
     * Why the cell did not run.
     *
     * @param name the code of the first error
     * @param message its sentence
     * @param traceback all errors in full, as lines
     */
    record Failure(String name, String message, List<String> traceback) implements Output {
        public Failure {
            traceback = List.copyOf(traceback);
        }
    }
}
