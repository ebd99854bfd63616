import type { CaseDriveline, CaseGauging } from "@halfturn/casefile";
import { catalogueOf, type NameOf } from "@halfturn/words";
import { memo, useEffect, useRef } from "react";
import { Button } from "react-aria-components";
import { useLatest } from "../../../controls/use-latest.js";
import type { Units } from "../../../device/settings.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import { vehicleEndOf } from "../model/ends.js";
import { type GaugeStep, takenAt } from "../model/step.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import type { GaugeWords } from "../words/gauge-words.js";
import type { JointSoFar } from "./joints-so-far.js";
import styles from "./progress-strip.module.css";
import { stepValue } from "./step-value.js";

export interface ProgressStripProps {
  readonly steps: readonly GaugeStep[];
  readonly current: number | null;
  readonly gauging: CaseGauging;
  readonly driveline: CaseDriveline;
  readonly nameOf: NameOf;
  readonly slipped: readonly number[];
  readonly joints: readonly JointSoFar[];
  readonly units: Units;
  readonly onStep: (step: number) => void;
}

/** The driveline as a row: what was read where, what lacks, and each joint's angle between its shafts as soon as it is known. */
export function ProgressStrip({ steps, current, gauging, driveline, nameOf, slipped, joints, units, onStep }: ProgressStripProps) {
  const words = useWords(gaugeWords);
  const { numbers } = catalogueOf(useLanguage());
  const here = useRef<HTMLLIElement>(null);
  const go = useLatest(onStep);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the current place is brought into sight when it changes
  useEffect(() => {
    const [place, strip] = [here.current, here.current?.parentElement];
    if (place && strip) strip.scrollLeft = place.offsetLeft - strip.offsetLeft - (strip.clientWidth - place.clientWidth) / 2;
  }, [current]);
  return (
    <nav aria-label={words.places}>
      <ol className={styles.strip}>
        {steps.map((step, k) => {
          const joint = jointBefore(step, steps[k - 1], driveline, joints);
          return [
            joint ? <JointBetween key={joint.id} joint={joint} /> : null,
            <li key={step.key} ref={k === current ? here : null}>
              <Place
                at={k}
                name={shortName(step, driveline, nameOf, words)}
                value={stepValue(step, gauging, numbers, units)}
                state={stateOf(step, gauging, slipped)}
                isCurrent={k === current}
                onStep={go}
              />
            </li>,
          ];
        })}
      </ol>
    </nav>
  );
}

const JointBetween = ({ joint }: { readonly joint: JointSoFar }) => (
  <li className={styles.joint} data-tone={joint.tone} title={joint.words}>
    <span>{joint.id}</span>
    <span>
      <span aria-hidden="true">{joint.sign} </span>
      {joint.value}
    </span>
    <span className={styles.aloud}>{joint.words}</span>
  </li>
);

interface PlaceProps {
  readonly at: number;
  readonly name: string;
  readonly value: ReturnType<typeof stepValue>;
  readonly state: keyof typeof SIGNS;
  readonly isCurrent: boolean;
  readonly onStep: (step: number) => void;
}

/** A kept reading changes the place where it was taken, and the next one; the others stay as they are. */
const Place = memo(({ at, name, value, state, isCurrent, onStep }: PlaceProps) => {
  const words = useWords(gaugeWords);
  return (
    <Button
      className={styles.place ?? ""}
      onPress={() => onStep(at)}
      {...(isCurrent ? { "aria-current": "step" as const } : {})}
      data-state={state}
    >
      <span className={styles.name}>{name}</span>
      <span className={styles.value}>
        <span aria-hidden="true">{SIGNS[state]}</span>
        {value ?? <span aria-hidden="true">–</span>}
        <span className={styles.aloud}>{state === "slip" ? `, ${words.slipped}` : value === null ? words.left : ""}</span>
      </span>
    </Button>
  );
});

const SIGNS = { slip: "▲ ", taken: "✓ ", open: "" } as const;

function stateOf(step: GaugeStep, gauging: CaseGauging, slipped: readonly number[]): keyof typeof SIGNS {
  const taken = takenAt(step, gauging);
  if (step.kind !== "tape" && taken.some((index) => slipped.includes(index))) return "slip";
  return taken.length > 0 ? "taken" : "open";
}

function shortName(step: GaugeStep, { runs }: CaseDriveline, nameOf: NameOf, words: GaugeWords): string {
  if (step.kind === "pair") return `${nameOf(step.from)} → ${nameOf(step.to)}`;
  if (step.kind === "tape" || step.place === "along") return nameOf(step.shaft);
  return `${nameOf(step.shaft)}, ${words.vehicleEnd[vehicleEndOf(runs, step.place)]}`;
}

/** The joint that lies between a place and the one before it. */
function jointBefore(
  step: GaugeStep,
  before: GaugeStep | undefined,
  { joints }: CaseDriveline,
  known: readonly JointSoFar[],
): JointSoFar | undefined {
  if (step.kind !== "place" || before?.kind !== "place" || before.shaft === step.shaft) return undefined;
  const index = known.findIndex(({ to }) => to === step.shaft);
  return joints[index] ? known[index] : undefined;
}
