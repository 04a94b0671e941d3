import { CURE_TRUST, UNCLEANED } from '../../../core/knowledge/cures.ts';
import { HEALTHY_CYLINDER, HEALTHY_PLUG, HEALTHY_SYMPTOM } from '../../../core/knowledge/findings.ts';
import { PRIORS, STRENGTHS } from '../../../core/knowledge/strengths.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Fold } from '../../ui/fold.tsx';
import { useTold } from '../../ui/use-told.ts';
import { entryHref, lineHref, wordHref } from './addresses.ts';
import { Reason } from './line-row.tsx';
import { lineWords } from './line-words.ts';
import lineStyles from './lines.module.css';
import { useLooking } from './looking.ts';
import styles from './page.module.css';
import { Part } from './part.tsx';
import { MoveScale, PriorScale, StrengthScale } from './scales.tsx';
import { StrengthWord, useFactor } from './strength.tsx';
import { CURED_KINDS, CURES_KEY, isMove, isPrior, isStrength, usesOf, WELL_KEY, type Uses } from './uses.ts';

type Place = { readonly key: string; readonly href: string; readonly said: string };

/** The places of each kind, in words and with their addresses. */
function usePlaces(word: string): readonly (readonly [kind: keyof Uses, places: readonly Place[]])[] {
  const { knowledge } = useLooking();
  const text = useText().knowledge;
  const told = useTold();
  const { common, checks, cures, ...lines } = usesOf(word, knowledge);
  const line = (key: string): Place => ({ key, href: lineHref(key, knowledge), said: lineWords(key, knowledge, { knowledge: text, told }) });
  const ofLines = Object.entries(lines).map(([kind, keys]) => [kind as keyof typeof lines, keys.map(line)] as const);
  const all = [
    ...ofLines,
    ['common', common.map(({ id, name }) => ({ key: id, href: entryHref('causes', id), said: told.cause(id, name) }))],
    ['checks', checks.map(({ id, name }) => ({ key: id, href: entryHref('checks', id), said: told.check(id, name) }))],
    ['cures', cures.map((kind) => ({ key: kind, href: wordHref(CURES_KEY), said: text.kinds[kind] }))],
  ] as const;
  return all.filter(([, places]) => places.length > 0);
}

function UsedIn({ word }: { word: string }) {
  const { words } = useText().knowledge;
  const places = usePlaces(word);
  return (
    <Part title={words.used}>
      {places.length === 0 && <p>{words.unused}</p>}
      {places.map(([kind, list]) => (
        <Fold key={`${word} ${kind}`} title={words.uses[kind]} summary={words.places(list.length)}>
          <ul className={styles.plain}>{list.map(({ key, href, said }) => <li key={key}><a href={href}>{said}</a></li>)}</ul>
        </Fold>
      ))}
    </Part>
  );
}

type Shown = { readonly name: string; readonly about: string; readonly number: string; readonly scale: React.ReactNode };

function useShown(word: string): Shown | undefined {
  const factor = useFactor();
  const { words, strengths, priors, moves, intro } = useText().knowledge;
  const share = (p: number): string => words.standsFor(intro.inHundred(formatNumber(100 * p, 1)));
  if (isStrength(word)) return { name: strengths[word], about: words.strengthAbout, number: share(STRENGTHS[word]), scale: <StrengthScale here={word} /> };
  if (isPrior(word)) return { name: priors[word], about: words.priorAbout, number: share(PRIORS[word]), scale: <PriorScale here={word} /> };
  if (isMove(word)) return { name: moves[word], about: words.moveAbout, number: words.standsFor(factor(word)), scale: <MoveScale here={word} /> };
  return undefined;
}

/** @param lead what it is @param more what to bear in mind with it */
const Head = ({ name, lead, more }: { name: string; lead: string; more: string }) => (
  <header className={styles.head}>
    <h2>{name}</h2>
    <p className={styles.lead}>{lead}</p>
    <p>{more}</p>
  </header>
);

function OneWord({ word, shown: { name, about, number, scale } }: { word: string; shown: Shown }) {
  const { words } = useText().knowledge;
  return (
    <>
      <Head name={name} lead={`${number} ${about}`} more={words.graded} />
      <Part title={words.scale}>{scale}</Part>
      <UsedIn word={word} />
    </>
  );
}

/** How far the cures of each kind of cause are trusted, and why. */
function Cures() {
  const { words, kinds } = useText().knowledge;
  return (
    <>
      <Head name={words.cures} lead={words.curesAbout} more={words.uncleaned(formatNumber(100 * UNCLEANED, 0))} />
      <ul className={lineStyles.lines}>
        {CURED_KINDS.map((kind) => (
          <li key={kind} className={lineStyles.line}>
            <div className={lineStyles.says}><span className={lineStyles.what}>{kinds[kind]}</span><StrengthWord word={CURE_TRUST[kind].holds} /></div>
            <Reason {...CURE_TRUST[kind]} />
          </li>
        ))}
      </ul>
    </>
  );
}

type Weights = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** In hundredths; fine where it is next to nothing, or to all. */
const formatShare = (p: number): string => formatNumber(100 * p, p < 0.01 ? 2 : p > 0.99 ? 1 : 0);

/** Each value with its share of the whole. */
function Shares({ title, of }: { title: string; of: Weights }) {
  const { words, finding } = useText().knowledge;
  return (
    <Part title={title}>
      <dl className={styles.facts}>
        {Object.entries(of).map(([name, weights]) => {
          const all = Object.values(weights).reduce((sum, weight) => sum + weight, 0);
          const shares = Object.entries(weights).map(([value, weight]) => words.share(value, formatShare(weight / all)));
          return [<dt key={name}>{finding(name)}</dt>, <dd key={`${name} shares`}>{shares.join(', ')}</dd>];
        })}
      </dl>
    </Part>
  );
}

function Well() {
  const { words } = useText().knowledge;
  return (
    <>
      <Head name={words.well} lead={words.wellAbout} more={words.wellSymptom(formatNumber(100 * HEALTHY_SYMPTOM, 0))} />
      <Shares title={words.wellPlug} of={HEALTHY_PLUG} />
      <Shares title={words.wellCylinder} of={HEALTHY_CYLINDER} />
    </>
  );
}

/** One word of the knowledge: the number it stands for, its neighbours on the scale, and every place that uses it. */
export function WordPage({ word }: { word: string }) {
  const shown = useShown(word);
  if (word === CURES_KEY) return <Cures />;
  return shown === undefined ? <Well /> : <OneWord word={word} shown={shown} />;
}

export const isWord = (id: string): boolean => isStrength(id) || isPrior(id) || isMove(id) || id === CURES_KEY || id === WELL_KEY;
