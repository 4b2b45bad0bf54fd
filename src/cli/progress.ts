/**
 * A bar on standard error for work that takes over a second; it shows nothing where that is no terminal.
 * @returns a function to call at each step, and once with no step at the end
 */
export function progress(steps: number): (step?: string) => void {
  const stream = process.stderr;
  if (!stream.isTTY) return () => {};
  const start = performance.now();
  let done = -1;
  return (step) => {
    done += 1;
    if (performance.now() - start < 1000) return;
    const bar = '#'.repeat(Math.round((20 * done) / steps)).padEnd(20, '.');
    stream.write(step === undefined ? '\r\x1b[K' : `\r\x1b[K[${bar}] ${step}`);
  };
}

/** Runs a work under a bar that moves by hundredths, as the work says how much of it is done. */
export async function withBar<Value>(
  work: (step: (done: number, total: number) => void) => Promise<Value>,
): Promise<Value> {
  const bar = progress(100);
  let shown = -1;
  const step = (done: number, total: number) => {
    for (const now = Math.floor((100 * done) / Math.max(1, total)); shown < now; shown++)
      bar(`${shown + 1} %`);
  };
  return work(step).finally(() => bar());
}
