import type { Case, CaseAdjuster } from "@halfturn/casefile";
import { catalogueOf, drivelineName, namesOf } from "@halfturn/words";
import { Button } from "../../../controls/button.js";
import { Choice } from "../../../controls/choice.js";
import { TextEntry } from "../../../controls/text-entry.js";
import { MeasureField, type MeasureFieldProps } from "../../../measure/measure-field.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import styles from "./shelf-card.module.css";
import { shelfWords } from "./shelf-words.js";
import { formStock, isStocked, stockMeasure, withStock } from "./stock.js";
import { StockField } from "./stock-field.js";

export interface AdjusterFormProps {
  readonly document: Case;
  readonly adjuster: CaseAdjuster;
  readonly onChange: (adjuster: CaseAdjuster) => void;
  readonly onRemove: () => void;
}

type NumberKey = "labour" | "parts" | "fittedMm" | "fittedDeg" | "padLengthMm" | "thinEdgeMm" | "splineTeeth" | "pinionPitchDegPerMm";
type NumberField = Omit<MeasureFieldProps, "value" | "onChange"> & { readonly key: NumberKey; readonly needed?: boolean };

const NONE_BELOW_NOUGHT = { minimum: 0, maximum: 1000 };

/** Everything about one thing on the shelf. */
export const AdjusterForm = ({ document, adjuster, onChange, onRemove }: AdjusterFormProps) => {
  const words = useWords(shelfWords);
  const catalogue = catalogueOf(useLanguage());
  const index = "driveline" in adjuster ? document.drivelines.findIndex(({ id }) => id === adjuster.driveline) : 0;
  const driveline = document.drivelines[index];
  const nameOf = namesOf(document, index, catalogue);
  // The keys differ by kind; each is only offered where its kind has it.
  const set = (changed: Readonly<Record<string, unknown>>) => onChange({ ...adjuster, ...changed } as CaseAdjuster);
  const values = adjuster as unknown as Readonly<Partial<Record<NumberKey, number>>>;
  const put = ({ key, needed }: NumberField, value: number | null) => {
    if (value !== null) return set({ [key]: value });
    const { [key]: _left, ...rest } = values;
    return needed ? undefined : onChange(rest as unknown as CaseAdjuster);
  };
  const number = (field: NumberField) => {
    const { key, needed: _needed, ...shown } = field;
    return <MeasureField key={key} part={key} {...shown} value={values[key] ?? null} onChange={(value) => put(field, value)} />;
  };
  return (
    <div className={styles.form}>
      <TextEntry label={words.label} value={adjuster.label ?? ""} onChange={(label) => set({ label })} />
      {"driveline" in adjuster && document.drivelines.length > 1 ? (
        <Choice
          label={words.driveline}
          value={adjuster.driveline}
          onChange={(id) => set({ driveline: id, ...partsOf(document, id, adjuster) })}
          options={document.drivelines.map(({ id }, k) => ({ value: id, label: drivelineName(document, k, catalogue) }))}
        />
      ) : null}
      {"joint" in adjuster && driveline ? (
        <Choice
          label={words.joint}
          value={adjuster.joint}
          onChange={(joint) => set({ joint })}
          options={driveline.joints.slice(1, -1).map(({ id }) => ({ value: id, label: nameOf(id) }))}
        />
      ) : null}
      {"section" in adjuster && driveline ? (
        <Choice
          label={words.section}
          value={adjuster.section}
          onChange={(section) => set({ section })}
          options={driveline.sections.map(({ id }) => ({ value: id, label: nameOf(id) }))}
        />
      ) : null}
      {adjuster.kind === "link-length" ? (
        <Choice
          label={words.link}
          value={adjuster.link}
          onChange={(link) => set({ link })}
          options={[
            { value: "lower", label: words.lower },
            { value: "upper", label: words.upper },
          ]}
        />
      ) : null}
      {isStocked(adjuster) ? (
        <StockField
          stock={formStock(adjuster.stock)}
          measure={stockMeasure(adjuster)}
          plus={words.plus[adjuster.kind]}
          onChange={(stock) => onChange(withStock(adjuster, stock))}
        />
      ) : null}
      <div className={styles.numbers}>
        {fieldsOf(adjuster, words).map(number)}
        {number({ key: "labour", label: words.labour, help: words.labourHelp, measure: "number", bounds: NONE_BELOW_NOUGHT })}
        {number({ key: "parts", label: words.parts, measure: "number", bounds: NONE_BELOW_NOUGHT })}
      </div>
      <div className={styles.buttons}>
        <Button kind="danger" onPress={onRemove}>
          {words.remove}
        </Button>
      </div>
    </div>
  );
};

/** A joint or a section of another driveline has to be one that it has. */
function partsOf(document: Case, id: string, adjuster: CaseAdjuster): Readonly<Record<string, string>> {
  const driveline = document.drivelines.find((one) => one.id === id);
  if ("joint" in adjuster) return { joint: driveline?.joints[1]?.id ?? adjuster.joint };
  return "section" in adjuster ? { section: driveline?.sections[0]?.id ?? adjuster.section } : {};
}

function fieldsOf({ kind }: CaseAdjuster, words: (typeof shelfWords)["en"]): readonly NumberField[] {
  const fitted = { label: words.fitted, help: words.fittedHelp };
  switch (kind) {
    case "axle-wedge":
      return [
        { key: "fittedDeg", ...fitted, measure: "angle", bounds: { above: -90, below: 90 } },
        { key: "padLengthMm", label: words.padLength, help: words.padHelp, measure: "length", bounds: { above: 0 } },
        { key: "thinEdgeMm", label: words.thinEdge, measure: "length", bounds: { minimum: 0 } },
      ];
    case "support-drop":
    case "support-shift":
    case "mount-spacer":
      return [{ key: "fittedMm", ...fitted, measure: "length" }];
    case "rephase":
      return [{ key: "splineTeeth", label: words.splineTeeth, measure: "count", bounds: { minimum: 4, maximum: 400 }, needed: true }];
    case "ride-height":
    case "link-length":
      return [
        {
          key: "pinionPitchDegPerMm",
          label: words.pitch,
          help: words.pitchHelp,
          measure: "pitch-rate",
          bounds: { minimum: -10, maximum: 10 },
        },
      ];
  }
}
