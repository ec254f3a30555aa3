import { type Color } from 'three';
import type { Model, Piece } from './model';
import { redraw } from './pencil';
import { toned } from './timber';
import type { Tones } from './tones';

/** What a piece is just now. */
export interface State {
    readonly picked: ReadonlySet<string>;
    readonly wrong: ReadonlySet<string>;
    readonly hovered: string | null;
    /** Whether a cut is picked: then parts that go with it are only tinted, so that the cut stands out. */
    readonly byCut: boolean;
    /** The ids of pieces of which only a cut is picked: tinted likewise. */
    readonly cutOf: ReadonlySet<string>;
}

/** Gives every piece its tone and its pencil. What is picked is told by a heavier line as well as by the accent, what is wrong likewise. */
export function dress(model: Model, tones: Tones, state: State): void {
    for (const piece of model.pieces) {
        const wood = toned(piece.timber, tones.paper, tones.dark);
        const [filled, line, much] = lookOf(piece, tones, state);
        piece.wood.material.color.copy(filled ? wood.lerp(filled, much) : wood);
        redraw(piece.lines.material, line ?? graphite(tones, 0.015), line ? 2.6 : state.hovered === piece.id ? 2.1 : 1.15);
    }
    for (const part of model.room) {
        // Half of a room's tone is its own, so that no wall goes dark.
        const tone = tones.paper.clone().lerp(tones.ink, tones.dark ? 0.06 : part.kind === 'wall' ? 0.01 : 0.04);
        part.face.material.emissive.copy(tone);
        part.face.material.color.copy(tone).multiplyScalar(0.56);
        redraw(part.lines.material, graphite(tones, 0.22), 0.8);
    }
}

function lookOf(piece: Piece, tones: Tones, state: State): [Color | null, Color | null, number] {
    if (state.picked.has(piece.id) && !state.byCut) return [wash(tones.accent, tones), tones.accent, 0.85];
    if (state.wrong.has(piece.id)) return [wash(tones.wrong, tones), tones.wrong, 0.7];
    if (state.cutOf.has(piece.id) || state.picked.has(piece.id)) return [wash(tones.accent, tones), null, 0.35];
    return [null, null, 0];
}

/** A colour as a thin wash on the ground. */
function wash(colour: Color, tones: Tones): Color {
    return colour.clone().lerp(tones.paper, tones.dark ? 0.15 : 0.18);
}

/** A softer pencil: lines that overlap at their ends must not show it, so it is a lighter grey and not a thinner one. */
function graphite(tones: Tones, softer: number): Color {
    return tones.ink.clone().lerp(tones.paper, softer);
}
