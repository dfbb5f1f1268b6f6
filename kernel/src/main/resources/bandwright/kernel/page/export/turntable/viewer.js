// Bandwright. SPDX-License-Identifier: Apache-2.0
// One model on the page: draws it, and does what the form beside it asks.
import { Box3, NeutralToneMapping, Raycaster, Scene, Sphere, Vector2, WebGLRenderer } from 'three';
import { environment } from './studio.js';
import { read } from './model.js';
import { Cut } from './cut.js';
import { Views } from './views.js';
import { Marks } from './marks.js';

/** Of a picture that is saved, pixels. */
const WIDTH = 1600;

class Viewer {
    constructor(canvas, stage, key) {
        this.canvas = canvas;
        this.stage = stage;
        this.key = key;
        this.renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true, stencil: true, preserveDrawingBuffer: true });
        this.renderer.localClippingEnabled = true;
        this.renderer.toneMapping = NeutralToneMapping;
        this.renderer.toneMappingExposure = 0.9;
        this.scene = new Scene();
        this.scene.environment = environment(this.renderer);
        this.views = new Views(canvas, () => this.ask());
        this.apart = 0;
        this.marked = true;
        this.ray = new Raycaster();
        new ResizeObserver(() => this.resize()).observe(stage);
    }

    /** Shows a ring. The camera stays where it was, also where the page was left and opened again. */
    async load(bytes, data, pick) {
        const state = this.model ? this.views.state : this.remembered();
        if (this.model) {
            this.scene.clear();
            this.marks.clear();
        }
        this.model = await read(bytes, data);
        this.scene.add(this.model.ring);
        this.cut = new Cut(this.scene, this.model.parts);
        this.marks = new Marks(data.marks, this.stage, this.model, pick);
        this.resize();
        this.measure();
        if (state) {
            this.views.put(state);
        } else {
            this.views.standard('three-quarter', true);
        }
        this.ready = true;
    }

    /** How far what is shown reaches. */
    measure() {
        const box = new Box3();
        this.model.parts.forEach((part) => box.union(part.box()));
        const sphere = box.getBoundingSphere(new Sphere());
        // A ring is round: its box's corners are empty.
        const out = Math.max(box.max.x, box.max.y);
        const radius = Math.min(sphere.radius, Math.hypot(out, (box.max.z - box.min.z) / 2));
        this.views.bounds(sphere.center, radius);
        this.reach = [box.min.z, box.max.z];
    }

    takeApart(share) {
        this.apart = share;
        this.model.parts.forEach((part) => part.takeOff(share));
        this.measure();
    }

    show(part, shown) {
        part.group.visible = shown;
        this.cutBy(this.cut.kind, this.cutValue || 0);
    }

    cutBy(kind, value) {
        this.cutValue = value;
        this.cut.set(kind, value);
        this.ask();
    }

    resize() {
        const width = this.stage.clientWidth;
        const height = this.stage.clientHeight;
        if (width === 0 || height === 0) {
            return;
        }
        this.renderer.setPixelRatio(Math.min(2, window.devicePixelRatio || 1));
        this.renderer.setSize(width, height, false);
        this.views.resize(width, height);
        this.ask();
    }

    ask() {
        if (!this.asked) {
            this.asked = true;
            window.requestAnimationFrame(() => {
                this.asked = false;
                this.draw();
            });
        }
    }

    draw() {
        if (!this.model) {
            return;
        }
        const camera = this.views.camera;
        // The lights stand round the one who looks: it is the ring that turns.
        this.scene.environmentRotation.y = this.views.state.theta;
        this.renderer.render(this.scene, camera);
        this.marks.lay(camera, this.stage.clientWidth, this.stage.clientHeight, this.marked);
        this.remember();
    }

    /** The part under a place on the screen, and what made the face there. */
    under(x, y) {
        const box = this.canvas.getBoundingClientRect();
        const place = new Vector2((x - box.left) / box.width * 2 - 1, 1 - (y - box.top) / box.height * 2);
        this.ray.setFromCamera(place, this.views.camera);
        const seen = this.model.parts.filter((part) => part.group.visible).map((part) => part.pieces.map((piece) => piece.mesh)).flat();
        const hit = this.ray.intersectObjects(seen, false).find((one) => !this.cut.takes(one.point));
        if (!hit) {
            return null;
        }
        const part = hit.object.userData.part;
        return { part, definition: part.definition(hit.object, hit.faceIndex) };
    }

    remembered() {
        try {
            return JSON.parse(window.sessionStorage.getItem(this.key));
        } catch (fault) {
            return null;
        }
    }

    remember() {
        try {
            window.sessionStorage.setItem(this.key, JSON.stringify(this.views.state));
        } catch (fault) {
            // A page opened as a file may have nowhere to keep it.
        }
    }

    /** The picture as it is seen, larger, on the ground that it stands on. */
    picture() {
        this.renderer.setPixelRatio(1);
        this.renderer.setSize(WIDTH, Math.round(WIDTH / this.views.aspect), false);
        this.draw();
        const copy = document.createElement('canvas');
        copy.width = this.canvas.width;
        copy.height = this.canvas.height;
        const pen = copy.getContext('2d');
        pen.fillStyle = window.getComputedStyle(this.stage).backgroundColor;
        pen.fillRect(0, 0, copy.width, copy.height);
        pen.drawImage(this.canvas, 0, 0);
        this.resize();
        return copy.toDataURL('image/png');
    }
}

export { Viewer };
