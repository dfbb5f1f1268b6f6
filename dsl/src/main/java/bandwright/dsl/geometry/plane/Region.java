// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.List;
import java.util.stream.Stream;

/**
 * A part of the plane: pieces that do not touch, each an outer outline, counter-clockwise, less its holes, clockwise.
 */
public record Region(List<Piece> pieces) {
    public static final Region EMPTY = new Region(List.of());

    public Region {
        pieces = List.copyOf(pieces);
    }

    public record Piece(Outline outer, List<Outline> holes) {
        public Piece {
            holes = List.copyOf(holes);
        }

        /** The outer outline, then the holes. */
        public List<Outline> outlines() {
            return Stream.concat(Stream.of(outer), holes.stream()).toList();
        }

        public Moments moments() {
            return holes.stream().map(Outline::moments).reduce(outer.moments(), Moments::plus);
        }
    }

    public static Region of(Outline outline) {
        return new Region(List.of(new Piece(outline.counterClockwise(), List.of())));
    }

    public Region translated(double dx, double dy) {
        return new Region(pieces.stream()
                .map(piece -> new Piece(
                        piece.outer.translated(dx, dy),
                        piece.holes.stream()
                                .map(hole -> hole.translated(dx, dy))
                                .toList()))
                .toList());
    }

    public boolean isEmpty() {
        return pieces.isEmpty();
    }

    public Moments moments() {
        return pieces.stream().map(Piece::moments).reduce(Moments.NONE, Moments::plus);
    }

    public Bounds bounds() {
        return pieces.stream().map(piece -> piece.outer().bounds()).reduce(Bounds.NONE, Bounds::with);
    }
}
