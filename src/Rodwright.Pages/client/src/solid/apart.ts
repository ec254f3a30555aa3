import { MathUtils, Quaternion, Vector3 } from 'three';
import type { Piece } from './model';

/** Puts every piece where it is when the stair is taken apart so far, 0 to 1. */
export function takeApart(pieces: readonly Piece[], apart: number): void {
    for (const piece of pieces) {
        piece.node.position.copy(piece.home);
        piece.node.quaternion.copy(piece.turn);
        for (const [x, y, z, from, to] of piece.text.apart) {
            const part = MathUtils.clamp((apart - from) / (to - from), 0, 1);
            piece.node.position.x += x * part;
            piece.node.position.y += y * part;
            piece.node.position.z += z * part;
        }
        piece.node.updateMatrixWorld();
    }
}

/** Lays a post down as on the bench, its face side to the one who looks and its foot to the left, where the picture is wider than high. */
export function layDown(piece: Piece, aspect: number): void {
    if (piece.text.kind !== 'Newel' || aspect < 1.1) return;
    const { right, up } = piece.text.bench.side;
    const out = new Vector3(...right).cross(new Vector3(...up)).applyQuaternion(piece.turn);
    piece.node.quaternion.premultiply(new Quaternion().setFromAxisAngle(out, -Math.PI / 2));
    piece.node.updateMatrixWorld();
}
