// Bandwright. SPDX-License-Identifier: Apache-2.0
// From where the ring is looked at: turning, shifting, coming nearer; standard views; with or without perspective.
import { MathUtils, OrthographicCamera, PerspectiveCamera, Spherical, Vector3 } from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';

const ANGLE = 24;
const SLOPE = Math.tan(MathUtils.degToRad(ANGLE / 2));
const NEARLY_UP = 0.0005;

/** Degrees round from the fingertip's side, to the right, and up: the same as in the pictures that the program draws itself. */
const STANDARD = { 'three-quarter': [48, 24], top: [180, 90], front: [0, 0], side: [90, 0] };

function stillness() {
    return window.matchMedia('(prefers-reduced-motion: reduce)').matches;
}

class Views {
    constructor(canvas, changed) {
        this.changed = changed;
        this.perspective = new PerspectiveCamera(ANGLE, 1, 0.1, 2000);
        this.orthographic = new OrthographicCamera(-1, 1, 1, -1, -1000, 2000);
        this.aspect = 1;
        this.middle = new Vector3();
        this.radius = 10;
        this.camera = this.perspective;
        this.controls = new OrbitControls(this.camera, canvas);
        this.controls.enableDamping = false;
        this.controls.addEventListener('change', () => this.changed());
        // Over a page the wheel scrolls the page, until somebody takes hold of the ring.
        this.controls.enableZoom = false;
        canvas.addEventListener('focus', () => { this.controls.enableZoom = true; });
        canvas.addEventListener('blur', () => { this.controls.enableZoom = false; });
    }

    get whole() {
        return 1.15 * this.radius / Math.sin(Math.atan(SLOPE * Math.min(1, this.aspect)));
    }

    get distance() {
        return this.camera === this.perspective
            ? this.camera.position.distanceTo(this.controls.target)
            : this.whole / this.camera.zoom;
    }

    /** Where the camera is: round and down from the top in radians, how far, and what it looks at. */
    get state() {
        const at = new Spherical().setFromVector3(this.camera.position.clone().sub(this.controls.target));
        return {
            theta: at.theta, phi: at.phi, distance: this.distance, target: this.controls.target.toArray(),
            orthographic: this.camera === this.orthographic,
        };
    }

    put(state) {
        this.choose(state.orthographic);
        this.controls.target.fromArray(state.target);
        const phi = Math.min(Math.PI - NEARLY_UP, Math.max(NEARLY_UP, state.phi));
        const far = state.orthographic ? this.whole : state.distance;
        this.camera.position.setFromSpherical(new Spherical(far, phi, state.theta)).add(this.controls.target);
        if (state.orthographic) {
            this.camera.zoom = this.whole / state.distance;
        }
        this.camera.updateProjectionMatrix();
        this.controls.update();
        this.changed();
    }

    choose(orthographic) {
        this.camera = orthographic ? this.orthographic : this.perspective;
        this.controls.object = this.camera;
        this.frame();
    }

    frame() {
        const half = this.whole * SLOPE;
        this.perspective.aspect = this.aspect;
        Object.assign(this.orthographic, { left: -half * this.aspect, right: half * this.aspect, top: half, bottom: -half });
        this.perspective.updateProjectionMatrix();
        this.orthographic.updateProjectionMatrix();
    }

    resize(width, height) {
        this.aspect = width / height;
        this.frame();
    }

    /** What there is to see now; the camera goes with it, so that what was seen whole still is. */
    bounds(middle, radius) {
        const state = this.state;
        const before = this.whole;
        state.target = new Vector3().fromArray(state.target).sub(this.middle).add(middle).toArray();
        this.middle.copy(middle);
        this.radius = radius;
        this.frame();
        state.distance *= this.whole / before;
        this.put(state);
    }

    standard(name, calm) {
        const [round, up] = STANDARD[name];
        const goal = {
            theta: MathUtils.degToRad(round), phi: MathUtils.degToRad(90 - up), distance: this.whole,
            target: this.middle.toArray(), orthographic: this.camera === this.orthographic,
        };
        this.go(goal, calm);
    }

    /** Turns until a place is in front. */
    face(point) {
        const state = this.state;
        const at = new Spherical().setFromVector3(point.clone().sub(this.middle));
        this.go({ ...state, theta: at.theta, phi: Math.min(2.2, Math.max(0.5, at.phi)) }, false);
    }

    go(goal, calm) {
        window.cancelAnimationFrame(this.going);
        if (calm || stillness()) {
            this.put(goal);
            return;
        }
        const from = this.state;
        const turn = MathUtils.euclideanModulo(goal.theta - from.theta + Math.PI, 2 * Math.PI) - Math.PI;
        const start = performance.now();
        const step = (now) => {
            const share = Math.min(1, (now - start) / 320);
            const eased = share * share * (3 - 2 * share);
            this.put({
                theta: from.theta + turn * eased,
                phi: MathUtils.lerp(from.phi, goal.phi, eased),
                distance: MathUtils.lerp(from.distance, goal.distance, eased),
                target: from.target.map((value, at) => MathUtils.lerp(value, goal.target[at], eased)),
                orthographic: goal.orthographic,
            });
            if (share < 1) {
                this.going = window.requestAnimationFrame(step);
            }
        };
        this.going = window.requestAnimationFrame(step);
    }

    turn(round, down) {
        const state = this.state;
        this.put({ ...state, theta: state.theta + round, phi: state.phi + down });
    }

    shift(right, up) {
        const state = this.state;
        const step = state.distance * SLOPE * 0.1;
        const move = new Vector3(right * step, up * step, 0).applyQuaternion(this.camera.quaternion);
        this.put({ ...state, target: new Vector3().fromArray(state.target).add(move).toArray() });
    }

    nearer(factor) {
        const state = this.state;
        const distance = Math.min(6 * this.whole, Math.max(0.08 * this.whole, state.distance / factor));
        this.put({ ...state, distance });
    }

    project(orthographic) {
        this.put({ ...this.state, orthographic });
    }
}

export { Views };
