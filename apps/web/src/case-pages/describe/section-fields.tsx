import type { CaseSection } from "@halfturn/casefile";
import { Choice } from "../../controls/choice.js";
import { Fold } from "../../controls/fold.js";
import { TextEntry } from "../../controls/text-entry.js";
import { DraftScope } from "../../device/draft-scope.js";
import { useKeptDraft } from "../../device/kept-draft.js";
import { MeasureField } from "../../measure/measure-field.js";
import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { BOUNDS, below } from "./bounds.js";
import { type Changes, changed, orGone } from "./edit-case.js";
import { NumberFields } from "./number-fields.js";
import styles from "./part.module.css";
import { describeWords } from "./words/describe-words.js";
import { fieldHelp } from "./words/field-help.js";

const SLIP = ["engagedMm", "minimumEngagedMm", "inwardTravelMm"] as const;
type Slip = NonNullable<CaseSection["slip"]>;

export interface SectionFieldsProps {
  readonly name: string;
  readonly section: CaseSection;
  readonly onChange: (changes: Changes<CaseSection>) => void;
}

const PHASINGS = { "in-line": 0, "quarter-turn": 90 } as const;
type Phasing = keyof typeof PHASINGS | "other" | "unknown";
/** "Another angle" was chosen, or typed: the field stays open, whatever the angle on the way. */
type Other = "chosen" | "typed";
const isOther = (value: unknown): value is Other => value === "chosen" || value === "typed";

const phasingOf = (phasingDeg: number | null | undefined): Phasing => {
  if (typeof phasingDeg !== "number") return "unknown";
  const [known] = Object.entries(PHASINGS).find(([, degrees]) => degrees === phasingDeg) ?? [];
  return (known as Phasing | undefined) ?? "other";
};

export const SectionFields = (props: SectionFieldsProps) => (
  <DraftScope part={`section ${props.section.id}`}>
    <FieldsOfSection {...props} />
  </DraftScope>
);

function FieldsOfSection({ name, section, onChange }: SectionFieldsProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const { phasingDeg, phasingMeasured } = section;
  // "Another angle" opens its field; the case keeps what it has until the angle is typed.
  const [other, setOther] = useKeptDraft("phasing", isOther);
  const phasing = other ? "other" : phasingOf(phasingDeg);
  const choosePhasing = (chosen: Phasing): void => {
    setOther(chosen === "other" ? "chosen" : null);
    if (chosen === "unknown") onChange({ phasingDeg: null, phasingMeasured: false });
    else if (chosen !== "other") onChange({ phasingDeg: PHASINGS[chosen] });
  };
  return (
    <section className={styles.part}>
      <h3>{name}</h3>
      <NumberFields
        fields={[{ key: "lengthMm", measure: "length", bounds: BOUNDS.distance, help: words.lengthHelp }]}
        values={section}
        onChange={onChange}
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
          part="phasingDeg"
          label={words.phasingAngle}
          help={words.phasingAngleHelp}
          measure="angle"
          bounds={BOUNDS.phasing}
          value={other === "chosen" && phasingOf(phasingDeg) !== "other" ? null : (phasingDeg ?? null)}
          onChange={(degrees) => {
            setOther("typed");
            onChange({ phasingDeg: degrees });
          }}
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
        <TubeFields tube={section.tube} onChange={(tube) => onChange({ tube })} />
        {section.tube ? <MaterialChoice tube={section.tube} onChange={(tube) => onChange({ tube })} /> : null}
        <SlipFields slip={section.slip ?? {}} onChange={(slip) => onChange({ slip })} />
        <TextEntry label={words.sectionLabel} value={section.label ?? ""} onChange={(label) => onChange({ label })} />
      </Fold>
    </section>
  );
}

type Tube = NonNullable<CaseSection["tube"]>;

function TubeFields({ tube, onChange }: { readonly tube: Tube | undefined; readonly onChange: (tube: Tube | null) => void }) {
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  return (
    <TogetherFields
      part="tube"
      fields={[
        { key: "outerDiameterMm", label: names.outerDiameterMm, help: help.outerDiameterMm, measure: "length", bounds: BOUNDS.size },
        {
          key: "wallMm",
          label: names.wallMm,
          help: help.wallMm,
          measure: "length",
          bounds: ({ outerDiameterMm }) => below(BOUNDS.size, outerDiameterMm && outerDiameterMm / 2),
        },
      ]}
      value={tube ?? null}
      onChange={(next) => onChange(next && { ...tube, ...next })}
    />
  );
}

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
  return (
    <>
      <p>{words.slipHelp}</p>
      <NumberFields
        fields={SLIP.map((key) => ({ key, measure: "length", bounds: BOUNDS.length }))}
        values={slip}
        onChange={(changes) => onChange(orGone(changed<Slip>(slip, changes)))}
      />
    </>
  );
}
