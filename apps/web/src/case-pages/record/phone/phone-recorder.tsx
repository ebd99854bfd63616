import { catalogueOf } from "@halfturn/words";
import { useState } from "react";
import { Button } from "../../../controls/button.js";
import { Toggles } from "../../../controls/toggles.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import styles from "../record-page.module.css";
import type { RecordingFile } from "../recording-file.js";
import { wholeSpeedWriter } from "../shown-speed.js";
import { recordWords } from "../words/record-catalogue.js";
import { motionAvailability } from "./motion.js";
import { usePhone } from "./use-phone.js";
import { momentText, writtenFile } from "./written-file.js";

const TO_KMH = 3.6;
const SPEED = "speed";

export interface PhoneRecorderProps {
  readonly settings: Settings;
  readonly onTaken: (file: RecordingFile) => void;
}

/** Records with the device's own motion sensor or microphone, started and stopped by a passenger. */
export function PhoneRecorder({ settings, onTaken }: PhoneRecorderProps) {
  const words = useWords(recordWords).source.phone;
  const { numbers } = catalogueOf(settings.language);
  const [extras, setExtras] = useState<readonly string[]>([SPEED]);
  const { state, start, stop } = usePhone((recording, kind) => {
    const now = new Date();
    void writtenFile(recording, kind, words.name(momentText(now)), now).then((file) => file && onTaken(file));
  });
  const available = motionAvailability();
  const hasMicrophone = window.isSecureContext && "mediaDevices" in navigator && "AudioWorkletNode" in window;
  if (state.state === "running") {
    const { seconds, rate, speed } = state;
    return (
      <div className={styles.stack}>
        <p className={styles.answer} role="timer">
          {words.running(numbers.plain(seconds, 0))}
        </p>
        <p>
          {rate === null ? "" : words.measured(numbers.plain(rate, 0))}
          {speed === undefined
            ? ""
            : ` ${speed === null ? words.noSpeedYet : words.speedNow(wholeSpeedWriter(numbers, settings.units)(speed * TO_KMH))}`}
        </p>
        <Button kind="main" size="large" onPress={() => void stop()}>
          {words.stop}
        </Button>
      </div>
    );
  }
  return (
    <div className={styles.stack}>
      {available === "here" || hasMicrophone ? <p>{words.placeIt}</p> : null}
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
      {state.state === "silent" ? <p role="alert">{words.silent}</p> : null}
    </div>
  );
}
