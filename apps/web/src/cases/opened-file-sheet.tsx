import { catalogueOf, problemText } from "@halfturn/words";
import { Button } from "../controls/button.js";
import { Sheet } from "../controls/sheet.js";
import { useLanguage, useWords } from "../words/use-words.js";
import { addCopy, type OpenedFile } from "./case-files.js";
import { casesWords } from "./cases-words.js";

export interface OpenedFileSheetProps {
  readonly opened: Exclude<OpenedFile, { readonly is: "opened" }>;
  readonly onOpen: (id: string) => void;
  readonly onClose: () => void;
}

/** More than this nobody reads at once; the first ones explain the rest. */
const MOST_PROBLEMS = 12;

/** Why a file was not opened, or which of two cases is meant. */
export function OpenedFileSheet({ opened, onOpen, onClose }: OpenedFileSheetProps) {
  const words = useWords(casesWords);
  const catalogue = catalogueOf(useLanguage());
  if (opened.is === "refused") {
    return (
      <Sheet title={words.notRead(opened.file)} close={words.close} onClose={onClose}>
        <ul>
          {opened.problems.slice(0, MOST_PROBLEMS).map((problem) => (
            <li key={`${problem.path} ${problem.code}`}>{problemText(catalogue, problem)}</li>
          ))}
        </ul>
      </Sheet>
    );
  }
  const { document } = opened;
  const copy = async () => onOpen(await addCopy(document, words.copyOf(document.title || words.untitled)));
  return (
    <Sheet title={words.isHere} close={words.close} onClose={onClose}>
      <p>{words.isHereHelp}</p>
      <Button size="large" onPress={() => onOpen(document.id)}>
        {words.openHere}
      </Button>
      <Button size="large" onPress={() => void copy()}>
        {words.addCopy}
      </Button>
    </Sheet>
  );
}
