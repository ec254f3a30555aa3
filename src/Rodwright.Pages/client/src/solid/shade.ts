import { ShaderChunk } from 'three';

const five = /shadow = \(\s*texture\( shadowMap, vec3\( shadowCoord\.xy \+ vogelDiskSample\( 0,[\s\S]*?\) \* 0\.2;/;

/**
 * Shadows by one look at the shadow map, smoothed by the card itself, where the library takes five: nobody sees the difference at 2 mm to a point of the map, and without a
 * graphics card they cost half of the picture. Should the library's text change, it goes on with five.
 */
export function lightShadows(fragmentShader: string): string {
    const own = ShaderChunk.shadowmap_pars_fragment.replace(five, 'shadow = texture( shadowMap, shadowCoord.xyz );');
    return fragmentShader.replace('#include <shadowmap_pars_fragment>', own);
}
