import { lazy, Suspense, useState } from "react";
import { Button } from "../../controls/button.js";
import type { OpenCase } from "../../device/open-case.js";
import { Notice } from "../../shell/notice.js";
import { useWords } from "../../words/use-words.js";
import { useRecord } from "../frame/use-open-case.js";
import { conflictWords } from "./conflict-words.js";

const ConflictSheet = lazy(async () => ({ default: (await import("./conflict-sheet.js")).ConflictSheet }));

/** What stands between this case and the server, if anything does. */
export function CaseNotices({ open }: { readonly open: OpenCase }) {
  const words = useWords(conflictWords);
  const record = useRecord(open);
  const [choosing, setChoosing] = useState(false);
  const { conflicts, refused } = record;
  return (
    <>
      {refused === null ? null : <Notice tone="doubt">{words.refused(refused)}</Notice>}
      {conflicts.length === 0 ? null : (
        <Notice tone="doubt" action={<Button onPress={() => setChoosing(true)}>{words.choose}</Button>}>
          {words.notice(conflicts.length)}
        </Notice>
      )}
      {choosing && conflicts.length > 0 ? (
        <Suspense>
          <ConflictSheet record={record} onChoose={open.choose} onClose={() => setChoosing(false)} />
        </Suspense>
      ) : null}
    </>
  );
}
