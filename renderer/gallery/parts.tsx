import { useState, type ReactNode } from 'react';
import { enginePlan } from '../../core/domain/engine-plan.ts';
import type { Engine } from '../../shared/formats/engine.ts';
import { Button, ButtonLink, GlyphButton } from '../ui/button.tsx';
import { Choice } from '../ui/choice.tsx';
import { Citations } from '../ui/citations.tsx';
import { Dialog } from '../ui/dialog.tsx';
import { Fold } from '../ui/fold.tsx';
import * as glyphs from '../ui/glyphs.tsx';
import { Menu } from '../ui/menu.tsx';
import { Notice } from '../ui/notice.tsx';
import { PlanCaption, PlanDrawing } from '../ui/plan-drawing.tsx';
import { QuantityField } from '../ui/quantity-field.tsx';
import { SelectField } from '../ui/select-field.tsx';
import { Slider } from '../ui/slider.tsx';
import { Tag } from '../ui/tag.tsx';
import { TextField } from '../ui/text-field.tsx';
import styles from './gallery.module.css';

const OPTIONS = ['first', 'second', 'third'] as const;
const ENGINES: readonly Engine[] = [
  { use: 'road', cylinders: 1 }, { use: 'road', cylinders: 4, layout: 'inline' }, { use: 'road', cylinders: 8, layout: 'vee' },
  { use: 'aircraft', cylinders: 4, layout: 'flat', plugsPerCylinder: 2 }, { use: 'aircraft', cylinders: 18, layout: 'radial', plugsPerCylinder: 2 },
];

const Part = ({ title, children }: { title: string; children: ReactNode }) => (
  <section className={styles.part}><h2>{title}</h2><div className={styles.row}>{children}</div></section>
);

const Buttons = () => (
  <Part title="Buttons">
    {(['plain', 'main', 'quiet', 'danger'] as const).map((look) => <Button key={look} look={look}>{look}</Button>)}
    <Button disabled>disabled</Button><ButtonLink href="#/">link</ButtonLink>
    {Object.entries(glyphs).map(([name, Glyph]) => <GlyphButton key={name} name={name}><Glyph /></GlyphButton>)}
    <Menu words="Menu" name="Menu" items={[{ words: 'one', onSelect: () => undefined }, { words: 'grave', grave: true, onSelect: () => undefined }]} />
  </Part>
);

function Fields() {
  const [chosen, setChosen] = useState<(typeof OPTIONS)[number] | undefined>('second');
  const [words, setWords] = useState('');
  const [number, setNumber] = useState<number | undefined>(0.7);
  const [raw, setRaw] = useState<string>();
  return (
    <Part title="Fields">
      <Choice label="Choice" options={OPTIONS} value={chosen} onChange={setChosen} />
      <SelectField label="Select" options={OPTIONS} value={chosen} onChange={setChosen} none="none" />
      <TextField label="Text" hint="A hint" value={words} onChange={setWords} />
      <TextField label="Text with a problem" problem="What is wrong" lines="several" value={words} onChange={setWords} />
      <QuantityField label="Gap" quantity="length" range={[0.1, 3]} value={number} raw={raw} onEntry={(value, typed) => { setNumber(value); setRaw(typed); }} />
      <Slider label="Slider" remark="remark" value={number ?? 0} shown={String(number)} least={0} most={3} step={0.1} onChange={setNumber} />
      <Tag on={words !== ''} onChange={(on) => setWords(on ? 'on' : '')}>tag</Tag>
    </Part>
  );
}

/** All components, each in its states. */
export function Parts() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Buttons />
      <Fields />
      <Part title="Notices">
        <Notice title="Plain">Something to know.</Notice><Notice tone="problem" title="Problem">Something to mend.</Notice>
        <Fold title="Fold" summary="what is in it">Inside.</Fold><Citations ids={['S60', 'common practice']} />
        <Button onClick={() => setOpen(true)}>Dialog</Button><Dialog title="Dialog" about="About it." open={open} onOpenChange={setOpen}>Inside.</Dialog>
      </Part>
      <Part title="Plans">
        {ENGINES.map((engine) => {
          const plan = enginePlan(engine);
          return <figure key={`${engine.layout}${engine.cylinders}`} style={{ width: 220 }}><PlanDrawing plan={plan} label="" /><PlanCaption plan={plan} /></figure>;
        })}
      </Part>
    </>
  );
}
