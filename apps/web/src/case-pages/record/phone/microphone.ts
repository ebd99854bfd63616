import { decimationOf } from "./decimator.js";
import workletAddress from "./microphone-worklet.ts?worker&url";

/** A microphone that is being recorded. */
export interface MicrophoneTake {
  /** Samples per second that are kept. */
  readonly rate: number;
  /** Seconds so far. */
  readonly seconds: () => number;
  /** What came since the last time it was asked; null where nothing did. */
  readonly drain: () => Float64Array | null;
  readonly stop: () => Promise<void>;
}

/** Starts the microphone without the filters that are made for speech. Rejects where it is not allowed. */
export async function recordMicrophone(): Promise<MicrophoneTake> {
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 },
  });
  const context = new AudioContext();
  const stop = async (): Promise<void> => {
    for (const track of stream.getTracks()) track.stop();
    await context.close();
  };
  await context.audioWorklet.addModule(workletAddress).catch(async (error: unknown) => {
    await stop();
    throw error;
  });
  const rate = context.sampleRate / decimationOf(context.sampleRate);
  let parts: Float32Array[] = [];
  let count = 0;
  const node = new AudioWorkletNode(context, "microphone", { numberOfInputs: 1, numberOfOutputs: 0 });
  node.port.onmessage = ({ data }: MessageEvent<Float32Array>) => {
    parts.push(data);
    count += data.length;
  };
  context.createMediaStreamSource(stream).connect(node);
  await context.resume();
  return {
    rate,
    seconds: () => count / rate,
    drain: () => {
      const drained = parts;
      if (drained.length === 0) return null;
      parts = [];
      const samples = new Float64Array(drained.reduce((sum, part) => sum + part.length, 0));
      let at = 0;
      for (const part of drained) {
        samples.set(part, at);
        at += part.length;
      }
      return samples;
    },
    stop,
  };
}
