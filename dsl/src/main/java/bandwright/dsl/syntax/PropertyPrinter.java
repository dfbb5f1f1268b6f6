// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.syntax;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The canonical text of properties, one to a line. */
final class PropertyPrinter {
    private static final String INDENT = "  ";

    private final ExpressionPrinter expressions;

    PropertyPrinter(ExpressionPrinter expressions) {
        this.expressions = expressions;
    }

    String block(Block<?> block, String indent) {
        return block.properties().stream()
                .map(property -> indent + INDENT + print(property, indent + INDENT) + "\n")
                .collect(Collectors.joining("", " {\n", indent + "}"));
    }

    private String print(Property property, String indent) {
        if (property instanceof Property.Amount amount) {
            return amount.word() + " " + expressions.amount(amount.value());
        } else if (property instanceof Property.Around around) {
            return "around " + around(around) + expressions.optional(" centred ", around.centred());
        } else if (property instanceof Property.Made made) {
            return made.atBench() ? "made at bench" : "made in pattern";
        } else if (property instanceof BandProperty band) {
            return band(band);
        } else if (property instanceof GrooveProperty groove) {
            return groove(groove);
        } else if (property instanceof SeatsProperty.Channel channel) {
            return "channel" + block(channel.block(), indent);
        } else if (property instanceof SeatsProperty.Deburr deburr) {
            return "deburr" + expressions.optional(" ", deburr.amount());
        } else if (property instanceof StoneRowProperty row) {
            return row(row);
        } else if (property instanceof MetalProperty.Share share) {
            return share.element() + " " + expressions.amount(share.share());
        } else if (property instanceof ExportProperty export) {
            return export(export, indent);
        } else if (property instanceof QuoteProperty price) {
            return price(price);
        } else {
            throw new IllegalStateException("no text for " + property);
        }
    }

    private String around(Property.Around around) {
        Expression arc = around.arc();
        if (arc == null) {
            return "full";
        }
        String text = expressions.amount(arc);
        return text.equals("full") ? "(full)" : text;
    }

    private String band(BandProperty property) {
        if (property instanceof BandProperty.Finger finger) {
            String system = finger.system() == null ? "" : " " + finger.system();
            return "finger " + expressions.amount(finger.size()) + expressions.optional(" allow ", finger.allowance())
                    + system;
        } else if (property instanceof BandProperty.Profiles profiles) {
            return profiles.stations().stream()
                    .map(station -> station.profile() + expressions.optional(" at ", station.at()))
                    .collect(Collectors.joining(", ", "profile ", ""));
        } else {
            return "metal " + ((BandProperty.Metal) property).metal();
        }
    }

    private String groove(GrooveProperty property) {
        if (property instanceof GrooveProperty.FloorProfile floor) {
            return "profile " + floor.profile();
        } else if (property instanceof GrooveProperty.Ending ending) {
            return ending.round() ? "ends round" : "ends square";
        } else if (property instanceof GrooveProperty.Keep keep) {
            return "keep " + keep.part() + " in " + keep.metal();
        } else if (property instanceof GrooveProperty.LetInFrom from) {
            return "let-in from " + (from.fingertip() ? "fingertip" : "hand") + " leaving " + from.collar();
        } else if (property instanceof GrooveProperty.LetInHalves halves) {
            return "let-in in halves at " + expressions.amount(halves.at());
        } else if (property instanceof GrooveProperty.LetInCast) {
            return "let-in cast";
        } else if (property instanceof GrooveProperty.Joined joined) {
            return "joined by " + joined.joint().name().toLowerCase(Locale.ROOT);
        } else if (property instanceof GrooveProperty.Leaving leaving) {
            return "leaving " + names(leaving.pieces());
        } else {
            return property instanceof GrooveProperty.DepthThrough ? "depth through" : property.word();
        }
    }

    private String row(StoneRowProperty property) {
        if (property instanceof StoneRowProperty.Stone stone) {
            return "stone " + stone.cut() + " " + stone.material() + " " + expressions.amount(stone.size())
                    + expressions.optional(" by ", stone.by())
                    + expressions.optional(" within ", stone.within());
        } else if (property instanceof StoneRowProperty.Spacing spacing) {
            return (spacing.atLeast() ? "spacing at least " : "spacing ") + expressions.amount(spacing.amount());
        } else if (property instanceof StoneRowProperty.Across across) {
            return across.offsets().stream().map(expressions::amount).collect(Collectors.joining(", ", "across ", ""));
        } else {
            return property.word();
        }
    }

    private String export(ExportProperty property, String indent) {
        if (property instanceof ExportProperty.Parts parts) {
            return "parts " + names(parts.parts());
        } else if (property instanceof ExportProperty.Shrinkage shrinkage) {
            return "shrinkage " + expressions.amount(shrinkage.amount());
        } else if (property instanceof ExportProperty.DirectedShrinkage directed) {
            return "shrinkage around " + expressions.amount(directed.around())
                    + " across " + expressions.amount(directed.across())
                    + " out " + expressions.amount(directed.out());
        } else if (property instanceof ExportProperty.Stage stage) {
            return stage.cast() ? "as cast" : "as finished";
        } else if (property instanceof ExportProperty.LaidOut laid) {
            return "laid out" + expressions.optional(" spacing ", laid.spacing());
        } else if (property instanceof ExportProperty.Held held) {
            return held(held, indent);
        } else if (property instanceof ExportProperty.Stock stock) {
            return stock(stock);
        } else if (property instanceof ExportProperty.Paper paper) {
            return "paper " + paper.size().text();
        } else if (property instanceof ExportProperty.Metals metals) {
            return "metals " + names(metals.metals());
        } else if (property instanceof ExportProperty.Assembled) {
            return "assembled";
        }
        return property.word();
    }

    /** A question in the braces of an export; what is shown goes without its word. */
    private static String held(ExportProperty.Held held, String indent) {
        String question = Printer.print(held.question()).stripTrailing();
        return (question.startsWith("show ") ? question.substring("show ".length()) : question)
                .replace("\n", "\n" + indent);
    }

    private String stock(ExportProperty.Stock stock) {
        String outside = stock.outside() == null ? "" : expressions.amount(stock.outside()) + " outside";
        String inside = stock.inside() == null ? "" : expressions.amount(stock.inside()) + " inside";
        String comma = outside.isEmpty() || inside.isEmpty() ? "" : ", ";
        return "stock " + outside + comma + inside;
    }

    private String price(QuoteProperty property) {
        if (property instanceof QuoteProperty.MetalPrice metal) {
            return metal.word() + " " + expressions.amount(metal.price());
        } else if (property instanceof QuoteProperty.StonePrice stones) {
            return stones.word() + " " + expressions.amount(stones.price());
        } else if (property instanceof QuoteProperty.Labour labour) {
            return labour.word() + " " + expressions.amount(labour.price());
        } else if (property instanceof QuoteProperty.Tax tax) {
            String text = tax.text() == null ? "" : "\"" + tax.text() + "\" ";
            return "tax " + text + expressions.amount(tax.rate());
        }
        return "valid \"" + ((QuoteProperty.Valid) property).text() + "\"";
    }

    static String names(List<Name> names) {
        return names.stream().map(Name::text).collect(Collectors.joining(", "));
    }
}
