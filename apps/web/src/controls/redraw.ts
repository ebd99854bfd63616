/**
 * Makes what a place shows the same as some markup, by changing only what differs: a browser styles, lays out and paints anew whatever is replaced, and from one key
 * press to the next a drawing keeps nearly all of its lines. The markup is made by the app itself; nothing that was typed gets into it unescaped.
 */
export function redraw(place: Element, markup: string): void {
  const template = place.ownerDocument.createElement("template");
  template.innerHTML = markup;
  matchChildren(place, template.content);
}

function matchChildren(shown: Node, wanted: Node): void {
  let old = shown.firstChild;
  for (let next = wanted.firstChild; next; ) {
    const after = next.nextSibling;
    const left = old?.nextSibling ?? null;
    if (old === null) shown.appendChild(next);
    else if (old.nodeName !== next.nodeName) shown.replaceChild(next, old);
    else if (!old.isEqualNode(next)) match(old, next);
    old = left;
    next = after;
  }
  while (old) {
    const left: ChildNode | null = old.nextSibling;
    old.remove();
    old = left;
  }
}

/** Of two nodes of one name. */
function match(shown: Node, wanted: Node): void {
  if (shown instanceof Element && wanted instanceof Element) {
    matchAttributes(shown, wanted);
    matchChildren(shown, wanted);
  } else if (shown.nodeValue !== wanted.nodeValue) shown.nodeValue = wanted.nodeValue;
}

function matchAttributes(shown: Element, wanted: Element): void {
  for (const { name, value } of wanted.attributes) if (shown.getAttribute(name) !== value) shown.setAttribute(name, value);
  if (shown.attributes.length === wanted.attributes.length) return;
  for (const name of shown.getAttributeNames()) if (!wanted.hasAttribute(name)) shown.removeAttribute(name);
}
