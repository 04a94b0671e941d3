import { useState } from 'react';
import { axialTravel, clampLoad, jointOf, lubricatedTorqueFactor, PLUG_JOINTS, type JointName } from '../../../core/install/clamp-load.ts';
import type { Millimetre, NewtonMetre } from '../../../shared/quantities.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { SelectField } from '../../ui/select-field.tsx';
import { Slider } from '../../ui/slider.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import type { HeatBench } from './bench.ts';
import styles from './heat.module.css';
import { Rows } from './pieces.tsx';

const NAMES = Object.keys(PLUG_JOINTS) as readonly JointName[];
/** Turns after the seat touches. Grade: common practice, no source for a single figure. */
const TURNS = { gasket: [['gasket new', 1 / 2], ['gasket used', 1 / 12]], cone: [['cone', 1 / 16]] } as const;
/** Where the slider stands until the maker's figure is set, N·m. Grade: common practice. */
const USUAL = { 'M10 gasket': 12, 'M12 gasket': 18, 'M14 gasket': 27, 'M18 gasket': 40, 'M14 cone': 18, 'M18 cone': 24 } as const satisfies Record<JointName, number>;

function Loads({ name, torque }: { name: JointName; torque: number }) {
  const { heat: { torque: words } } = useText();
  const quantity = useQuantity();
  const joint = PLUG_JOINTS[name];
  const load = clampLoad(joint, torque as NewtonMetre);
  const force = (value: number): string => quantity('force', value);
  const factor = lubricatedTorqueFactor(joint);
  return (
    <>
      <p className={styles.answer}>{words.load}: {words.loadShown(force(load.middle), force(load.low), force(load.high))}</p>
      <p className={styles.soft}>{words.dry}; {words.range}.</p>
      <Rows label={words.title} rows={[
        [words.oiled, `${quantity('torque', factor * torque)} (${words.times(formatNumber(factor))})`], [words.extra, `${force(load.middle / factor)} (${words.times(formatNumber(1 / factor))})`],
        ...TURNS[joint.faceAngle === 90 ? 'gasket' : 'cone'].map(([turn, turns]) => [`${words.turn}: ${words.turns[turn]}`, quantity('length', axialTravel(turns, joint.pitch as Millimetre))] as const),
      ]} />
    </>
  );
}

/** What a torque does to the seat of the plug this engine asks for. */
export function TorquePart({ engine: { fitment } }: HeatBench) {
  const { heat: { torque: words } } = useText();
  const quantity = useQuantity();
  const own = jointOf(fitment?.thread, fitment?.seat);
  const [name, setName] = useState<JointName>(own ?? 'M14 gasket');
  const [torque, setTorque] = useState<number | undefined>(undefined);
  const value = torque ?? USUAL[name];
  return (
    <>
      <section className={styles.verdict}><h2>{words.title}</h2><p className={styles.lead}>{words.about}</p></section>
      <div className={styles.tried}>
        <section className={styles.sliders} aria-label={words.title}>
          <SelectField label={words.joint} options={NAMES} value={name} none={words.joint} nameOf={(one) => words.joints[one]}
            onChange={(next) => { if (next) setName(next); }} />
          <p className={styles.soft}>{own === undefined ? words.noPage : own === name && words.fromPage}</p>
          <Slider label={words.value} remark={words.grade} value={value} shown={quantity('torque', value)} least={4} most={60} step={0.5} onChange={setTorque} />
        </section>
        <div className={styles.answers}><Loads name={name} torque={value} /></div>
      </div>
      <p><strong>{words.first}</strong></p>
    </>
  );
}
