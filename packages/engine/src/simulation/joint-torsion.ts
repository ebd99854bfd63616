/**
 * Angular acceleration of the driven end of a chain over the squared (steady) speed of its source, dimensionless, at a turn `angle` of the source from the
 * basis of its arm map. unevenness: of the whole chain, [0, 1); phase: half the argument of q/p, rad.
 * The driven turn is angle + arg(1 + k exp(-2j(angle - phase))): differentiated twice, exactly, so every even order is in it.
 */
export function torsionalAcceleration(unevenness: number, angle: number, phase = 0): number {
  const c = Math.cos(2 * (angle - phase));
  const s = Math.sin(2 * (angle - phase));
  // -4 z / (1 + z)^2 with z = k (c - j s): imaginary part.
  const [x, y] = [unevenness * c, -unevenness * s];
  const [a, b] = [(1 + x) ** 2 - y ** 2, 2 * (1 + x) * y];
  return (-4 * (y * a - x * b)) / (a * a + b * b);
}
