import { lineKey } from '../../core/shop-lines/line-key.ts';
import type { CauseFinding, Fact, Findings, NextCheck, PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { followUpLines } from './follow-up-text.ts';
import { cylindersIn, percent, wrapped } from './lines.ts';

const MOST_CAUSES = 3;
const MOST_FACTS = 3;
const MOST_CHECKS = 3;

/** Findings as lines for people, at most 100 columns wide, most urgent first. */
export function findingsText(findings: Findings, sheet: ReadingSheet): string {
  const { engine, knowledge, plugs } = findings;
  const title = [sheet.engine.name ?? `${sheet.engine.cylinders}-cylinder engine`, sheet.date?.slice(0, 10)].filter((part) => part !== undefined).join(', ');
  const sections = [
    [title, wrapped(findings.summary)],
    ...(findings.followUp === undefined ? [] : [followUpLines(findings.followUp)]),
    section('Stop', findings.stop.map(({ why, cylinder }) => wrapped(why, `  ${cylinder === undefined ? '' : `cylinder ${cylinder}: `}`))),
    section('Plan', findings.plan.flatMap(({ order, do: what, because, cylinder }) => [
      wrapped(`${cylinder === undefined ? '' : `Cylinder ${cylinder}: `}${what}`, `${String(order).padStart(3)}. `), wrapped(`because ${because}`, '     '),
    ])),
    section('Heat value of the plug', heatLines(findings.heat)),
    ...plugs.map(plugLines),
    section('The engine as a whole', [
      wrapped(engine.pattern, '  '), ...engine.causes.slice(0, MOST_CAUSES).flatMap((cause) => causeLines(cause, ownPlace(cause))), ...engine.nextChecks.slice(0, MOST_CHECKS).map(checkLine),
      ...(engine.doubts ?? []).map((line) => wrapped(line, '  doubt: ')),
    ]),
    section('Cautions', findings.cautions.map((line) => wrapped(line, '  - '))),
    section('Lines of the workshop that took part', (knowledge.shopLines ?? []).map((line) => wrapped(`${lineKey(line)}. ${line.because} (${line.by})`, '  - '))),
    [wrapped(`Percentages are graded expert knowledge (knowledge ${knowledge.version}), not counted failures. The engine maker's data comes first.`)],
  ];
  return `${sections.filter((lines) => lines.length > 0).map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

const section = (title: string, lines: readonly string[]): string[] => (lines.length === 0 ? [] : [title, ...lines]);

/** What the thermal model says beside the tips, or what it would need to know. */
function modelLines(model: Findings['heat']['model']): string[] {
  if (model === undefined) return [];
  const { words, missing, assumed } = model;
  return [
    ...words.map((line) => wrapped(line, '  model: ')),
    ...(missing.length === 0 ? [] : [wrapped(`Not asked; the record lacks ${missing.join(', ')}.`, '  model: ')]),
    ...(assumed.length === 0 ? [] : [wrapped(`Assumed: ${assumed.join(', ')}.`, '  model: ')]),
  ];
}

function heatLines({ words, when, belief, why, first, cautions, model }: Findings['heat']): string[] {
  return [
    wrapped(`${words}${when === 'now' ? '' : `, ${when}`} (${percent(belief)})`, '  '),
    ...why.map((line) => wrapped(line, '  - ')),
    ...modelLines(model),
    ...first.map((line) => wrapped(line, '  first: ')),
    ...cautions.map((line) => wrapped(line, '  caution: ')),
  ];
}

function plugLines(plug: PlugFindings): string[] {
  const { cylinder, position, verdict, also, belief, thermal, preIgnitionRisk, causes, nextChecks, doubts } = plug;
  const name = `Cylinder ${cylinder}${position === 'only' ? '' : ` ${position}`}`;
  const besides = also.length === 0 ? '' : `, also ${also.join(', ')}`;
  const heat = `tip too cold ${percent(thermal.tooCold)}, in its window ${percent(thermal.inWindow)}, too hot ${percent(thermal.tooHot)}; pre-ignition risk ${preIgnitionRisk}`;
  const quiet = verdict === 'normal' && also.length === 0;
  return [
    wrapped(`${verdict} (${percent(belief)})${besides}`, `${name}: `),
    wrapped(heat, '  '),
    ...(quiet ? [] : causes.slice(0, MOST_CAUSES).flatMap((cause) => causeLines(cause))),
    ...(quiet ? [] : nextChecks.slice(0, MOST_CHECKS).map(checkLine)),
    ...doubts.map((line) => wrapped(line, '  doubt: ')),
  ];
}

/** The cylinder of a cause that is told of the engine; where it may be any of several, all. */
const ownPlace = ({ scope, cylinders }: CauseFinding): string =>
  (scope === 'plug' || scope === 'cylinder' ? `, ${cylinders.length === 1 ? '' : 'one of '}${cylindersIn(cylinders)}` : '');

function causeLines({ name, belief, scope, cylinders, supports, speaksAgainst }: CauseFinding, place = ''): string[] {
  const where = place !== '' ? place : scope === 'group' ? `, shared by ${cylindersIn(cylinders)}` : scope === 'engine' ? ', whole engine' : '';
  return [
    wrapped(`${name}${where} (${percent(belief)})`, '  cause: '),
    ...supports.slice(0, MOST_FACTS).map((fact) => factLine('for', fact)),
    ...speaksAgainst.slice(0, MOST_FACTS).map((fact) => factLine('against', fact)),
  ];
}

function factLine(side: string, { text, bits, because, addedBy }: Fact): string {
  const own = addedBy === undefined ? '' : ` [own line, ${addedBy}]`;
  return wrapped(`${text} (${bits > 0 ? '+' : ''}${bits.toFixed(1)} bits): ${because}${own}`, `    ${side}: `);
}

const checkLine = ({ name, cylinder, gainBits, effortMinutes, why }: NextCheck): string =>
  wrapped(`${name}${cylinder === undefined ? '' : `, cylinder ${cylinder}`} (about ${effortMinutes} min, tells ${gainBits.toFixed(2)} bits): ${why}`, '  next: ');
