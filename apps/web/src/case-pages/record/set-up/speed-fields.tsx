import { turningAt } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { Choice } from "../../../controls/choice.js";
import { Fields } from "../../../controls/fields.js";
import { MeasureField } from "../../../measure/measure-field.js";
import { useWords } from "../../../words/use-words.js";
import type { Look } from "../../../worker/listening/listening-types.js";
import type { CasePageProps } from "../../case-page.js";
import { accessoryNames, partName } from "../part-names.js";
import styles from "../record-page.module.css";
import { recordWords } from "../words/record-catalogue.js";
import { channelText } from "./channel-text.js";
import { type SpeedForm, withChannel } from "./speed-form.js";
import { speedChannels } from "./tachometer.js";

const ROAD = { above: 0, maximum: 400 };
const PULSES = { above: 0, maximum: 10_000 };
/** Any speed does to list what turns. */
const USUAL_KMH = 80;

export interface SpeedFieldsProps extends Pick<CasePageProps, "document" | "settings"> {
  readonly look: Look;
  readonly form: SpeedForm;
  readonly onChange: (form: SpeedForm) => void;
}

/** Where the speed comes from: a column, a tachometer, a typed speed, or the vibration itself. */
export function SpeedFields({ look, form, document, settings, onChange }: SpeedFieldsProps) {
  const words = useWords(recordWords).setUp;
  const catalogue = catalogueOf(settings.language);
  const nameOf = accessoryNames(document);
  const turning = turningAt(document, { speed: USUAL_KMH });
  const parts = turning.ok ? turning.json.parts : [];
  const channels = speedChannels(look);
  const choose = (value: string): void => {
    const channel = channels.find(({ id }) => `channel ${id}` === value);
    if (channel) onChange(withChannel(form, channel));
    else onChange({ ...form, from: value as "constant" | "vibration", channel: null });
  };
  const speedField = (key: "speed" | "slowest" | "fastest", label: string, help?: string) => (
    <MeasureField
      part={key}
      label={label}
      measure="road-speed"
      bounds={ROAD}
      value={form[key]}
      onChange={(value) => onChange({ ...form, [key]: value })}
      {...(help === undefined ? {} : { help })}
    />
  );
  return (
    <div className={styles.group}>
      <Choice
        label={words.speed}
        options={[
          ...channels.map(({ id, speed, name, unit }) => ({
            value: `channel ${id}`,
            label: speed === null ? words.tachometer(id) : channelText({ name, unit }),
          })),
          { value: "constant", label: words.speedFrom.constant },
          { value: "vibration", label: words.speedFrom.vibration },
        ]}
        value={form.channel === null ? form.from : `channel ${form.channel}`}
        onChange={choose}
      />
      {form.from === "tachometer" ? (
        <>
          <Choice
            label={words.tachometerOn}
            options={parts.map(({ part }) => ({ value: part, label: partName(catalogue, nameOf, part) }))}
            value={form.part}
            onChange={(part) => onChange({ ...form, part })}
          />
          <MeasureField
            part="perTurn"
            label={words.perTurn}
            measure="number"
            bounds={PULSES}
            value={form.perTurn}
            onChange={(perTurn) => onChange({ ...form, perTurn })}
          />
        </>
      ) : null}
      {form.from === "constant" ? speedField("speed", words.constant, words.constantHelp) : null}
      {form.from === "vibration" ? (
        <>
          <p className={styles.quiet}>{words.rangeHelp}</p>
          <Fields>
            {speedField("slowest", words.slowest)}
            {speedField("fastest", words.fastest)}
          </Fields>
        </>
      ) : null}
    </div>
  );
}
