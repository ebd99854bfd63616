import type { CaseJoint } from "@halfturn/casefile";
import { Choice } from "../../controls/choice.js";
import { useKeptDraft } from "../../device/kept-draft.js";
import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { BOUNDS, below } from "./bounds.js";
import styles from "./part.module.css";
import { axleWords } from "./words/axle-words.js";
import { describeWords } from "./words/describe-words.js";
import { fieldHelp } from "./words/field-help.js";

type Centring = NonNullable<CaseJoint["centring"]>;
type Side = Centring["ballFixedTo"];

const SIDES = ["source-side", "driven-side"] as const satisfies readonly Side[];
/** Open: the device is being measured, with the side that was chosen so far. */
type Begun = Side | "no-side-yet";
const isBegun = (value: unknown): value is Begun => value === "no-side-yet" || SIDES.some((side) => side === value);

export interface CentringFieldsProps {
  readonly centring: Centring | undefined;
  readonly onChange: (centring: Centring | null) => void;
}

/** How a double cross joint shares its angle between its halves, where that was measured. The side comes first: the distances are of it. */
export function CentringFields({ centring, onChange }: CentringFieldsProps) {
  const words = useWords(axleWords);
  const { sourceSide, drivenSide } = useWords(describeWords);
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  const [begun, begin] = useKeptDraft("centring.side", isBegun);
  const side = centring?.ballFixedTo ?? (begun === "no-side-yet" ? null : begun);
  const isOpen = centring !== undefined || begun !== null;
  const chooseSide = (ballFixedTo: Side): void => {
    if (centring) onChange({ ...centring, ballFixedTo });
    else begin(ballFixedTo);
  };
  const put = (distances: Pick<Centring, "crossesApartMm" | "ballFromCrossMm"> | null): void => {
    if (side === null) return;
    begin(distances === null ? side : null);
    onChange(distances && { ...centring, ...distances, ballFixedTo: side });
  };
  return (
    <>
      <Choice
        label={names.centring}
        options={[
          { value: "without", label: words.withoutCentring },
          { value: "with", label: words.withCentring },
        ]}
        value={isOpen ? "with" : "without"}
        onChange={(answer) => {
          begin(answer === "with" ? "no-side-yet" : null);
          if (answer === "without") onChange(null);
        }}
      />
      <p className={styles.help}>{words.centringHelp}</p>
      {isOpen ? (
        <Choice
          label={names.ballFixedTo}
          options={[
            { value: "source-side", label: sourceSide },
            { value: "driven-side", label: drivenSide },
          ]}
          value={side}
          onChange={chooseSide}
        />
      ) : null}
      {isOpen && side !== null ? (
        <TogetherFields
          part="centring"
          fields={[
            { key: "crossesApartMm", label: names.crossesApartMm, help: help.crossesApartMm, measure: "length", bounds: BOUNDS.size },
            {
              key: "ballFromCrossMm",
              label: names.ballFromCrossMm,
              help: help.ballFromCrossMm,
              measure: "length",
              bounds: ({ crossesApartMm }) => below(BOUNDS.length, crossesApartMm),
            },
          ]}
          value={centring ?? null}
          onChange={put}
        />
      ) : null}
    </>
  );
}
