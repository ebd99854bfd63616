import { useCanGoBack, useNavigate, useRouter } from "@tanstack/react-router";
import { Button } from "../controls/button.js";
import { Icon } from "../controls/icon.js";
import { PageFrame } from "../shell/page-frame.js";
import { useWords } from "../words/use-words.js";
import { SettingsForm } from "./settings-form.js";
import { settingsWords } from "./settings-words.js";

export function SettingsPage() {
  const words = useWords(settingsWords);
  const { history } = useRouter();
  const navigate = useNavigate();
  const canGoBack = useCanGoBack();
  return (
    <PageFrame
      title={words.title}
      back={
        <Button kind="quiet" label={words.back} onPress={() => (canGoBack ? history.back() : void navigate({ to: "/cases" }))}>
          <Icon name="back" />
        </Button>
      }
    >
      <SettingsForm />
    </PageFrame>
  );
}
