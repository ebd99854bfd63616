import type { CaseVehicle } from "@halfturn/casefile";
import { Button } from "../../controls/button.js";
import { Icon } from "../../controls/icon.js";
import { TextEntry } from "../../controls/text-entry.js";
import { MeasureField } from "../../measure/measure-field.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { describeWords } from "./describe-words.js";
import styles from "./gear-list.module.css";

type Gear = NonNullable<CaseVehicle["gears"]>[number];

const RATIO = { above: 0, maximum: 100 };

export interface GearListProps {
  readonly gears: readonly Gear[];
  readonly onChange: (gears: readonly Gear[]) => void;
}

/** The gears that matter for the complaint, each with its ratio. */
export function GearList({ gears, onChange }: GearListProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const withGear = (index: number, gear: Gear) => onChange(gears.map((one, k) => (k === index ? gear : one)));
  const nextName = () => {
    let number = gears.length + 1;
    while (gears.some(({ label }) => label === String(number))) number += 1;
    return String(number);
  };
  return (
    <>
      {gears.map((gear, index) => (
        // A gear has no name of its own but its place: two may be called alike while one is being typed.
        // biome-ignore lint/suspicious/noArrayIndexKey: the place is the identity here
        <div key={index} className={styles.gear}>
          {/* A gear without a name is no gear: while the field is empty, the old name stands. */}
          <TextEntry
            label={words.gearName}
            value={gear.label}
            onChange={(label) => {
              if (label !== "") withGear(index, { ...gear, label });
            }}
          />
          <MeasureField
            label={names.ratio}
            measure="number"
            bounds={RATIO}
            value={gear.ratio}
            onChange={(ratio) => {
              if (ratio !== null) withGear(index, { ...gear, ratio });
            }}
          />
          <Button kind="quiet" label={words.removeGear(gear.label)} onPress={() => onChange(gears.filter((_, k) => k !== index))}>
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
