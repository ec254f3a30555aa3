import { Color, MeshLambertMaterial, type Plane, Vector3 } from 'three';
import { lightShadows } from './shade';

/** How the years lie in a piece: grain along a direction, the heart of the tree at a point beside the board; or the layers of a sheet, square to z. */
export interface Years {
    readonly grain: Vector3;
    readonly heart: Vector3;
    readonly sheet: boolean;
}

/**
 * Strength of the year line at a point of the piece, 0 to 1, and how much of it can be seen at this size. Where the years are narrower than the pixels they are left out.
 * One text for surfaces and for cut faces, so that the lines of a cut run on over its edges.
 */
export const yearsText = /* glsl */ `
    float years(vec3 p, vec3 grain, vec3 heart, float sheet, out float seen) {
        vec3 d = p - heart;
        float along = dot(d, grain);
        // The tree tapers, and does not grow quite straight.
        float wander = 0.022 * along + 1.7 * sin(along / 310.0 + heart.y);
        float r = sheet > 0.5 ? p.z / 2.2 : (length(d - along * grain) + wander) / 6.5;
        seen = 1.0 - smoothstep(0.18, 0.5, fwidth(r));
        float t = fract(r);
        return sheet > 0.5 ? step(0.5, fract(r * 0.5)) : smoothstep(0.25, 0.9, t) * (1.0 - smoothstep(0.9, 1.0, t));
    }`;

/** Dull timber, softly shaded, with its years faintly there when one comes near. */
export class Timber extends MeshLambertMaterial {
    private readonly own = { grain: { value: new Vector3(1, 0, 0) }, heart: { value: new Vector3() }, sheet: { value: 0 } };

    constructor(years: Years, clip: Plane[]) {
        super({ clippingPlanes: clip, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
        this.own.grain.value.copy(years.grain);
        this.own.heart.value.copy(years.heart);
        this.own.sheet.value = years.sheet ? 1 : 0;
    }

    override onBeforeCompile(shader: { uniforms: Record<string, unknown>; vertexShader: string; fragmentShader: string }): void {
        Object.assign(shader.uniforms, this.own);
        shader.vertexShader = shader.vertexShader
            .replace('#include <common>', '#include <common>\nvarying vec3 inPiece;')
            .replace('#include <begin_vertex>', '#include <begin_vertex>\ninPiece = position;');
        shader.fragmentShader = lightShadows(shader.fragmentShader)
            .replace('#include <common>', `#include <common>\nvarying vec3 inPiece;\nuniform vec3 grain, heart;\nuniform float sheet;\n${yearsText}`)
            .replace('#include <color_fragment>', '#include <color_fragment>\nfloat seen;\nfloat year = years(inPiece, grain, heart, sheet, seen);\ndiffuseColor.rgb *= 1.0 - 0.13 * seen * (year - 0.35);');
    }

    override customProgramCacheKey(): string {
        return 'timber';
    }
}

/** Walls and floors. */
export class Plaster extends MeshLambertMaterial {
    constructor(clip: Plane[]) {
        super({ clippingPlanes: clip, emissiveIntensity: 0.45, polygonOffset: true, polygonOffsetFactor: 2, polygonOffsetUnits: 2 });
    }

    override onBeforeCompile(shader: { fragmentShader: string }): void {
        shader.fragmentShader = lightShadows(shader.fragmentShader);
    }

    override customProgramCacheKey(): string {
        return 'plaster';
    }
}

/** Where the heart lies: beside the piece, a little askew, so that neighbouring boards do not look sawn from one another. */
export function heartOf(centre: Vector3, grain: Vector3, thickness: number, seed: number): Vector3 {
    const turn = 0.6 + (seed * 0.37) % 1.1;
    const across = new Vector3(-grain.y, grain.x, 0);
    return centre.clone().addScaledVector(across, 40 * Math.cos(turn * 5)).add(new Vector3(0, 0, -thickness / 2 - 30 - 60 * turn));
}

/** A timber's colour on this ground. */
export function toned(timber: Color, paper: Color, dark: boolean): Color {
    return dark ? timber.clone().lerp(paper, 0.3) : timber.clone().lerp(paper, 0.38);
}
