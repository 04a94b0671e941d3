import type { Settings } from '../../../shared/channels.ts';
import { OpenLibrary } from '../../app/open-library.tsx';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Choice } from '../../ui/choice.tsx';
import { Notice } from '../../ui/notice.tsx';
import styles from './settings-screen.module.css';

function Appearance() {
  const { settings: words, shell } = useText();
  const settings = useStore((state) => state.settings);
  const problem = useStore((state) => state.settingsProblem);
  const change = useStore((state) => state.changeSettings);
  const setter = <K extends keyof Settings>(key: K) => (value: Settings[K] | undefined): void => {
    if (value !== undefined) void change({ [key]: value });
  };
  return (
    <section className={styles.part}>
      <Choice label={words.theme} options={['system', 'light', 'dark'] as const} nameOf={(name) => words.themes[name]} value={settings.theme} always onChange={setter('theme')} />
      <Choice label={words.units} options={['metric', 'inch'] as const} nameOf={(name) => words.unitChoices[name]} value={settings.units} always onChange={setter('units')} />
      <Choice label={words.textSize} options={['normal', 'large'] as const} nameOf={(name) => words.textSizes[name]} value={settings.textSize} always onChange={setter('textSize')} />
      {problem !== null && <Notice tone="problem" title={words.notSaved}>{shell.error(problem)}</Notice>}
    </section>
  );
}

function Library() {
  const { settings: words } = useText();
  const library = useStore((state) => state.info?.library);
  if (library === undefined) return null;
  const other = library.kind === 'own' ? 'demo' : 'own';
  return (
    <section className={styles.part}>
      <h2>{words.library}</h2>
      <dl className={styles.facts}>
        <dt>{words.open}</dt><dd>{words.libraryKinds[library.kind]}{library.readOnly && ` · ${words.readOnly}`}</dd>
        <dt>{words.folder}</dt><dd className={styles.folder}>{library.folder}</dd>
      </dl>
      <p className={styles.soft}>{words.demoNote}</p>
      <div><OpenLibrary kind={other} words={other === 'demo' ? words.useDemo : words.useOwn} /></div>
    </section>
  );
}

function About() {
  const { settings: words } = useText();
  const info = useStore((state) => state.info);
  if (info === null) return null;
  return (
    <section className={styles.part}>
      <h2>{words.about}</h2>
      <dl className={styles.facts}>
        <dt>{words.version}</dt><dd>{info.version}</dd>
        <dt>{words.knowledge}</dt><dd>{info.knowledge}</dd>
        <dt>{words.host}</dt><dd>{words.hosts[info.host]}</dd>
      </dl>
    </section>
  );
}

/** How the page looks and counts, which library is open, and what the program is. */
export function SettingsScreen() {
  return (
    <div className={styles.settings}>
      <h1>{useText().settings.title}</h1>
      <Appearance />
      <Library />
      <About />
    </div>
  );
}
