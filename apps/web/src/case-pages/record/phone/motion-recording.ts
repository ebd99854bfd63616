import { type Channel, type MemoryTrack, memoryRecording, type Recording } from "@halfturn/recordings";

/** What a device sensed, as it came: seconds on one clock, m/s^2 along its own axes, m/s. */
export interface MotionTake {
  readonly times: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly speedTimes: Float64Array;
  readonly speeds: Float64Array;
}

const channel = (name: string, quantity: Channel["quantity"]): Channel => ({ id: name, name, unit: null, quantity, fullScale: null });

/** Rising times only, as a recording has them: browsers have been seen to hand over one event twice. */
function rising(times: Float64Array, columns: readonly Float64Array[]): Pick<MemoryTrack, "times" | "values"> {
  let last = Number.NEGATIVE_INFINITY;
  const isKept = Uint8Array.from(times, (time) => {
    if (!(time > last)) return 0;
    last = time;
    return 1;
  });
  const keep = (column: Float64Array): Float64Array => column.filter((_, k) => isKept[k] === 1);
  return { times: keep(times), values: columns.map(keep) };
}

const stamped = (channels: readonly Channel[], times: Float64Array, columns: readonly Float64Array[]): MemoryTrack => {
  const kept = rising(times, columns);
  return { channels, clock: { kind: "stamped", count: kept.times?.length ?? 0 }, ...kept };
};

/** The motion of a device as a recording with its own time stamps, and the receiver's speed beside it where there was one. */
export function motionRecording({ times, x, y, z, speedTimes, speeds }: MotionTake): Recording {
  const motion = stamped(
    ["accel_x", "accel_y", "accel_z"].map((name) => channel(name, "acceleration")),
    times,
    [x, y, z],
  );
  const speed = speedTimes.length < 2 ? [] : [stamped([channel("speed", "velocity")], speedTimes, [speeds])];
  return memoryRecording([motion, ...speed]);
}

/** Times that are enough to tell a rate by. */
export const RATE_TIMES = 100;
const LEAST_TIMES = 10;

/** Samples per second over the last times of a take; null while there are too few. */
export function liveRate(times: readonly number[]): number | null {
  const recent = times.slice(-RATE_TIMES);
  const [first, last] = [recent[0], recent.at(-1)];
  return recent.length < LEAST_TIMES || first === undefined || last === undefined || !(last > first)
    ? null
    : (recent.length - 1) / (last - first);
}
