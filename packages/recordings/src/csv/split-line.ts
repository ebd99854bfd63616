/** A line's cells; a cell in double quotes may hold the separator, and a quote doubled. Blanks around a cell are dropped. */
export function splitLine(line: string, separator: string): readonly string[] {
  const cells: string[] = [];
  let at = 0;
  while (at <= line.length) {
    const quoted = quotedCell(line, at, separator);
    if (quoted !== null) {
      cells.push(quoted.text.trim());
      at = quoted.next;
      continue;
    }
    const end = line.indexOf(separator, at);
    cells.push(line.slice(at, end < 0 ? line.length : end).trim());
    at = end < 0 ? line.length + 1 : end + 1;
  }
  return cells;
}

/** A quoted cell at a place and the place after its separator; null where the cell is not quoted as a whole. */
function quotedCell(line: string, at: number, separator: string): { readonly text: string; readonly next: number } | null {
  let place = at;
  while (line[place] === " ") place++;
  if (line[place] !== '"') return null;
  let text = "";
  for (place++; place < line.length; place++) {
    if (line[place] !== '"') text += line[place];
    else if (line[place + 1] === '"') text += line[++place];
    else break;
  }
  if (place >= line.length) return null;
  place++;
  while (line[place] === " " && separator !== " ") place++;
  return place >= line.length || line[place] === separator ? { text, next: place + 1 } : null;
}
