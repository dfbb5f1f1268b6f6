// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.NotebookCell;

/** The cells of a notebook in their order; there is at least one. No id is given twice, also none of a cell that is gone: it may come back. */
final class CellList {
    private final List<NotebookCell> cells;
    private final Set<String> used = new HashSet<>();
    private int fresh;

    CellList(List<NotebookCell> cells) {
        this.cells = new ArrayList<>();
        become(cells);
    }

    List<NotebookCell> all() {
        return List.copyOf(cells);
    }

    void become(List<NotebookCell> others) {
        cells.clear();
        cells.addAll(others);
        others.forEach(cell -> used.add(cell.id()));
    }

    Optional<NotebookCell> find(String id) {
        return cells.stream().filter(cell -> cell.id().equals(id)).findFirst();
    }

    NotebookCell get(String id) throws DeskFault {
        return cells.get(place(id));
    }

    private int place(String id) throws DeskFault {
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new DeskFault("this cell is gone; another page has taken it away");
    }

    void write(String id, CellKind kind, String source) throws DeskFault {
        int at = place(id);
        NotebookCell cell = cells.get(at);
        cells.set(at, new NotebookCell(id, kind, source, cell.tags(), cell.attachments()));
    }

    /**
     * Puts in a new cell.
     *
     * @param after the cell it comes after; the first place of all if absent
     * @return its id
     */
    String insert(CellKind kind, String source, @Nullable String after) throws DeskFault {
        int at = after == null ? 0 : place(after) + 1;
        NotebookCell cell = new NotebookCell(freshId(), kind, source, Set.of(), Map.of());
        cells.add(at, cell);
        return cell.id();
    }

    private String freshId() {
        String id;
        do {
            fresh++;
            id = "new-" + fresh;
        } while (!used.add(id));
        return id;
    }

    void remove(String id) throws DeskFault {
        if (cells.size() == 1) {
            throw new DeskFault("a notebook has at least one cell");
        }
        cells.remove(place(id));
    }

    /** @param by how many places, downwards if positive */
    void move(String id, int by) throws DeskFault {
        int at = place(id);
        int to = Math.max(0, Math.min(cells.size() - 1, at + by));
        cells.add(to, cells.remove(at));
    }
}
