import { recordHeard, toRecordingSettings } from "@halfturn/casefile";
import type { ChannelScale } from "@halfturn/recordings";
import { catalogueOf, recordingFaultText } from "@halfturn/words";
import { useEffect, useRef, useState } from "react";
import { Button } from "../../../controls/button.js";
import { Card } from "../../../controls/card.js";
import { Choice } from "../../../controls/choice.js";
import { Fold } from "../../../controls/fold.js";
import { Toggles } from "../../../controls/toggles.js";
import { DraftScope } from "../../../device/draft-scope.js";
import { useKeptDraft } from "../../../device/kept-draft.js";
import { MeasureField } from "../../../measure/measure-field.js";
import { fieldNames } from "../../../words/field-names.js";
import { useWords } from "../../../words/use-words.js";
import type { Heard, Look } from "../../../worker/listening/listening-types.js";
import type { CasePageProps } from "../../case-page.js";
import { HeardCards } from "../heard/heard-cards.js";
import styles from "../record-page.module.css";
import { keepRecording, recordingEntry } from "../recording-entry.js";
import type { RecordingFile } from "../recording-file.js";
import { recordWords } from "../words/record-catalogue.js";
import { channelText } from "./channel-text.js";
import { ClockText } from "./clock-text.js";
import { ScaleFields } from "./scale-fields.js";
import { fitsFile, isScales, isSetUp, type SetUp } from "./set-up.js";
import { SpeedFields } from "./speed-fields.js";
import { firstSpeedForm, speedChoice, speedFromText } from "./speed-form.js";
import { keptScales, tachometerOf } from "./tachometer.js";
import { UnreadText } from "./unread-text.js";
import { useHearing } from "./use-hearing.js";
import { type RecordingAtWork, useRecording } from "./use-recording.js";

const HERTZ = { above: 0, maximum: 1e6 };

export interface OpenRecordingProps extends Pick<CasePageProps, "document" | "edit" | "settings"> {
  readonly file: RecordingFile;
  /** Called when the recording goes into the case, so that its file is kept as well. */
  readonly onKeep: (file: RecordingFile) => void;
}

/** A recording from its file to the name of a part. */
export function OpenRecording({ file, document, edit, settings, onKeep }: OpenRecordingProps) {
  const words = useWords(recordWords).setUp;
  const { recording, numbers } = catalogueOf(settings.language);
  const [inCase] = useState(() => toRecordingSettings(document, file.name).channels);
  const [typedScales, setScales] = useKeptDraft(`${file.name}/scales`, isScales);
  const scales = typedScales ?? inCase;
  const atWork = useRecording(file, scales);
  const { opened } = atWork;
  const place = useRef<HTMLDivElement>(null);
  const isOpened = opened !== null;
  // What was opened stands below what opened it, often out of sight on a phone.
  useEffect(() => {
    if (isOpened) place.current?.scrollIntoView({ block: "start" });
  }, [isOpened]);
  return (
    <DraftScope part={file.name}>
      <div ref={place} className={styles.opened}>
        {opened === null ? (
          <Card title={file.name}>
            <p role="status">{words.opening} …</p>
          </Card>
        ) : opened.ok ? (
          <Listened {...{ file, document, edit, settings, onKeep, atWork, scales, setScales }} look={opened.look} />
        ) : (
          <Card title={file.name}>
            <div role="alert" className={styles.stack}>
              <h3>{words.refused}</h3>
              <p>{opened.fault ? recordingFaultText(recording, opened.fault, numbers) : words.gone}</p>
            </div>
            {/* A unit that is not known refuses the whole; here it can be taken back. */}
            {scales.length > 0 ? <Button onPress={() => setScales([])}>{words.unitUnknown}</Button> : null}
          </Card>
        )}
      </div>
    </DraftScope>
  );
}

interface ListenedProps extends OpenRecordingProps {
  readonly atWork: RecordingAtWork;
  readonly look: Look;
  readonly scales: readonly ChannelScale[];
  readonly setScales: (scales: readonly ChannelScale[]) => void;
}

function Listened({ file, document, edit, settings, onKeep, atWork, look, scales, setScales }: ListenedProps) {
  const words = useWords(recordWords).setUp;
  const names = useWords(fieldNames);
  const catalogue = catalogueOf(settings.language, settings.units);
  const { numbers } = catalogue;
  const [kept] = useState(() => toRecordingSettings(document, file.name));
  const gears = document.vehicle?.gears ?? [];
  const known = gears.find(({ label }) => label === (kept.gear ?? document.complaint?.gear))?.label;
  const [first] = useState<SetUp>(() => ({
    form: firstSpeedForm(look, document, kept.pulsesPerTurn),
    gear: known ?? null,
    filter: kept.filter,
  }));
  // What was typed is there again when the file is opened again; of another file by the same name only where it fits.
  const [draft, keepDraft] = useKeptDraft("set-up", isSetUp);
  const setUp = draft && fitsFile(draft, look) ? draft : first;
  const { form, filter } = setUp;
  const gear = setUp.gear ?? undefined;
  const put = (change: Partial<SetUp>): void => keepDraft({ ...setUp, ...change });
  const [stretch, setStretch] = useState<readonly [number, number] | null>(null);
  const hearing = useHearing();
  const { read, ids, choose, progress } = atWork;
  const speed = speedChoice(form);
  const tachometer = tachometerOf(form);
  // What counts turns is no vibration.
  useEffect(() => {
    if (tachometer !== null && ids.includes(tachometer)) choose(ids.filter((id) => id !== tachometer));
  }, [tachometer, ids, choose]);
  /** What was found belongs to what was asked. */
  const changing =
    <Value,>(change: (value: Value) => void) =>
    (value: Value): void => {
      hearing.forget();
      change(value);
    };
  const listen = (): void => {
    if (speed) hearing.start({ document, speed, gear, filter, stretch, language: settings.language });
  };
  const chooseStretch = (next: readonly [number, number] | null): void => {
    setStretch(next);
    if (speed && hearing.result) hearing.again({ document, speed, gear, filter, stretch: next, language: settings.language });
  };
  const keep = (heard: Heard): void => {
    const perTurn = form.from === "tachometer" ? form.perTurn : null;
    const entry = recordingEntry({
      file: file.name,
      recordedAt: file.recordedAt,
      gear: gear ?? null,
      scales: keptScales(scales, look, form),
      perTurn,
      filter,
    });
    const speedFrom = speedFromText(form, numbers.roadSpeed);
    const now = new Date().toISOString();
    edit((before) => recordHeard(keepRecording(entry)(before), { file: file.name, json: heard.json, speedFrom, gear: heard.gear }, now));
    onKeep(file);
    keepDraft(null);
  };
  return (
    <>
      <Card title={file.name}>
        {look.best.length === 0 ? <p role="alert">{words.noChannels}</p> : null}
        {look.channels.some((channel) => channel.heard) ? (
          <Toggles
            label={words.channels}
            options={look.channels
              .filter(({ id, heard }) => heard && id !== tachometer)
              .map((channel) => ({ value: channel.id, label: channelText(channel) }))}
            values={ids}
            onChange={changing(choose)}
          />
        ) : null}
        {read?.ok ? <ClockText read={read.channels} numbers={numbers} /> : null}
        {read && !read.ok ? <UnreadText fault={read.fault} language={settings.language} /> : null}
        {read === null && ids.length > 0 ? <p role="status">{words.reading(numbers.share(progress))}</p> : null}
        <ScaleFields look={look} scales={scales} onChange={changing(setScales)} />
        <SpeedFields look={look} form={form} document={document} settings={settings} onChange={changing((next) => put({ form: next }))} />
        {gears.length > 0 ? (
          <Choice
            label={names.gear}
            options={gears.map(({ label }) => ({ value: label, label }))}
            value={gear ?? null}
            onChange={changing((next) => put({ gear: next }))}
          />
        ) : null}
        <Fold title={words.more}>
          <MeasureField
            part="filter"
            label={words.filter}
            help={words.filterHelp}
            measure="number"
            bounds={HERTZ}
            value={filter}
            onChange={changing((next) => put({ filter: next }))}
          />
        </Fold>
        {speed === null ? <p>{words.lacking}</p> : null}
        {hearing.progress === null ? (
          <Button kind="main" size="large" isDisabled={speed === null || !read?.ok} onPress={listen}>
            {words.name}
          </Button>
        ) : (
          <div className={styles.stack}>
            <progress className={styles.progress} value={hearing.progress} max={1} aria-label={words.working("")} />
            <div className={styles.buttons}>
              <span className={styles.quiet}>{words.working(numbers.share(hearing.progress))}</span>
              <Button onPress={hearing.stop}>{words.cancel}</Button>
            </div>
          </div>
        )}
      </Card>
      <HeardCards
        document={document}
        settings={settings}
        read={read?.ok ? read.channels : null}
        look={look}
        result={hearing.result}
        isFresh={hearing.isFresh}
        form={form}
        stretch={stretch}
        isBusy={hearing.progress !== null}
        onStretch={chooseStretch}
        onKeep={keep}
        isKept={document.recordings?.some((one) => one.file === file.name && one.heard !== undefined) ?? false}
      />
    </>
  );
}
