import { decimationOf, decimator } from "./decimator.js";

/** What a worklet's own global scope has; TypeScript's library for pages does not know it. */
interface WorkletScope {
  readonly sampleRate: number;
  readonly AudioWorkletProcessor: new () => { readonly port: MessagePort };
  readonly registerProcessor: (name: string, processor: unknown) => void;
}
const scope = globalThis as unknown as WorkletScope;

const factor = decimationOf(scope.sampleRate);

/** Hands the sound of the microphone on, at a rate that suits a driveline. */
class Microphone extends scope.AudioWorkletProcessor {
  readonly #decimate = decimator(factor);

  process([input]: readonly (readonly Float32Array[])[]): boolean {
    const sound = input?.[0];
    if (sound) {
      const kept = this.#decimate(sound);
      if (kept.length > 0) this.port.postMessage(kept, [kept.buffer]);
    }
    return true;
  }
}

scope.registerProcessor("microphone", Microphone);
