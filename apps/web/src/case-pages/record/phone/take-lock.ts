const nameOf = (id: string): string => `halfturn-take-${id}`;

/** Says, for as long as this page lives, that a take is being recorded by it. Returns what ends that. */
export function holdTake(id: string): () => void {
  let end: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    end = resolve;
  });
  void navigator.locks.request(nameOf(id), () => held);
  return () => end();
}

/** Of these takes the ones that no page records any more. */
export async function abandonedTakes<Take extends { readonly id: string }>(takes: readonly Take[]): Promise<readonly Take[]> {
  const { held = [] } = await navigator.locks.query();
  const names = new Set(held.map(({ name }) => name));
  return takes.filter(({ id }) => !names.has(nameOf(id)));
}
