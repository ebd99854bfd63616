import { attributionToJson } from "@halfturn/casefile";
import { type Attribution, type AttributionInput, attribute } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import { inPieces, type LongWork, partOfWork } from "@halfturn/engine/uncertainty";
import { figureLabelsOf, vibrationPictureSteps } from "@halfturn/figures";
import type { HeardReader, Recording } from "@halfturn/recordings";
import { pause } from "../pause.js";
import type { HearRequest, HearResult } from "./listening-types.js";
import { preparedInput } from "./speed-of-request.js";
import { stretchOf } from "./views.js";

/** Shares of the work: the speed, the attribution; the rest is the picture. */
const [SPEED, ATTRIBUTED] = [0.1, 0.85];

/** The channels that are listened to, on one clock. */
export interface HeardHere {
  readonly heard: readonly HeardReader[];
  readonly findings: readonly Finding[];
}

/** Lays the vibration of the channels to what turned. Rejects with the signal's reason when it is stopped. */
export async function hear(recording: Recording, channels: HeardHere, request: HearRequest, work: LongWork): Promise<HearResult> {
  const { stretch, document, language } = request;
  const recorded = channels.heard.map(({ recorded: whole }) =>
    stretch === null ? whole : { ...whole, samples: stretchOf(whole.samples, ...stretch) },
  );
  const prepared = await preparedInput(recording, recorded, request, partOfWork(work, 0, SPEED));
  if (!prepared.ok) return prepared;
  const { input, powertrain, gear, notes } = prepared;
  const found = await attribute(input, { ...partOfWork(work, SPEED, ATTRIBUTED), pause });
  if (!found.ok) return { ok: false, why: "signal", fault: found };
  const names = channels.heard.map(({ place }) => place.channel.id);
  const quantities = channels.heard.map(({ quantity }) => quantity);
  const circumference = powertrain.circumference.value;
  const json = attributionToJson(found.value, { channels: names, circumference, findings: [...prepared.findings, ...channels.findings] });
  const labels = figureLabelsOf(language);
  const drawn = await inPieces(vibrationPictureSteps({ attribution: found.value, input, names, quantities }, document, labels), {
    ...partOfWork(work, ATTRIBUTED, 1),
    pause,
  });
  return {
    ok: true,
    heard: {
      json: withoutDoubt(json),
      gear,
      notes,
      parts: input.parts.map(({ part, perWheelTurn, orders }) => ({ part, perWheelTurn, orders })),
      wheelRate: wheelRate(found.value, input),
      circumference,
      picture: drawn.ok ? drawn.value : null,
    },
  };
}

/** Samples of an unknown scale are worked on like a sound; that they are no sound is said by the finding that names the scale. */
const withoutDoubt = <Json extends { readonly findings: readonly { readonly code: string }[] }>(json: Json): Json =>
  json.findings.some(({ code }) => code === "recording.no-full-scale")
    ? { ...json, findings: json.findings.filter(({ code }) => code !== "attribution.sound-only") }
    : json;

function wheelRate({ blocks, readings }: Attribution, { reference }: AttributionInput): readonly [number, number, number] {
  const scale = readings[0]?.scale ?? 1;
  const rates = blocks.map(({ turnsPerSecond }) => (turnsPerSecond * scale) / reference.perWheelTurn);
  return [Math.min(...rates), rates.reduce((sum, rate) => sum + rate, 0) / rates.length, Math.max(...rates)];
}
