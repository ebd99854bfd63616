import { LinkButton } from "../controls/link-button.js";
import { useWords } from "../words/use-words.js";
import { PageFrame } from "./page-frame.js";
import { shellWords } from "./shell-words.js";

export interface NothingHereProps {
  readonly title: string;
  readonly help: string;
}

/** Where an address leads to nothing: what may be the matter, and the way to everything else. */
export const NothingHere = ({ title, help }: NothingHereProps) => {
  const words = useWords(shellWords);
  return (
    <PageFrame title={title}>
      <p>{help}</p>
      <div>
        <LinkButton to="/cases" kind="main">
          {words.allCases}
        </LinkButton>
      </div>
    </PageFrame>
  );
};

/** An address of no page at all. */
export const NoSuchPage = () => {
  const words = useWords(shellWords);
  return <NothingHere title={words.noPage} help={words.noPageHelp} />;
};
