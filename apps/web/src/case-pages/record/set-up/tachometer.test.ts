import { newCase, toRecordingSettings } from "@halfturn/casefile";
import { memoryRecording, memorySource, openRecording, speedKindOf, tachoPart, writeWav } from "@halfturn/recordings";
import { expect, test } from "vitest";
import type { Look, LookedChannel } from "../../../worker/listening/listening-types.js";
import { keepRecording, recordingEntry } from "../recording-entry.js";
import { firstSpeedForm, withChannel } from "./speed-form.js";
import { keptScales, speedChannels } from "./tachometer.js";

const channel = (id: string, quantity: LookedChannel["quantity"], speed: LookedChannel["speed"] = null): LookedChannel => ({
  id,
  name: id,
  unit: null,
  quantity,
  fullScale: null,
  heard: quantity === "share" || quantity === "acceleration",
  speed,
});
const look = (...channels: LookedChannel[]): Look => ({ format: "wav", channels, best: [], surestSpeed: null, notes: [] });
const document = newCase({ id: "road", title: "Road", layout: "two-piece", createdAt: "2026-05-04T07:30:00Z" });
const idsOf = (channels: readonly LookedChannel[]): readonly string[] => channels.map(({ id }) => id);

test("every channel of a sound file may be the tachometer's, but not the only one; an acceleration is none", () => {
  const sound = [channel("channel_1", "share"), channel("channel_2", "share")] as const;
  expect(idsOf(speedChannels(look(...sound)))).toEqual(["channel_1", "channel_2"]);
  expect(idsOf(speedChannels(look(sound[0])))).toEqual([]);
  expect(idsOf(speedChannels(look(channel("accel_z", "acceleration"), channel("ai3", "voltage"))))).toEqual(["ai3"]);
});

test("the case knows the chosen channel of a sound file as the tachometer of its part when the file is opened again", async () => {
  const samples = Float64Array.from({ length: 100 }, (_, k) => (k % 10 < 3 ? 1 : 0));
  const recorded = ["channel_1", "channel_2"].map((id) => ({ ...channel(id, "share"), fullScale: 1 }));
  const clock = { kind: "even", start: 0, rate: 100, count: samples.length } as const;
  const parts: Uint8Array[] = [];
  const written = writeWav(memoryRecording([{ channels: recorded, clock, times: null, values: [samples, samples] }]), {
    encoding: "pcm16",
    fullScale: 1,
  });
  for await (const part of written) if (part.ok) parts.push(part.value);
  const file = memorySource(new Uint8Array(Buffer.concat(parts)));

  const looked = look(channel("channel_1", "share"), channel("channel_2", "share"));
  const form = {
    ...withChannel(firstSpeedForm(looked, document, 1), looked.channels[1] as LookedChannel),
    part: "transfer-shaft",
    perTurn: 4,
  };
  const before = [
    { id: "channel_1", unit: "g", fullScale: 2 },
    { id: "channel_2", unit: "g" },
  ];
  const scales = keptScales(before, looked, form);
  const entry = recordingEntry({ file: "drive.wav", recordedAt: null, gear: null, scales, perTurn: form.perTurn, filter: null });
  const settings = toRecordingSettings(keepRecording(entry)(document), "drive.wav");
  expect(settings.pulsesPerTurn).toBe(4);
  const again = await openRecording(file, settings.channels);
  const channels = again.ok ? again.value.tracks.flatMap((track) => track.channels) : [];
  expect(channels.map((one) => [one.quantity, speedKindOf(one)])).toEqual([
    ["acceleration", null],
    ["pulses", "pulses"],
  ]);
  expect(channels[1] && tachoPart(channels[1])).toBe("transfer-shaft");
});

test("a column that says itself what it counts is left as it is, unless another part was chosen", () => {
  const tacho = channel("tacho_wheel", "pulses", "pulses");
  const form = withChannel(firstSpeedForm(look(tacho), document, 1), tacho);
  expect(keptScales([], look(tacho), form)).toEqual([]);
  expect(keptScales([], look(tacho), { ...form, part: "propeller-shaft" })).toEqual([{ id: "tacho_wheel", name: "tacho_propeller_shaft" }]);
  expect(keptScales([], look(tacho), { ...form, from: "constant", channel: null })).toEqual([]);
});
