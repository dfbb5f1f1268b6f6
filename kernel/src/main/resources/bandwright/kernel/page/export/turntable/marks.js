// Bandwright. SPDX-License-Identifier: Apache-2.0
// Failed and close checks, pointed at: a numbered button on the model for each, square where it failed, round where it is close.
import { Vector3 } from 'three';

const APART = 26;

class Marks {
    constructor(told, stage, model, pick) {
        this.model = model;
        this.all = [];
        told.forEach((mark, at) => {
            if (!mark.at) {
                return;
            }
            const button = document.createElement('button');
            button.type = 'button';
            button.className = 'turntable-mark ' + (mark.verdict === 'failed' ? 'is-failed' : 'is-close');
            button.textContent = String(at + 1);
            button.setAttribute('aria-label', `Check ${at + 1}, ${mark.verdict}: ${mark.title}`);
            button.addEventListener('click', () => pick(at));
            stage.append(button);
            const part = model.parts.find((one) => mark.about.split(/[;,]/)[0] === one.told.name);
            this.all.push({ number: at, button, place: new Vector3().fromArray(mark.at), part });
        });
    }

    /** Where a mark is now. */
    point(number) {
        const mark = this.all.find((one) => one.number === number);
        if (!mark) {
            return null;
        }
        const from = mark.part ? mark.part.pieces[0].group : this.model.ring;
        return from.localToWorld(mark.place.clone());
    }

    choose(number) {
        this.all.forEach((mark) => mark.button.classList.toggle('is-chosen', mark.number === number));
    }

    lay(camera, width, height, shown) {
        const taken = [];
        const towards = new Vector3();
        for (const mark of this.all) {
            const point = this.point(mark.number);
            towards.set(point.x, point.y, 0).normalize();
            const away = towards.dot(camera.position.clone().sub(point).normalize()) < -0.1;
            point.project(camera);
            let x = (point.x + 1) / 2 * width;
            const y = (1 - point.y) / 2 * height;
            while (taken.some((other) => Math.hypot(other.x - x, other.y - y) < APART)) {
                x += APART;
            }
            taken.push({ x, y });
            mark.button.hidden = !shown || x < 0 || x > width || y < 0 || y > height || Math.abs(point.z) > 1;
            mark.button.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px) translate(-50%, -50%)`;
            mark.button.classList.toggle('is-behind', away);
        }
    }
}

export { Marks };
