import { MathUtils, PerspectiveCamera, Spherical, TOUCH, Vector3 } from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import type { Motion } from './motion';
import { sheet } from './pencil';

/** Angle of sight for looking round, and for views along an axis, in which what is as long as another thing is drawn as long. */
const [round, flat] = [20, 0.8];

/** The eye: looks at a point, turns about it, comes nearer and goes away; by mouse, touch and keys. */
export class Eye {
    readonly camera = new PerspectiveCamera(round, 1, 0.01, 100);
    private readonly orbit: OrbitControls;
    private readonly size = { width: 1, height: 1 };
    /** The direction of the view that was asked for last, while it is flat. */
    private along: Vector3 | null = null;

    constructor(canvas: HTMLElement, private readonly motion: Motion, wake: () => void) {
        this.camera.position.set(4, 3, 5);
        this.orbit = new OrbitControls(this.camera, canvas);
        this.orbit.zoomToCursor = true;
        this.orbit.rotateSpeed = 0.75;
        this.orbit.touches = { ONE: TOUCH.ROTATE, TWO: TOUCH.DOLLY_PAN };
        this.orbit.addEventListener('change', wake);
        this.orbit.addEventListener('start', () => this.motion.stop('eye'));
    }

    /** The direction from what is looked at to the eye. */
    get direction(): Vector3 {
        return this.camera.position.clone().sub(this.orbit.target).normalize();
    }

    resize(width: number, height: number): void {
        [this.size.width, this.size.height] = [width, height];
        this.camera.aspect = width / height;
        sheet.size.value.set(width, height);
    }

    /** Settles the eye before a picture of what lies in a ball. */
    settle(centre: Vector3, radius: number): void {
        const tangent = Math.tan(MathUtils.degToRad(this.camera.fov / 2));
        [this.orbit.minDistance, this.orbit.maxDistance] = [0.03 / tangent, (4 * radius) / tangent];
        this.orbit.update();
        if (this.along !== null && this.along.dot(this.direction) < 0.99995) this.openUp();
        const distance = this.camera.position.distanceTo(centre);
        this.camera.near = Math.max(distance - radius, distance / 500, 0.01);
        this.camera.far = Math.max(distance + radius, this.camera.near + 0.1);
        this.camera.updateProjectionMatrix();
        sheet.near.value = this.camera.near;
        sheet.pixel.value = (2 * tangent) / this.size.height;
    }

    /** Looks from a direction at points, so that all of them are seen and fill the picture. Views along an axis are flat. */
    look(from: Vector3, points: readonly Vector3[], options: { flat: boolean; still?: boolean; right?: Vector3 }): void {
        const fov = options.flat ? flat : round;
        const way = anglesOf(from, options.right);
        const goal = this.fitted(way, points, fov);
        this.along = null;
        this.move(goal.target, way, goal.distance, fov, options.still === true, () => {
            this.along = options.flat ? this.direction : null;
        });
    }

    /** Sees all of the points from where it looks now. */
    fit(points: readonly Vector3[]): void {
        const way = new Spherical().setFromVector3(this.direction);
        const goal = this.fitted(way, points, this.camera.fov);
        this.move(goal.target, way, goal.distance, this.camera.fov, false);
    }

    /** Turns about what is looked at, degrees to the right and upwards. */
    turn(right: number, up: number): void {
        const way = new Spherical().setFromVector3(this.direction);
        way.theta += MathUtils.degToRad(right);
        way.phi = MathUtils.clamp(way.phi - MathUtils.degToRad(up), 1e-4, Math.PI - 1e-4);
        this.move(this.orbit.target.clone(), way, this.distance, this.camera.fov, false);
    }

    /** Moves what is looked at, parts of the picture's height. */
    shift(right: number, up: number): void {
        const high = 2 * this.distance * Math.tan(MathUtils.degToRad(this.camera.fov / 2));
        const step = new Vector3(right * high, up * high, 0).applyQuaternion(this.camera.quaternion);
        this.move(this.orbit.target.clone().add(step), new Spherical().setFromVector3(this.direction), this.distance, this.camera.fov, false);
    }

    /** Comes nearer (above 1) or goes away. */
    nearer(times: number): void {
        this.move(this.orbit.target.clone(), new Spherical().setFromVector3(this.direction), this.distance / times, this.camera.fov, false);
    }

    dispose(): void {
        this.orbit.dispose();
    }

    private get distance(): number {
        return this.camera.position.distanceTo(this.orbit.target);
    }

    private move(target: Vector3, way: Spherical, distance: number, fov: number, still: boolean, done?: () => void): void {
        const [oldTarget, oldWay, oldFov] = [this.orbit.target.clone(), new Spherical().setFromVector3(this.direction), this.camera.fov];
        // Heights of the picture at what is looked at, on a scale on which coming nearer is even.
        const seen = (d: number, f: number) => Math.log(d * Math.tan(MathUtils.degToRad(f / 2)));
        const [before, after] = [seen(this.distance, oldFov), seen(distance, fov)];
        const turn = MathUtils.euclideanModulo(way.theta - oldWay.theta + Math.PI, 2 * Math.PI) - Math.PI;
        this.motion.start('eye', still ? 0 : 380, (part) => {
            this.camera.fov = MathUtils.lerp(oldFov, fov, part);
            const tangent = Math.tan(MathUtils.degToRad(this.camera.fov / 2));
            const at = new Spherical(Math.exp(MathUtils.lerp(before, after, part)) / tangent, MathUtils.lerp(oldWay.phi, way.phi, part), oldWay.theta + turn * part);
            this.orbit.target.lerpVectors(oldTarget, target, part);
            this.camera.position.setFromSpherical(at).add(this.orbit.target);
            this.camera.lookAt(this.orbit.target);
        }, done);
    }

    /** Leaves a flat view once it is turned, without a jump in size. */
    private openUp(): void {
        this.along = null;
        const old = this.camera.fov;
        this.motion.start('lens', 250, (part) => {
            const [before, after] = [Math.tan(MathUtils.degToRad(this.camera.fov / 2)), Math.tan(MathUtils.degToRad(MathUtils.lerp(old, round, part) / 2))];
            this.camera.fov = MathUtils.lerp(old, round, part);
            this.camera.position.sub(this.orbit.target).multiplyScalar(before / after).add(this.orbit.target);
        });
    }

    /** Where to stand: the middle of what is seen is brought into the middle of the picture, a few times over, because coming nearer moves it. */
    private fitted(way: Spherical, points: readonly Vector3[], fov: number): { target: Vector3; distance: number } {
        const eye = new PerspectiveCamera(fov, this.camera.aspect, 0.01, 1000);
        const tangent = Math.tan(MathUtils.degToRad(fov / 2));
        const target = points.reduce((sum, p) => sum.add(p), new Vector3()).divideScalar(Math.max(1, points.length));
        let distance = 4 / tangent;
        for (let i = 0; i < 12; i++) {
            eye.position.setFromSpherical(new Spherical(distance, way.phi, way.theta)).add(target);
            eye.lookAt(target);
            eye.updateMatrixWorld();
            const box = { left: Infinity, right: -Infinity, low: Infinity, high: -Infinity };
            for (const p of points) {
                const { x, y } = p.clone().project(eye);
                [box.left, box.right, box.low, box.high] = [Math.min(box.left, x), Math.max(box.right, x), Math.min(box.low, y), Math.max(box.high, y)];
            }
            const high = distance * tangent;
            target.add(new Vector3(((box.left + box.right) / 2) * high * this.camera.aspect, ((box.low + box.high) / 2) * high, 0).applyQuaternion(eye.quaternion));
            distance *= Math.max(box.right - box.left, box.high - box.low) / 2 / 0.88;
        }
        return { target, distance };
    }
}

/** A direction as angles; straight from above or below, what should lie to the right says how the picture is turned. */
function anglesOf(from: Vector3, right?: Vector3): Spherical {
    const way = new Spherical().setFromVector3(from.clone().normalize());
    if (Math.hypot(from.x, from.z) < 1e-3 * Math.abs(from.y)) way.theta = right ? Math.atan2(-right.z, right.x) : 0;
    way.phi = MathUtils.clamp(way.phi, 1e-4, Math.PI - 1e-4);
    return way;
}
