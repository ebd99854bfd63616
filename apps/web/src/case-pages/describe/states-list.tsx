import type { Case, CaseState } from "@halfturn/casefile";
import { catalogueOf, drivelineName } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../controls/button.js";
import { Choice } from "../../controls/choice.js";
import { Fold } from "../../controls/fold.js";
import { Icon } from "../../controls/icon.js";
import { TextEntry } from "../../controls/text-entry.js";
import { DraftScope } from "../../device/draft-scope.js";
import { DirectedField } from "../../measure/directed-field.js";
import { fieldNames } from "../../words/field-names.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { BOUNDS } from "./bounds.js";
import { type Changes, changed, editStates } from "./edit-case.js";
import { freeId } from "./free-id.js";
import styles from "./part.module.css";
import { fieldHelp } from "./words/field-help.js";
import { moreWords } from "./words/more-words.js";

/** Loads and ride heights in which a correction has to hold. */
export function StatesList({ document, edit }: Pick<CasePageProps, "document" | "edit">) {
  const words = useWords(moreWords);
  const [added, setAdded] = useState<string | null>(null);
  const { states = [] } = document;
  const nameOf = ({ id, label }: CaseState): string => label || (id === AS_GAUGED ? words.asGauged : id);
  const add = (): void => {
    const taken = states.map(({ id }) => id);
    const label = words.newState(Math.max(1, states.length));
    const id = freeId(label, [...taken, AS_GAUGED], "state");
    setAdded(id);
    // A list counts for the whole: beside the first load stands the vehicle as it was gauged.
    edit(editStates((before) => [...(before.length === 0 ? [{ id: AS_GAUGED, label: words.asGauged }] : before), { id, label }]));
  };
  const remove = (id: string): void =>
    edit(
      editStates((before) => {
        const left = before.filter((state) => state.id !== id);
        return left.some((state) => state.id !== AS_GAUGED) ? left : [];
      }),
    );
  return (
    <>
      <p>{words.statesHelp}</p>
      {states.map((state) => (
        <Fold key={state.id} title={nameOf(state)} open={state.id === added}>
          <DraftScope part={`state ${state.id}`}>
            <StateFields
              document={document}
              state={state}
              onChange={(changes) =>
                edit(editStates((before) => before.map((one) => (one.id === state.id ? changed<CaseState>(one, changes) : one))))
              }
            />
            <Button kind="danger" onPress={() => remove(state.id)}>
              {words.removeState(nameOf(state))}
            </Button>
          </DraftScope>
        </Fold>
      ))}
      <div className={styles.buttons}>
        <Button onPress={add}>
          <Icon name="add" /> {words.addState}
        </Button>
      </div>
    </>
  );
}

/** The id of the state in which nothing is other than it was gauged. */
const AS_GAUGED = "normal";
const LOADS = ["none", "drive-torque", "coast-torque"] as const satisfies readonly NonNullable<CaseState["load"]>[];
const EVERY = "";

interface StateFieldsProps {
  readonly document: Case;
  readonly state: CaseState;
  readonly onChange: (changes: Changes<CaseState>) => void;
}

function StateFields({ document, state, onChange }: StateFieldsProps) {
  const words = useWords(moreWords);
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  const catalogue = catalogueOf(useLanguage());
  return (
    <>
      <TextEntry label={words.stateName} value={state.label ?? ""} onChange={(label) => onChange({ label })} />
      {document.drivelines.length > 1 ? (
        <Choice
          label={words.forDriveline}
          options={[
            { value: EVERY, label: words.allDrivelines },
            ...document.drivelines.map(({ id }, k) => ({ value: id, label: drivelineName(document, k, catalogue) })),
          ]}
          value={state.driveline ?? EVERY}
          onChange={(driveline) => onChange({ driveline })}
        />
      ) : null}
      <DirectedField
        part="axleTravelMm"
        label={names.axleTravelMm}
        help={help.axleTravelMm}
        measure="length"
        bounds={BOUNDS.length}
        value={state.axleTravelMm ?? null}
        words={{ plus: words.bodyHigher, minus: words.bodyLower }}
        onChange={(axleTravelMm) => onChange({ axleTravelMm })}
      />
      <DirectedField
        part="pinionPitchDeg"
        label={names.pinionPitchDeg}
        help={help.pinionPitchDeg}
        measure="angle"
        bounds={BOUNDS.magnitude}
        value={state.pinionPitchDeg ?? null}
        words={{ plus: words.noseUp, minus: words.noseDown }}
        onChange={(pinionPitchDeg) => onChange({ pinionPitchDeg })}
      />
      <Choice
        label={words.torque}
        options={LOADS.map((load) => ({ value: load, label: words.loads[load] }))}
        value={state.load ?? "none"}
        onChange={(load) => onChange({ load: load === "none" ? null : load })}
      />
    </>
  );
}
