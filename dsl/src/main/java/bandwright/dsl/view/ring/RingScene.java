// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.joml.Vector3d;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.pattern.AsCast;
import bandwright.dsl.view.render.Finish;
import bandwright.dsl.view.render.Scene;
import bandwright.dsl.view.render.StoneModel;

/** A ring, or some of its parts, as a scene for the renderer. */
public final class RingScene {
    /** Of diamond; stands in where a material's own is not known. */
    private static final double USUAL_REFRACTIVE_INDEX = 2.417;

    private RingScene() {}

    /** All parts with all their stones, as set. */
    public static Scene of(Ring ring) {
        return of(ring, ring.bodies().stream().map(Body::name).collect(Collectors.toSet()));
    }

    /** Some parts as set: the stones are in them, and pins lie over the stones. */
    public static Scene of(Ring ring, Set<String> parts) {
        List<Prongs> pins = SetPins.among(ring.design(), parts);
        List<bandwright.dsl.view.render.Body> scene =
                new ArrayList<>(metal(SetPins.without(ring, pins), parts).bodies());
        for (Prongs prongs : pins) {
            scene.add(new bandwright.dsl.view.render.Body(
                    prongs.name(), SetPins.mesh(ring, prongs), polished(ring, prongs.part())));
        }
        addStones(scene, ring, parts);
        return new Scene(scene);
    }

    /** Some parts with their stones, pins standing as cast: whole bodies, whose edges are all there to be drawn. */
    static Scene standing(Ring ring, Set<String> parts) {
        List<bandwright.dsl.view.render.Body> scene =
                new ArrayList<>(metal(ring, parts).bodies());
        addStones(scene, ring, parts);
        return new Scene(scene);
    }

    private static void addStones(List<bandwright.dsl.view.render.Body> scene, Ring ring, Set<String> parts) {
        for (StoneRow row : ring.design().stoneRows()) {
            if (parts.contains(row.part())) {
                addStones(scene, ring.layout(row.name()));
            }
        }
    }

    /** Some parts from the caster: without stones and without what the bench cuts, pins standing. */
    static Scene asCast(Ring ring, Set<String> parts) {
        return metal(ring.of(AsCast.of(ring.design())), parts);
    }

    /** Some parts without stones. */
    static Scene metal(Ring ring, Set<String> parts) {
        List<bandwright.dsl.view.render.Body> scene = new ArrayList<>();
        for (Body body : ring.bodies()) {
            if (parts.contains(body.name())) {
                scene.add(new bandwright.dsl.view.render.Body(body.name(), body.mesh(), polished(ring, body.name())));
            }
        }
        return new Scene(scene);
    }

    private static Finish polished(Ring ring, String part) {
        return Finish.Metal.polished(ring.section(part).metal().picture());
    }

    private static void addStones(List<bandwright.dsl.view.render.Body> scene, StoneLayout layout) {
        StoneRow row = layout.row();
        StoneMaterial material = row.material();
        Double index = material.refractiveIndex();
        Finish finish = new Finish.Stone(material.body(), index == null ? USUAL_REFRACTIVE_INDEX : index);
        Mesh stone = StoneModel.of(row.cut(), row.widthMm(), row.aroundMm());
        for (StoneLayout.Place place : layout.places()) {
            scene.add(new bandwright.dsl.view.render.Body(row.name(), placed(stone, place), finish));
        }
    }

    /** A stone set in its place. */
    static Mesh placed(Mesh stone, StoneLayout.Place place) {
        return StoneModel.placed(
                stone, new Vector3d(place.centre()), new Vector3d(place.sideways()), new Vector3d(place.axis()));
    }
}
