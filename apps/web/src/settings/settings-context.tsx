import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from "react";
import { I18nProvider } from "react-aria-components";
import { devicePreferences, keepSettings, keptSettings, watchPreferences } from "../device/chosen-settings.js";
import { type ChosenSettings, type Settings, settingsOf } from "../device/settings.js";
import { LanguageContext } from "../words/use-words.js";

interface SettingsState {
  readonly settings: Settings;
  readonly chosen: ChosenSettings;
  readonly choose: (chosen: ChosenSettings) => void;
}

const SettingsContext = createContext<SettingsState | null>(null);

/** Holds how this device shows things, and shows it so. */
export function SettingsProvider({ children }: { readonly children: ReactNode }) {
  const [chosen, setChosen] = useState(keptSettings);
  const [device, setDevice] = useState(devicePreferences);
  useEffect(
    () =>
      watchPreferences(() => {
        setDevice(devicePreferences());
        setChosen(keptSettings());
      }),
    [],
  );
  const state = useMemo(
    () => ({
      settings: settingsOf(chosen, device),
      chosen,
      choose: (next: ChosenSettings) => {
        keepSettings(next);
        setChosen(next);
      },
    }),
    [chosen, device],
  );
  const { theme, language } = state.settings;
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
    document.documentElement.lang = language;
  }, [theme, language]);
  return (
    <SettingsContext.Provider value={state}>
      <LanguageContext.Provider value={language}>
        <I18nProvider locale={language}>{children}</I18nProvider>
      </LanguageContext.Provider>
    </SettingsContext.Provider>
  );
}

/** Throws where there is no provider, which is a programmer error. */
export function useSettings(): SettingsState {
  const state = useContext(SettingsContext);
  if (!state) throw new Error("no settings provider around this component");
  return state;
}
