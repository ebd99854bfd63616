import { useState } from "react";
import { Choice, type Option } from "../controls/choice.js";
import { TextEntry } from "../controls/text-entry.js";
import { deviceName, renameDevice } from "../device/device-name.js";
import type { ChosenSettings } from "../device/settings.js";
import { OtherDevices } from "../pairing/other-devices.js";
import { useWords } from "../words/use-words.js";
import { useSettings } from "./settings-context.js";
import styles from "./settings-form.module.css";
import { settingsWords } from "./settings-words.js";

const DEVICE = "device";

/** Without a key that follows the device again. */
const chosenWith = <Key extends keyof ChosenSettings>(chosen: ChosenSettings, key: Key, value: string): ChosenSettings => {
  const { [key]: _, ...rest } = chosen;
  return value === DEVICE ? (rest as ChosenSettings) : { ...chosen, [key]: value };
};

/** How this device shows things. */
export function SettingsForm() {
  const words = useWords(settingsWords);
  const { chosen, choose } = useSettings();
  const [name, setName] = useState(deviceName);
  const rename = (next: string): void => {
    renameDevice(next);
    setName(next);
  };
  const device: Option<string> = { value: DEVICE, label: words.asDevice };
  const row = (key: keyof ChosenSettings, label: string, options: readonly Option<string>[]) => (
    <Choice
      label={label}
      options={[device, ...options]}
      value={chosen[key] ?? DEVICE}
      onChange={(value) => choose(chosenWith(chosen, key, value))}
    />
  );
  return (
    <div className={styles.form}>
      {row("theme", words.theme, [
        { value: "light", label: words.light },
        { value: "dark", label: words.dark },
        { value: "contrast", label: words.contrast },
      ])}
      {row("units", words.units, [
        { value: "metric", label: words.metric },
        { value: "us", label: words.us },
      ])}
      {row("language", words.language, [
        { value: "en", label: <span lang="en">English</span> },
        { value: "es", label: <span lang="es">Español</span> },
      ])}
      <TextEntry label={words.device} help={words.deviceHelp} value={name} onChange={rename} />
      <OtherDevices />
    </div>
  );
}
