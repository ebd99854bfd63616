import type { Numbers } from "./numbers/numbers.js";

/** Reads the data of a finding for a sentence. A missing number reads as an ellipsis, so that a sentence never breaks off in an error. */
export interface FindingReader {
  readonly numbers: Numbers;
  readonly has: (key: string) => boolean;
  readonly text: (key: string) => string;
  readonly list: (key: string) => readonly string[];
  /** The label of the thing whose id stands under the key. */
  readonly name: (key: string) => string;
  /** What a person calls the place that the finding stands at. */
  readonly place: string;
  readonly names: (key: string) => readonly string[];
  /** Size of an angle as a display shows it. */
  readonly gauged: (key: string) => string;
  /** Size of an inclination and the word for the lower end. */
  readonly lean: (key: string) => string;
  readonly angle: (key: string) => string;
  /** Whole degrees, with the sign. */
  readonly phasing: (key: string) => string;
  readonly acceleration: (key: string) => string;
  readonly speed: (key: string) => string;
  /** A whole road speed; bare: without its unit, for the first of two. */
  readonly roadSpeed: (key: string) => string;
  readonly bareRoadSpeed: (key: string) => string;
  /** A number with so many decimals; the sentence has its unit. */
  readonly amount: (key: string, decimals: number) => string;
  /** "the wheel's first order": the names of part and order stand under the keys. */
  readonly order: (partKey: string, orderKey: string) => string;
  /** A share from 0 to 1 as per cent. */
  readonly share: (key: string) => string;
  /** The same with its sign. */
  readonly signedShare: (key: string) => string;
  /** What to read again, where the finding says; otherwise null. */
  readonly repeat: string | null;
  /** The reading that a place stands for, as an instruction. */
  readonly readPlace: (key: string) => string;
  /** What to doubt first after a contradiction. */
  readonly doubt: string;
}
