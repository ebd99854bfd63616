import type { Numbers } from "@halfturn/words";
import { useWords } from "../../../words/use-words.js";
import { MOST_SAMPLES } from "../../../worker/listening/fits-here.js";
import type { ReadChannels } from "../../../worker/listening/listening-types.js";
import { recordWords } from "../words/record-catalogue.js";

/** Measured from stamps, a whole number of samples per second is one to some ten digits. */
const WHOLE = 0.005;
/** Half of the last digit that is shown. */
const EVEN_SHARE = 0.0005;

/** How many samples a second, for how long, and what the clock was like. */
export function ClockText({ read, numbers }: { readonly read: ReadChannels; readonly numbers: Numbers }) {
  const words = useWords(recordWords).setUp;
  const { rate, seconds, method, jitterShare, gaps, inMemory } = read;
  const isWhole = Math.abs(rate - Math.round(rate)) < WHOLE;
  return (
    <>
      <p>
        {words.clock(numbers.plain(rate, isWhole ? 0 : 2), numbers.plain(seconds, 1))}{" "}
        {method === "even" || jitterShare < EVEN_SHARE ? words.even : words.jitter(`${numbers.plain(jitterShare * 100, 1)}\u00a0%`)}{" "}
        {gaps.count === 0 ? words.noGaps : words.gaps(numbers.plain(gaps.count, 0), numbers.plain(gaps.seconds, 2))}
      </p>
      {inMemory === null ? null : <p>{words.inMemory[inMemory](numbers.plain(MOST_SAMPLES, 0))}</p>}
    </>
  );
}
