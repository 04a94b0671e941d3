import { describe, expect, it } from 'vitest';
import { DEFAULT_SETTINGS } from '../../../../shared/channels.ts';
import { testProgram, valueOf } from '../../../fixtures/test-program.ts';

const half = { fields: { name: 'Half written', fitment: { heat: { scale: 'Kelvane' } } }, raw: { 'fitment.reachMm': '19mm' } };
const ENGINE = '00000000-0000-4000-8000-000000000001';

describe('an engine that is being written down', () => {
  it('is kept as it stands, half a heat value and a number that cannot be taken included, until it is let go', async () => {
    const { handlers } = await testProgram();
    valueOf(await handlers['engine-draft.keep']({ of: 'new', draft: half }));
    valueOf(await handlers['engine-draft.keep']({ of: ENGINE, draft: { fields: { cylinders: 4 }, raw: {} } }));
    valueOf(await handlers['engine-draft.keep']({ of: ENGINE, draft: { fields: { cylinders: 6 }, raw: {} } }));
    expect(valueOf(await handlers['engine-draft.list'](null))).toEqual({ new: half, [ENGINE]: { fields: { cylinders: 6 }, raw: {} } });
    valueOf(await handlers['engine-draft.keep']({ of: 'new', draft: null }));
    expect(Object.keys(valueOf(await handlers['engine-draft.list'](null)))).toEqual([ENGINE]);
  });

  it('is no setting of the program', async () => {
    const { handlers } = await testProgram();
    valueOf(await handlers['engine-draft.keep']({ of: 'new', draft: half }));
    expect(valueOf(await handlers['settings.get'](null))).toEqual(DEFAULT_SETTINGS);
  });

  it('belongs to the library in which it was begun', async () => {
    const { handlers } = await testProgram();
    valueOf(await handlers['engine-draft.keep']({ of: 'new', draft: half }));
    valueOf(await handlers['library.use']({ kind: 'demo' }));
    expect(valueOf(await handlers['engine-draft.list'](null))).toEqual({});
    valueOf(await handlers['library.use']({ kind: 'own' }));
    expect(valueOf(await handlers['engine-draft.list'](null))).toEqual({ new: half });
  });
});
