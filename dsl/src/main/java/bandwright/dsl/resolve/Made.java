// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Band;
import bandwright.dsl.syntax.Because;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Groove;
import bandwright.dsl.syntax.GrooveProperty;
import bandwright.dsl.syntax.Limit;
import bandwright.dsl.syntax.Measured;
import bandwright.dsl.syntax.MetalDefinition;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Option;
import bandwright.dsl.syntax.Profile;
import bandwright.dsl.syntax.Prongs;
import bandwright.dsl.syntax.Require;
import bandwright.dsl.syntax.Seats;
import bandwright.dsl.syntax.Statement;
import bandwright.dsl.syntax.StoneMaterial;
import bandwright.dsl.syntax.StoneRow;
import bandwright.dsl.syntax.Title;

/** A name that a statement makes. */
public record Made(String name, Kind kind, Span span) {
    /** All that a statement makes, its own name first; nothing for a statement that only asks. */
    static List<Made> by(Statement statement) {
        if (statement instanceof Definition definition) {
            return one(definition.name(), Kind.DEFINITION);
        } else if (statement instanceof Profile profile) {
            return one(profile.name(), Kind.PROFILE);
        } else if (statement instanceof Band band) {
            return one(band.name(), Kind.BAND);
        } else if (statement instanceof Groove groove) {
            return groove(groove);
        } else if (statement instanceof Seats seats) {
            return one(seats.name(), Kind.SEATS);
        } else if (statement instanceof StoneRow row) {
            return one(row.name(), Kind.STONE_ROW);
        } else if (statement instanceof Prongs prongs) {
            return one(prongs.name(), Kind.PRONGS);
        } else if (statement instanceof MetalDefinition metal) {
            return one(metal.name(), Kind.METAL);
        } else if (statement instanceof StoneMaterial material) {
            return one(material.name(), Kind.STONE_MATERIAL);
        } else if (statement instanceof Option option) {
            return List.of(new Made(option.name(), Kind.OPTION, option.span()));
        }
        return List.of();
    }

    /** The reason given with a statement that is kept. */
    static Optional<String> because(Statement statement) {
        return Optional.ofNullable(reason(statement)).map(Because::reason);
    }

    private static List<Made> one(Name name, Kind kind) {
        return List.of(of(name, kind));
    }

    private static Made of(Name name, Kind kind) {
        return new Made(name.text(), kind, name.span());
    }

    private static List<Made> groove(Groove groove) {
        List<Made> made = new ArrayList<>(one(groove.name(), Kind.GROOVE));
        for (GrooveProperty property : groove.block().properties()) {
            if (property instanceof GrooveProperty.Keep keep) {
                made.add(of(keep.part(), Kind.KEPT_PART));
            } else if (property instanceof GrooveProperty.LetInFrom from) {
                made.add(of(from.collar(), Kind.COLLAR));
            } else if (property instanceof GrooveProperty.Leaving leaving) {
                leaving.pieces().forEach(piece -> made.add(of(piece, Kind.PIECE)));
            }
        }
        return made;
    }

    private static @Nullable Because reason(Statement statement) {
        if (statement instanceof Definition definition) {
            return definition.because();
        } else if (statement instanceof Profile profile) {
            return profile.because();
        } else if (statement instanceof Band band) {
            return band.because();
        } else if (statement instanceof Groove groove) {
            return groove.because();
        } else if (statement instanceof Seats seats) {
            return seats.because();
        } else if (statement instanceof StoneRow row) {
            return row.because();
        } else if (statement instanceof Prongs prongs) {
            return prongs.because();
        } else if (statement instanceof MetalDefinition metal) {
            return metal.because();
        } else if (statement instanceof StoneMaterial material) {
            return material.because();
        } else if (statement instanceof Option option) {
            return option.because();
        } else if (statement instanceof Title title) {
            return title.because();
        } else if (statement instanceof Require require) {
            return require.because();
        } else if (statement instanceof Limit limit) {
            return limit.because();
        } else if (statement instanceof Measured measured) {
            return measured.because();
        }
        return null;
    }
}
