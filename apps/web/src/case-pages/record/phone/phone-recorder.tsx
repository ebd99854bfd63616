import { catalogueOf } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../../controls/button.js";
import { Fold } from "../../../controls/fold.js";
import { Toggles } from "../../../controls/toggles.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import styles from "../record-page.module.css";
import type { RecordingFile } from "../recording-file.js";
import { recordWords } from "../words/record-catalogue.js";
import { LeftTakes } from "./left-takes.js";
import { motionAvailability } from "./motion.js";
import { type PhoneState, usePhone } from "./use-phone.js";
import { useTakes } from "./use-takes.js";
import { momentText } from "./written-file.js";

const TO_KMH = 3.6;
const SPEED = "speed";

export interface PhoneRecorderProps {
  readonly caseId: string;
  readonly settings: Settings;
  /** Whether the file outlives the page. */
  readonly onTaken: (file: RecordingFile) => Promise<boolean>;
}

/** Records with the device's own motion sensor or microphone, started and stopped by a passenger. */
export function PhoneRecorder({ caseId, settings, onTaken }: PhoneRecorderProps) {
  const words = useWords(recordWords).source.phone;
  const [extras, setExtras] = useState<readonly string[]>([SPEED]);
  const [isSilent, setSilent] = useState(false);
  const takes = useTakes({ caseId, nameOf: (startedAt) => words.name(momentText(startedAt)), onFile: onTaken });
  const { state, start, stop } = usePhone(caseId, async (head, writer) => setSilent(!(await takes.finish(head, await writer.whole()))));
  const available = motionAvailability();
  const hasMicrophone = window.isSecureContext && "mediaDevices" in navigator && "AudioWorkletNode" in window;
  if (state.state === "running") return <RunningTake running={state} settings={settings} onStop={() => void stop()} />;
  return (
    <div className={styles.stack}>
      <LeftTakes takes={takes} />
      {available === "here" || hasMicrophone ? <p>{words.placeIt}</p> : null}
      {available === "here" || hasMicrophone ? (
        <Fold title={words.howLongTitle}>
          <p>{words.howLong}</p>
        </Fold>
      ) : null}
      {available === "insecure" || !window.isSecureContext ? <p>{words.insecure}</p> : null}
      {available === "none" && window.isSecureContext ? <p className={styles.quiet}>{words.missing}</p> : null}
      {available === "here" ? (
        <>
          <Toggles label={words.beside} options={[{ value: SPEED, label: words.withSpeed }]} values={extras} onChange={setExtras} />
          <Button size="large" onPress={() => void start("motion", extras.includes(SPEED))}>
            {words.motion}
          </Button>
        </>
      ) : null}
      {hasMicrophone ? (
        <>
          <Button size="large" onPress={() => void start("sound", false)}>
            {words.sound}
          </Button>
          <p className={styles.quiet}>{words.soundOnly}</p>
        </>
      ) : null}
      {state.state === "asking" ? <p role="status">{words.asking}</p> : null}
      {state.state === "denied" ? <p role="alert">{words.denied}</p> : null}
      {isSilent && state.state === "idle" ? <p role="alert">{words.silent}</p> : null}
    </div>
  );
}

interface RunningTakeProps {
  readonly running: Extract<PhoneState, { readonly state: "running" }>;
  readonly settings: Settings;
  readonly onStop: () => void;
}

function RunningTake({ running: { seconds, rate, speed }, settings, onStop }: RunningTakeProps) {
  const words = useWords(recordWords).source.phone;
  const { numbers } = catalogueOf(settings.language, settings.units);
  const speedText = (known: number): string => words.speedNow(numbers.roadSpeed(known * TO_KMH, 0));
  return (
    <div className={styles.stack}>
      <p className={styles.answer} role="timer">
        {words.running(numbers.plain(seconds, 0))}
      </p>
      <p>
        {rate === null ? "" : words.measured(numbers.plain(rate, 0))}
        {speed === undefined ? "" : ` ${speed === null ? words.noSpeedYet : speedText(speed)}`}
      </p>
      <Button kind="main" size="large" onPress={onStop}>
        {words.stop}
      </Button>
    </div>
  );
}
