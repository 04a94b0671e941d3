import type { Handlers } from '../../../shared/channels.ts';
import { engineDraftHandlers } from './engine-drafts.ts';
import { engineHandlers } from './engines.ts';
import { followUpHandlers } from './follow-up.ts';
import type { Given } from './given.ts';
import { heatHandlers } from './heat.ts';
import { libraryHandlers } from './library.ts';
import { photoHandlers } from './photos.ts';
import { readingHandlers } from './readings.ts';
import { sheetHandlers } from './sheets.ts';
import { shopHandlers } from './shop.ts';

/** The one set of handlers behind every host. */
export const handlersFor = (given: Given): Handlers => ({
  ...libraryHandlers(given), ...engineHandlers(given), ...engineDraftHandlers(given), ...readingHandlers(given), ...followUpHandlers(given),
  ...sheetHandlers(given), ...heatHandlers(given), ...shopHandlers(given), ...photoHandlers(given),
});
