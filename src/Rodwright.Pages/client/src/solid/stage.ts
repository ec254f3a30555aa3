import { DirectionalLight, HemisphereLight, PCFShadowMap, Scene, Vector3, WebGLRenderer, type Camera, type Object3D } from 'three';

/** Pictures of a movement that follow one another more slowly than this, ms, are drawn coarser, until nothing has moved for a while, ms. */
const [slow, awhile] = [70, 220];

/** Who wants to be asked before each picture. */
export type BeforeFrame = (now: number) => boolean;

/**
 * The canvas and what draws on it: pictures are made on demand only, never in an endless loop. It follows the size of its canvas, and outlives a lost context.
 */
export class Stage {
    readonly scene = new Scene();
    readonly sun = new DirectionalLight(0xfff6ea, 1.9);
    readonly sky = new HemisphereLight(0xffffff, 0xdac9b0, 2.1);
    /** Size of the canvas on the screen, in the screen's own points: a picture of any other size would be drawn out of focus. */
    private readonly size = { width: 1, height: 1 };
    /** Milliseconds the last picture took to be handed over. */
    lastFrame = 0;
    private readonly renderer: WebGLRenderer;
    private readonly watch: ResizeObserver;
    private readonly before: BeforeFrame[] = [];
    private asked = 0;
    private lost = false;
    private moving = false;
    private coarse = false;
    /** When the last picture was drawn, how many of a movement have been slow, and what will draw it sharp again. */
    private readonly pace = { last: 0, slow: 0, sharp: 0 };

    /** @throws Error when WebGL cannot be had. */
    constructor(private readonly canvas: HTMLCanvasElement, private readonly camera: Camera, private readonly resized: () => void, private readonly said: (lost: boolean) => void) {
        // The buffer is kept, so that the picture can be taken off the canvas at any time.
        const context = canvas.getContext('webgl2', { alpha: false, antialias: true, depth: true, stencil: false, preserveDrawingBuffer: true, powerPreference: 'low-power' });
        if (context === null) throw new Error('there is no WebGL');
        this.renderer = new WebGLRenderer({ canvas, context });
        this.renderer.localClippingEnabled = true;
        this.renderer.shadowMap.enabled = true;
        this.renderer.shadowMap.type = PCFShadowMap;
        this.renderer.shadowMap.autoUpdate = false;
        this.sun.castShadow = true;
        this.sun.shadow.mapSize.set(2048, 2048);
        this.sun.shadow.normalBias = 0.004;
        this.sun.shadow.bias = -0.0004;
        this.sun.shadow.radius = 3;
        this.scene.add(this.sun, this.sun.target, this.sky);
        canvas.addEventListener('webglcontextlost', this.onLost);
        canvas.addEventListener('webglcontextrestored', this.onRestored);
        this.watch = new ResizeObserver(([entry]) => this.fitCanvas(entry!.devicePixelContentBoxSize?.[0]));
        try {
            this.watch.observe(canvas, { box: 'device-pixel-content-box' });
        } catch {
            this.watch.observe(canvas); // a browser that does not tell them: nearly right
        }
        this.fitCanvas();
    }

    /** Asks before each picture; one that answers true wants another picture after it. */
    ask(before: BeforeFrame): void {
        this.before.push(before);
    }

    /** Wants one picture; of a movement, or of something that has changed where it stands. */
    readonly wake = (moving = false): void => {
        this.moving ||= moving;
        if (this.asked === 0) this.asked = requestAnimationFrame(this.frame);
    };

    /** The shadows have changed. */
    shade(): void {
        this.renderer.shadowMap.needsUpdate = true;
        this.wake();
    }

    /** Lets light fall from a direction on a ball. */
    light(from: Vector3, centre: Vector3, radius: number): void {
        this.sun.target.position.copy(centre);
        this.sun.position.copy(from).normalize().multiplyScalar(2 * radius).add(centre);
        const view = this.sun.shadow.camera;
        [view.left, view.right, view.bottom, view.top, view.near, view.far] = [-radius, radius, -radius, radius, 0.5 * radius, 3.5 * radius];
        view.updateProjectionMatrix();
    }

    /** Suits the light to the ground: on a dark board what is drawn is lit less from above. */
    tone(dark: boolean): void {
        this.sun.intensity = dark ? 1.7 : 1.5;
        this.sky.intensity = dark ? 1.5 : 1.9;
    }

    /** How many things the last picture was made of. */
    get drawn(): { calls: number; triangles: number } {
        return { calls: this.renderer.info.render.calls, triangles: this.renderer.info.render.triangles };
    }

    /** Gives the context back, before what it holds is let go piece by piece. */
    dispose(): void {
        cancelAnimationFrame(this.asked);
        clearTimeout(this.pace.sharp);
        this.asked = -1; // nothing wakes it any more
        this.watch.disconnect();
        this.canvas.removeEventListener('webglcontextlost', this.onLost);
        this.canvas.removeEventListener('webglcontextrestored', this.onRestored);
        this.renderer.forceContextLoss();
        this.sun.dispose();
        this.renderer.dispose();
    }

    private readonly frame = (now: number): void => {
        this.asked = 0;
        if (this.lost) return;
        const begun = performance.now();
        let more = false;
        for (const before of this.before) more = before(now) || more;
        this.keepPace(now, more || this.moving);
        this.moving = false;
        this.renderer.render(this.scene, this.camera);
        this.lastFrame = performance.now() - begun;
        if (more) this.wake();
    };

    /** Where there is no graphics card a movement is drawn with fewer pixels, and what stands still with all of them. */
    private keepPace(now: number, moving: boolean): void {
        const { pace } = this;
        const gap = now - pace.last;
        pace.last = now;
        if (gap < slow / 2 || gap > 30 * slow) pace.slow = 0;
        else if (moving && gap > slow) pace.slow++;
        if (!this.coarse && pace.slow < 3) return;
        clearTimeout(pace.sharp);
        pace.sharp = window.setTimeout(() => this.draw(false), Math.max(awhile, Math.min(2 * gap, 700)));
        if (!this.coarse) this.draw(true);
    }

    private draw(coarse: boolean): void {
        this.coarse = coarse;
        this.pace.slow = 0;
        this.sharpen();
        this.wake();
    }

    private sharpen(): void {
        const { width, height } = this.size;
        const less = this.coarse ? 0.5 : Math.min(1, 2 / devicePixelRatio); // finer than two to a pixel nobody sees
        this.renderer.setSize(Math.round(width * less), Math.round(height * less), false); // the style sheet sizes the canvas
    }

    private readonly onLost = (event: Event): void => {
        event.preventDefault(); // or it will not be given back
        this.lost = true;
        this.said(true);
    };

    private readonly onRestored = (): void => {
        this.lost = false;
        this.said(false);
        this.shade();
    };

    private fitCanvas(points?: ResizeObserverSize): void {
        const { clientWidth, clientHeight } = this.canvas;
        if (clientWidth === 0 || clientHeight === 0) return;
        this.size.width = points?.inlineSize ?? Math.round(clientWidth * devicePixelRatio);
        this.size.height = points?.blockSize ?? Math.round(clientHeight * devicePixelRatio);
        this.sharpen();
        this.resized();
        this.wake();
    }
}

/** Gives back what the graphics card holds for an object and all below it. */
export function disposeOf(object: Object3D): void {
    object.traverse((one) => {
        const held = one as Partial<{ geometry: { dispose(): void }; material: { dispose(): void } | { dispose(): void }[] }>;
        held.geometry?.dispose();
        for (const material of [held.material].flat()) material?.dispose();
    });
    object.removeFromParent();
}
