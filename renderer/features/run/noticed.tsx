import { useId, useRef, useState, type KeyboardEvent } from 'react';
import { useAct, useIsKept, useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { Tag } from '../../ui/tag.tsx';
import { TextField } from '../../ui/text-field.tsx';
import { useKeys } from '../../ui/use-keys.ts';
import { SYMPTOM_GROUPS, TAG_GROUPS } from './groups.ts';
import { matches } from './matches.ts';
import styles from './run.module.css';
import { SymptomRow } from './symptom-row.tsx';

/** What of the two lists a search leaves. */
function useFound(typed: string) {
  const text = useText().run;
  const symptomGroups = SYMPTOM_GROUPS.map(({ group, symptoms }) => ({ group, symptoms: symptoms.filter((what) => matches(text.symptoms[what], typed)) }));
  const tagGroups = TAG_GROUPS.map(({ group, tags }) => ({ group, tags: tags.filter((tag) => matches(text.tags[tag], typed)) }));
  return { symptomGroups: symptomGroups.filter(({ symptoms }) => symptoms.length > 0), tagGroups: tagGroups.filter(({ tags }) => tags.length > 0) };
}

/** Symptoms and circumstances under one search: / goes to it, a few letters and Enter mark the first one found. */
export function Noticed() {
  const text = useText().run;
  const act = useAct();
  const disabled = useIsKept();
  const { symptoms: noted } = useSheet();
  const [typed, setTyped] = useState('');
  const [told, setTold] = useState('');
  const search = useRef<HTMLDivElement>(null);
  /** What a search finds stands below it, so it goes to the top. */
  const show = (): void => search.current?.scrollIntoView({ block: 'start' });
  useKeys({ '/': () => { search.current?.querySelector('input')?.focus(); show(); } });
  const { symptomGroups, tagGroups } = useFound(typed);
  const count = symptomGroups.reduce((sum, { symptoms }) => sum + symptoms.length, 0) + tagGroups.reduce((sum, { tags }) => sum + tags.length, 0);

  const markFirst = (): void => {
    const symptom = symptomGroups[0]?.symptoms[0];
    const tag = tagGroups[0]?.tags[0];
    if (typed.trim() === '' || disabled || (symptom === undefined && tag === undefined)) return;
    if (symptom !== undefined) {
      if (noted?.some(({ what }) => what === symptom) !== true) act({ type: 'symptom', what: symptom, on: true });
      setTold(text.marked(text.symptoms[symptom]));
    } else if (tag !== undefined) {
      act({ type: 'tag', tag, on: true });
      setTold(text.marked(text.tags[tag]));
    }
    setTyped('');
  };
  const onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') { event.preventDefault(); markFirst(); }
    if (event.key === 'Escape') setTyped('');
  };

  return (
    <section className={styles.block} aria-labelledby="noticed">
      <h2 id="noticed">{text.noticed}</h2>
      <p className={styles.hint}>{text.noticedHint}</p>
      <div ref={search} role="search" className={styles.search} data-field="noticed" onKeyDown={onKey}>
        <TextField label={text.filter} value={typed} onChange={(next) => { if (typed === '') show(); setTyped(next); setTold(''); }} hint={text.filterHint} />
        <p role="status" className={styles.told}>{typed.trim() === '' ? told : text.found(count)}</p>
      </div>
      <SymptomLists groups={symptomGroups} />
      <TagLists groups={tagGroups} />
    </section>
  );
}

function SymptomLists({ groups }: { groups: ReturnType<typeof useFound>['symptomGroups'] }) {
  const text = useText().run;
  if (groups.length === 0) return null;
  return (
    <>
      <h3>{text.symptomsTitle}</h3>
      <div className={styles.columns}>
        {groups.map(({ group, symptoms }) => (
          <div key={group} className={styles.group}>
            <h4>{text.symptomGroups[group]}</h4>
            <ul>{symptoms.map((what) => <SymptomRow key={what} what={what} />)}</ul>
          </div>
        ))}
      </div>
    </>
  );
}

function TagLists({ groups }: { groups: ReturnType<typeof useFound>['tagGroups'] }) {
  const id = useId();
  const text = useText().run;
  const act = useAct();
  const disabled = useIsKept();
  const { conditions } = useSheet();
  if (groups.length === 0) return null;
  return (
    <>
      <h3>{text.tagsTitle}</h3>
      {groups.map(({ group, tags }) => (
        <div key={group} role="group" aria-labelledby={`${id}-${group}`} className={styles.tagGroup}>
          <h4 id={`${id}-${group}`}>{text.tagGroups[group]}</h4>
          <div className={styles.tags}>
            {tags.map((tag) => (
              <Tag key={tag} on={conditions?.tags?.includes(tag) === true} onChange={(on) => act({ type: 'tag', tag, on })} disabled={disabled}>{text.tags[tag]}</Tag>
            ))}
          </div>
        </div>
      ))}
    </>
  );
}
