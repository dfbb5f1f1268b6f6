// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.PlainRenderer;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.display.Decimals;
import bandwright.kernel.mark.Key;
import bandwright.kernel.mark.MarkTable;
import bandwright.kernel.mark.Marked;
import bandwright.kernel.mark.MarkedJson;
import bandwright.kernel.mark.Marking;
import bandwright.kernel.mark.MarkingProcess;
import bandwright.kernel.mark.Works;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.page.export.MarksPage;

/** Marks all works of a folder by a key, each in a process of its own. */
record MarkVerb(
        Terminal terminal,
        Path folder,
        Path keyFile,
        @Nullable Path out,
        int seconds,
        double points) {
    /** The hidden verb that marks one work and says the result. */
    static final String ONE = "mark-one";

    int run() throws UsageFault {
        Key key = key();
        Path into = out == null ? folder : out;
        Path csv = target(into, "marks.csv");
        Path page = target(into, "marks.html");
        List<Works.Work> works = works();
        Map<String, Marked> marked = new LinkedHashMap<>();
        for (Works.Work work : works) {
            Marked one = mark(work);
            marked.put(unique(work.name(), marked), one);
            terminal.say(marked.size() + " of " + works.size() + "  " + work.name() + "  "
                    + (one.wasMarked() ? number(one.points(key)) + " of " + number(key.points()) : one.failure()));
        }
        Map<Path, String> texts = new LinkedHashMap<>();
        texts.put(csv, MarkTable.of(key, marked).csv());
        texts.put(page, MarksPage.write("Marks by " + keyFile.getFileName(), key, marked));
        RunFiles.write(texts);
        terminal.say("wrote  " + csv + "\nwrote  " + page);
        return marked.values().stream().allMatch(Marked::wasMarked) ? ExitCode.GOOD : ExitCode.ERROR;
    }

    /** Marks one work in this process, and says the result as JSON. */
    static int one(Terminal terminal, Path work, Path keyFile) throws UsageFault {
        terminal.say(MarkedJson.write(Marking.of(work, text(keyFile))));
        return ExitCode.GOOD;
    }

    private Key key() throws UsageFault {
        if (seconds < 1 || seconds > 3600) {
            throw new UsageFault("--seconds wants a number from 1 to 3600, not " + seconds);
        }
        if (!(points >= 0 && points <= 1000)) {
            throw new UsageFault("--points wants a number from 0 to 1000, not " + points);
        }
        Key key = Key.read(text(keyFile), points);
        if (key.diagnostics().stream().anyMatch(Diagnostic::isError)) {
            terminal.complain(PlainRenderer.render(key.diagnostics()).stripTrailing());
            throw new UsageFault(keyFile + " is no key: see above");
        }
        if (key.lines().isEmpty()) {
            throw new UsageFault(keyFile + " holds no require line to mark by");
        }
        return key;
    }

    private static SourceText text(Path keyFile) throws UsageFault {
        Notebook notebook = Inputs.read(keyFile);
        if (!notebook.isOneText()) {
            throw new UsageFault("a key is a .ring text, and " + keyFile + " is a notebook");
        }
        return new SourceText(
                String.valueOf(keyFile.getFileName()), notebook.cells().get(0).source());
    }

    private List<Works.Work> works() throws UsageFault {
        if (!Files.isDirectory(folder)) {
            throw new UsageFault("there is no folder " + folder);
        }
        try {
            List<Works.Work> works = Works.in(folder, keyFile);
            if (works.isEmpty()) {
                throw new UsageFault(folder + " holds no .ipynb notebook and no .ring text to mark");
            }
            return works;
        } catch (IOException failure) {
            throw new UsageFault(folder + " cannot be read");
        }
    }

    /** A file of that name may have been handed in: a link would lead what we write out of the folder. */
    private static Path target(Path folder, String name) throws UsageFault {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new UsageFault(folder + " is a file, not a folder");
        }
        Path target = folder.resolve(name);
        if (Files.isSymbolicLink(target) || Files.isDirectory(target)) {
            throw new UsageFault(target + " is not a plain file, and is left alone; --out names another folder");
        }
        return target;
    }

    private Marked mark(Works.Work work) throws UsageFault {
        if (work.isLink()) {
            return Marked.not("not read: it is a link, or no plain file");
        }
        List<String> program = List.of("-cp", System.getProperty("java.class.path"), Main.class.getName(), ONE);
        try {
            return new MarkingProcess(program, seconds).mark(work.file(), keyFile);
        } catch (InterruptedException interrupt) {
            Thread.currentThread().interrupt();
            throw new UsageFault("stopped; nothing was written");
        }
    }

    private static String unique(String name, Map<String, Marked> taken) {
        String free = name;
        for (int again = 2; taken.containsKey(free); again++) {
            free = name + " (" + again + ")";
        }
        return free;
    }

    private static String number(double points) {
        return Decimals.plain(points, 3);
    }
}
