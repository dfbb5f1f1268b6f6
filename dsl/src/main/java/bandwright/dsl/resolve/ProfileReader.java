// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.NearNames;
import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Line;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.OutlineValidity;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.model.Section;
import bandwright.dsl.resolve.profile.Drawing;
import bandwright.dsl.resolve.profile.Form;
import bandwright.dsl.resolve.profile.FormDrawing;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Argument;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Profile;
import bandwright.dsl.syntax.ProfileShape;

/** A cross-section, of a named form or free. */
final class ProfileReader extends Reader {
    /** Nearer than this, in mm, two points are one. */
    private static final double SAME_MM = 1e-9;

    /** An arc whose rise is less than this share of its chord is a line. */
    private static final double STRAIGHT = 1e-9;

    private final Profile profile;

    ProfileReader(Resolution design, Entry entry) {
        super(design, entry);
        this.profile = (Profile) entry.statement();
    }

    Section section() {
        String form = "outline";
        Outline outline;
        if (profile.shape() instanceof ProfileShape.Form named) {
            form = named.form().text();
            outline = formed(named);
        } else {
            outline = free((ProfileShape.Outline) profile.shape());
        }
        Bounds bounds = outline.bounds();
        return new Section(name(), entry.place(), form, outline, bounds.width(), bounds.height());
    }

    private Outline formed(ProfileShape.Form shape) {
        Optional<Form> form = form(shape.form());
        Map<String, Argument> arguments = new LinkedHashMap<>();
        Map<String, Double> sizes = new LinkedHashMap<>();
        Set<String> meant = withoutNames(shape, form);
        for (Argument argument : shape.sizes()) {
            named(argument, form).ifPresent(word -> {
                if (arguments.putIfAbsent(word, argument) != null) {
                    faults.add(Diagnostic.error("size-twice", place(argument)).with(word));
                }
                Sign sign = word.equals("width") || word.equals("height") ? Sign.POSITIVE : Sign.NOT_NEGATIVE;
                sizes.put(word, length(word, argument.value(), sign));
            });
        }
        for (String word : List.of("width", "height")) {
            // A form nobody knows has no sizes to miss.
            if (form.isPresent() && !arguments.containsKey(word) && !meant.contains(word)) {
                faults.add(Diagnostic.error("missing-size", place(shape.form()))
                        .with(word, shape.form().text())
                        .suggestLine("profile " + name() + " = " + shape.form() + "(width: 4 mm, height: 1.8 mm)"));
            }
        }
        faults.raise();
        Drawing drawing = FormDrawing.draw(form.orElseThrow(), sizes);
        if (drawing instanceof Drawing.Impossible impossible) {
            Argument at = arguments.get(impossible.size());
            faults.add(Diagnostic.error("size-beyond", at == null ? place(shape.form()) : place(at.value()))
                    .with(
                            impossible.what(),
                            millimetres(impossible.valueMm()),
                            impossible.limit(),
                            millimetres(impossible.limitMm())));
            faults.raise();
        }
        return ((Drawing.Drawn) drawing).outline();
    }

    private Optional<Form> form(Name word) {
        Optional<Form> form = Form.find(word.text());
        if (form.isEmpty()) {
            List<String> near = NearNames.nearest(word.text(), Form.words());
            Diagnostic.Builder fault =
                    Diagnostic.error("unknown-form", place(word)).with(word.text());
            if (near.isEmpty()) {
                fault.expected(String.join(", ", Form.words()));
            } else {
                fault.suggest(place(word), near.get(0));
            }
            faults.add(fault);
        }
        return form;
    }

    /** Sizes without a name are told in one go, each with the first name that is still free; answers those names. */
    private Set<String> withoutNames(ProfileShape.Form shape, Optional<Form> form) {
        List<Argument> all = shape.sizes();
        List<Argument> bare =
                all.stream().filter(argument -> argument.name() == null).toList();
        if (bare.isEmpty()) {
            return Set.of();
        }
        List<String> free = new ArrayList<>(form.map(Form::sizes).orElse(List.of("width", "height")));
        all.forEach(argument -> free.remove(String.valueOf(argument.name())));
        Diagnostic.Builder fault = Diagnostic.error("size-without-name", place(bare.get(0)));
        bare.forEach(argument -> fault.label(place(argument), ""));
        if (bare.size() > free.size()) {
            faults.add(fault.expected("a name before it; " + shape.form() + " has " + String.join(", ", free)));
            return Set.copyOf(free);
        }
        List<String> names = free.subList(0, bare.size());
        int next = 0;
        List<String> written = new ArrayList<>();
        for (Argument argument : all) {
            String text = source.text(argument.span());
            written.add(argument.name() == null ? names.get(next++) + ": " + text : text);
        }
        Span span = all.get(0).span().to(all.get(all.size() - 1).span());
        faults.add(fault.suggest(source.place(span), String.join(", ", written)));
        return Set.copyOf(names);
    }

    /** The word of a size; the fault of one that the form does not have is told. */
    private Optional<String> named(Argument argument, Optional<Form> form) {
        Name word = argument.name();
        if (word == null) {
            return Optional.empty();
        } else if (form.isPresent() && !form.get().sizes().contains(word.text())) {
            List<String> near = NearNames.nearest(word.text(), form.get().sizes());
            Diagnostic.Builder fault = Diagnostic.error("unknown-size", place(word))
                    .with(form.get().word(), word.text());
            if (near.isEmpty()) {
                fault.expected(String.join(", ", form.get().sizes()));
            } else {
                fault.suggest(place(word), near.get(0));
            }
            faults.add(fault);
            return Optional.empty();
        }
        return Optional.of(word.text());
    }

    private Outline free(ProfileShape.Outline shape) {
        Point start = point(shape.start());
        List<Curve> curves = new ArrayList<>();
        Point at = start;
        for (ProfileShape.Segment segment : shape.segments()) {
            Point to = point(segment.to());
            if (at.distanceTo(to) < SAME_MM) {
                faults.add(Diagnostic.error("segment-without-length", place(segment))
                        .with(text(to)));
            } else if (segment instanceof ProfileShape.Arc arc) {
                arc(at, point(arc.through()), to, place(segment)).ifPresent(curves::add);
            } else {
                curves.add(new Line(at, to));
            }
            at = to;
        }
        faults.raise();
        if (at.distanceTo(start) >= SAME_MM) {
            curves.add(new Line(at, start));
        }
        Outline outline = new Outline(curves);
        Bounds bounds = outline.bounds();
        if (bounds.width() < SAME_MM || bounds.height() < SAME_MM) {
            faults.add(Diagnostic.error("outline-without-area", place(shape)));
        } else {
            OutlineValidity.crossing(outline)
                    .ifPresent(crossing -> faults.add(
                            Diagnostic.error("outline-crosses", place(shape)).with(text(crossing))));
        }
        faults.raise();
        return outline.counterClockwise();
    }

    private Optional<Curve> arc(Point from, Point via, Point to, Place place) {
        double cross = (via.x() - from.x()) * (to.y() - from.y()) - (via.y() - from.y()) * (to.x() - from.x());
        double chord = from.distanceTo(to);
        if (Double.isNaN(cross)) {
            return Optional.empty();
        } else if (Math.abs(cross) <= STRAIGHT * chord * chord) {
            faults.add(Diagnostic.error("straight-arc", place).with(text(from), text(via), text(to)));
            return Optional.empty();
        }
        return Optional.of(Arc.through(from, via, to));
    }

    private Point point(ProfileShape.Point point) {
        return new Point(length("across", point.across(), Sign.ANY), length("out", point.out(), Sign.ANY));
    }

    private static String text(Point point) {
        return "(" + millimetres(point.x()) + ", " + millimetres(point.y()) + ")";
    }
}
