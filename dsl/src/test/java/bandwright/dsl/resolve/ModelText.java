// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import bandwright.dsl.geometry.plane.Moments;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.model.Section;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.source.Place;

/** A design as indented text, read off the records themselves. */
final class ModelText {
    private final StringBuilder text = new StringBuilder();

    private ModelText() {}

    static String of(Resolution design) {
        ModelText model = new ModelText();
        model.line("", "title", design.title().orElse("-"));
        design.definitions()
                .names(Kind.DEFINITION)
                .forEach(name -> model.line("", name, design.valueOf(name).text()));
        model.list("", "", design.bands());
        model.list("", "", design.grooves());
        model.list("", "", design.stoneRows());
        model.list("", "", design.seats());
        model.list("", "", design.prongs());
        design.parts()
                .forEach(part ->
                        model.line("", "part " + part, design.metal(part).name()));
        return model.text.toString();
    }

    private void line(String indent, String label, String value) {
        text.append((indent + label + " " + value).stripTrailing()).append('\n');
    }

    private void list(String indent, String label, Collection<?> values) {
        values.forEach(value -> value(indent, label, value));
    }

    private void value(String indent, String label, Object value) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(present -> value(indent, label, present));
        } else if (value instanceof OptionalDouble optional) {
            optional.ifPresent(present -> value(indent, label, present));
        } else if (value instanceof List<?> list && list.stream().anyMatch(Record.class::isInstance)) {
            list(indent, label, list);
        } else if (value instanceof Outline outline) {
            Moments moments = outline.moments();
            value(indent, "area", moments.area());
            value(indent, "centroid-out", moments.centroid().y());
            outline.curves()
                    .forEach(curve -> line(
                            indent,
                            curve.getClass().getSimpleName(),
                            number(curve.start().x()) + ", "
                                    + number(curve.start().y())));
        } else if (value instanceof Metal || value instanceof StoneMaterial || value instanceof FingerSize) {
            line(indent, label, value.toString());
        } else if (value instanceof Record record) {
            String name =
                    value instanceof Section ? "section" : value.getClass().getSimpleName();
            line(indent, label, label.isEmpty() ? name : "");
            for (RecordComponent part : record.getClass().getRecordComponents()) {
                if (part.getType() != Place.class) {
                    value(indent + "  ", part.getName(), read(record, part));
                }
            }
        } else if (value instanceof Double number) {
            line(indent, label, number(number));
        } else {
            line(indent, label, value.toString());
        }
    }

    private static String number(double value) {
        return QuantityFormat.number(value, 6);
    }

    private static Object read(Record record, RecordComponent part) {
        try {
            part.getAccessor().setAccessible(true);
            return part.getAccessor().invoke(record);
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException("cannot read " + part, failure);
        }
    }
}
