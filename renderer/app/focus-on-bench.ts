/** Gives the focus to what the screen marks as its start, else to the top of the bench. */
export function focusOnBench(): void {
  const bench = document.getElementById('bench');
  (bench?.querySelector<HTMLElement>('[data-start]') ?? bench)?.focus({ preventScroll: true });
  window.scrollTo(0, 0);
}

/** The same, unless something on the bench has the focus already. */
export function focusOnBenchIfFree(): void {
  const bench = document.getElementById('bench');
  const taken = bench !== null && bench !== document.activeElement && bench.contains(document.activeElement);
  if (!taken) focusOnBench();
}
