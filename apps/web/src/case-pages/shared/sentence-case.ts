/** A phrase of the catalogue as it begins a line. */
export const sentenceCase = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
