import type { Layout } from "@halfturn/casefile";
import { useNavigate } from "@tanstack/react-router";
import { Button as Pressable } from "react-aria-components";
import { Icon } from "../controls/icon.js";
import { LinkButton } from "../controls/link-button.js";
import { shelf } from "../device/device.js";
import { newId } from "../device/new-id.js";
import { SettingsButton } from "../settings/settings-button.js";
import { PageFrame } from "../shell/page-frame.js";
import { useWords } from "../words/use-words.js";
import { makeCase } from "../worker/worker-client.js";
import { LayoutPicture } from "./layout-picture.js";
import styles from "./new-case-page.module.css";
import { newCaseWords } from "./new-case-words.js";

/** In the order in which they are met in a shop. */
const LAYOUTS = ["one-piece", "two-piece", "three-piece", "four-wheel-drive"] as const satisfies readonly Layout[];

/** Starts a case from the shape of its driveline; all else is asked on the pages of the case. */
export function NewCasePage() {
  const words = useWords(newCaseWords);
  const navigate = useNavigate();
  const start = async (layout: Layout) => {
    const id = newId();
    await shelf.add(await makeCase({ id, title: "", layout, createdAt: new Date().toISOString() }));
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
      actions={<SettingsButton />}
    >
      <h2>{words.which}</h2>
      <div className={styles.layouts}>
        {LAYOUTS.map((layout) => (
          <Pressable key={layout} className={styles.layout ?? ""} onPress={() => void start(layout)}>
            <LayoutPicture layout={layout} />
            <span className={styles.name}>{words.layouts[layout].name}</span>
            <span className={styles.about}>{words.layouts[layout].about}</span>
          </Pressable>
        ))}
      </div>
    </PageFrame>
  );
}
