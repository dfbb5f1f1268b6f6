// Bandwright. SPDX-License-Identifier: Apache-2.0
// Failed and close checks, pointed at: a numbered button on the model for each, square where it failed, round where it is close.
import { Vector3 } from 'three';

const APART = 30;
const OUT = 34;
const EDGE = 16;
const SVG = 'http://www.w3.org/2000/svg';

class Marks {
    constructor(told, stage, model, pick) {
        this.model = model;
        this.all = [];
        this.lines = document.createElementNS(SVG, 'svg');
        this.lines.setAttribute('class', 'turntable-lines');
        this.lines.setAttribute('aria-hidden', 'true');
        stage.append(this.lines);
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
            const line = document.createElementNS(SVG, 'path');
            this.lines.append(line);
            this.all.push({ line, number: at, button, place: new Vector3().fromArray(mark.at), part });
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

    clear() {
        this.all.forEach((mark) => mark.button.remove());
        this.lines.remove();
    }

    /** Beside the ring, each with a line to its place, so that none covers what it points at. */
    lay(camera, width, height, shown) {
        const screen = (point) => {
            const seen = point.project(camera);
            return [(seen.x + 1) / 2 * width, (1 - seen.y) / 2 * height];
        };
        const middle = screen(this.model.ring.getWorldPosition(new Vector3()));
        const taken = [];
        this.lines.setAttribute('viewBox', `0 0 ${width} ${height}`);
        for (const mark of this.all) {
            const point = this.point(mark.number);
            const away = new Vector3(point.x, point.y, 0).normalize().dot(camera.position.clone().sub(point).normalize()) < -0.35;
            const at = screen(point);
            const far = Math.max(1, Math.hypot(at[0] - middle[0], at[1] - middle[1]));
            const out = [(at[0] - middle[0]) / far, (at[1] - middle[1]) / far];
            const held = (value, most) => Math.min(most - EDGE, Math.max(EDGE, value));
            let place = [held(at[0] + out[0] * OUT, width), held(at[1] + out[1] * OUT, height)];
            for (let side = 1; side < 40 && taken.some((other) => Math.hypot(other[0] - place[0], other[1] - place[1]) < APART); side++) {
                const step = (side % 2 ? 1 : -1) * Math.ceil(side / 2) * APART;
                place = [held(at[0] + out[0] * OUT - out[1] * step, width), held(at[1] + out[1] * OUT + out[0] * step, height)];
            }
            taken.push(place);
            const inside = at[0] >= 0 && at[0] <= width && at[1] >= 0 && at[1] <= height;
            mark.button.hidden = !shown || !inside;
            mark.line.setAttribute('visibility', mark.button.hidden ? 'hidden' : 'visible');
            mark.button.style.transform = `translate(${place[0].toFixed(1)}px, ${place[1].toFixed(1)}px) translate(-50%, -50%)`;
            mark.button.classList.toggle('is-behind', away);
            mark.line.setAttribute('d', `M${place[0].toFixed(1)} ${place[1].toFixed(1)}L${at[0].toFixed(1)} ${at[1].toFixed(1)}`);
        }
    }
}

export { Marks };
