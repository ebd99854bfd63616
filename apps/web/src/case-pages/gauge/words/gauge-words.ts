import type { ShaftEnd, VehicleEnd } from "../model/ends.js";
import type { Phasing } from "../model/phasings.js";
import type { Way } from "../model/step.js";
import type { SetUpWords } from "./set-up-words.js";

type Side = "left" | "right";

/** Everything that stands on the page while readings are taken. */
export interface GaugeWords {
  readonly ways: Readonly<Record<Way, string>>;
  readonly wayLabel: string;
  readonly places: string;

  /** Where on the shaft, in the vehicle's words. */
  readonly nearEnd: Readonly<Record<VehicleEnd, string>>;
  readonly onFace: string;
  readonly along: string;
  readonly zeroOn: (shaft: string) => string;
  readonly sideways: string;
  readonly shaftEnd: Readonly<Record<ShaftEnd, string>>;

  readonly how: string;
  readonly face: string;
  readonly edge: string;
  readonly faceHelp: string;
  readonly edgeHelp: string;
  readonly tubeHelp: string;
  readonly pairHelp: string;

  readonly vehicleEnd: Readonly<Record<VehicleEnd, string>>;
  readonly lower: Readonly<Record<VehicleEnd, string>>;
  readonly leans: Readonly<Record<VehicleEnd, string>>;
  readonly level: string;
  readonly plumb: string;
  readonly fromSide: Readonly<Record<Side, string>>;
  readonly alwaysFrom: Readonly<Record<Side, string>>;
  readonly otherSideAsk: Readonly<Record<Side, string>>;
  readonly otherSideOnce: Readonly<Record<Side, string>>;
  readonly staySide: Readonly<Record<Side, string>>;

  readonly readout: string;
  readonly keep: string;
  readonly point: string;
  readonly back: string;
  readonly clear: string;
  readonly pad: string;
  readonly keysHelp: string;
  readonly faults: Readonly<Record<"empty" | "signed" | "not-a-number" | "too-steep" | "lower-end" | "lean", string>>;
  readonly upright: (deg: string) => string;
  readonly uprightOnFace: (deg: string) => string;
  readonly steep: (deg: string) => string;
  readonly itShows: (deg: string) => string;
  readonly asOffPlumb: (deg: string) => string;
  readonly asTyped: (deg: string) => string;
  readonly cancel: string;

  readonly carried: string;
  readonly liftBetween: string;
  readonly taken: string;
  readonly change: string;
  readonly changing: (was: string) => string;
  readonly remove: string;
  readonly note: string;

  readonly slip: string;
  readonly readAgain: (place: string) => string;
  readonly whichLower: (shaft: string) => string;
  readonly later: string;
  readonly slipped: string;

  readonly joints: string;
  readonly jointsWait: string;
  readonly calculating: string;
  readonly left: string;
  readonly allRead: string;
  readonly allReadHelp: string;
  readonly onTo: (step: string) => string;
  readonly whole: string;

  readonly lateral: string;
  readonly over: string;
  readonly toward: Readonly<Record<Side, string>>;
  readonly tapeHelp: (end: string) => string;
  readonly tapeFaults: Readonly<Record<"lateral" | "over" | "toward" | "too-wide", string>>;

  readonly yokes: YokesWords;
  readonly phone: PhoneWords;
  readonly setUp: SetUpWords;
}

interface YokesWords {
  readonly title: string;
  readonly help: string;
  readonly stands: Readonly<Record<Phasing, string>>;
  readonly angle: string;
}

export interface PhoneWords {
  readonly use: string;
  readonly typeInstead: string;
  readonly permission: string;
  readonly denied: string;
  readonly insecure: string;
  readonly waiting: string;
  readonly holdAlong: string;
  readonly holdAcross: string;
  readonly lyingFlat: string;
  readonly notOnEdge: string;
  readonly still: string;
  readonly moving: string;
  readonly take: string;
  readonly needsZero: string;
}
