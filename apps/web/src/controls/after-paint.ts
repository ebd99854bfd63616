/** Runs once the frame that shows what was just drawn is out: what nobody waits for takes none of its time. Gives what calls it off. */
export function afterPaint(run: () => void): () => void {
  let wanted = true;
  const frame = requestAnimationFrame(() => {
    // A message that is posted inside a frame is taken up once the frame has been drawn.
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      if (wanted) run();
    };
    port2.postMessage(null);
  });
  return () => {
    wanted = false;
    cancelAnimationFrame(frame);
  };
}
