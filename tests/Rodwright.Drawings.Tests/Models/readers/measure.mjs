// Volume and box of a closed body of triangles.
export function measure(points, order) {
  const min = [Infinity, Infinity, Infinity], max = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < points.length; i++) {
    min[i % 3] = Math.min(min[i % 3], points[i]);
    max[i % 3] = Math.max(max[i % 3], points[i]);
  }
  // From a corner of its own: far from the origin small numbers would be lost.
  const at = i => [points[3 * i] - min[0], points[3 * i + 1] - min[1], points[3 * i + 2] - min[2]];
  let six = 0;
  for (let i = 0; i < order.length; i += 3) {
    const [a, b, c] = [at(order[i]), at(order[i + 1]), at(order[i + 2])];
    six += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return { volume: six / 6, min, max };
}
