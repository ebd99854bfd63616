import type { ByLanguage } from "../../words/use-words.js";

interface DescribeWords {
  readonly title: string;
  readonly vehicle: string;
}

export const describeWords: ByLanguage<DescribeWords> = {
  en: { title: "What is the case about?", vehicle: "Vehicle" },
  es: { title: "¿De qué trata el caso?", vehicle: "Vehículo" },
};
