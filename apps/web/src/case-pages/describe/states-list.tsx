import type { Case, CaseState } from "@halfturn/casefile";
import { catalogueOf, drivelineName } from "@halfturn/words";
import { memo, useMemo, useState } from "react";
import { Button } from "../../controls/button.js";
import { Choice, type Option } from "../../controls/choice.js";
import { Fold } from "../../controls/fold.js";
import { Icon } from "../../controls/icon.js";
import { TextEntry } from "../../controls/text-entry.js";
import { DraftScope } from "../../device/draft-scope.js";
import { useMoveDrafts } from "../../device/kept-draft.js";
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

type StatesListProps = Pick<CasePageProps, "document" | "edit">;

/** Loads and ride heights in which a correction has to hold. */
export const StatesList = memo(ListedStates, isSame);

/** Of the document only the states are read, and the names of the drivelines. */
function isSame(before: StatesListProps, after: StatesListProps): boolean {
  const named = ({ drivelines }: Case) => JSON.stringify(drivelines.map(({ id, label }) => [id, label]));
  return before.edit === after.edit && before.document.states === after.document.states && named(before.document) === named(after.document);
}

function ListedStates({ document, edit }: StatesListProps) {
  const words = useWords(moreWords);
  const catalogue = catalogueOf(useLanguage());
  const [added, setAdded] = useState<string | null>(null);
  const { states = [], drivelines } = document;
  const choices = useMemo(
    () => drivelines.map(({ id }, k) => ({ value: id, label: drivelineName({ drivelines }, k, catalogue) })),
    [drivelines, catalogue],
  );
  const add = (): void => {
    const taken = states.map(({ id }) => id);
    const label = words.newState(Math.max(1, states.length));
    const id = freeId(label, [...taken, AS_GAUGED], "state");
    setAdded(id);
    // A list counts for the whole: beside the first load stands the vehicle as it was gauged.
    edit(editStates((before) => [...(before.length === 0 ? [{ id: AS_GAUGED, label: words.asGauged }] : before), { id, label }]));
  };
  return (
    <>
      <p>{words.statesHelp}</p>
      {states.map((state) => (
        <StateFold key={state.id} state={state} drivelines={choices} isOpen={state.id === added} edit={edit} />
      ))}
      <div className={styles.buttons}>
        <Button onPress={add}>
          <Icon name="add" /> {words.addState}
        </Button>
      </div>
    </>
  );
}

interface StateFoldProps extends Pick<CasePageProps, "edit"> {
  readonly state: CaseState;
  readonly drivelines: readonly Option<string>[];
  readonly isOpen: boolean;
}

/** One state, drawn again only when it was changed itself. */
const StateFold = memo(({ state, drivelines, isOpen, edit }: StateFoldProps) => {
  const words = useWords(moreWords);
  const { id, label } = state;
  const name = label || (id === AS_GAUGED ? words.asGauged : id);
  const change = (changes: Changes<CaseState>): void =>
    edit(editStates((before) => before.map((one) => (one.id === id ? changed<CaseState>(one, changes) : one))));
  const part = `state ${id}`;
  const moveDrafts = useMoveDrafts();
  const remove = (): void => {
    // The next one may get the same id.
    moveDrafts(part, null);
    edit(
      editStates((before) => {
        const left = before.filter((one) => one.id !== id);
        return left.some((one) => one.id !== AS_GAUGED) ? left : [];
      }),
    );
  };
  return (
    <Fold title={name} open={isOpen}>
      <DraftScope part={part}>
        <StateFields drivelines={drivelines} state={state} onChange={change} />
        <Button kind="danger" onPress={remove}>
          {words.removeState(name)}
        </Button>
      </DraftScope>
    </Fold>
  );
});

/** The id of the state in which nothing is other than it was gauged. */
const AS_GAUGED = "normal";
const LOADS = ["none", "drive-torque", "coast-torque"] as const satisfies readonly NonNullable<CaseState["load"]>[];
const EVERY = "";

interface StateFieldsProps {
  readonly drivelines: readonly Option<string>[];
  readonly state: CaseState;
  readonly onChange: (changes: Changes<CaseState>) => void;
}

function StateFields({ drivelines, state, onChange }: StateFieldsProps) {
  const words = useWords(moreWords);
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  return (
    <>
      <TextEntry label={words.stateName} value={state.label ?? ""} onChange={(label) => onChange({ label })} />
      {drivelines.length > 1 ? (
        <Choice
          label={words.forDriveline}
          options={[{ value: EVERY, label: words.allDrivelines }, ...drivelines]}
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
