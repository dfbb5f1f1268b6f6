// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;

/** The smallest size that the pattern is printed with: grooves, holes, channels, pins. Walls have checks of their own. */
final class DetailChecks implements Check {
    private @Nullable Detail least;

    private record Detail(String name, String what, double size) {}

    @Override
    public String key() {
        return "printable-detail";
    }

    @Override
    public List<Finding> look(Look look) {
        Detail smallest = new DetailChecks().smallest(look.pattern());
        return smallest == null
                ? List.of()
                : List.of(look.on(key(), smallest.name).telling(smallest.what).measured(smallest.size));
    }

    private @Nullable Detail smallest(Ring pattern) {
        for (Groove groove : pattern.design().grooves()) {
            boolean empty = groove.keep().isEmpty();
            if (empty) {
                add(groove.name(), "width", groove.widthMm());
                groove.depthMm().ifPresent(depth -> add(groove.name(), "depth", depth));
            }
        }
        for (Seats seats : pattern.design().seats()) {
            add(seats.name(), "hole", seats.holeMm());
            seats.channel().ifPresent(channel -> {
                add(seats.name(), "channel", channel.widthMm());
                add(seats.name(), "notch", channel.notchMm());
                add(seats.name(), "lip", channel.lipMm());
            });
        }
        for (Prongs prongs : pattern.design().prongs()) {
            add(prongs.name(), "diameter", prongs.diameterMm());
        }
        return least;
    }

    private void add(String name, String what, double size) {
        if (size > 0 && (least == null || size < least.size)) {
            least = new Detail(name, what, size);
        }
    }
}
