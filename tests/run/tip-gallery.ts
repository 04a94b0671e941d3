import type { Tip } from '../../shared/formats/reading-sheet.v1.ts';
import { FACET_NAMES, OVERALL, TIP_FACETS } from '../../shared/vocabulary/tip.ts';
import { CLOSE_UP } from '../../renderer/ui/drawn-tip/crop.ts';
import { drawTip, type View } from '../../renderer/ui/drawn-tip/drawing.ts';
import { svgText } from '../../renderer/ui/drawn-tip/markup.ts';
import { GROUND } from '../../renderer/ui/drawn-tip/palette.ts';
import { launchBrowser } from '../e2e/loopback-host.ts';
import { chromium } from './chromium.ts';

/*
 * Every value of every facet in one picture, for looking at: bare, on a plug that was read, small, and as the sample beside a choice.
 * node tests/run/tip-gallery.ts OUT.png
 */
const READ: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', shellRim: 'even soot', centreElectrode: 'sharp', groundElectrode: 'as new' };

let drawings = 0;
const drawn = (tip: Tip, view: View, size: number): string => svgText(drawTip(tip, view, size, 'gallery', `g${drawings++}`), size);

function card(facet: keyof typeof CLOSE_UP, value: string): string {
  const tip: Tip = { [facet]: value };
  const { view, window } = CLOSE_UP[facet];
  const sample = svgText(drawTip(tip, view, 48, 'gallery', `g${drawings++}`, window), 48);
  const onRead: Tip = { ...READ, ...tip };
  const pictures = [drawn(tip, 'end', 130), drawn(onRead, 'end', 130), drawn(onRead, 'side', 230), drawn(onRead, 'end', 48), sample];
  return `<figure>${pictures.join('')}<figcaption>${value}</figcaption></figure>`;
}

const rows = [...FACET_NAMES.map((facet) => [facet, TIP_FACETS[facet]] as const), ['overall', OVERALL] as const];
const page = `<!doctype html><meta charset="utf-8"><style>
  body { background: ${GROUND}; font: 14px sans-serif; } figure { display: inline-block; margin: 4px 12px; text-align: center; } svg { vertical-align: middle; }
</style>${rows.map(([facet, values]) => `<h2>${facet}</h2>${values.map((value) => card(facet, value)).join('')}`).join('')}`;

const browserPath = chromium();
if (browserPath === null) {
  process.exitCode = 1;
} else {
  process.env['CORENOSE_CHROMIUM'] = browserPath;
  const [out = 'tip-gallery.png'] = process.argv.slice(2);
  const browser = await launchBrowser();
  const tab = await browser.newPage({ viewport: { width: 1900, height: 1000 } });
  await tab.setContent(page);
  await tab.screenshot({ path: out, fullPage: true });
  await browser.close();
}
