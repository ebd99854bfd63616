import { Button } from "../controls/button.js";
import { Icon } from "../controls/icon.js";
import { Sheet } from "../controls/sheet.js";
import { openAnywhere } from "../device/device.js";
import { useWords } from "../words/use-words.js";
import { saveCaseFile } from "./case-files.js";
import type { CaseRow } from "./case-rows.js";
import { casesWords } from "./cases-words.js";

export interface MoreSheetProps {
  readonly row: CaseRow;
  readonly isAway: boolean;
  readonly onClose: () => void;
  readonly onPutAway: (row: CaseRow, away: boolean) => void;
  readonly onUnreachable: () => void;
}

/** What else can be done with a case of the list. */
export function MoreSheet({ row, isAway, onClose, onPutAway, onUnreachable }: MoreSheetProps) {
  const words = useWords(casesWords);
  const save = async () => {
    const open = await openAnywhere(row.id);
    if (open) await saveCaseFile(open.record().document);
    else onUnreachable();
    onClose();
  };
  return (
    <Sheet title={row.title || words.untitled} close={words.close} onClose={onClose}>
      {isAway ? null : (
        <Button size="large" onPress={() => void save()}>
          <Icon name="file" /> {words.exportFile}
        </Button>
      )}
      <Button
        size="large"
        onPress={() => {
          onPutAway(row, !isAway);
          onClose();
        }}
      >
        <Icon name="away" /> {isAway ? words.bringBack : words.putAway}
      </Button>
    </Sheet>
  );
}
