import { Box3, type Group, Sphere, Vector3 } from 'three';
import { layDown, takeApart } from './apart';
import { benchMarks } from './bench';
import { type CutText, volume } from './cut';
import { dress } from './dress';
import { Eye } from './eye';
import { type Model, type Piece, readModel, type ViewName } from './model';
import { type LeastText, Plumb } from './least';
import { Motion } from './motion';
import { sheet } from './pencil';
import { type Met, Picking } from './picking';
import { type Axis, Section } from './section';
import { disposeOf, Stage } from './stage';
import { onTonesChanged, readTones, type Tones } from './tones';

/** Who wants to know what happens in the view. */
export interface Listener {
    /** A thing was tapped; null for nothing. */
    picked(id: string | null): void;
    /** Something to tell the one who looks. */
    said(words: string): void;
    /** Where the words of the least headroom belong, in the canvas's own points; null where they are not seen. */
    marked(at: { x: number; y: number } | null): void;
    /** How the stair is looked at has changed. */
    changed(): void;
}

/** The stair in the round: what is seen of it, and from where. */
export class View {
    apart = 0;
    room = true;
    /** The piece in the hand; null when the stair is looked at. */
    alone: Piece | null = null;
    model: Model | null = null;
    readonly section: Section;
    /** The place of least headroom. */
    readonly plumb = new Plumb();
    private readonly eye: Eye;
    private readonly motion: Motion;
    private readonly stage: Stage;
    private readonly picking: Picking;
    private readonly offTones: () => void;
    private readonly ball = new Sphere(new Vector3(), 5);
    private tones: Tones;
    private marks: Group | null = null;
    private overlay: Group | null = null;
    private cutText: CutText | null = null;
    private picks: readonly string[] = [];
    private wrongs: readonly string[] = [];
    private hover: string | null = null;
    private loading: AbortController | null = null;

    /** @throws Error when WebGL cannot be had. */
    constructor(private readonly canvas: HTMLCanvasElement, private readonly listener: Listener) {
        const wake = () => this.stage?.wake(true);
        this.tones = readTones(canvas);
        this.motion = new Motion(wake);
        this.eye = new Eye(canvas, this.motion, wake);
        this.stage = new Stage(canvas, this.eye.camera, () => this.eye.resize(canvas.clientWidth, canvas.clientHeight), (lost) => this.listener.said(lost ? 'The picture was lost; it comes back by itself.' : ''));
        this.eye.resize(canvas.clientWidth, canvas.clientHeight);
        this.section = new Section(this.tones);
        this.stage.ask((now) => this.motion.advance(now));
        this.stage.ask(() => {
            this.settle();
            return false;
        });
        this.picking = new Picking(canvas, this.eye.camera, () => (this.model ? { model: this.model, section: this.section } : null), (met) => this.listener.picked(met?.id ?? null), (met) => this.hovered(met));
        this.offTones = onTonesChanged(() => this.paint());
        this.paint();
    }

    /** Shows another stair, or the same one changed: the eye stays where it is. */
    async show(source: string): Promise<void> {
        this.loading?.abort();
        const loading = (this.loading = new AbortController());
        const answer = await fetch(source, { signal: loading.signal });
        if (!answer.ok) throw new Error(`${answer.status}`);
        const model = await readModel(await answer.arrayBuffer(), this.section.planes);
        if (loading.signal.aborted) {
            disposeOf(model.root.parent!);
            return;
        }
        const [first, held] = [this.model === null, this.alone?.id];
        this.put(model);
        this.alone = model.pieces.find((p) => p.id === held) ?? null;
        this.arrange();
        if (first) this.lookFrom('three-quarter', true);
        this.listener.changed();
    }

    /** Lights up parts, by the ids of parts or of their cuts. */
    pick(ids: readonly string[], wrong: readonly string[]): void {
        [this.picks, this.wrongs] = [ids, wrong];
        this.dress();
        this.cutAgain();
        this.listener.changed();
    }

    /** Lays the volume of a cut over the stair; null takes it away. */
    showCut(cut: CutText | null): void {
        this.cutText = cut;
        this.lay();
        this.dress();
        this.cutAgain();
    }

    /** Marks where the headroom is least; null where nothing over the stair was measured. */
    showLeast(least: LeastText | null): void {
        this.plumb.tell(least);
        this.layPlumb();
        this.listener.changed();
    }

    /** The piece that "this piece" means: the one picked last. */
    get pickedPiece(): Piece | null {
        for (const id of [...this.picks].reverse()) {
            const piece = this.model?.pieces.find((p) => p.id === id.split('/')[0]);
            if (piece) return piece;
        }
        return null;
    }

    /** Takes the stair apart so far, 0 to 1; at once, or as a movement. */
    setApart(apart: number, moving: boolean): void {
        const before = this.apart;
        this.motion.start('apart', moving ? 900 * Math.abs(apart - before) : 0, (part) => {
            this.apart = before + (apart - before) * part;
            this.arrange();
        });
    }

    /** Takes the picked piece in the hand, or puts it back. */
    setAlone(alone: boolean): void {
        const piece = alone ? this.pickedPiece : null;
        if (piece === this.alone) return;
        this.alone = piece;
        this.dress();
        this.arrange();
        this.lookFrom('three-quarter');
        this.listener.changed();
    }

    setRoom(room: boolean): void {
        this.room = room;
        this.arrange();
        this.listener.changed();
    }

    setLeast(least: boolean): void {
        this.plumb.wanted = least;
        this.arrange();
        this.listener.changed();
    }

    /** Cuts square to an axis of the stair, in the middle at first; null for no section. */
    setSection(axis: Axis | null, level?: number): void {
        if (axis !== null) this.section.level = level ?? (axis === this.section.axis ? this.section.level : this.reach(axis).middle);
        this.section.axis = axis;
        this.stage.wake(true);
        this.arrange();
        this.listener.changed();
    }

    /** From where to where a section can lie along an axis, mm of the stair. */
    reach(axis: Axis): { low: number; high: number; middle: number } {
        const box = new Box3();
        for (const piece of this.seen) box.union(piece.wood.geometry.boundingBox!.clone().applyMatrix4(piece.node.matrix));
        const [low, high] = box.isEmpty() ? [0, 10] : [Math.floor(box.min[axis]), Math.ceil(box.max[axis])];
        return { low: low + 2, high: high - 2, middle: Math.round((low + high) / 2) };
    }

    /** Looks from one of the stair's sides; with a piece in the hand, at one of its own faces. */
    lookFrom(view: ViewName, still = false): void {
        if (this.model === null) return;
        const flat = view !== 'three-quarter';
        if (this.alone === null) {
            this.eye.look(this.model.views[view], this.points(), { flat, still, right: new Vector3(1, 0, 0) });
            return;
        }
        const { side, edge } = this.alone.text.bench;
        const [out, along] = [normalOf(side), new Vector3(...side.right)];
        const edgeOut = edge.round > 0 ? new Vector3(...edge.up) : normalOf(edge);
        const ways: Record<ViewName, Vector3> = { front: out, plan: edgeOut, side: along, 'three-quarter': out.clone().multiplyScalar(1.1).add(edgeOut).addScaledVector(along, 0.55) };
        const picked = this.faceOfCut(this.alone);
        if (picked) ways['three-quarter'] = picked.clone().multiplyScalar(1.2).addScaledVector(along, 0.5).addScaledVector(Math.abs(picked.dot(out)) < 0.5 ? out : edgeOut, 0.75);
        const turn = this.alone.wood.matrixWorld;
        this.eye.look(ways[view].transformDirection(turn), this.points(), { flat, still, right: along.transformDirection(turn) });
    }

    /** The way the face of a piece looks that the cut laid over it is in; null when none is. */
    private faceOfCut(piece: Piece): Vector3 | null {
        if (this.cutText?.part !== piece.id) return null;
        const cut = piece.text.cuts.find((c) => `${piece.id}/${c.id}` === this.cutText!.id);
        const face = cut && piece.text.faces[cut.face];
        return face ? new Vector3(face[3], face[4], face[5]).cross(new Vector3(face[6], face[7], face[8])) : null;
    }

    fit(): void {
        this.eye.fit(this.points());
    }

    turn(right: number, up: number): void {
        this.eye.turn(right, up);
    }

    shift(right: number, up: number): void {
        this.eye.shift(right, up);
    }

    nearer(times: number): void {
        this.eye.nearer(times);
    }

    /** What the last picture cost: for measuring. */
    get cost(): { ms: number; calls: number; triangles: number } {
        return { ms: this.stage.lastFrame, ...this.stage.drawn };
    }

    dispose(): void {
        this.loading?.abort();
        this.picking.dispose();
        this.offTones();
        this.eye.dispose();
        this.stage.dispose();
        if (this.model) disposeOf(this.model.root.parent!);
    }

    private get seen(): readonly Piece[] {
        return this.alone ? [this.alone] : (this.model?.pieces ?? []);
    }

    private points(): Vector3[] {
        return [...this.seen.flatMap((p) => p.outmost.map((c) => c.clone().applyMatrix4(p.wood.matrixWorld))), ...this.plumb.ends];
    }

    private put(model: Model): void {
        this.clearMarks();
        this.clearOverlay();
        this.plumb.clear();
        this.section.node.removeFromParent();
        if (this.model) disposeOf(this.model.root.parent!);
        this.model = model;
        model.root.add(this.section.node);
        this.stage.scene.add(model.root.parent!);
        this.dress();
        this.lay();
        this.layPlumb();
    }

    /** Puts everything where it is to be seen, after something of that has changed. */
    private arrange(): void {
        const model = this.model;
        if (model === null) return;
        takeApart(model.pieces, this.alone ? 0 : this.apart);
        if (this.alone) layDown(this.alone, this.eye.camera.aspect);
        for (const piece of model.pieces) piece.node.visible = this.alone === null || this.alone === piece;
        this.showRoom();
        this.plumb.see(this.isWhole);
        this.clearMarks();
        if (this.alone) this.alone.node.add((this.marks = benchMarks(model, this.alone, this.tones.ink, this.section.planes)));
        this.section.cut(model);
        const box = new Box3();
        for (const piece of this.seen) box.union(piece.wood.geometry.boundingBox!.clone().applyMatrix4(piece.wood.matrixWorld));
        const own = box.getBoundingSphere(new Sphere());
        this.ball.set(own.center, own.radius + (this.alone ? 0.2 : 1.6));
        this.stage.sun.shadow.intensity = this.alone ? 0 : 0.8; // turned off, not left out: that would make other programs
        this.lightStair(model, own.radius);
        this.stage.shade();
    }

    private lightStair(model: Model, radius: number): void {
        if (this.alone) return;
        // Over the left shoulder of the one who stands at the stair's open corner.
        const from = model.views['three-quarter'].clone().setY(0).normalize().applyAxisAngle(new Vector3(0, 1, 0), -0.5).setY(1.25);
        this.stage.light(from, this.ball.center, radius * 1.15);
    }

    /** The room stands only round the whole stair, and without what would hide it. */
    private showRoom(): boolean {
        let changed = false;
        for (const part of this.model?.room ?? []) {
            const hides = part.kind === 'wall' || part.kind === 'floor';
            const before = !hides || part.looks.dot(this.eye.camera.position.clone().sub(part.at)) > 0;
            const visible = this.room && this.alone === null && before && (this.apart < 0.01 || part.kind === 'floor');
            changed ||= part.node.visible !== visible;
            part.node.visible = visible;
        }
        return changed;
    }

    private settle(): void {
        this.eye.settle(this.ball.center, this.ball.radius);
        this.listener.marked(this.plumb.on(this.canvas, this.eye.camera));
        const model = this.model;
        if (model === null) return;
        const roomChanged = this.showRoom();
        if (this.section.axis !== null) {
            if (this.section.face(model, this.eye.camera.position) || roomChanged) {
                this.section.cut(model);
                this.stage.shade();
            }
            this.section.scale(sheet.pixel.value * this.eye.camera.position.distanceTo(this.ball.center) * 1000);
        }
        if (this.alone) {
            // In the hand the light comes over the left shoulder, however it is turned.
            const over = new Vector3(-0.45, 0.7, 1).applyQuaternion(this.eye.camera.quaternion);
            this.stage.light(over, this.ball.center, this.ball.radius);
        }
    }

    private paint(): void {
        this.tones = readTones(this.canvas);
        this.stage.scene.background = this.tones.paper;
        this.stage.tone(this.tones.dark);
        this.section.paint(this.tones);
        this.dress();
        this.lay();
        this.layPlumb();
        this.arrange();
    }

    private dress(): void {
        if (this.model === null) return;
        const parts = new Set(this.picks.filter((id) => !id.includes('/')));
        const cutOf = new Set([...this.picks.filter((id) => id.includes('/')).map((id) => id.split('/')[0]!), ...(this.cutText ? [this.cutText.part] : [])]);
        // In the hand a piece is seen as it is.
        dress(this.model, this.tones, { picked: this.alone ? new Set() : parts, wrong: new Set(this.wrongs), hovered: this.hover, byCut: this.cutText !== null, cutOf: this.alone ? new Set() : cutOf });
        this.stage.wake();
    }

    /** Cut faces take the tone of their pieces. */
    private cutAgain(): void {
        if (this.model && this.section.axis !== null) this.section.cut(this.model);
    }

    private lay(): void {
        this.clearOverlay();
        const piece = this.model?.pieces.find((p) => p.id === this.cutText?.part);
        if (!piece || !this.cutText) return;
        // The volume is told where the stair stands whole; below its piece it moves along with it.
        this.overlay = volume(this.cutText, this.tones.accent, this.section.planes);
        this.overlay.position.copy(piece.home);
        this.overlay.quaternion.copy(piece.turn);
        const whole = this.overlay.matrix.compose(this.overlay.position, this.overlay.quaternion, this.overlay.scale).invert();
        whole.decompose(this.overlay.position, this.overlay.quaternion, this.overlay.scale);
        piece.node.add(this.overlay);
        this.stage.wake();
    }

    /** Whether the stair stands put together: taken apart, nothing is where headroom is measured. */
    private get isWhole(): boolean {
        return this.alone === null && this.apart < 0.01;
    }

    private layPlumb(): void {
        if (this.model) this.plumb.lay(this.model.root, this.tones.accent, this.section.planes, this.isWhole);
        this.stage.wake();
    }

    private clearMarks(): void {
        if (this.marks) disposeOf(this.marks);
        this.marks = null;
    }

    private clearOverlay(): void {
        if (this.overlay) disposeOf(this.overlay);
        this.overlay = null;
    }

    private hovered(met: Met | null): void {
        this.hover = met?.piece.id ?? null;
        this.dress();
        this.listener.said(met ? `${met.piece.name} · ${met.piece.text.mark}` : '');
    }
}

/** The way the surface looks that something is pencilled on. */
function normalOf(place: { right: [number, number, number]; up: [number, number, number] }): Vector3 {
    return new Vector3(...place.right).cross(new Vector3(...place.up));
}
