import type { ChannelScale } from "@halfturn/recordings";
import { Choice } from "../../../controls/choice.js";
import { Fields } from "../../../controls/fields.js";
import { Fold } from "../../../controls/fold.js";
import { MeasureField } from "../../../measure/measure-field.js";
import { useWords } from "../../../words/use-words.js";
import type { Look, LookedChannel } from "../../../worker/listening/listening-types.js";
import { recordWords } from "../words/record-catalogue.js";

const UNITS = ["m/s^2", "g", "mm/s", "mm", "Pa"] as const;
const NOT_KNOWN = "";
const SCALE = { above: 0, maximum: 1e9 };

export interface ScaleFieldsProps {
  readonly look: Look;
  readonly scales: readonly ChannelScale[];
  readonly onChange: (scales: readonly ChannelScale[]) => void;
}

const isOpen = ({ quantity }: LookedChannel, scale: ChannelScale | undefined): boolean =>
  scale !== undefined || ["share", "unknown", "voltage"].includes(quantity);

/** What the file does not say of its channels: unit, full scale, sensitivity. */
export function ScaleFields({ look, scales, onChange }: ScaleFieldsProps) {
  const words = useWords(recordWords).setUp;
  const scaleOf = (id: string): ChannelScale | undefined => scales.find((scale) => scale.id === id);
  const asked = look.channels.filter((channel) => isOpen(channel, scaleOf(channel.id)));
  const change = (id: string, part: Partial<ChannelScale>): void => {
    const next = { ...scaleOf(id), ...part, id };
    const left = scales.filter((scale) => scale.id !== id);
    onChange(next.unit === undefined && next.fullScale === undefined && next.sensitivity === undefined ? left : [...left, next]);
  };
  if (asked.length === 0) return null;
  return (
    <Fold title={words.scale} open={look.best.length === 0}>
      <p>{words.scaleHelp}</p>
      {asked.map(({ id }) => {
        const scale = scaleOf(id);
        return (
          <Fields key={id}>
            <Choice
              label={`${id}: ${words.unit}`}
              options={[...UNITS.map((unit) => ({ value: unit as string, label: unit })), { value: NOT_KNOWN, label: words.unitUnknown }]}
              value={scale?.unit ?? NOT_KNOWN}
              onChange={(unit) => change(id, { unit: unit === NOT_KNOWN ? undefined : unit })}
            />
            <MeasureField
              part={`${id} fullScale`}
              label={words.fullScale}
              help={words.fullScaleHelp}
              measure="number"
              bounds={SCALE}
              value={scale?.fullScale ?? null}
              onChange={(value) => change(id, { fullScale: value ?? undefined })}
            />
            <MeasureField
              part={`${id} sensitivity`}
              label={words.sensitivity}
              help={words.sensitivityHelp}
              measure="number"
              bounds={SCALE}
              value={scale?.sensitivity ?? null}
              onChange={(value) => change(id, { sensitivity: value ?? undefined })}
            />
          </Fields>
        );
      })}
    </Fold>
  );
}
