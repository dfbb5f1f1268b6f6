// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.ChannelProperty;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Property;
import bandwright.dsl.syntax.SeatsProperty;

/** The places cut for the stones of a row. */
final class SeatsReader extends Reader {
    /** What {@code deburr} breaks of an edge where it does not say how much, in mm. */
    private static final double DEBURR_MM = 0.1;

    /** Width of a channel as a share of the stones where nothing is said. */
    private static final double CHANNEL_SHARE = 0.9;

    /** A notch where nothing is known of the stones, and what one is deeper than the girdle's reach, in mm; examples. */
    private static final double LEAST_NOTCH_MM = 0.15;

    private static final double NOTCH_BEYOND_MM = 0.02;

    /** Sums of lengths are right to this, in mm. */
    private static final double NEGLIGIBLE_MM = 1e-9;

    private final bandwright.dsl.syntax.Seats seats;
    private final Block<SeatsProperty> block;

    SeatsReader(Resolution design, Entry entry) {
        super(design, entry);
        this.seats = (bandwright.dsl.syntax.Seats) entry.statement();
        this.block = seats.block();
    }

    Seats seats() {
        Optional<StoneRow> row = faults.attempt(() -> names.row(seats.row(), source));
        List<String> from = parts(seats.from());
        Optional<Seats.Channel> channel = channel(row);
        double hole = channel.isPresent()
                ? otherwise(block, Property.Word.HOLE, Sign.POSITIVE, 0)
                : required(block, Property.Word.HOLE, Sign.POSITIVE, "hole 0.8 mm");
        row.ifPresent(known -> checkHole(known, hole));
        OptionalDouble bearing = optional(block, Property.Word.BEARING, Sign.POSITIVE);
        double clearance = otherwise(block, Property.Word.CLEARANCE, Sign.NOT_NEGATIVE, 0);
        if (channel.isPresent() && row.isPresent()) {
            checkChannel(channel.get(), row.get(), hole, clearance);
        }
        double deburr = deburr();
        Property.Made made = block.find(Property.Made.class);
        faults.raise();
        return new Seats(
                name(),
                entry.place(),
                seats.row().text(),
                from,
                hole,
                bearing,
                clearance,
                deburr,
                made != null && made.atBench(),
                channel);
    }

    private void checkHole(StoneRow row, double hole) {
        double stone = row.size().widthMm();
        Property.Amount said = block.amount(Property.Word.HOLE);
        if (hole >= stone && said != null) {
            faults.add(Diagnostic.error("hole-too-wide", place(said.value()))
                    .with(millimetres(hole), millimetres(stone), row.name()));
        }
    }

    /** A girdle must reach into both walls, and with its clearance no further than the notch. */
    private void checkChannel(Seats.Channel channel, StoneRow row, double hole, double clearance) {
        SeatsProperty.Channel said = block.find(SeatsProperty.Channel.class);
        Property.Amount bearing = block.amount(Property.Word.BEARING);
        Property.Amount notch = said == null ? null : said.block().amount(Property.Word.NOTCH);
        Property.Amount drilled = block.amount(Property.Word.HOLE);
        if (said != null && bearing != null) {
            oneOnly(said, bearing);
        }
        if (drilled != null && hole >= channel.widthMm() && channel.widthMm() > 0) {
            faults.add(Diagnostic.error("hole-wider-than-channel", place(drilled.value()))
                    .with(millimetres(hole), millimetres(channel.widthMm())));
        }
        double needed = (row.widthMm() - channel.widthMm()) / 2 + clearance;
        if (notch != null
                && channel.notchMm() > 0
                && channel.widthMm() > 0
                && channel.widthMm() < row.widthMm()
                && channel.notchMm() < needed - NEGLIGIBLE_MM) {
            faults.add(Diagnostic.error("notch-too-shallow", place(notch.value()))
                    .with(millimetres(channel.notchMm()), millimetres(row.widthMm()), millimetres(needed)));
        }
    }

    private double deburr() {
        SeatsProperty.Deburr deburr = block.find(SeatsProperty.Deburr.class);
        if (deburr == null) {
            return 0;
        }
        Expression amount = deburr.amount();
        return amount == null ? DEBURR_MM : length("deburr", amount, Sign.POSITIVE);
    }

    private Optional<Seats.Channel> channel(Optional<StoneRow> row) {
        SeatsProperty.Channel channel = block.find(SeatsProperty.Channel.class);
        if (channel == null) {
            return Optional.empty();
        }
        Block<ChannelProperty> sizes = channel.block();
        double stone = row.map(known -> known.widthMm()).orElse(Double.NaN);
        Property.Amount bars = sizes.amount(Property.Word.BARS_EVERY);
        double width = channelWidth(sizes.amount(Property.Word.WIDTH), stone);
        missingSizes(channel, (stone - width) / 2);
        return Optional.of(new Seats.Channel(
                width,
                size(sizes, Property.Word.NOTCH),
                size(sizes, Property.Word.LIP),
                size(sizes, Property.Word.FLOOR),
                bars == null ? 0 : whole(bars)));
    }

    private double size(Block<ChannelProperty> sizes, Property.Word word) {
        return optional(sizes, word, Sign.POSITIVE).orElse(Double.NaN);
    }

    /**
     * All sizes that a channel lacks, in one go.
     *
     * @param reachMm how far a girdle reaches into each wall; not-a-number where that is not known
     */
    private void missingSizes(SeatsProperty.Channel channel, double reachMm) {
        double notch = reachMm + NOTCH_BEYOND_MM > LEAST_NOTCH_MM
                ? Math.ceil((reachMm + NOTCH_BEYOND_MM) * 20) / 20
                : LEAST_NOTCH_MM;
        Map<Property.Word, String> examples = new LinkedHashMap<>();
        examples.put(Property.Word.NOTCH, millimetres(notch));
        examples.put(Property.Word.LIP, "0.3 mm");
        examples.put(Property.Word.FLOOR, "0.6 mm");
        examples.keySet().removeIf(word -> channel.block().amount(word) != null);
        if (examples.isEmpty()) {
            return;
        }
        List<String> words = examples.keySet().stream().map(Property.Word::word).toList();
        List<String> lines = examples.entrySet().stream()
                .map(example -> example.getKey().word() + " " + example.getValue())
                .toList();
        int last = words.size() - 1;
        String all = last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
        faults.add(Diagnostic.error(last == 0 ? "missing-property" : "missing-properties", place(channel))
                .with(all, name())
                .suggestLine(String.join("  ", lines)));
    }

    private double channelWidth(Property.@Nullable Amount width, double stone) {
        if (width == null) {
            return CHANNEL_SHARE * stone;
        }
        // A plain number is a share of the stone, so the kind decides how to read it.
        boolean share = faults.attempt(() -> design.evaluate(width.value(), source))
                .filter(value -> value instanceof Value.Amount amount
                        && amount.quantity().dimension().isNumber())
                .isPresent();
        double said = share
                ? amount("width", width.value(), Dimension.NUMBER, Sign.POSITIVE) * stone
                : length("width", width.value(), Sign.POSITIVE);
        if (said >= stone) {
            faults.add(Diagnostic.error("channel-too-wide", place(width.value()))
                    .with(millimetres(said), millimetres(stone)));
        }
        return said;
    }
}
