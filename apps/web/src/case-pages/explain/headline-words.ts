import type { ByLanguage } from "../../words/use-words.js";

/** One plain sentence each; angles and speeds come with their unit. */
export interface HeadlineWords {
  readonly withheld: string;
  readonly nothingGauged: string;
  readonly jointOver: (joint: string, angle: string, limit: string) => string;
  readonly jointUnder: (joint: string, angle: string, limit: string) => string;
  readonly jointUncertain: (joint: string, angle: string, limit: string) => string;
  readonly leftOver: (angle: string, limit: string) => string;
  readonly leftUncertain: (angle: string, limit: string) => string;
  readonly motionOver: (speed: string) => string;
  readonly motionUncertain: (speed: string) => string;
  readonly jointsNotGauged: (joints: string) => string;
  readonly phasingNotKnown: string;
  readonly allWithin: (angle: string) => string;
}

export const HEADLINES: ByLanguage<HeadlineWords> = {
  en: {
    withheld: "These are not road angles: put right what stands first below, then gauge again.",
    nothingGauged: "Nothing has been gauged yet.",
    jointOver: (joint, angle, limit) => `${joint} runs at ${angle}, more than the ${limit} it may.`,
    jointUnder: (joint, angle, limit) => `${joint} runs at ${angle}, less than the ${limit} its needles need to roll.`,
    jointUncertain: (joint, angle, limit) => `${joint} runs at ${angle}, too near its limit of ${limit} to be sure: measure again.`,
    leftOver: (angle, limit) => `The joints do not cancel: together they shake like one joint at ${angle}, more than ${limit}.`,
    leftUncertain: (angle, limit) => `What the joints leave, ${angle}, is too near the limit of ${limit} to be sure: measure again.`,
    motionOver: (speed) => `At ${speed} the shafts are shaken harder than they may be.`,
    motionUncertain: (speed) => `At ${speed} the shafts are shaken about as hard as they may be: measure again to be sure.`,
    jointsNotGauged: (joints) => `Not enough was gauged to know the angle at ${joints}.`,
    phasingNotKnown: "Every joint angle is within its limits; how the joints cancel is not known without the phasing.",
    allWithin: (angle) => `Everything is within its limits; the joints leave no more than one joint at ${angle} would.`,
  },
  es: {
    withheld: "Estos no son ángulos de marcha: corrija lo primero que figura abajo y mida otra vez.",
    nothingGauged: "Aún no se ha medido nada.",
    jointOver: (joint, angle, limit) => `${joint} trabaja a ${angle}, más de los ${limit} que admite.`,
    jointUnder: (joint, angle, limit) => `${joint} trabaja a ${angle}, menos de los ${limit} que sus agujas necesitan para rodar.`,
    jointUncertain: (joint, angle, limit) =>
      `${joint} trabaja a ${angle}, demasiado cerca de su límite de ${limit} para estar seguros: mida otra vez.`,
    leftOver: (angle, limit) => `Las juntas no se compensan: juntas sacuden como una sola a ${angle}, más de ${limit}.`,
    leftUncertain: (angle, limit) =>
      `Lo que dejan las juntas, ${angle}, está demasiado cerca del límite de ${limit} para estar seguros: mida otra vez.`,
    motionOver: (speed) => `A ${speed} los árboles sufren más sacudida de la que admiten.`,
    motionUncertain: (speed) => `A ${speed} los árboles sufren casi tanta sacudida como admiten: mida otra vez para estar seguros.`,
    jointsNotGauged: (joints) => `No se ha medido bastante para conocer el ángulo en ${joints}.`,
    phasingNotKnown:
      "Cada ángulo de junta está dentro de sus límites; sin la fase de las horquillas no se sabe cómo se compensan las juntas.",
    allWithin: (angle) => `Todo está dentro de sus límites; las juntas no dejan más que una sola a ${angle}.`,
  },
};
