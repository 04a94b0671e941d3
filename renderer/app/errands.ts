import { plugKey } from '../../core/domain/plugs.ts';
import { useReadOnly } from '../state/hooks.ts';
import { sheetPlaces } from '../state/places.ts';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { STATIONS, type Route } from './route.ts';
import { useExport } from './use-export.ts';
import { useKeep } from './use-keep.ts';
import { navigate } from './use-route.ts';
import { useSteps } from './use-steps.ts';

/** Something to do or a place to go to, by its words. `keys`: the shorter way, for next time. */
export type Errand = { readonly words: string; readonly keys?: string; readonly run: () => void };

const to = (route: Route) => (): void => navigate(route);

function useReadingErrands(): readonly Errand[] {
  const { shell, tray } = useText();
  const { errands: words } = shell;
  const reading = useStore((state) => state.reading);
  const { undo, redo } = useSteps();
  const keep = useKeep();
  const exportSheet = useExport();
  const readOnly = useReadOnly();
  if (reading === null) return [];
  const { id, history } = reading;
  const plugs = sheetPlaces(history.now.sheet).map((place): Errand => (
    { words: words.plug(tray.placeName(place)), run: to({ page: 'reading', id, station: 'plugs', field: plugKey(place.cylinder, place.position) }) }));
  return [
    ...STATIONS.map((station, i): Errand => ({ words: words.station(shell.stations[station]), keys: shell.stationKey(i + 1), run: to({ page: 'reading', id, station }) })),
    ...plugs,
    ...(reading.state === 'draft' && !readOnly ? [{ words: shell.reading.keep, keys: words.keepKey, run: () => void keep() }] : []),
    ...(history.past.length > 0 ? [{ words: shell.undo, keys: words.undoKey, run: undo }] : []),
    ...(history.future.length > 0 ? [{ words: shell.redo, keys: words.redoKey, run: redo }] : []),
    { words: words.export, run: () => void exportSheet(id) },
  ];
}

function useEngineErrands(): readonly Errand[] {
  const { shell, engines: { unnamed } } = useText();
  const { errands: words } = shell;
  const engines = useStore((state) => state.engines);
  const readOnly = useReadOnly();
  const start = async (engineId: string): Promise<void> => {
    const { startReading, tell } = useStore.getState();
    const reply = await startReading(engineId);
    if (reply.ok) navigate({ page: 'reading', id: reply.value, station: 'plugs' });
    else tell({ text: shell.error(reply.error), tone: 'problem' });
  };
  return engines.flatMap(({ id, engine, draft }): readonly Errand[] => [
    ...(readOnly ? [] : [{ words: draft ? words.goOn(engine.name ?? unnamed) : words.start(engine.name ?? unnamed), run: () => void start(id) }]),
    { words: words.openEngine(engine.name ?? unnamed), run: to({ page: 'engine', id }) },
    { words: words.overTime(engine.name ?? unnamed), run: to({ page: 'engine-time', id }) },
    { words: words.heat(engine.name ?? unnamed), run: to({ page: 'engine-heat', id }) },
  ]);
}

function useSettingErrands(): readonly Errand[] {
  const { errands: words } = useText().shell;
  const settings = useStore((state) => state.settings);
  const change = useStore((state) => state.changeSettings);
  const { theme, units, textSize } = settings;
  return [
    ...(['system', 'light', 'dark'] as const).filter((each) => each !== theme).map((each): Errand => ({ words: words.theme[each], run: () => void change({ theme: each }) })),
    ...(['metric', 'inch'] as const).filter((each) => each !== units).map((each): Errand => ({ words: words.units[each], run: () => void change({ units: each }) })),
    ...(['normal', 'large'] as const).filter((each) => each !== textSize).map((each): Errand => ({ words: words.textSize[each], run: () => void change({ textSize: each }) })),
  ];
}

/** All that can be done from where the person is, the nearest first. */
export function useErrands(onKeys: () => void): readonly Errand[] {
  const { shell: { errands: words, allEngines, settings, shortcuts }, knowledge } = useText();
  const readOnly = useReadOnly();
  const [reading, engines, looks] = [useReadingErrands(), useEngineErrands(), useSettingErrands()];
  return [
    ...reading, ...engines,
    { words: allEngines, run: to({ page: 'shelf' }) }, ...(readOnly ? [] : [{ words: words.add, run: to({ page: 'engine-new' }) }]),
    { words: knowledge.place, run: to({ page: 'knowledge' }) }, { words: knowledge.shelves.yours, run: to({ page: 'knowledge', shelf: 'yours' }) },
    { words: settings, run: to({ page: 'settings' }) }, ...looks, { words: shortcuts.title, keys: '?', run: onKeys },
  ];
}

/** Those with all the words typed; those that begin with what was typed come first. */
export function errandsFor(typed: string, errands: readonly Errand[]): readonly Errand[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const holding = errands.filter((errand) => words.every((word) => startsAWord(errand.words.toLowerCase(), word)));
  const first = (errand: Errand): boolean => errand.words.toLowerCase().startsWith(typed.trim().toLowerCase());
  return [...holding.filter(first), ...holding.filter((errand) => !first(errand))];
}

/** `1` finds cylinder 1 and not cylinder 11; letters may stop in the middle of a word. */
function startsAWord(text: string, typed: string): boolean {
  return text.split(/[\s,:]+/).some((word) => (/^\d+$/.test(typed) ? word === typed : word.startsWith(typed)));
}
