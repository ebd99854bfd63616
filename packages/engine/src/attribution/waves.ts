/** A column's cosine and sine at every sample. */
export interface Wave {
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
}

/** Two places so near, as a share, are one: rounding in working them out. */
const SAME = 4 * Number.EPSILON;

/**
 * Makes waves of so many cycles per turn (each > 0) at angles in rad. Many orders are sums of others, as the second of a part is twice its first: those are
 * products of the waves that are there, which takes a fraction of the time of a cosine and a sine. The waves are written anew by the next call.
 */
export function waveMaker(): (angles: Float64Array, perTurns: readonly number[]) => readonly Wave[] {
  let room = new Float64Array(0);
  return (angles, perTurns) => {
    const length = angles.length;
    if (room.length < 2 * length * perTurns.length) room = new Float64Array(2 * length * perTurns.length);
    const waves = perTurns.map((_, i): Wave => {
      const [first, middle, end] = [2 * i * length, (2 * i + 1) * length, (2 * i + 2) * length];
      return { cosine: room.subarray(first, middle), sine: room.subarray(middle, end) };
    });
    const rising = perTurns.map((perTurn, i) => ({ perTurn, i })).sort((a, b) => a.perTurn - b.perTurn);
    for (const [k, { perTurn, i }] of rising.entries()) {
      const addends = addendsOf(perTurn, rising.slice(0, k));
      if (addends === null) writeWave(angles, perTurn, waves[i] as Wave);
      else writeProduct(waves[addends[0]] as Wave, waves[addends[1]] as Wave, waves[i] as Wave);
    }
    return waves;
  };
}

interface Place {
  readonly perTurn: number;
  readonly i: number;
}

/** Two of the places, or one twice, that add up to another; null where none do. */
function addendsOf(sum: number, places: readonly Place[]): readonly [number, number] | null {
  for (const [k, a] of places.entries())
    for (const b of places.slice(k)) if (Math.abs(a.perTurn + b.perTurn - sum) <= SAME * sum) return [a.i, b.i];
  return null;
}

/** cos(a + b) and sin(a + b). */
function writeProduct(a: Wave, b: Wave, { cosine, sine }: Wave): void {
  for (let n = 0; n < cosine.length; n++) {
    const ca = a.cosine[n] as number;
    const sa = a.sine[n] as number;
    const cb = b.cosine[n] as number;
    const sb = b.sine[n] as number;
    cosine[n] = ca * cb - sa * sb;
    sine[n] = sa * cb + ca * sb;
  }
}

function writeWave(angles: Float64Array, perTurn: number, { cosine, sine }: Wave): void {
  for (let n = 0; n < angles.length; n++) {
    const phase = perTurn * (angles[n] as number);
    cosine[n] = Math.cos(phase);
    sine[n] = Math.sin(phase);
  }
}
