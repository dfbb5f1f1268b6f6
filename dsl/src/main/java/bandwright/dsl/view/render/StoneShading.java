// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

/**
 * The light that comes from a stone: what its facet mirrors, and what has run about inside, for up to {@value #WAYS} ways
 * from facet to facet. Shares of mirrored and passing light are Fresnel's. Colours part only where the light leaves (each has
 * its own index there); inside they keep together, which costs a third and looks the same.
 */
final class StoneShading {
    private static final int WAYS = 8;

    /** Below the girdle a set stone sees the dark of its seat, not the room. */
    private static final double SEAT = 0.16;

    /** Half the difference of the index between red and blue, as a share of index less one: near diamond's (0.044/1.417). */
    private static final double SPREAD = 0.018;

    private final Studio studio;
    private double[] gaps = {};
    private double[] outwards = {};
    private final double[] light = new double[3];

    StoneShading(Studio studio) {
        this.studio = studio;
    }

    /** Red, green and blue; the array is used again by the next call. */
    double[] shade(StoneSolid solid, Finish.Stone finish, Ray ray, double nx, double ny, double nz) {
        if (gaps.length < solid.count()) {
            gaps = new double[solid.count()];
            outwards = new double[solid.count()];
        }
        double dx = ray.directionX;
        double dy = ray.directionY;
        double dz = ray.directionZ;
        double x = ray.hitX();
        double y = ray.hitY();
        double z = ray.hitZ();
        double index = finish.refractiveIndex();
        double towards = Math.max(1e-6, -(dx * nx + dy * ny + dz * nz));
        double mirrored = fresnel(towards, 1 / index);
        double room = mirrored * studio.onStone(dx + 2 * towards * nx, dy + 2 * towards * ny, dz + 2 * towards * nz);
        light[0] = room;
        light[1] = room;
        light[2] = room;

        double inside = Math.sqrt(1 - (1 - towards * towards) / (index * index));
        double bend = towards / index - inside;
        dx = dx / index + bend * nx;
        dy = dy / index + bend * ny;
        dz = dz / index + bend * nz;
        double share = 1 - mirrored;
        double red = Math.sqrt(finish.body().red());
        double green = Math.sqrt(finish.body().green());
        double blue = Math.sqrt(finish.body().blue());
        double passedRed = share;
        double passedGreen = share;
        double passedBlue = share;
        for (int way = 0; way < WAYS; way++) {
            int facet = solid.leaving(x, y, z, dx, dy, dz, gaps, outwards);
            if (facet < 0) {
                break;
            }
            x += gaps[facet] * dx;
            y += gaps[facet] * dy;
            z += gaps[facet] * dz;
            // One way through the stone is taken as half its body colour's, whatever its length.
            passedRed *= red;
            passedGreen *= green;
            passedBlue *= blue;
            double fx = solid.normalX(facet);
            double fy = solid.normalY(facet);
            double fz = solid.normalZ(facet);
            double outward = dx * fx + dy * fy + dz * fz;
            double kept = fresnel(outward, index);
            if (kept < 1) {
                double spread = SPREAD * (index - 1);
                light[0] += passedRed * (1 - kept) * leaving(solid, dx, dy, dz, fx, fy, fz, outward, index - spread);
                light[1] += passedGreen * (1 - kept) * leaving(solid, dx, dy, dz, fx, fy, fz, outward, index);
                light[2] += passedBlue * (1 - kept) * leaving(solid, dx, dy, dz, fx, fy, fz, outward, index + spread);
                passedRed *= kept;
                passedGreen *= kept;
                passedBlue *= kept;
                if (Math.max(passedRed, Math.max(passedGreen, passedBlue)) < 0.02) {
                    break;
                }
            }
            dx -= 2 * outward * fx;
            dy -= 2 * outward * fy;
            dz -= 2 * outward * fz;
        }
        return light;
    }

    /** The light met by a ray that leaves through a facet. */
    private double leaving(
            StoneSolid solid,
            double dx,
            double dy,
            double dz,
            double fx,
            double fy,
            double fz,
            double outward,
            double index) {
        double across = index * index * (1 - outward * outward);
        double steep = Math.sqrt(Math.max(0, 1 - across)) - index * outward;
        double x = index * dx + steep * fx;
        double y = index * dy + steep * fy;
        double z = index * dz + steep * fz;
        boolean down = x * solid.axisX() + y * solid.axisY() + z * solid.axisZ() < 0;
        return down ? SEAT : studio.onStone(x, y, z);
    }

    /**
     * The mirrored share of unpolarised light (Fresnel's equations).
     *
     * @param towards cosine of the angle against the facet's normal
     * @param ratio index of this side over that of the other side
     */
    private static double fresnel(double towards, double ratio) {
        double square = 1 - ratio * ratio * (1 - towards * towards);
        if (square <= 0) {
            return 1;
        }
        double beyond = Math.sqrt(square);
        double s = (ratio * towards - beyond) / (ratio * towards + beyond);
        double p = (ratio * beyond - towards) / (ratio * beyond + towards);
        return (s * s + p * p) / 2;
    }
}
