/** What to call a shaft, section or joint of the case, given by its id, or a place, given by its path; what has no name stands for itself. */
export type NameOf = (id: string) => string;
