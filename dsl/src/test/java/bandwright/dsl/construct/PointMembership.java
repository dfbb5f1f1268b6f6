// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

/**
 * The volumes of a ring of the Harbour light family, found without meshes or modellers: points of a low-discrepancy sequence are
 * asked one by one whether the statements put metal there. Only half a pitch is sampled, for the rest mirrors it.
 *
 * <p>Sequence: M. Roberts, "The unreasonable effectiveness of quasirandom sequences", 2018: multiples of the powers of the
 * inverse of the root of x⁴ = x + 1.
 */
final class PointMembership {
    private static final double ROOT = 1.2207440846057596;

    private final HarbourLight ring;
    private final double inner;
    private final int stones;
    private final double girdle;
    private final double topRadius;
    private final double topCentre;

    PointMembership(HarbourLight ring, int stones) {
        this.ring = ring;
        this.inner = ring.iso() / (2 * StrictMath.PI);
        this.stones = stones;
        this.girdle = inner + ring.height() - 0.25;
        double half = ring.width() / 2;
        double rise = ring.height() - ring.side();
        this.topRadius = (half * half + rise * rise) / (2 * rise);
        this.topCentre = inner + ring.height() - topRadius;
    }

    record Volumes(double shankAndCollar, double stripe) {}

    Volumes volumes(int points) {
        double angle = StrictMath.PI / stones;
        double half = ring.width() / 2;
        double outer = inner + ring.height() + 0.6;
        long white = 0;
        long red = 0;
        double a = 0.5;
        double b = 0.5;
        double c = 0.5;
        double stepA = 1 / ROOT;
        double stepB = stepA / ROOT;
        double stepC = stepB / ROOT;
        double low = inner * inner;
        double high = outer * outer;
        for (int i = 0; i < points; i++) {
            a += stepA;
            a -= Math.floor(a);
            b += stepB;
            b -= Math.floor(b);
            c += stepC;
            c -= Math.floor(c);
            // Square roots spread the points evenly over the sector; the ring mirrors itself at z = 0 too, but for the
            // collar.
            double r = Math.sqrt(low + a * (high - low));
            double theta = b * angle;
            double z = (2 * c - 1) * half;
            double x = r * StrictMath.cos(theta);
            double y = r * StrictMath.sin(theta);
            boolean band = r <= inner + ring.side() || inTop(r, z);
            boolean groove = Math.abs(z) < 0.95 && r > inner + ring.height() - 1;
            boolean seat = inSeat(x, y, z);
            if (band && !groove && !seat) {
                white++;
            }
            if ((band && groove && !seat) || inPin(x, y, z, angle)) {
                red++;
            }
        }
        double sector = angle / 2 * (high - low) * 2 * half * 2 * stones / points;
        return new Volumes(white * sector, red * sector);
    }

    private boolean inTop(double r, double z) {
        double up = r - topCentre;
        return up * up + z * z <= topRadius * topRadius && up > 0;
    }

    /** The seat of the stone at angle 0, and no other reaches into half a pitch. */
    private boolean inSeat(double x, double y, double z) {
        double q = Math.sqrt(y * y + z * z);
        double up = x - girdle;
        double stone = ring.stone() / 2;
        if (up > 0) {
            return q <= stone + 0.01;
        }
        return up <= -0.35 ? q <= 0.4 : q <= 0.4 + (stone - 0.4) * (up + 0.35) / 0.35;
    }

    private boolean inPin(double x, double y, double z, double angle) {
        double out = x * StrictMath.cos(angle) + y * StrictMath.sin(angle);
        double aside = y * StrictMath.cos(angle) - x * StrictMath.sin(angle);
        double across = Math.abs(z) - 0.42;
        double q = aside * aside + across * across;
        double up = out - girdle;
        if (up < -0.6 || q > 0.275 * 0.275) {
            return false;
        }
        return up <= 0.28 || q + (up - 0.28) * (up - 0.28) <= 0.275 * 0.275;
    }
}
