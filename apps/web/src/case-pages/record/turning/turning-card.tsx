import { type Case, ordersNear, type Turning, turningAt } from "@halfturn/casefile";
import { type FigureOptions, orderLines, orderPictureOf } from "@halfturn/figures";
import { catalogueOf, type NameOf, noteText, problemText } from "@halfturn/words";
import { useCallback, useMemo } from "react";
import { Button } from "../../../controls/button.js";
import { Card } from "../../../controls/card.js";
import { Choice } from "../../../controls/choice.js";
import { Fields } from "../../../controls/fields.js";
import { Figure } from "../../../controls/figure.js";
import { Fold } from "../../../controls/fold.js";
import { hasKeys, useKeptDraft } from "../../../device/kept-draft.js";
import { MeasureField } from "../../../measure/measure-field.js";
import { fieldNames } from "../../../words/field-names.js";
import { useWords } from "../../../words/use-words.js";
import type { CasePageProps } from "../../case-page.js";
import { CoincidenceList } from "../coincidence-list.js";
import { accessoryNames } from "../part-names.js";
import styles from "../record-page.module.css";
import { usualSpeeds } from "../usual-speeds.js";
import { recordWords } from "../words/record-catalogue.js";
import { MissingNumbers } from "./missing-numbers.js";
import { NearOrders } from "./near-orders.js";
import { TurningParts } from "./turning-parts.js";

const ROAD = { above: 0, maximum: 400 };
const FREQUENCY = { above: 0, maximum: 1000 };
/** How well a hand and a clock tell a frequency, Hz, and a speedometer a speed (common practice, no source). */
const [WITHIN, SPEED_SHARE] = [0.5, 0.03];

const middle = ({ complaint }: Case): number | null =>
  complaint?.speedKmh ? Math.round((complaint.speedKmh[0] + complaint.speedKmh[1]) / 2) : null;

interface Asked {
  /** null: the complaint's. */
  readonly typed: number | "emptied" | null;
  readonly frequency: number | null;
  readonly chosen: string | null;
}

const NOTHING_ASKED: Asked = { typed: null, frequency: null, chosen: null };

const isAsked = (value: unknown): value is Asked =>
  hasKeys(value, "typed", "frequency", "chosen") &&
  (value.typed === null || value.typed === "emptied" || typeof value.typed === "number") &&
  (value.frequency === null || typeof value.frequency === "number") &&
  (value.chosen === null || typeof value.chosen === "string");

/** What turns at the speed at which it is felt, and which of it lies at a frequency: an answer without any recording. */
export function TurningCard({ document, edit, settings }: Pick<CasePageProps, "document" | "edit" | "settings">) {
  const words = useWords(recordWords);
  const names = useWords(fieldNames);
  const catalogue = catalogueOf(settings.language, settings.units);
  // None of these is the case's: they are only asked about, and stay as they were typed.
  const [asked, ask] = useKeptDraft("turning", isAsked);
  const { typed, frequency, chosen } = asked ?? NOTHING_ASKED;
  const setTyped = (next: number | null): void => ask({ typed: next ?? "emptied", frequency, chosen });
  const gears = document.vehicle?.gears ?? [];
  const gear = gears.find(({ label }) => label === chosen)?.label ?? gears.find(({ label }) => label === document.complaint?.gear)?.label;
  const speed = typed === null ? middle(document) : typed === "emptied" ? null : typed;
  const turning = useMemo(() => (speed === null ? null : turningAt(document, { speed, gear })), [document, speed, gear]);
  return (
    <Card title={words.turning.title}>
      <p>{words.turning.help}</p>
      <Fields>
        <MeasureField
          part="turning.speed"
          label={words.turning.speed}
          measure="road-speed"
          bounds={ROAD}
          value={speed}
          onChange={setTyped}
        />
        <MeasureField
          part="turning.frequency"
          label={words.turning.frequency}
          measure="number"
          bounds={FREQUENCY}
          value={frequency}
          onChange={(next) => ask({ typed, frequency: next, chosen })}
        />
      </Fields>
      {speed === null ? (
        <div className={styles.buttons}>
          {usualSpeeds(settings.units).map((usual) => (
            <Button key={usual} onPress={() => setTyped(usual)}>
              {catalogue.numbers.roadSpeed(usual)}
            </Button>
          ))}
        </div>
      ) : null}
      {gears.length > 1 ? (
        <Choice
          label={names.gear}
          options={gears.map(({ label }) => ({ value: label, label }))}
          value={gear ?? (turning?.ok ? turning.basis.gear : null)}
          onChange={(next) => ask({ typed, frequency, chosen: next })}
        />
      ) : null}
      {turning === null ? null : turning.ok ? (
        <Found document={document} turning={turning} frequency={frequency} settings={settings} />
      ) : (
        <>
          <ul className={styles.plainList}>
            {turning.problems.map((problem) => (
              <li key={`${problem.code} ${problem.path}`}>{problemText(catalogue, problem)}</li>
            ))}
          </ul>
          <MissingNumbers document={document} edit={edit} />
        </>
      )}
    </Card>
  );
}

interface FoundProps extends Pick<CasePageProps, "document" | "settings"> {
  readonly turning: Turning;
  readonly frequency: number | null;
}

function Found({ document, turning, frequency, settings }: FoundProps) {
  const words = useWords(recordWords);
  const { orders, numbers } = catalogueOf(settings.language, settings.units);
  const { json, basis, recording } = turning;
  const nameOf: NameOf = useMemo(() => accessoryNames(document), [document]);
  const near = frequency === null ? [] : ordersNear(json, { frequency, within: WITHIN, speedShare: SPEED_SHARE });
  const draw = useCallback(
    (options: FigureOptions) => orderLines(orderPictureOf(json, document, options.labels), options),
    [json, document],
  );
  return (
    <>
      <h3>{orders.heading(numbers.roadSpeed(json.speedKmh), basis.gear)}</h3>
      {frequency === null ? null : (
        <NearOrders document={document} turning={turning} near={near} frequency={frequency} nameOf={nameOf} settings={settings} />
      )}
      <TurningParts parts={json.parts} near={near} nameOf={nameOf} settings={settings} />
      {basis.notes.map((note) => (
        <p key={note.code} className={styles.quiet}>
          {noteText(orders, note, numbers)}
        </p>
      ))}
      <Figure settings={settings} draw={draw} />
      <Fold title={`${orders.coincidences}: ${numbers.plain(json.coincidences.length, 0)}`} open={json.coincidences.length > 0}>
        <p className={styles.quiet}>
          {orders.recordingOf(
            numbers.plain(recording.wheelTurns, 0),
            numbers.plain(recording.seconds, recording.seconds < 10 ? 1 : 0),
            numbers.distance(recording.metres),
          )}
        </p>
        {json.coincidences.length === 0 ? (
          <p>{orders.noCoincidences}</p>
        ) : (
          <CoincidenceList coincidences={json.coincidences} orders={orders} nameOf={nameOf} />
        )}
        <p className={styles.quiet}>{words.turning.noSpeedParts}</p>
      </Fold>
    </>
  );
}
