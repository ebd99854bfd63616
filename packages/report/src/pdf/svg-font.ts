const FAMILY = "Libertinus Serif";

/** A figure whose text asks for the document's own font, whatever it asked for: a font that is not embedded would be drawn with whatever the machine has. */
export const withDocumentFont = (svg: string): string =>
  svg
    .replace(/<[^>]*>/g, (tag) => tag.replace(/\sfont-family=(?:"[^"]*"|'[^']*')/g, ""))
    .replace(/^<svg\b/, `<svg font-family="${FAMILY}"`);
