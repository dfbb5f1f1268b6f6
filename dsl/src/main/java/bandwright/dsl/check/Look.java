// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.model.Fault;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Quantity;

/**
 * What the checks look at, and what they make findings with.
 *
 * @param ring the finished ring
 * @param pattern the ring as cast; the same where nothing is left to the bench
 * @param thorough whether what takes seconds is looked at too
 */
record Look(Ring ring, Ring pattern, LimitTable limits, boolean thorough) {
    /** Within this share of its limit a measure is close. */
    private static final double CLOSE_SHARE = 0.1;

    /** And within this, mm, where the limit is smaller than ten times as much. */
    private static final double CLOSE_MM = 0.01;

    /** Begins a finding whose limit has the name of the check. */
    Builder on(String check, String... subjects) {
        return on(check, limits.get(check), subjects);
    }

    Builder on(String check, Limit limit, String... subjects) {
        return new Builder(check, limit, List.of(subjects));
    }

    /** A finding about what the design itself limits or nothing does. */
    static Builder without(String check, Severity severity, String... subjects) {
        return new Builder(check, severity, List.of(subjects));
    }

    /** Something that could not be looked at, and why. */
    static Finding open(String check, String reason, String... subjects) {
        String title = CheckTexts.text(check);
        String about = String.join(", ", subjects);
        return new Finding(
                check,
                title,
                Severity.ADVICE,
                Verdict.NOT_LOOKED_AT,
                List.of(subjects),
                null,
                "",
                null,
                null,
                "",
                null,
                CheckTexts.text("open", title, about.isEmpty() ? "the ring" : about, reason),
                "");
    }

    static Finding open(String check, Fault fault, String... subjects) {
        return open(check, fault.diagnostics().get(0).message(), subjects);
    }

    /** Makes one finding. */
    static final class Builder {
        private final String check;
        private final List<String> subjects;
        private final @Nullable Limit limit;
        private final Severity severity;
        private final List<Object> more = new ArrayList<>();
        private @Nullable RingPlace place;
        private String text;
        private String advice;
        private boolean mayBeClose = true;

        private Builder(String check, Limit limit, List<String> subjects) {
            this.check = check;
            this.text = check;
            this.advice = check;
            this.subjects = subjects;
            this.limit = limit;
            this.severity = limit.severity();
        }

        private Builder(String check, Severity severity, List<String> subjects) {
            this.check = check;
            this.text = check;
            this.advice = check;
            this.subjects = subjects;
            this.limit = null;
            this.severity = severity;
        }

        Builder at(@Nullable RingPlace where) {
            place = where;
            return this;
        }

        /** What the sentence tells besides what was measured and the limit. */
        Builder telling(String further) {
            more.add(further);
            return this;
        }

        /** Another sentence than the check's own. */
        Builder saying(String key) {
            text = key;
            return this;
        }

        /** Another advice than the check's own. */
        Builder advising(String key) {
            advice = key;
            return this;
        }

        /** Equal by the way it is made: near the limit means nothing. */
        Builder exact() {
            mayBeClose = false;
            return this;
        }

        /** Held against the limit. */
        Finding measured(double value) {
            Limit rule = Objects.requireNonNull(limit);
            Quantity measured =
                    new Quantity(value, rule.value().dimension(), rule.value().shown());
            return held(measured, rule.value(), rule.text(), rule.margin(value));
        }

        /** Held against a value that the design itself sets. */
        Finding held(Quantity measured, Quantity against, String told, double margin) {
            Verdict verdict = verdict(against, margin);
            Quantity apart = new Quantity(margin, measured.dimension(), measured.shown());
            return finding(verdict, measured, told, against.toString(), apart);
        }

        /** Held against a bound from which on a duty begins: to be beyond it is no fault, so there is no margin. */
        Finding obliging(double value, String told) {
            Limit rule = Objects.requireNonNull(limit);
            Quantity measured =
                    new Quantity(value, rule.value().dimension(), rule.value().shown());
            boolean free = Limit.isHeld(measured, rule.margin(value));
            String bound = rule.value().toString();
            return finding(
                    free ? Verdict.PASSED : Verdict.CAUTION, measured, CheckTexts.text(told, bound), bound, null);
        }

        /** True or not, with nothing to measure. */
        Finding holds(boolean good) {
            return finding(good ? Verdict.PASSED : broken(), null, limit == null ? "" : limit.text(), "", null);
        }

        private Verdict broken() {
            return severity == Severity.ADVICE ? Verdict.CAUTION : Verdict.FAILED;
        }

        private Verdict verdict(Quantity against, double margin) {
            if (!Limit.isHeld(against, margin)) {
                return broken();
            }
            boolean length = against.dimension().equals(Dimension.LENGTH);
            double near = Math.max(CLOSE_SHARE * Math.abs(against.value()), length ? CLOSE_MM : 0);
            boolean close = mayBeClose && severity != Severity.ADVICE && margin < near - 1e-9;
            return close ? Verdict.CLOSE : Verdict.PASSED;
        }

        private Finding finding(
                Verdict verdict, @Nullable Quantity measured, String told, String bare, @Nullable Quantity margin) {
            String title = CheckTexts.text(check);
            String about = String.join(", ", subjects);
            String value = measured == null ? "" : measured.toString();
            List<Object> arguments = new ArrayList<>(List.of(about.isEmpty() ? "the ring" : about, value, bare));
            arguments.addAll(more);
            boolean tells = verdict == Verdict.FAILED || verdict == Verdict.CAUTION;
            String broken = text + ".broken";
            if (measured != null && measured.value() < 0 && CheckTexts.has(text + ".beyond.broken")) {
                broken = text + ".beyond.broken";
                arguments.set(1, new Quantity(-measured.value(), measured.dimension(), measured.shown()).toString());
            }
            String sentence = tells
                    ? CheckTexts.text(broken, arguments.toArray())
                    : verdict == Verdict.CLOSE
                            ? CheckTexts.text("close", title, arguments.get(0), value, bare)
                            : title + " of " + arguments.get(0) + (value.isEmpty() ? "" : ": " + value);
            return new Finding(
                    check,
                    title,
                    severity,
                    verdict,
                    subjects,
                    measured,
                    told,
                    margin,
                    limit,
                    limit == null ? "" : limit.own() != null ? Finding.OWN : limit.source(),
                    place,
                    sentence,
                    tells || verdict == Verdict.CLOSE ? CheckTexts.text(advice + ".advice", arguments.toArray()) : "");
        }
    }
}
