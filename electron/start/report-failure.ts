/** Ends a command that failed for a reason the message names; the stack would only hide it. */
export function reportFailure(error: unknown): void {
  process.stderr.write(`\n${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
