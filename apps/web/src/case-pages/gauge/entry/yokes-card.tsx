import { type Case, type CaseGauging, phasingAt } from "@halfturn/casefile";
import type { NameOf } from "@halfturn/words";
import { useState } from "react";
import { Card } from "../../../controls/card.js";
import { Choice } from "../../../controls/choice.js";
import { MeasureField } from "../../../measure/measure-field.js";
import { useWords } from "../../../words/use-words.js";
import { type Phasing, phasingNamed, USUAL_PHASINGS_DEG, withPhasing } from "../model/phasings.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./all-read.module.css";

export interface YokesCardProps {
  readonly document: Case;
  /** Its place in `drivelines`. */
  readonly driveline: number;
  /** Its place in `gauging`. */
  readonly index: number;
  /** The place of what is half typed for this gauging. */
  readonly part: string;
  readonly nameOf: NameOf;
  readonly editGauging: (change: (gauging: CaseGauging) => CaseGauging) => void;
}

/** How the yokes of each section stand, seen while one is under the vehicle anyway: without it nothing can be planned. What nobody has seen is shown unanswered. */
export function YokesCard({ document, driveline, index, part, nameOf, editGauging }: YokesCardProps) {
  const words = useWords(gaugeWords);
  const of = document.drivelines[driveline];
  if (!of || of.sections.length === 0) return null;
  return (
    <Card title={words.yokes.title}>
      <p className={styles.help}>{words.yokes.help}</p>
      {of.sections.map((section) => {
        const { phasingDeg, measured } = phasingAt(document, of, section, index);
        return (
          <SectionYokes
            key={section.id}
            part={`${part}/yokes ${section.id}`}
            name={nameOf(section.id)}
            seenDeg={measured ? phasingDeg : null}
            onSeen={(degrees) => editGauging((gauging) => withPhasing(gauging, section.id, degrees))}
          />
        );
      })}
    </Card>
  );
}

interface SectionYokesProps {
  readonly part: string;
  readonly name: string;
  readonly seenDeg: number | null;
  readonly onSeen: (degrees: number | null) => void;
}

const ANY_ANGLE = { minimum: -180, maximum: 180 };

function SectionYokes({ part, name, seenDeg, onSeen }: SectionYokesProps) {
  const words = useWords(gaugeWords).yokes;
  const seen = seenDeg === null ? null : phasingNamed(seenDeg);
  // Another angle opens its field; the case keeps what it has until the angle is typed.
  const [other, setOther] = useState<"chosen" | "typed" | null>(seen === "other" ? "typed" : null);
  const isOther = other !== null;
  const choose = (phasing: Phasing): void => {
    setOther(phasing === "other" ? "chosen" : null);
    if (phasing !== "other") onSeen(USUAL_PHASINGS_DEG[phasing]);
  };
  return (
    <>
      <Choice
        label={name}
        value={isOther ? "other" : seen}
        options={(["in-line", "quarter-turn", "other"] as const).map((value) => ({ value, label: words.stands[value] }))}
        onChange={choose}
      />
      {isOther ? (
        <MeasureField
          part={part}
          label={words.angle}
          measure="angle"
          bounds={ANY_ANGLE}
          value={other === "chosen" && seen !== "other" ? null : seenDeg}
          onChange={(degrees) => {
            // A right angle on the way to another one stays in the field.
            setOther("typed");
            onSeen(degrees);
          }}
        />
      ) : null}
    </>
  );
}
