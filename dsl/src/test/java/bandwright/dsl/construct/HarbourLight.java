// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.MetalCatalogue;
import bandwright.dsl.material.StoneCatalogue;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.material.StoneSize;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Finger;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.Section;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/** The reference ring as a model, with the sizes that tests turn. */
record HarbourLight(double iso, double width, double side, double height, double stone, double gap) implements Design {
    private static final Place HERE = new Place(new SourceText("test", " "), new Span(0, 1));

    static final HarbourLight REFERENCE = new HarbourLight(57, 4.6, 1.25, 1.9, 1.5, 0.15);

    @Override
    public Optional<String> title() {
        return Optional.of("Harbour light");
    }

    @Override
    public List<Band> bands() {
        double half = width / 2;
        Point right = new Point(half, side);
        Point left = new Point(-half, side);
        Outline outline = new Outline(List.of(
                new Line(new Point(-half, 0), new Point(half, 0)),
                new Line(new Point(half, 0), right),
                Arc.through(right, new Point(0, height), left),
                new Line(left, new Point(-half, 0))));
        Section section = new Section("dome", HERE, "d-shape", outline, width, height);
        FingerSize size = new FingerSize(SizeSystem.ISO, iso);
        return List.of(
                new Band("shank", HERE, new Finger(size, size), List.of(new Band.Station(section, 0)), metal("shank")));
    }

    @Override
    public List<Groove> grooves() {
        return List.of(new Groove(
                "trough",
                HERE,
                List.of("shank"),
                0,
                1.9,
                Optional.empty(),
                OptionalDouble.of(1),
                bandwright.dsl.model.Arc.FULL,
                false,
                false,
                false,
                Optional.of(new Groove.Keep("stripe", metal("stripe"), 0)),
                Optional.of(new Groove.LetInFrom(true, "collar")),
                Optional.empty(),
                List.of()));
    }

    @Override
    public List<StoneRow> stoneRows() {
        return List.of(new StoneRow(
                "lights",
                HERE,
                "stripe",
                StoneCut.ROUND,
                StoneCatalogue.find("diamond").orElseThrow(),
                StoneSize.of(stone),
                false,
                0,
                bandwright.dsl.model.Arc.FULL,
                new StoneRow.AtLeast(gap),
                0.25,
                List.of(0.0),
                false,
                false,
                0.03,
                OptionalDouble.empty()));
    }

    @Override
    public List<Seats> seats() {
        return List.of(new Seats(
                "seats",
                HERE,
                "lights",
                List.of("stripe", "shank"),
                0.8,
                OptionalDouble.of(0.35),
                0.01,
                0,
                false,
                Optional.empty()));
    }

    @Override
    public List<Prongs> prongs() {
        return List.of(new Prongs(
                "pins",
                HERE,
                "lights",
                "stripe",
                0.55,
                0.28,
                OptionalDouble.of(0.6),
                OptionalDouble.of(0.42),
                OptionalDouble.empty(),
                2,
                OptionalDouble.empty()));
    }

    @Override
    public List<String> parts() {
        return List.of("shank", "collar", "stripe");
    }

    @Override
    public Metal metal(String part) {
        return MetalCatalogue.find(part.equals("stripe") ? "red-gold-585" : "white-gold-585-pd")
                .orElseThrow();
    }
}
