import { type Channel, memoryRecording, type Recording } from "@halfturn/recordings";
import { decimationOf } from "./decimator.js";
import workletAddress from "./microphone-worklet.ts?worker&url";

/** A microphone that is being recorded. */
export interface MicrophoneTake {
  /** Samples per second that are kept. */
  readonly rate: number;
  /** Seconds so far. */
  readonly seconds: () => number;
  /** Ends it; null where nothing came. */
  readonly stop: () => Promise<Recording | null>;
}

const SOUND: Channel = { id: "sound", name: "sound", unit: null, quantity: "share", fullScale: 1 };

/** Starts the microphone without the filters that are made for speech. Rejects where it is not allowed. */
export async function recordMicrophone(): Promise<MicrophoneTake> {
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 },
  });
  const context = new AudioContext();
  await context.audioWorklet.addModule(workletAddress);
  const rate = context.sampleRate / decimationOf(context.sampleRate);
  const parts: Float32Array[] = [];
  const node = new AudioWorkletNode(context, "microphone", { numberOfInputs: 1, numberOfOutputs: 0 });
  node.port.onmessage = ({ data }: MessageEvent<Float32Array>) => parts.push(data);
  context.createMediaStreamSource(stream).connect(node);
  await context.resume();
  const count = (): number => parts.reduce((sum, part) => sum + part.length, 0);
  return {
    rate,
    seconds: () => count() / rate,
    stop: async () => {
      for (const track of stream.getTracks()) track.stop();
      await context.close();
      const samples = new Float64Array(count());
      let at = 0;
      for (const part of parts) {
        samples.set(part, at);
        at += part.length;
      }
      if (samples.length === 0) return null;
      const clock = { kind: "even", start: 0, rate, count: samples.length } as const;
      return memoryRecording([{ channels: [SOUND], clock, times: null, values: [samples] }]);
    },
  };
}
