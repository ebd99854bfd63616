import { LAYOUTS, type Layout, newCase } from "@halfturn/casefile";
import { useNavigate } from "@tanstack/react-router";
import { Button } from "../controls/button.js";
import { Icon } from "../controls/icon.js";
import { LinkButton } from "../controls/link-button.js";
import { shelf } from "../device/device.js";
import { newId } from "../device/new-id.js";
import { PageFrame } from "../shell/page-frame.js";
import { useWords } from "../words/use-words.js";
import { newCaseWords } from "./new-case-words.js";

/** Starts a case from the shape of its driveline; all else is asked on the pages of the case. */
export function NewCasePage() {
  const words = useWords(newCaseWords);
  const navigate = useNavigate();
  const start = async (layout: Layout) => {
    const id = newId();
    await shelf.add(newCase({ id, title: "", layout, createdAt: new Date().toISOString() }));
    void navigate({ to: "/cases/$id/$step", params: { id, step: "describe" } });
  };
  return (
    <PageFrame
      title={words.title}
      back={
        <LinkButton to="/cases" kind="quiet" label={words.back}>
          <Icon name="back" />
        </LinkButton>
      }
    >
      <h2>{words.which}</h2>
      {LAYOUTS.map((layout) => (
        <Button key={layout} size="large" onPress={() => void start(layout)}>
          {words.layouts[layout].name}
        </Button>
      ))}
    </PageFrame>
  );
}
