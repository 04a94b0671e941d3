import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Rectangle } from 'electron';
import { z } from 'zod';

const whole = z.number().int();
const saved = z.strictObject({ x: whole, y: whole, width: whole.min(400), height: whole.min(300), maximised: z.boolean() });
export type WindowState = z.infer<typeof saved>;

const SIZE = { width: 1280, height: 800 };

/** Where the window was when it was last closed, as far as that still lies on a display; else the usual size, placed by the system. */
export function readWindowState(file: string, displays: readonly { readonly workArea: Rectangle }[]): Partial<WindowState> & { width: number; height: number } {
  const state = parsed(file);
  return state !== undefined && displays.some(({ workArea }) => reaches(state, workArea)) ? state : SIZE;
}

function parsed(file: string): WindowState | undefined {
  try { return saved.parse(JSON.parse(readFileSync(file, 'utf8'))); } catch { return undefined; }
}

/** Whether enough of the title bar lies on the display to take hold of it. */
function reaches({ x, y, width }: WindowState, area: Rectangle): boolean {
  const across = Math.min(x + width, area.x + area.width) - Math.max(x, area.x);
  return across >= 200 && y >= area.y - 10 && y < area.y + area.height - 40;
}

export function writeWindowState(file: string, bounds: Rectangle, maximised: boolean): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, JSON.stringify({ ...bounds, maximised } satisfies WindowState));
}
