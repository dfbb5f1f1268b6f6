// Bandwright. SPDX-License-Identifier: Apache-2.0
// The ring's file as parts that can be hidden, moved and cut. Lengths are millimetres; the ring stands up.
import { Box3, BackSide, Group, InstancedMesh, Matrix4, MeshPhysicalMaterial, MeshStandardMaterial, Vector3 } from 'three';
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js';

function ramp(share) {
    const held = Math.min(1, Math.max(0, share));
    return held * held * (3 - 2 * held);
}

/** All copies of one mesh, drawn at once. */
function copies(mesh, material, matrices) {
    const all = new InstancedMesh(mesh.geometry, material, matrices.length);
    matrices.forEach((matrix, at) => all.setMatrixAt(at, matrix));
    // What moves and what is clipped is looked after elsewhere; a ring is never out of sight as a whole.
    all.frustumCulled = false;
    return all;
}

function stoneMaterials(given) {
    const colour = given.color;
    const inside = new MeshStandardMaterial({ color: colour, metalness: 1, roughness: 0.02, side: BackSide, flatShading: true });
    const outside = new MeshPhysicalMaterial({ color: colour, metalness: 0, roughness: 0, ior: 2.33, flatShading: true });
    outside.transparent = true;
    outside.opacity = 0.42;
    outside.depthWrite = false;
    return [inside, outside];
}

class Part {
    constructor(told, node) {
        this.told = told;
        this.group = new Group();
        this.pieces = [];
        this.seen = [];
        const byShape = new Map();
        node.children.forEach((child) => {
            child.updateMatrix();
            const known = byShape.get(child.geometry.uuid);
            if (known) {
                known.matrices.push(child.matrix.clone());
            } else {
                byShape.set(child.geometry.uuid, { mesh: child, matrices: [child.matrix.clone()] });
            }
        });
        byShape.forEach(({ mesh, matrices }) => {
            const materials = told.stones ? stoneMaterials(mesh.material) : [mesh.material];
            const group = new Group();
            const drawn = materials.map((material) => copies(mesh, material, matrices));
            drawn.forEach((one) => {
                one.instanceMatrix = drawn[0].instanceMatrix;
                one.userData.part = this;
                group.add(one);
            });
            this.group.add(group);
            mesh.geometry.computeBoundingBox();
            const middle = mesh.geometry.boundingBox.getCenter(new Vector3());
            this.pieces.push({ group, mesh: drawn[0], matrices, middle, faces: mesh.userData.faces || mesh.geometry.userData.faces || [] });
            this.seen.push(...drawn);
        });
    }

    /** Takes the part off by a share of its way, 0 to 1 for the whole ring. */
    takeOff(share) {
        const way = this.told.way;
        if (!way) {
            return;
        }
        const own = ramp((share - way.begins) / (way.ends - way.begins));
        for (const piece of this.pieces) {
            piece.group.position.fromArray(way.slide).multiplyScalar(own);
            const apart = new Vector3().fromArray(way.apart);
            const side = Math.sign(apart.dot(piece.middle));
            piece.group.position.addScaledVector(apart, side * own);
            if (way.lift > 0) {
                this.lift(piece, way.lift * ramp(share / (way.begins > 0 ? way.begins + 0.15 : 1)));
            }
        }
    }

    lift(piece, distance) {
        const axis = new Vector3();
        const lifted = new Matrix4();
        piece.matrices.forEach((matrix, at) => {
            axis.setFromMatrixColumn(matrix, 2).multiplyScalar(distance);
            lifted.copy(matrix);
            lifted.elements[12] += axis.x;
            lifted.elements[13] += axis.y;
            lifted.elements[14] += axis.z;
            piece.mesh.setMatrixAt(at, lifted);
        });
        piece.mesh.instanceMatrix.needsUpdate = true;
        this.seen.forEach((mesh) => mesh.computeBoundingSphere());
    }

    /** The definition that made a face, by the number of a triangle. */
    definition(mesh, triangle) {
        const piece = this.pieces.find((one) => one.mesh.geometry === mesh.geometry);
        let name = '';
        for (const [definition, , start] of piece ? piece.faces : []) {
            name = start <= triangle ? definition : name;
        }
        return name;
    }

    box() {
        const box = new Box3();
        this.group.updateWorldMatrix(true, true);
        for (const piece of this.pieces) {
            piece.mesh.computeBoundingBox();
            box.union(piece.mesh.boundingBox.clone().applyMatrix4(piece.mesh.matrixWorld));
        }
        return box;
    }
}

/** Reads the file; the data tell its parts in the same order. */
async function read(bytes, data) {
    const file = await new GLTFLoader().parseAsync(bytes.buffer, '');
    const root = file.scene.children[0];
    const ring = new Group();
    ring.quaternion.copy(root.quaternion);
    const parts = data.parts.map((told, at) => new Part(told, root.children[at]));
    parts.forEach((part) => ring.add(part.group));
    return { ring, parts };
}

export { read };
