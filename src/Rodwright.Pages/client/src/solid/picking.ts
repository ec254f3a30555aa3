import { type Camera, Raycaster, Vector2 } from 'three';
import { cutAt } from './cuts';
import type { Model, Piece } from './model';
import type { Section } from './section';

/** What a finger or a mouse has met: a piece, and the cut of it that the met face was made by. */
export interface Met {
    readonly piece: Piece;
    /** The id of the thing: the cut's where there is one, else the piece's. */
    readonly id: string;
}

/** How far a finger may slip in a tap, CSS pixels, and how long it may take, ms. */
const [slip, long] = [8, 600];

/** Finds what lies under the pointer, and tells a tap from a turn. */
export class Picking {
    private readonly ray = new Raycaster();
    private down: { x: number; y: number; at: number; id: number } | null = null;
    private readonly off = new AbortController();
    private last: string | null = null;
    private fingers = 0;

    constructor(
        private readonly canvas: HTMLCanvasElement,
        private readonly camera: Camera,
        private readonly scene: () => { model: Model; section: Section } | null,
        private readonly tapped: (met: Met | null) => void,
        private readonly hovered: (met: Met | null) => void,
    ) {
        const signal = this.off.signal;
        canvas.addEventListener('pointerdown', (e) => this.press(e), { signal });
        canvas.addEventListener('pointerup', (e) => this.release(e), { signal });
        canvas.addEventListener('pointercancel', () => this.forget(), { signal });
        canvas.addEventListener('pointermove', (e) => this.pass(e), { signal });
        canvas.addEventListener('pointerleave', () => this.tellHover(null), { signal });
    }

    /** What lies at a point of the canvas, CSS pixels. */
    at(x: number, y: number): Met | null {
        const now = this.scene();
        if (now === null) return null;
        const { model, section } = now;
        this.ray.setFromCamera(new Vector2((x / this.canvas.clientWidth) * 2 - 1, 1 - (y / this.canvas.clientHeight) * 2), this.camera);
        const woods = model.pieces.filter((p) => p.node.visible).map((p) => p.wood);
        const hits = this.ray.intersectObjects(section.axis === null ? woods : [...woods, section.cutFaces], false);
        for (const hit of hits) {
            if (hit.object === section.cutFaces) {
                const owner = section.ownerOf(hit.faceIndex!);
                if (owner) return { piece: owner, id: owner.id };
                continue;
            }
            if (!section.keeps(hit.point)) continue;
            const piece = model.pieces.find((p) => p.wood === hit.object)!;
            const cut = cutAt(piece, piece.wood.worldToLocal(hit.point.clone()), hit.face!.normal);
            return { piece, id: cut === null ? piece.id : `${piece.id}/${cut.id}` };
        }
        return null;
    }

    dispose(): void {
        this.off.abort();
    }

    private press(e: PointerEvent): void {
        this.fingers++;
        this.down = this.fingers === 1 && e.button === 0 ? { x: e.clientX, y: e.clientY, at: e.timeStamp, id: e.pointerId } : null;
    }

    private release(e: PointerEvent): void {
        this.fingers = Math.max(0, this.fingers - 1);
        const down = this.down;
        this.down = null;
        if (down === null || down.id !== e.pointerId) return;
        if (Math.hypot(e.clientX - down.x, e.clientY - down.y) > slip || e.timeStamp - down.at > long) return;
        this.tapped(this.under(e));
    }

    private forget(): void {
        this.down = null;
        this.fingers = 0;
    }

    private pass(e: PointerEvent): void {
        if (e.pointerType !== 'touch' && e.buttons === 0) this.tellHover(this.under(e));
    }

    private under(e: PointerEvent): Met | null {
        const box = this.canvas.getBoundingClientRect();
        return this.at(e.clientX - box.left, e.clientY - box.top);
    }

    private tellHover(met: Met | null): void {
        const id = met?.id ?? null;
        if (id === this.last) return;
        this.last = id;
        this.hovered(met);
    }
}
