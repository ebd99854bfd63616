import { toSi } from "@halfturn/engine/units";
import type { OrdersJson } from "../contract/orders-contract.js";
import { ordersToJson } from "../contract/orders-to-json.js";
import { type PowertrainResult, toPowertrain } from "../convert/to-powertrain.js";
import type { Problem } from "../problems/index.js";
import type { Case } from "../schema/case.js";

/** How long people record at steady speed when nothing else is said. */
const USUAL_SECONDS = 10;

/** What turns at one road speed, and what that rests on. */
export interface Turning {
  readonly ok: true;
  readonly json: OrdersJson;
  readonly basis: Extract<PowertrainResult, { readonly ok: true }>;
  /** The recording that the coincidences are for. */
  readonly recording: { readonly wheelTurns: number; readonly seconds: number; readonly metres: number };
}

export interface TurningAsked {
  readonly speed: number;
  readonly gear?: string | undefined;
  readonly turns?: number | undefined;
}

/** Works out everything that turns at a road speed in km/h, or says why it cannot. */
export function turningAt(
  document: Case,
  { speed, gear, turns }: TurningAsked,
): Turning | { readonly ok: false; readonly problems: readonly Problem[] } {
  const inSi = toSi(speed, "km/h");
  const basis = toPowertrain(document, { gear, speed: inSi });
  if (!basis.ok) return basis;
  const turn = basis.powertrain.circumference.value;
  const wheelTurns = turns ?? Math.max(1, Math.round((USUAL_SECONDS * inSi) / turn));
  const metres = wheelTurns * turn;
  return {
    ok: true,
    json: ordersToJson(basis.powertrain, { speedKmh: speed, wheelTurns }),
    basis,
    recording: { wheelTurns, seconds: metres / inSi, metres },
  };
}
