// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.Answer;
import bandwright.dsl.Listener;
import bandwright.kernel.cell.CellConsole;
import bandwright.kernel.display.Displays;
import bandwright.kernel.notebook.Output;

/** What a cell shows while it runs, as it stands in the notebook afterwards. */
public final class OutputsOfCell {
    private final List<Shown> shown = new ArrayList<>();
    /** Where in the list something stands that can be changed. */
    private final Map<String, Integer> byId = new LinkedHashMap<>();

    /** Something that was shown, for the notebook and for a page. */
    private record Shown(Output output, Answer answer) {
        static Shown of(Output.Stream stream) {
            return new Shown(stream, new Answer.Words("", stream.text()));
        }

        static Shown of(Output.Display display) {
            return new Shown(display, new Answer.Words("", display.data().getOrDefault("text/plain", "")));
        }
    }

    /** Gathers; questions to the user have no answer. May be used by any thread. */
    public CellConsole console(Listener working) {
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
                add(Shown.of(display));
            }

            @Override
            public void show(Answer answer) {
                add(new Shown(Displays.display(answer), answer));
            }

            @Override
            public void show(String displayId, Output.Display display) {
                byId.put(displayId, add(Shown.of(display)));
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
        int last = shown.size() - 1;
        if (text.isEmpty()) {
            return;
        } else if (last >= 0
                && shown.get(last).output() instanceof Output.Stream stream
                && stream.channel() == channel) {
            shown.set(last, Shown.of(new Output.Stream(channel, stream.text() + text)));
        } else {
            shown.add(Shown.of(new Output.Stream(channel, text)));
        }
    }

    private synchronized int add(Shown one) {
        shown.add(one);
        return shown.size() - 1;
    }

    private synchronized void put(String displayId, Output.Display display) {
        Integer at = byId.get(displayId);
        if (at != null) {
            shown.set(at, Shown.of(display));
        }
    }

    private synchronized void forgetAll() {
        shown.clear();
        byId.clear();
    }

    public synchronized List<Output> outputs() {
        return shown.stream().map(Shown::output).toList();
    }

    public synchronized List<Answer> answers() {
        return shown.stream().map(Shown::answer).toList();
    }
}
