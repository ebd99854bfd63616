import { Button } from "../../controls/button.js";
import { Icon } from "../../controls/icon.js";
import { LinkButton } from "../../controls/link-button.js";
import type { OpenCase } from "../../device/open-case.js";
import { SettingsButton } from "../../settings/settings-button.js";
import { useWords } from "../../words/use-words.js";
import { CaseNotices } from "../conflicts/case-notices.js";
import styles from "./case-frame.module.css";
import { frameWords } from "./frame-words.js";
import { useUndoable } from "./use-open-case.js";

/** Above every page of a case: the way back, its name, what can be undone, and what stands between it and the server. */
export function CaseHead({ open, title }: { readonly open: OpenCase; readonly title: string }) {
  const words = useWords(frameWords);
  const [canUndo, canRedo] = useUndoable(open);
  return (
    <header className={styles.head}>
      <LinkButton to="/cases" kind="quiet" label={words.allCases}>
        <Icon name="back" />
      </LinkButton>
      <h1 className={styles.title}>{title}</h1>
      <Button kind="quiet" onPress={open.undo} isDisabled={!canUndo} label={words.undo}>
        <Icon name="undo" />
      </Button>
      <Button kind="quiet" onPress={open.redo} isDisabled={!canRedo} label={words.redo}>
        <Icon name="redo" />
      </Button>
      <SettingsButton />
      <div className={styles.notices}>
        <CaseNotices open={open} />
      </div>
    </header>
  );
}
