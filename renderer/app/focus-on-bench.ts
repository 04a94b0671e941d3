/** Gives the focus to what the screen marks as its start, else to the bench, and leaves the page where it is scrolled to. */
export function returnToBench(): void {
  const bench = document.getElementById('bench');
  (bench?.querySelector<HTMLElement>('[data-start]') ?? bench)?.focus({ preventScroll: true });
}

/** The same at the top of the page. */
export function focusOnBench(): void {
  returnToBench();
  window.scrollTo(0, 0);
}

/** The same as `focusOnBench`, unless something on the bench has the focus already. */
export function focusOnBenchIfFree(): void {
  const bench = document.getElementById('bench');
  const taken = bench !== null && bench !== document.activeElement && bench.contains(document.activeElement);
  if (!taken) focusOnBench();
}
