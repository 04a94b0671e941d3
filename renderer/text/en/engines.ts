export const engines = {
  shelf: 'Engines',
  add: 'Add an engine',
  unnamed: 'Engine without a name',
};
