import { examples } from "@halfturn/casefile";
import { Link, useNavigate } from "@tanstack/react-router";
import { useEffect, useState } from "react";
import { Button } from "../controls/button.js";
import { Card } from "../controls/card.js";
import { LinkButton } from "../controls/link-button.js";
import { Message } from "../controls/message.js";
import { shelf } from "../device/device.js";
import type { DeviceCase } from "../device/device-case.js";
import { SettingsButton } from "../settings/settings-button.js";
import { PageFrame } from "../shell/page-frame.js";
import { useWords } from "../words/use-words.js";
import styles from "./cases-page.module.css";
import { casesWords } from "./cases-words.js";
import { openExample } from "./open-example.js";

/** The cases of this device, and the ways to a new one. */
export function CasesPage() {
  const words = useWords(casesWords);
  const navigate = useNavigate();
  const [cases, setCases] = useState<readonly DeviceCase[] | null>(null);
  useEffect(() => void shelf.list().then(setCases), []);
  const open = async (example: (typeof examples)[number]) => {
    const id = await openExample(example);
    if (id) void navigate({ to: "/cases/$id/$step", params: { id, step: "describe" } });
  };
  return (
    <PageFrame title={words.title} actions={<SettingsButton />}>
      <LinkButton to="/cases/new" kind="main" size="large">
        {words.newCase}
      </LinkButton>
      {cases?.length === 0 ? <Message title={words.none}>{words.noneHelp}</Message> : null}
      <ul className={styles.list}>
        {(cases ?? []).map(({ id, document }) => (
          <li key={id}>
            <Link to="/cases/$id/$step" params={{ id, step: "describe" }} className={styles.case ?? ""}>
              <strong>{document.title || words.untitled}</strong>
              <span className={styles.vehicle}>{document.vehicle?.label}</span>
            </Link>
          </li>
        ))}
      </ul>
      <Card title={words.examples}>
        <p>{words.examplesHelp}</p>
        <div className={styles.examples}>
          {examples.map((example) => (
            <Button key={example.name} onPress={() => void open(example)}>
              {words.example[example.name]}
            </Button>
          ))}
        </div>
      </Card>
    </PageFrame>
  );
}
