import type { Language } from "@halfturn/words";
import { createContext, useContext } from "react";

/** A page's sentences stand beside it, one catalogue per language; the type makes a missing one an error. */
export type ByLanguage<Words> = Readonly<Record<Language, Words>>;

export const LanguageContext = createContext<Language>("en");

export const useLanguage = (): Language => useContext(LanguageContext);

/** The sentences of a page in the language that is shown. */
export const useWords = <Words>(words: ByLanguage<Words>): Words => words[useLanguage()];
