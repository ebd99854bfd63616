import type { RotatingPart } from "../orders/index.js";
import type { SampleReader } from "../signal/sample-reader.js";
import type { ShaftAngle } from "../signal/shaft-angle.js";

/** One channel of a recording. */
export interface RecordedChannel {
  readonly samples: SampleReader;
  /** Of a sound only frequencies are believed: how loud a part is says nothing about how much it shakes. Velocities (m/s) and displacements (m) are turned into accelerations order by order. */
  readonly quantity: "acceleration" | "velocity" | "displacement" | "sound";
  /** Greatest value that the channel can show, in its unit; null = not known. */
  readonly fullScale: number | null;
}

/** The shaft whose angle is known, and how well. */
export interface ReferenceShaft {
  readonly angle: ShaftAngle;
  /** Its turns per turn of the wheel. */
  readonly perWheelTurn: number;
  /**
   * 0 where the shaft's own turns were counted (pulses, a ridge of its own). From a speed log: half width of the share by which the shaft may turn faster or slower
   * than the log says (circumference, receiver); the speed is then followed in the vibration itself.
   */
  readonly looseness: number;
  /** Half width of the share by which that factor changes along the run; the looseness when left out. Smaller where only the shape of the speed is known well. */
  readonly wander?: number;
}

/** A recording on the road and what turned. */
export interface AttributionInput {
  /** One or more of the same rate, start and length. Accelerations in m/s^2; the first kind found among them, in the order above, is used for shares. */
  readonly channels: readonly RecordedChannel[];
  readonly reference: ReferenceShaft;
  readonly parts: readonly RotatingPart[];
  /** -3 dB of the sensor's filter, Hz, where it is known and lies below half the rate; null = not known, so what lies above half the rate may have folded back. */
  readonly filter: number | null;
}
