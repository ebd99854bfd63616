/** The page writes whole per cents; word of each piece would have it drawn thousands of times for an hour, and its garbage grow with the recording. */
const STEPS = 100;

/** Passes a rising share on only where another hundredth of the work is done, and at its end. */
export function inHundredths(onProgress: (share: number) => void): (share: number) => void {
  let told = 0;
  return (share) => {
    const done = Math.floor(share * STEPS);
    if (done <= told) return;
    told = done;
    onProgress(share);
  };
}
