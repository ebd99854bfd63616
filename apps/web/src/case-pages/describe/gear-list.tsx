import type { CaseVehicle } from "@halfturn/casefile";
import { itemKeys } from "@halfturn/exchange";
import { Button } from "../../controls/button.js";
import { Icon } from "../../controls/icon.js";
import { DraftScope } from "../../device/draft-scope.js";
import { useMoveDrafts } from "../../device/kept-draft.js";
import { useRenamedDrafts } from "../../device/use-renamed-drafts.js";
import { MeasureField } from "../../measure/measure-field.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { BOUNDS } from "./bounds.js";
import styles from "./gear-list.module.css";
import { NameEntry } from "./name-entry.js";
import { describeWords } from "./words/describe-words.js";
import { fieldHelp } from "./words/field-help.js";

type Gear = NonNullable<CaseVehicle["gears"]>[number];

/** The places of what is half typed for each: its name is what tells a gear from the others, as between two devices. */
const partsOf = (gears: readonly Gear[]): readonly string[] => itemKeys("gears", gears).map((key) => `gear ${encodeURIComponent(key)}`);

export interface GearListProps {
  readonly gears: readonly Gear[];
  readonly onChange: (gears: readonly Gear[]) => void;
}

/** The gears that matter for the complaint, each with its ratio. */
export function GearList({ gears, onChange }: GearListProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  const moveDrafts = useMoveDrafts();
  const parts = partsOf(gears);
  const renames = useRenamedDrafts(parts);
  const withGear = (index: number, gear: Gear) => onChange(gears.map((one, k) => (k === index ? gear : one)));
  const remove = (index: number) => {
    moveDrafts(parts[index] ?? "", null);
    onChange(gears.filter((_, k) => k !== index));
  };
  const nextName = () => {
    let number = gears.length + 1;
    while (gears.some(({ label }) => label === String(number))) number += 1;
    return String(number);
  };
  return (
    <>
      <p>{help.gearRatio}</p>
      {gears.map((gear, index) => (
        // A gear has no id: what it is called changes while it is typed.
        // biome-ignore lint/suspicious/noArrayIndexKey: the place is the identity here
        <div key={index} className={styles.gear}>
          <DraftScope part={parts[index] ?? ""}>
            <NameEntry
              part="name"
              label={words.gearName}
              value={gear.label}
              taken={gears.flatMap(({ label }, k) => (k === index ? [] : [label]))}
              onChange={(label) => withGear(index, { ...gear, label })}
            />
            <MeasureField
              key={`${parts[index]} ${renames}`}
              part="ratio"
              label={names.ratio}
              measure="number"
              bounds={BOUNDS.ratio}
              value={gear.ratio}
              onChange={(ratio) => {
                if (ratio !== null) withGear(index, { ...gear, ratio });
              }}
            />
          </DraftScope>
          <Button kind="quiet" label={words.removeGear(gear.label)} onPress={() => remove(index)}>
            <Icon name="close" />
          </Button>
        </div>
      ))}
      <Button onPress={() => onChange([...gears, { label: nextName(), ratio: 1 }])}>
        <Icon name="add" /> {words.addGear}
      </Button>
    </>
  );
}
