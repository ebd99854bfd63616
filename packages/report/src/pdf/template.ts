import { blocks } from "./template-blocks.js";
import { page } from "./template-page.js";

/**
 * The document's own template, kept as text in a module so that every bundler carries it along.
 * All content comes in as JSON through `sys.inputs` and is only ever set as text, never read as markup.
 */
export const TEMPLATE = `${page}\n${blocks}\n#for section in content.sections { show-section(section) }\n`;
