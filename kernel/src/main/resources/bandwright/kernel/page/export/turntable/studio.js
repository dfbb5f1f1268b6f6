// Bandwright. SPDX-License-Identifier: Apache-2.0
// The room round the ring: a few soft lights and darkness between them, without which metal shows no form.
import { BackSide, BoxGeometry, Color, Mesh, MeshBasicMaterial, PMREMGenerator, Scene, SphereGeometry } from 'three';

/** Right, up, front, width, height, brightness: as in the pictures that the program draws itself. */
const LIGHTS = [
    [0, 6, 0.6, 5, 5, 7],
    [-6, 2.4, 2.6, 3.2, 6, 6],
    [6.2, 2, 1.4, 1.4, 6, 6],
    [0.8, 3, -6, 6, 2.2, 4],
    [2.2, 4, 6, 4, 1.2, 4],
    [-2.5, -1.2, 6.5, 5, 0.7, 1.5],
];

function plain(brightness, side) {
    const material = new MeshBasicMaterial({ color: new Color(brightness, brightness, brightness) });
    if (side !== undefined) {
        material.side = side;
    }
    return material;
}

/** What metal and stones mirror. */
function environment(renderer) {
    const room = new Scene();
    room.add(new Mesh(new SphereGeometry(12, 32, 16), plain(0.26, BackSide)));
    const floor = new Mesh(new BoxGeometry(20, 0.1, 20), plain(0.7));
    floor.position.y = -5;
    room.add(floor);
    for (const [x, y, z, width, height, brightness] of LIGHTS) {
        const light = new Mesh(new BoxGeometry(width, height, 0.05), plain(brightness));
        light.position.set(x, y, z);
        light.lookAt(0, 0, 0);
        room.add(light);
    }
    const generator = new PMREMGenerator(renderer);
    const texture = generator.fromScene(room, 0.02).texture;
    generator.dispose();
    return texture;
}

export { environment };
