import { useParams } from "@tanstack/react-router";
import { Message } from "../../controls/message.js";
import { NothingHere } from "../../shell/nothing-here.js";
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
  if (open === null) return <NothingHere title={words.notFound} help={words.notFoundHelp} />;
  return <CaseFrame key={id} open={open} step={step} />;
}
