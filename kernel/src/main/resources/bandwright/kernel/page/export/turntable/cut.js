// Bandwright. SPDX-License-Identifier: Apache-2.0
// The cut: a plane that takes one side away and fills what it cuts through. Filling: where a ray enters a body more often than it leaves
// it before the plane, the plane shows metal; the stencil counts (back faces up, front faces down).
import {
    AlwaysStencilFunc, BackSide, CanvasTexture, Color, DecrementWrapStencilOp, DoubleSide, FrontSide, IncrementWrapStencilOp, InstancedMesh,
    Mesh, MeshBasicMaterial, NotEqualStencilFunc, Plane, PlaneGeometry, RepeatWrapping, ReplaceStencilOp, SRGBColorSpace, Vector3,
} from 'three';

const SIZE = 80;

/** Hatching as on a drawing: each part has its own slant, so that parts are told apart without their colour. */
function hatching(colour, slant) {
    const canvas = document.createElement('canvas');
    canvas.width = 64;
    canvas.height = 64;
    const pen = canvas.getContext('2d');
    pen.fillStyle = '#' + colour.getHexString();
    pen.fillRect(0, 0, 64, 64);
    pen.fillStyle = 'rgba(30, 22, 12, 0.72)';
    pen.fillRect(0, 28, 64, 9);
    const texture = new CanvasTexture(canvas);
    texture.wrapS = RepeatWrapping;
    texture.wrapT = RepeatWrapping;
    texture.repeat.set(SIZE / 0.28, SIZE / 0.28);
    texture.rotation = slant;
    texture.colorSpace = SRGBColorSpace;
    texture.anisotropy = 8;
    return texture;
}

function counting(side, step, plane) {
    return new MeshBasicMaterial({
        colorWrite: false, depthWrite: false, depthTest: false, side, clippingPlanes: [plane], stencilWrite: true,
        stencilFunc: AlwaysStencilFunc, stencilFail: step, stencilZFail: step, stencilZPass: step,
    });
}

class Cut {
    constructor(scene, parts) {
        this.plane = new Plane(new Vector3(-1, 0, 0), 0);
        this.parts = parts;
        this.kind = 'whole';
        this.counters = [];
        this.caps = parts.map((part, at) => {
            for (const piece of part.pieces) {
                for (const [side, step] of [[BackSide, IncrementWrapStencilOp], [FrontSide, DecrementWrapStencilOp]]) {
                    const counter = new InstancedMesh(piece.mesh.geometry, counting(side, step, this.plane), piece.matrices.length);
                    counter.instanceMatrix = piece.mesh.instanceMatrix;
                    counter.frustumCulled = false;
                    counter.renderOrder = at + 1;
                    counter.raycast = () => {};
                    counter.visible = false;
                    piece.group.add(counter);
                    this.counters.push(counter);
                }
            }
            const colour = new Color(part.told.colour);
            const cap = new Mesh(new PlaneGeometry(SIZE, SIZE), new MeshBasicMaterial({
                color: part.told.stones ? new Color(0.72, 0.82, 0.88) : new Color(1, 1, 1), side: DoubleSide, toneMapped: false,
                map: part.told.stones ? null : hatching(colour, Math.PI * (0.25 + 0.5 * at)), stencilWrite: true, stencilRef: 0,
                stencilFunc: NotEqualStencilFunc, stencilFail: ReplaceStencilOp, stencilZFail: ReplaceStencilOp, stencilZPass: ReplaceStencilOp,
            }));
            cap.renderOrder = at + 1.5;
            cap.onAfterRender = (renderer) => renderer.clearStencil();
            cap.raycast = () => {};
            cap.visible = false;
            scene.add(cap);
            return cap;
        });
        parts.forEach((part) => part.seen.forEach((mesh) => { mesh.renderOrder = parts.length + 2; }));
    }

    /** @param kind whole, across (value: mm along the finger) or along (value: degrees from the top) */
    set(kind, value) {
        this.kind = kind;
        const angle = value * Math.PI / 180;
        if (kind === 'across') {
            this.plane.normal.set(0, 0, -1);
            this.plane.constant = value;
        } else {
            this.plane.normal.set(-Math.cos(angle), -Math.sin(angle), 0);
            this.plane.constant = 0;
        }
        const cuts = kind !== 'whole';
        const planes = cuts ? [this.plane] : null;
        this.counters.forEach((counter) => { counter.visible = cuts; });
        this.parts.forEach((part, at) => {
            part.seen.forEach((mesh) => { mesh.material.clippingPlanes = planes; });
            const cap = this.caps[at];
            cap.visible = cuts && part.group.visible;
            this.plane.coplanarPoint(cap.position);
            const far = cap.position.clone().sub(this.plane.normal);
            cap.lookAt(far);
        });
    }

    /** Whether a point has been cut away. */
    takes(point) {
        return this.kind !== 'whole' && this.plane.distanceToPoint(point) < -1e-4;
    }
}

export { Cut };
