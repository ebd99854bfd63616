import { type CaseSection, SHORTEST_MM } from "@halfturn/casefile";
import { useState } from "react";
import { Choice } from "../../controls/choice.js";
import { Fields } from "../../controls/fields.js";
import { Fold } from "../../controls/fold.js";
import { TextEntry } from "../../controls/text-entry.js";
import { MeasureField } from "../../measure/measure-field.js";
import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { describeWords } from "./describe-words.js";
import { type Changes, changed, orGone } from "./edit-case.js";
import styles from "./part.module.css";

const LENGTH = { minimum: SHORTEST_MM, maximum: 20_000 };
const AMOUNT = { minimum: 0, maximum: 20_000 };
const PHASING = { minimum: -180, maximum: 180 };
const TUBE = ["outerDiameterMm", "wallMm"] as const;

type Slip = NonNullable<CaseSection["slip"]>;

export interface SectionFieldsProps {
  readonly name: string;
  readonly section: CaseSection;
  readonly onChange: (changes: Changes<CaseSection>) => void;
}

const PHASINGS = { "in-line": 0, "quarter-turn": 90 } as const;
type Phasing = keyof typeof PHASINGS | "other" | "unknown";

const phasingOf = (phasingDeg: number | null | undefined): Phasing => {
  if (typeof phasingDeg !== "number") return "unknown";
  const [known] = Object.entries(PHASINGS).find(([, degrees]) => degrees === phasingDeg) ?? [];
  return (known as Phasing | undefined) ?? "other";
};

export function SectionFields({ name, section, onChange }: SectionFieldsProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const { phasingDeg, phasingMeasured } = section;
  // "Another angle" opens its field; the case keeps what it has until the angle is typed.
  const [other, setOther] = useState(false);
  const phasing = other ? "other" : phasingOf(phasingDeg);
  const choosePhasing = (chosen: Phasing): void => {
    setOther(chosen === "other");
    if (chosen === "unknown") onChange({ phasingDeg: null, phasingMeasured: false });
    else if (chosen !== "other") onChange({ phasingDeg: PHASINGS[chosen] });
  };
  return (
    <section className={styles.part}>
      <h3>{name}</h3>
      <MeasureField
        label={names.lengthMm}
        help={words.lengthHelp}
        measure="length"
        bounds={LENGTH}
        value={section.lengthMm ?? null}
        onChange={(lengthMm) => onChange({ lengthMm })}
      />
      <Choice
        label={names.phasingDeg}
        options={[
          { value: "in-line", label: words.inLine },
          { value: "quarter-turn", label: words.quarterTurn },
          { value: "other", label: words.otherPhasing },
          { value: "unknown", label: words.notKnown },
        ]}
        value={phasing}
        onChange={choosePhasing}
      />
      <p className={styles.help}>{words.phasingHelp}</p>
      {phasing === "other" ? (
        <MeasureField
          label={words.phasingAngle}
          measure="angle"
          bounds={PHASING}
          value={phasingOf(phasingDeg) === "other" ? (phasingDeg ?? null) : null}
          onChange={(degrees) => onChange({ phasingDeg: degrees })}
        />
      ) : null}
      {phasing === "unknown" ? null : (
        <Choice
          label={words.measured}
          options={[
            { value: "yes", label: words.measuredYes },
            { value: "no", label: words.measuredNo },
          ]}
          value={phasingMeasured ? "yes" : "no"}
          onChange={(answer) => onChange({ phasingMeasured: answer === "yes" })}
        />
      )}
      <Fold title={words.tubeAndSlip}>
        <TextEntry label={names.label} value={section.label ?? ""} onChange={(label) => onChange({ label })} />
        <TogetherFields
          part="tube"
          fields={TUBE.map((key) => ({ key, label: names[key], measure: "length", bounds: LENGTH }))}
          value={section.tube ?? null}
          onChange={(tube) => onChange({ tube: tube && { ...section.tube, ...tube } })}
        />
        {section.tube ? <MaterialChoice tube={section.tube} onChange={(tube) => onChange({ tube })} /> : null}
        <SlipFields slip={section.slip ?? {}} onChange={(slip) => onChange({ slip })} />
      </Fold>
    </section>
  );
}

type Tube = NonNullable<CaseSection["tube"]>;
const MATERIALS = ["steel", "aluminium"] as const;

/** A material that the file names otherwise stands as it is written. */
function MaterialChoice({ tube, onChange }: { readonly tube: Tube; readonly onChange: (tube: Tube) => void }) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const known = MATERIALS.map((material) => ({ value: material as string, label: words[material] }));
  const other = tube.material !== undefined && !known.some(({ value }) => value === tube.material) ? [tube.material] : [];
  return (
    <Choice
      label={names.material}
      options={[...known, ...other.map((material) => ({ value: material, label: material }))]}
      value={tube.material ?? null}
      onChange={(material) => onChange({ ...tube, material })}
    />
  );
}

function SlipFields({ slip, onChange }: { readonly slip: Slip; readonly onChange: (slip: Slip | null) => void }) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  return (
    <>
      <p className={styles.help}>{words.slipHelp}</p>
      <Fields>
        {(["engagedMm", "minimumEngagedMm", "inwardTravelMm"] as const).map((key) => (
          <MeasureField
            key={key}
            label={names[key]}
            measure="length"
            bounds={AMOUNT}
            value={slip[key] ?? null}
            onChange={(value) => onChange(orGone(changed(slip, { [key]: value })))}
          />
        ))}
      </Fields>
    </>
  );
}
