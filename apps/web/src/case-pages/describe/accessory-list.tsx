import { type CaseVehicle, PART_NAMES } from "@halfturn/casefile";
import { Button } from "../../controls/button.js";
import { Icon } from "../../controls/icon.js";
import { TextEntry } from "../../controls/text-entry.js";
import { DraftScope } from "../../device/draft-scope.js";
import { useMoveDrafts } from "../../device/kept-draft.js";
import { MeasureField } from "../../measure/measure-field.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { BOUNDS } from "./bounds.js";
import { changed } from "./edit-case.js";
import { freeId } from "./free-id.js";
import styles from "./gear-list.module.css";
import { fieldHelp } from "./words/field-help.js";
import { moreWords } from "./words/more-words.js";

type Accessory = NonNullable<CaseVehicle["accessories"]>[number];

const partOf = ({ id }: Accessory): string => `accessory ${id}`;

export interface AccessoryListProps {
  readonly accessories: readonly Accessory[];
  readonly onChange: (accessories: readonly Accessory[]) => void;
}

/** What the engine drives by belt or gear, each with its ratio. */
export function AccessoryList({ accessories, onChange }: AccessoryListProps) {
  const words = useWords(moreWords);
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  const put = (next: Accessory): void => onChange(accessories.map((one) => (one.id === next.id ? next : one)));
  const add = (): void => {
    const label = words.newAccessory(accessories.length + 1);
    const id = freeId(label, [...PART_NAMES, ...accessories.map((one) => one.id)], "accessory");
    onChange([...accessories, { id, label, ratio: 1 }]);
  };
  const moveDrafts = useMoveDrafts();
  const remove = (gone: Accessory): void => {
    // The next one may get the same id.
    moveDrafts(partOf(gone), null);
    onChange(accessories.filter(({ id }) => id !== gone.id));
  };
  return (
    <>
      <p>{help.accessoryRatio}</p>
      {accessories.map((accessory) => (
        <div key={accessory.id} className={styles.gear}>
          <TextEntry label={words.accessoryName} value={accessory.label ?? ""} onChange={(label) => put(changed(accessory, { label }))} />
          <DraftScope part={partOf(accessory)}>
            <MeasureField
              part="ratio"
              label={names.ratio}
              measure="number"
              bounds={BOUNDS.ratio}
              value={accessory.ratio}
              onChange={(ratio) => {
                // Without a ratio it is none: while the field is empty, the old one stands.
                if (ratio !== null) put({ ...accessory, ratio });
              }}
            />
          </DraftScope>
          <Button kind="quiet" label={words.removeAccessory(accessory.label ?? accessory.id)} onPress={() => remove(accessory)}>
            <Icon name="close" />
          </Button>
        </div>
      ))}
      <Button onPress={add}>
        <Icon name="add" /> {words.addAccessory}
      </Button>
    </>
  );
}
