/** What to call a shaft, section or joint of the case: its label, or its id where it has none. */
export type NameOf = (id: string) => string;
