import { type Case, complaintRange, FOLLOWED_SPEED } from "@halfturn/casefile";
import { toSi } from "@halfturn/engine/units";
import { tachoPart } from "@halfturn/recordings";
import type { Look, LookedChannel, SpeedChoice } from "../../../worker/listening/listening-types.js";

/** How the speed is known, as somebody is filling it in. Speeds in km/h. */
export interface SpeedForm {
  readonly from: "column" | "tachometer" | "constant" | "vibration";
  /** The channel of a column or a tachometer. */
  readonly channel: string | null;
  /** What the tachometer looks at. */
  readonly part: string;
  readonly perTurn: number | null;
  readonly speed: number | null;
  readonly slowest: number | null;
  readonly fastest: number | null;
}

const TO_KMH = 3.6;
const SHAFT = "propeller-shaft";

/** Where a form begins: with the surest column of the file, or else with the speed at which it is felt. */
export function firstSpeedForm(look: Look, document: Case, perTurn: number): SpeedForm {
  const surest = look.channels.find(({ id }) => id === look.surestSpeed);
  const range = complaintRange(document);
  const inKmh = (speed: number): number => Math.round(speed * TO_KMH);
  const [slowest, fastest] = range ? [inKmh(range.slowest), inKmh(range.fastest)] : [null, null];
  const [from, to] = document.complaint?.speedKmh ?? [null, null];
  const speed = from === null || to === null ? null : (from + to) / 2;
  const empty: SpeedForm = { from: "constant", channel: null, part: SHAFT, perTurn, speed, slowest, fastest };
  return surest ? withChannel(empty, surest) : empty;
}

/** The same form with the speed from a channel: pulses and signals nobody named are taken for a tachometer's. */
export function withChannel(form: SpeedForm, channel: LookedChannel): SpeedForm {
  if (channel.speed === "road-speed" || channel.speed === "engine-speed") return { ...form, from: "column", channel: channel.id };
  const part = channel.speed === "pulses" ? tachoPart(channel) : form.part;
  return { ...form, from: "tachometer", channel: channel.id, part };
}

/** What is asked of the worker; null while something is lacking. */
export function speedChoice({ from, channel, part, perTurn, speed, slowest, fastest }: SpeedForm): SpeedChoice | null {
  const inSi = (kmh: number): number => toSi(kmh, "km/h");
  switch (from) {
    case "column":
      return channel === null ? null : { kind: "column", id: channel };
    case "tachometer":
      return channel === null || perTurn === null ? null : { kind: "tachometer", id: channel, part, perTurn };
    case "constant":
      return speed === null ? null : { kind: "constant", speed: inSi(speed) };
    case "vibration":
      if (slowest === null || fastest === null || !(fastest > slowest)) return null;
      return { kind: "vibration", slowest: inSi(slowest), fastest: inSi(fastest) };
  }
}

/** What the case keeps of where the speed came from: a column, a typed speed, or that it was followed in the vibration. */
export function speedFromText({ from, channel, speed }: SpeedForm, speedText: (kmh: number) => string): string {
  if (from === "vibration") return FOLLOWED_SPEED;
  return channel ?? (speed === null ? FOLLOWED_SPEED : speedText(speed));
}
