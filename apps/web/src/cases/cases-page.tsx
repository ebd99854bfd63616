import { useNavigate } from "@tanstack/react-router";
import { lazy, Suspense, useState } from "react";
import { Button } from "../controls/button.js";
import { Icon } from "../controls/icon.js";
import { LinkButton } from "../controls/link-button.js";
import { Message } from "../controls/message.js";
import { openAnywhere, server } from "../device/device.js";
import { SettingsButton } from "../settings/settings-button.js";
import { Notice } from "../shell/notice.js";
import { PageFrame } from "../shell/page-frame.js";
import { useWords } from "../words/use-words.js";
import { type OpenedFile, openCaseFile } from "./case-files.js";
import { CaseRowItem } from "./case-row-item.js";
import type { CaseRow } from "./case-rows.js";
import styles from "./cases-page.module.css";
import { casesWords } from "./cases-words.js";
import { Examples } from "./examples.js";
import { FileDrop } from "./file-drop.js";
import { MoreSheet } from "./more-sheet.js";
import { SearchField } from "./search-field.js";
import { useCaseRows, useDrawnRows } from "./use-case-rows.js";

const OpenedFileSheet = lazy(async () => ({ default: (await import("./opened-file-sheet.js")).OpenedFileSheet }));

type Told = { readonly is: "put-away"; readonly row: CaseRow } | { readonly is: "unreachable" };

const NO_ROWS: readonly CaseRow[] = [];

/** The cases of this device and of the shop, and the ways to a new one. */
export function CasesPage() {
  const words = useWords(casesWords);
  const navigate = useNavigate();
  const [sought, setSought] = useState("");
  const [away, setAway] = useState(false);
  const [more, setMore] = useState<CaseRow | null>(null);
  const [told, setTold] = useState<Told | null>(null);
  const [opened, setOpened] = useState<Exclude<OpenedFile, { readonly is: "opened" }> | null>(null);
  const rows = useCaseRows(sought, away);
  const show = (id: string) => void navigate({ to: "/cases/$id/$step", params: { id, step: "describe" } });
  const openFile = async (file: File) => {
    const result = await openCaseFile(file);
    if (result.is === "opened") show(result.id);
    else setOpened(result);
  };
  const putAway = async (row: CaseRow, isAway: boolean) => {
    const open = await openAnywhere(row.id);
    if (open) open.putAway(isAway);
    // Put away elsewhere, it is not given out again before it is brought back.
    else if (isAway || (await server.bringBack(row.id)).is !== "saved") return setTold({ is: "unreachable" });
    setTold(isAway ? { is: "put-away", row } : null);
  };
  return (
    <PageFrame title={words.title} actions={<SettingsButton />}>
      <FileDrop onFile={(file) => void openFile(file)}>
        {(pick) => (
          <>
            <div className={styles.ways}>
              <LinkButton to="/cases/new" kind="main" size="large">
                <Icon name="add" /> {words.newCase}
              </LinkButton>
              {pick}
            </div>
            <SearchField label={words.search} value={sought} onChange={setSought} />
            {told === null ? null : <ToldNotice told={told} onUndo={(row) => void putAway(row, false)} />}
            {rows?.length === 0 ? <NoCases sought={sought} away={away} /> : null}
            <CaseList rows={rows ?? NO_ROWS} onMore={setMore} />
            <Button kind="quiet" onPress={() => setAway(!away)}>
              {away ? words.showCurrent : words.showAway}
            </Button>
            <Examples onOpen={show} open={rows?.length === 0 && !away && sought === ""} />
          </>
        )}
      </FileDrop>
      {more === null ? null : (
        <MoreSheet
          row={more}
          isAway={away}
          onClose={() => setMore(null)}
          onPutAway={(row, isAway) => void putAway(row, isAway)}
          onUnreachable={() => setTold({ is: "unreachable" })}
        />
      )}
      {opened === null ? null : (
        <Suspense>
          <OpenedFileSheet opened={opened} onOpen={show} onClose={() => setOpened(null)} />
        </Suspense>
      )}
    </PageFrame>
  );
}

const CaseList = ({ rows, onMore }: { readonly rows: readonly CaseRow[]; readonly onMore: (row: CaseRow) => void }) => (
  <ul className={styles.list}>
    {useDrawnRows(rows).map(({ row, isLeft }) => (
      <li key={row.id} className={styles.row} hidden={isLeft}>
        <CaseRowItem row={row} onMore={onMore} />
      </li>
    ))}
  </ul>
);

function NoCases({ sought, away }: { readonly sought: string; readonly away: boolean }) {
  const words = useWords(casesWords);
  if (sought.trim() !== "") return <Message title={words.noneFound} />;
  return away ? <Message title={words.noneAway} /> : <Message title={words.none}>{words.noneHelp}</Message>;
}

function ToldNotice({ told, onUndo }: { readonly told: Told; readonly onUndo: (row: CaseRow) => void }) {
  const words = useWords(casesWords);
  if (told.is === "unreachable") return <Notice tone="doubt">{words.unreachable}</Notice>;
  return (
    <Notice tone="news" action={<Button onPress={() => onUndo(told.row)}>{words.undo}</Button>}>
      {words.wasPutAway(told.row.title || words.untitled)}
    </Notice>
  );
}
