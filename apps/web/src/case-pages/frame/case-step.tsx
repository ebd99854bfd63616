import { useParams } from "@tanstack/react-router";
import { LinkButton } from "../../controls/link-button.js";
import { Message } from "../../controls/message.js";
import { useWords } from "../../words/use-words.js";
import { CaseFrame } from "./case-frame.js";
import { frameWords } from "./frame-words.js";
import { useOpenCase } from "./use-open-case.js";

/** One step of one case: opens the case, then shows the page of the step in its frame. */
export function CaseStep() {
  const { id, step } = useParams({ from: "/cases/$id/$step" });
  const open = useOpenCase(id);
  const words = useWords(frameWords);
  if (open === undefined) return <Message title={`${words.opening} …`} />;
  if (open === null) {
    return (
      <Message title={words.notFound} action={<LinkButton to="/cases">{words.allCases}</LinkButton>}>
        {words.notFoundHelp}
      </Message>
    );
  }
  return <CaseFrame key={id} open={open} step={step} />;
}
