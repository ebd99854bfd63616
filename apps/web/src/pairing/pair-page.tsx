import { useNavigate } from "@tanstack/react-router";
import { type FormEvent, useState } from "react";
import { Button } from "../controls/button.js";
import { Icon } from "../controls/icon.js";
import { LinkButton } from "../controls/link-button.js";
import { TextEntry } from "../controls/text-entry.js";
import { sync } from "../device/device.js";
import { deviceName, renameDevice } from "../device/device-name.js";
import { hasKeys, useKeptDraft } from "../device/kept-draft.js";
import { PageFrame } from "../shell/page-frame.js";
import { useWords } from "../words/use-words.js";
import styles from "./pair-page.module.css";
import { type ClaimAnswer, claimPairing } from "./pairing-server.js";
import { pairingWords } from "./pairing-words.js";

const DIGITS = 8;
const digitsOf = (text: string): string => text.replace(/\D/g, "").slice(0, DIGITS);

interface Typed {
  readonly code: string;
  readonly name: string;
}

const isTyped = (value: unknown): value is Typed =>
  hasKeys(value, "code", "name") && typeof value.code === "string" && typeof value.name === "string";

/** Where a device of the network shows its code; scanned, the code is there already. */
export function PairPage() {
  const words = useWords(pairingWords);
  const navigate = useNavigate();
  const [scanned] = useState(() => digitsOf(window.location.hash));
  const [typed, keepTyped] = useKeptDraft("pair", isTyped);
  const { code, name } = typed ?? { code: scanned, name: deviceName() };
  const [answer, setAnswer] = useState<ClaimAnswer | null>(null);
  const claim = async (event: FormEvent) => {
    event.preventDefault();
    renameDevice(name);
    const given = await claimPairing(code, name);
    setAnswer(given);
    if (given !== "in") return;
    keepTyped(null);
    void sync.catchUp();
    void navigate({ to: "/cases", replace: true });
  };
  const faults = { wrong: words.wrong, "too-often": words.tooOften, unreachable: words.unreachable } as const;
  return (
    <PageFrame
      title={words.title}
      back={
        <LinkButton to="/cases" kind="quiet" label={words.back}>
          <Icon name="back" />
        </LinkButton>
      }
    >
      <p>{words.explain}</p>
      <form className={styles.form} onSubmit={(event) => void claim(event)}>
        <TextEntry label={words.code} help={words.codeHelp} value={code} onChange={(text) => keepTyped({ code: digitsOf(text), name })} />
        <TextEntry label={words.device} value={name} onChange={(text) => keepTyped({ code, name: text })} />
        <Button kind="main" size="large" type="submit" isDisabled={code.length < DIGITS || name.trim() === ""}>
          {words.letIn}
        </Button>
      </form>
      <p role="status" className={styles.fault}>
        {answer === null ? "" : answer === "in" ? words.done : faults[answer]}
      </p>
    </PageFrame>
  );
}
