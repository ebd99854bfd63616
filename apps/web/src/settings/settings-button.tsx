import { lazy, Suspense, useState } from "react";
import { Button } from "../controls/button.js";
import { Icon } from "../controls/icon.js";
import { Sheet } from "../controls/sheet.js";
import { useWords } from "../words/use-words.js";
import { settingsWords } from "./settings-words.js";

const SettingsForm = lazy(async () => ({ default: (await import("./settings-form.js")).SettingsForm }));

/** The settings, within reach on every page. */
export function SettingsButton() {
  const words = useWords(settingsWords);
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button kind="quiet" label={words.title} onPress={() => setOpen(true)}>
        <Icon name="settings" />
      </Button>
      {open ? (
        <Sheet title={words.title} close={words.close} onClose={() => setOpen(false)}>
          <Suspense>
            <SettingsForm />
          </Suspense>
        </Sheet>
      ) : null}
    </>
  );
}
