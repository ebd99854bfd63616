import type { VibrationWords } from "../vibration-words.js";

export const vibration: VibrationWords = {
  faults: {
    "signal.too-short": ({ samples, needed }, n) =>
      `The recording has ${n.plain(Number(samples), 0)} samples together with the speed, and ${n.plain(Number(needed), 0)} at least are needed: record longer.`,
    "signal.no-samples": () =>
      "There is nothing in the channel but one and the same value: look whether the right channel was taken and the sensor was on.",
    "signal.lengths-differ": () => "Two columns or channels are not of the same length: take channels of one recording.",
    "signal.not-finite": () => "A sample is no number: cut the recording before or after it.",
    "signal.bad-rate": ({ rate }) => `${rate} is no sampling rate: give the samples per second.`,
    "shaft-angle.too-few-pulses": ({ pulses }, n) =>
      `The tachometer gave ${n.plain(Number(pulses), 0)} pulses, and three at least are needed: look at the mark, the sensor and its gap.`,
    "shaft-angle.times-not-rising": () => "Times of the speed do not rise: look whether two logs were joined, and give one.",
    "shaft-angle.too-few-speeds": () => "A speed log needs two readings at least.",
    "shaft-angle.standstill": ({ time }, n) =>
      `The speed is nought${typeof time === "number" ? ` at ${n.plain(time, 1)}\u00a0s` : ""}, and orders need something that turns: cut the recording to the stretch that was driven.`,
    "shaft-angle.no-ridge": () =>
      "No order stands out clearly enough to tell the speed by: log the speed, mount a tachometer, or narrow the range of speeds.",
    "order-tracking.no-whole-turns": () =>
      "Signal and speed do not share one whole block of turns: look whether their clocks agree, or record longer.",
    "attribution.no-orders": ({ limit }, n) =>
      `The recording shows nothing above ${n.plain(Number(limit), 0)}\u00a0Hz, where every order of this vehicle lies: record with a faster sensor, or drive slower. If it was recorded faster than that, its times are not in seconds: name their column with its unit, such as time_ms.`,
    "attribution.not-turning": () => "The shaft whose speed is known does not turn: look at the speed column.",
  },
  comfort: {
    "comfort.not-uncomfortable": "not uncomfortable",
    "comfort.a-little-uncomfortable": "a little uncomfortable",
    "comfort.fairly-uncomfortable": "fairly uncomfortable",
    "comfort.uncomfortable": "uncomfortable",
    "comfort.very-uncomfortable": "very uncomfortable",
    "comfort.extremely-uncomfortable": "extremely uncomfortable",
  },
  verdict: ({ order, cause, probability, share }) =>
    `The vibration follows ${order} (usually ${cause}): ${probability} probable among the orders that can be seen; it explains ${share} of what was recorded.`,
  abstained: {
    coincidence: (orders) => `It is ${orders}: this recording cannot tell which.`,
    "fold-back": (orders) => `It may be ${orders}: an order above half the sampling rate shows at a false frequency, so nothing is named.`,
    "loose-speed": (orders) => `It may be ${orders}: the speed is not known well enough to tell which.`,
    several: (orders) => `About equally large: ${orders}. None is named alone.`,
    "too-little": (orders) =>
      `The largest order found is ${orders}, but it explains next to nothing of what was recorded, so it is not named as the cause.`,
    nothing: () => "No order stands out of the noise, so no part is named.",
  },
  heading: (seconds, rate) => `${seconds} of vibration, ${rate} samples per second`,
  amplitude: "Amplitude (peak)",
  share: "Share",
  probability: "Probability",
  frequency: "Frequency",
  notObservable: "cannot be seen",
  unexplained: "Not explained by any order",
  acceleration: (value) => `${value}\u00a0m/s²`,
};
