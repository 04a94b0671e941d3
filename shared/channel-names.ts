/** Every call the page can make of its host. Names only: the preload bundles this file and nothing else of ours. */
export const CHANNELS = [
  'app.info',
  'settings.get', 'settings.save',
  'library.use', 'library.recover',
  'engine.list', 'engine.save', 'engine.remove', 'engine.restore',
  'engine-draft.list', 'engine-draft.keep',
  'reading.list', 'reading.get', 'reading.start', 'reading.save', 'reading.keep', 'reading.reopen', 'reading.remove', 'reading.restore',
  'reading.import', 'reading.opened', 'reading.export', 'reading.timeline', 'reading.since',
  'heat.record', 'heat.add', 'heat.remove', 'heat.restore',
  'photo.list', 'photo.get', 'photo.ofEngine', 'photo.library', 'photo.place', 'photo.remove', 'photo.restore', 'photo.measure', 'photo.mark', 'photo.check',
  'shop.list', 'shop.save', 'shop.remove', 'shop.restore', 'shop.import', 'shop.export',
  'first-look', 'diagnose',
] as const;
export type Channel = (typeof CHANNELS)[number];

/** The event on the page's window that tells it to ask for `reading.opened`. */
export const FILE_OPENED = 'corenose-file-opened';
