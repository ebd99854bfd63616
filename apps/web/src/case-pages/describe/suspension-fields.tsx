import type { CaseAxle } from "@halfturn/casefile";
import { Choice } from "../../controls/choice.js";
import { useKeptDraft } from "../../device/kept-draft.js";
import { DirectedField } from "../../measure/directed-field.js";
import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { BOUNDS } from "./bounds.js";
import { changed } from "./edit-case.js";
import { LINK_ENDS, type LinkKey, linkNumbers, linksOf } from "./link-numbers.js";
import { NumberFields } from "./number-fields.js";
import styles from "./part.module.css";
import { axleWords } from "./words/axle-words.js";
import { describeWords } from "./words/describe-words.js";
import { fieldHelp } from "./words/field-help.js";

type Suspension = NonNullable<CaseAxle["suspension"]>;
type Kind = Suspension["kind"];
type Of<K extends Kind> = Extract<Suspension, { readonly kind: K }>;

const KINDS = ["leaf", "links", "rate"] as const satisfies readonly Kind[];
const isKind = (value: unknown): value is Kind => KINDS.some((kind) => kind === value);
const UNKNOWN = "";

export interface SuspensionFieldsProps {
  readonly suspension: Suspension | undefined;
  readonly onChange: (suspension: Suspension | null) => void;
}

/** What turns the pinion as the axle goes up and down. Another kind than the case has opens its fields; the case keeps what it has until they are filled in. */
export function SuspensionFields({ suspension, onChange }: SuspensionFieldsProps) {
  const words = useWords(axleWords);
  const { notKnown } = useWords(describeWords);
  const [chosen, choose] = useKeptDraft("suspension.kind", isKind);
  const kind = chosen ?? suspension?.kind ?? null;
  const change = (next: Suspension | null): void => {
    // What is still being typed stays in sight.
    if (kind !== null) choose(next === null ? kind : null);
    onChange(next);
  };
  return (
    <>
      <Choice
        label={words.guided}
        hideLabel
        options={[...KINDS.map((one) => ({ value: one as string, label: words.guides[one] })), { value: UNKNOWN, label: notKnown }]}
        value={kind ?? UNKNOWN}
        onChange={(next) => {
          if (isKind(next)) return choose(next === suspension?.kind ? null : next);
          choose(null);
          onChange(null);
        }}
      />
      {kind === "leaf" ? <LeafFields leaf={ofKind(suspension, kind)} onChange={change} /> : null}
      {kind === "links" ? <LinkFields links={ofKind(suspension, kind)} onChange={change} /> : null}
      {kind === "rate" ? <RateField rate={ofKind(suspension, kind)} onChange={change} /> : null}
    </>
  );
}

const ofKind = <K extends Kind>(suspension: Suspension | undefined, kind: K): Of<K> | undefined =>
  suspension?.kind === kind ? (suspension as Of<K>) : undefined;

interface LeafFieldsProps {
  readonly leaf: Of<"leaf"> | undefined;
  readonly onChange: (suspension: Suspension | null) => void;
}

function LeafFields({ leaf, onChange }: LeafFieldsProps) {
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  const field = (key: "fixedEyeForwardMm" | "fixedEyeUpMm") =>
    ({ key, label: names[key], help: help[key], measure: "length", bounds: BOUNDS.offset }) as const;
  return (
    <>
      <TogetherFields
        part="leaf"
        fields={[field("fixedEyeForwardMm"), field("fixedEyeUpMm")]}
        value={leaf ?? null}
        onChange={(eye) => onChange(eye && { kind: "leaf", ...leaf, ...eye })}
      />
      {leaf ? (
        <NumberFields
          fields={[{ key: "shackleEyeForwardMm", measure: "length", bounds: BOUNDS.offset }]}
          values={leaf}
          onChange={(changes) => onChange(changed<Of<"leaf">>(leaf, changes))}
        />
      ) : null}
    </>
  );
}

interface LinkFieldsProps {
  readonly links: Of<"links"> | undefined;
  readonly onChange: (suspension: Suspension | null) => void;
}

function LinkFields({ links, onChange }: LinkFieldsProps) {
  const names = useWords(fieldNames);
  const words = useWords(axleWords);
  const linkName = { lower: words.lowerLink, upper: words.upperLink };
  return (
    <>
      <p>{words.linksHelp}</p>
      <TogetherFields<LinkKey>
        part="links"
        fields={(["lower", "upper"] as const).flatMap((link) =>
          LINK_ENDS.map((end) => ({
            key: `${link}.${end}` as const,
            label: `${linkName[link]}: ${names[end]}`,
            measure: "length" as const,
            bounds: BOUNDS.offset,
          })),
        )}
        value={links ? linkNumbers(links) : null}
        onChange={(numbers) => onChange(numbers && linksOf(numbers, links))}
      />
    </>
  );
}

interface RateFieldProps {
  readonly rate: Of<"rate"> | undefined;
  readonly onChange: (suspension: Suspension | null) => void;
}

function RateField({ rate, onChange }: RateFieldProps) {
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  const words = useWords(axleWords);
  return (
    <div className={styles.part}>
      <DirectedField
        part="pinionPitchDegPerMm"
        label={names.pinionPitchDegPerMm}
        help={help.pinionPitchDegPerMm}
        measure="pitch-rate"
        bounds={BOUNDS.pitchRate}
        value={rate?.pinionPitchDegPerMm ?? null}
        words={{ plus: words.noseUpRaised, minus: words.noseDownRaised }}
        onChange={(pinionPitchDegPerMm) => onChange(pinionPitchDegPerMm === null ? null : { ...rate, kind: "rate", pinionPitchDegPerMm })}
      />
    </div>
  );
}
