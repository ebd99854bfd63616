import type { TurningWords } from "./turning-words.js";

export const turning: TurningWords = {
  title: "What turns at that speed",
  help: "No recording is needed for this: the speed at which it is felt says what turns how fast.",
  speed: "Felt at",
  frequency: "Frequency in Hz, if it is known",
  rate: (turns, perMinute) => `${turns} turns per second, ${perMinute}`,
  order: (order, cause) => `${order} × a turn: ${cause}`,
  there: (frequency, speed) => `${frequency} at ${speed} can be:`,
  nothingThere: (frequency, speed) => `Nothing that turns on this vehicle shakes at ${frequency} at ${speed}.`,
  rings:
    "It may be something that rings on its own: then its frequency stays when the speed changes. Or the speed, the frequency or the gear is not right.",
  moves: (speed, frequency) => `At ${speed} it would be ${frequency}.`,
  stays: "Drive a little faster: a frequency that moves along follows what turns; one that stays is something that rings on its own.",
  noSpeedParts:
    "Everything is geared to the wheels, so no other speed parts two orders: only more turns of the wheel at steady speed, or another gear.",
};
