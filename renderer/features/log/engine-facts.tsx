import { enginePlan } from '../../../core/domain/engine-plan.ts';
import { sharingGroups } from '../../../core/domain/sharing.ts';
import type { Engine, Fitment } from '../../../shared/formats/engine.ts';
import { hrefOf } from '../../app/route.ts';
import { useText } from '../../text/index.ts';
import { PlanCaption, PlanDrawing } from '../../ui/plan-drawing.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import { useTold } from '../../ui/use-told.ts';
import styles from './engine-log.module.css';

function WantedPlug({ id, fitment }: { id: string; fitment: Fitment | undefined }) {
  const { engines: { page, edit, kinds }, heat } = useText();
  const quantity = useQuantity();
  const word = (kind: keyof typeof kinds | undefined): string | undefined => kind && kinds[kind];
  const facts = [
    [edit.thread, fitment?.thread], [edit.reach, fitment?.reachMm && quantity('length', fitment.reachMm)], [edit.seat, word(fitment?.seat)],
    [edit.hex, fitment?.hexMm && quantity('length', fitment.hexMm)], [edit.gap, fitment?.gapMm && quantity('length', fitment.gapMm)],
    [edit.heatValue, fitment?.heat && `${fitment.heat.value} (${fitment.heat.scale})`], [edit.resistor, word(fitment?.resistor)], [edit.projection, word(fitment?.projection)],
  ].filter((fact): fact is [string, string] => fact[1] !== undefined);
  return (
    <section>
      <h2>{page.plugWanted}</h2>
      {facts.length === 0 ? <p className={styles.soft}>{page.plugUnknown}</p> : (
        <dl className={styles.facts}>{facts.map(([name, value]) => <div key={name}><dt>{name}</dt><dd>{value}</dd></div>)}</dl>
      )}
      <p><a href={hrefOf({ page: 'engine-heat', id, part: 'torque' })}>{heat.parts.torque}</a></p>
    </section>
  );
}

function Sharing({ engine }: { engine: Engine }) {
  const { page } = useText().engines;
  const told = useTold();
  const groups = sharingGroups(engine).filter((group) => group.kind !== 'neighbours' && (group.kind === 'ignition set' || group.cylinders.length > 1));
  if (engine.cylinders === 1) return null;
  return (
    <section>
      <h2>{page.shared}</h2>
      {groups.length === 0 ? <p className={styles.soft}>{page.sharedNone}</p> : (
        <ul className={styles.groups}>
          {groups.map((group) => (
            <li key={`${group.kind} ${group.name}`}>
              {group.kind === 'ignition set' ? page.set(group.name, group.plugs) : told.sentence(group.name)}
              {group.derived && <span className={styles.soft}> ({page.derived})</span>}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** What is known of the engine, beside its log: the drawing, what its cylinders share, the plug it asks for. */
export function EngineFacts({ id, engine }: { id: string; engine: Engine }) {
  const { edit } = useText().engines;
  const plan = enginePlan(engine);
  return (
    <aside className={styles.aside}>
      <figure className={styles.plan}>
        <div className={styles.drawing} style={{ aspectRatio: `${plan.width} / ${plan.height}` }}><PlanDrawing plan={plan} label={edit.plan} /></div>
        <figcaption><PlanCaption plan={plan} /></figcaption>
      </figure>
      <Sharing engine={engine} />
      <WantedPlug id={id} fitment={engine.fitment} />
    </aside>
  );
}
