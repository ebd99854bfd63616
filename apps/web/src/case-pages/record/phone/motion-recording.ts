import { type Channel, type MemoryTrack, memoryRecording, type Recording } from "@halfturn/recordings";

/** What a device sensed, as it came: seconds on one clock, m/s^2 along its own axes, m/s. */
export interface MotionTake {
  readonly times: readonly number[];
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly z: readonly number[];
  readonly speedTimes: readonly number[];
  readonly speeds: readonly number[];
}

const channel = (name: string, quantity: Channel["quantity"]): Channel => ({ id: name, name, unit: null, quantity, fullScale: null });

/** Rising times only, as a recording has them: browsers have been seen to hand over one event twice. */
function rising(times: readonly number[], columns: readonly (readonly number[])[]): Pick<MemoryTrack, "times" | "values"> {
  let last = Number.NEGATIVE_INFINITY;
  const kept = times.flatMap((time, k) => {
    if (!(time > last)) return [];
    last = time;
    return [k];
  });
  return {
    times: Float64Array.from(kept, (k) => times[k] as number),
    values: columns.map((column) => Float64Array.from(kept, (k) => column[k] ?? Number.NaN)),
  };
}

const stamped = (channels: readonly Channel[], times: readonly number[], columns: readonly (readonly number[])[]): MemoryTrack => {
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

/** Samples per second over the last while of a take; null while there are too few. */
export function liveRate(times: readonly number[]): number | null {
  const recent = times.slice(-LATELY);
  const [first, last] = [recent[0], recent.at(-1)];
  return recent.length < LEAST || first === undefined || last === undefined || !(last > first)
    ? null
    : (recent.length - 1) / (last - first);
}

const [LATELY, LEAST] = [100, 10];
