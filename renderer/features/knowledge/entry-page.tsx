import { COMMON_PRACTICE, FROM_MEMORY, type Knowledge } from '../../../core/knowledge/types.ts';
import type { Shelf } from '../../app/route.ts';
import { useText } from '../../text/index.ts';
import { Notice } from '../../ui/notice.tsx';
import { CausePage } from './cause-page.tsx';
import { CheckPage } from './check-page.tsx';
import { useLooking } from './looking.ts';
import { LooksPage } from './looks-page.tsx';
import { BarPage, CautionPage, ContradictionPage, StopPage } from './rule-pages.tsx';
import { SourcePage } from './source-page.tsx';
import { isWord, WordPage } from './word-page.tsx';

const isSource = (id: string, { sources }: Knowledge): boolean => id === COMMON_PRACTICE || id === FROM_MEMORY || sources.some((source) => source.id === id);

function pageOf(shelf: Shelf, id: string, knowledge: Knowledge): React.ReactNode {
  const named = <T extends { readonly id: string }>(list: readonly T[], page: (each: T) => React.ReactNode): React.ReactNode => {
    const each = list.find((one) => one.id === id);
    return each && page(each);
  };
  switch (shelf) {
    case 'looks': return named(knowledge.conditions, (condition) => <LooksPage condition={condition} />);
    case 'causes': return named(knowledge.causes, (cause) => <CausePage cause={cause} />);
    case 'checks': return named(knowledge.checks, (check) => <CheckPage check={check} />);
    case 'stops': return named(knowledge.stopRules, (rule) => <StopPage rule={rule} />);
    case 'bars': return named(knowledge.barsOnHotter, (bar) => <BarPage bar={bar} />);
    case 'contradictions': return named(knowledge.contradictions, (contradiction) => <ContradictionPage contradiction={contradiction} />);
    case 'cautions': return named(knowledge.cautions, (caution) => <CautionPage caution={caution} />);
    case 'words': return isWord(id) && <WordPage word={id} />;
    case 'sources': return isSource(id, knowledge) && <SourcePage id={id} />;
    case 'yours': case 'here': return null;
  }
}

/** The page of one entry; where nothing is called so it says as much. */
export function EntryPage({ shelf, id }: { shelf: Shelf; id: string }) {
  const { knowledge } = useLooking();
  const text = useText().knowledge;
  return pageOf(shelf, id, knowledge) || <Notice>{text.notThere}</Notice>;
}
