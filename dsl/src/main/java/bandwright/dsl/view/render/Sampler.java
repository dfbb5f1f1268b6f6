// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import bandwright.dsl.material.LinearColour;

/** Finds the colour seen along one ray after another; each thread has its own. */
final class Sampler {
    /** What a ray sees that meets no body. */
    static final int GROUND = -1;

    /** The camera's white is set on white metal, which is a little warm: so platinum looks white and white gold nearly so. */
    private static final double BALANCE_RED = 0.965;

    private static final double BALANCE_BLUE = 1.09;

    /** How far outside of its triangle the eye's ray may go by, as a share of the triangle: rounding, at the rim of a sliver. */
    private static final double LOOSE = 1;

    private static final double STEP_OFF = 1e-4;

    private final PreparedScene scene;
    private final Viewpoint viewpoint;
    private final Studio studio;
    private final StoneShading stones;
    private final double height;
    private final Ray ray = new Ray();
    private final Ray mirrored = new Ray();
    private final double[] normal = new double[3];
    private final double[] secondNormal = new double[3];

    /** The screen's light, 0 to 1 each. */
    double red;

    double green;
    double blue;

    /** Number of the body, or {@link #GROUND}. */
    int body;

    boolean stone;

    /** Whether what the metal mirrors is the room alone. */
    boolean open;

    Sampler(PreparedScene scene, Viewpoint viewpoint, double height) {
        this.scene = scene;
        this.viewpoint = viewpoint;
        this.height = height;
        studio = new Studio(viewpoint, scene.soup());
        stones = new StoneShading(studio);
    }

    double normal(int coordinate) {
        return normal[coordinate];
    }

    /** Where what a body mirrors need not be asked of the tree. */
    interface Open {
        Open NOWHERE = (x, y, body) -> false;

        boolean at(int x, int y, int body);
    }

    /**
     * Looks through a place of the picture, in pixels from the top left.
     *
     * @param triangle what is seen there, or {@link Ray#NOTHING}
     * @param known where metal is taken to mirror the room alone
     */
    void look(double pixelX, double pixelY, int triangle, Open known) {
        viewpoint.aim(ray, pixelX, pixelY);
        if (triangle != Ray.NOTHING) {
            ray.meet(scene.soup().corners, triangle, LOOSE);
        }
        if (ray.triangle == Ray.NOTHING) {
            ground(pixelY / height);
            return;
        }
        body = scene.soup().bodies[triangle];
        Finish finish = scene.finish(body);
        normalAt(triangle, ray, normal);
        stone = finish instanceof Finish.Stone;
        if (finish instanceof Finish.Stone cut) {
            double[] light = stones.shade(scene.stone(body), cut, ray, normal[0], normal[1], normal[2]);
            show(light[0], light[1], light[2]);
        } else if (finish instanceof Finish.Metal metal) {
            open = known.at((int) pixelX, (int) pixelY, body);
            metal(metal);
        }
    }

    private void show(double lightRed, double lightGreen, double lightBlue) {
        double brightest = Math.max(lightRed, Math.max(lightGreen, lightBlue));
        red = ToneCurve.apply(lightRed, brightest);
        green = ToneCurve.apply(lightGreen, brightest);
        blue = ToneCurve.apply(lightBlue, brightest);
    }

    /** The backdrop, a quiet light grey, darkened where the scene stands. */
    private void ground(double down) {
        body = GROUND;
        stone = false;
        double light = 0.86 - 0.16 * Studio.ramp(down);
        if (ray.directionX < -1e-6) {
            double way = (scene.shadow().level() - ray.originX) / ray.directionX;
            double hidden = scene.shadow().at(ray.originY + way * ray.directionY, ray.originZ + way * ray.directionZ);
            // Seen flat along the ground, the shadow would be a hard dark line.
            light *= 1 - 0.72 * hidden * Math.min(1, -ray.directionX * 6);
        }
        red = light;
        green = 0.992 * light;
        blue = 0.978 * light;
    }

    private void metal(Finish.Metal metal) {
        double towards =
                Math.max(0, -(ray.directionX * normal[0] + ray.directionY * normal[1] + ray.directionZ * normal[2]));
        double x = ray.directionX + 2 * towards * normal[0];
        double y = ray.directionY + 2 * towards * normal[1];
        double z = ray.directionZ + 2 * towards * normal[2];
        mirrored.start(
                ray.hitX() + STEP_OFF * normal[0],
                ray.hitY() + STEP_OFF * normal[1],
                ray.hitZ() + STEP_OFF * normal[2],
                x,
                y,
                z);
        if (!open) {
            scene.tree().cast(mirrored);
        }
        open = mirrored.triangle == Ray.NOTHING;
        double lightRed;
        double lightGreen;
        double lightBlue;
        if (open) {
            double light = room(mirrored, metal.roughness());
            lightRed = light;
            lightGreen = light;
            lightBlue = light;
        } else {
            int triangle = mirrored.triangle;
            double light = second(triangle, metal.roughness());
            LinearColour colour = scene.colour(scene.soup().bodies[triangle]);
            lightRed = light * colour.red();
            lightGreen = light * colour.green();
            lightBlue = light * colour.blue();
        }
        double grazing = 1 - towards;
        double fresnel = grazing * grazing * grazing * grazing * grazing;
        LinearColour straight = scene.colour(body);
        show(
                BALANCE_RED * lightRed * (straight.red() + (1 - straight.red()) * fresnel),
                lightGreen * (straight.green() + (1 - straight.green()) * fresnel),
                BALANCE_BLUE * lightBlue * (straight.blue() + (1 - straight.blue()) * fresnel));
    }

    /** The room's light along a ray, dimmed where the ray ends in the shadow on the ground. */
    private double room(Ray outgoing, double roughness) {
        double light = studio.onMetal(outgoing, roughness);
        if (outgoing.directionX < 0) {
            double way = (scene.shadow().level() - outgoing.originX) / outgoing.directionX;
            light *= 1
                    - 0.8
                            * scene.shadow()
                                    .at(
                                            outgoing.originY + way * outgoing.directionY,
                                            outgoing.originZ + way * outgoing.directionZ);
        }
        return light;
    }

    /** The light a body throws into another: mirrored once more, then the room, some of it hidden by what is round it. */
    private double second(int triangle, double roughness) {
        normalAt(triangle, mirrored, secondNormal);
        double towards = -(mirrored.directionX * secondNormal[0]
                + mirrored.directionY * secondNormal[1]
                + mirrored.directionZ * secondNormal[2]);
        double x = mirrored.directionX + 2 * towards * secondNormal[0];
        double y = mirrored.directionY + 2 * towards * secondNormal[1];
        double z = mirrored.directionZ + 2 * towards * secondNormal[2];
        return 0.75 * studio.onMetal(x, y, z, 2 * roughness + 0.1);
    }

    /** The smoothed normal at a hit, turned to where the ray came from. */
    private void normalAt(int triangle, Ray hit, double[] to) {
        float[] normals = scene.soup().normals;
        double first = 1 - hit.second - hit.third;
        double square = 0;
        for (int k = 0; k < 3; k++) {
            int at = 9 * triangle + k;
            to[k] = first * normals[at] + hit.second * normals[at + 3] + hit.third * normals[at + 6];
            square += to[k] * to[k];
        }
        double against = to[0] * hit.directionX + to[1] * hit.directionY + to[2] * hit.directionZ;
        double scale = (against > 0 ? -1 : 1) / Math.max(1e-9, Math.sqrt(square));
        to[0] *= scale;
        to[1] *= scale;
        to[2] *= scale;
    }
}
