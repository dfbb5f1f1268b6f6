// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.Listener;
import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.notebook.Output;

/** What a cell shows while it runs, as it stands in the notebook afterwards. */
final class OutputsOfCell {
    private final List<Output> outputs = new ArrayList<>();
    /** Where in the list something stands that can be changed. */
    private final Map<String, Integer> byId = new LinkedHashMap<>();

    /** Gathers; questions to the user have no answer. May be used by any thread. */
    CellConsole console(Listener working) {
        return new CellConsole() {
            @Override
            public void working(int done, int total) {
                working.worked(done, total);
            }

            @Override
            public void write(Output.Channel channel, String text) {
                add(channel, text);
            }

            @Override
            public void show(Output.Display display) {
                add(display);
            }

            @Override
            public void show(String displayId, Output.Display display) {
                byId.put(displayId, add(display));
            }

            @Override
            public void update(String displayId, Output.Display display) {
                put(displayId, display);
            }

            @Override
            public void clear(boolean wait) {
                forgetAll();
            }
        };
    }

    /** Text on one channel grows together. */
    private synchronized void add(Output.Channel channel, String text) {
        int last = outputs.size() - 1;
        if (text.isEmpty()) {
            return;
        } else if (last >= 0 && outputs.get(last) instanceof Output.Stream stream && stream.channel() == channel) {
            outputs.set(last, new Output.Stream(channel, stream.text() + text));
        } else {
            outputs.add(new Output.Stream(channel, text));
        }
    }

    private synchronized int add(Output.Display display) {
        outputs.add(display);
        return outputs.size() - 1;
    }

    private synchronized void put(String displayId, Output.Display display) {
        Integer at = byId.get(displayId);
        if (at != null) {
            outputs.set(at, display);
        }
    }

    private synchronized void forgetAll() {
        outputs.clear();
        byId.clear();
    }

    synchronized List<Output> all() {
        return List.copyOf(outputs);
    }
}
