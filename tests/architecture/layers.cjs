/** Who may import whom. Arrows point one way: shared <- core <- renderer, and shared <- core <- electron. */
const rules = [
  {
    name: 'shared-is-the-floor',
    comment: 'shared/ holds words, schemas and types that both sides trust; it may stand on nothing but zod.',
    from: { path: '^shared/' },
    to: { pathNot: ['^shared/', 'node_modules/zod/'] },
  },
  {
    name: 'core-is-pure',
    comment: 'The same sheet must give byte-equal findings in the page, the host and the command line: core/ imports shared/ and itself.',
    from: { path: '^core/' },
    to: { pathNot: ['^core/', '^shared/'] },
  },
  {
    name: 'page-not-host',
    comment: 'The page could run in any browser; it reaches the host through the bridge only.',
    from: { path: '^renderer/', pathNot: '^renderer/vite[.]config' },
    to: { path: ['^electron/', 'node_modules/electron/', '^seeds/'] },
  },
  {
    name: 'page-no-builtins',
    comment: 'No Node in the page, not even for types.',
    from: { path: '^renderer/', pathNot: '^renderer/vite[.]config' },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'host-not-page',
    comment: 'The host serves the page as files and knows nothing of its code.',
    from: { path: '^electron/' },
    to: { path: '^renderer/', pathNot: '^renderer/vite[.]config' },
  },
  {
    name: 'node-without-electron',
    comment: 'What stores, serves and prints runs under plain Node: in tests, at the command line and where there is no Electron.',
    from: { path: '^electron/(node|cli|loopback|start)/' },
    to: { path: ['node_modules/electron/', '^electron/(main|preload)/'] },
  },
  {
    name: 'preload-names-only',
    comment: 'The preload is bundled into the page\'s world; channel names are all it needs to know.',
    from: { path: '^electron/preload/' },
    to: { pathNot: ['^electron/preload/', '^shared/channel-names', 'node_modules/electron/'] },
  },
  {
    name: 'features-by-their-face',
    comment: 'A feature may change inside without asking the others: they import its index.ts.',
    from: { path: '^renderer/features/([^/]+)/' },
    to: { path: '^renderer/features/([^/]+)/(?!index[.])', pathNot: '^renderer/features/$1/' },
  },
  {
    name: 'state-and-ui-below-features',
    comment: 'Features stand on ui, state and text, never the other way round.',
    from: { path: '^renderer/(ui|state|text)/' },
    to: { path: '^renderer/features/' },
  },
  {
    name: 'nothing-imports-tests',
    comment: 'What ships does not lean on what tests it.',
    from: { pathNot: '^tests/' },
    to: { path: '^tests/' },
  },
  {
    name: 'no-cycles',
    comment: 'Two files that need each other are one file, or hide a third.',
    from: { pathNot: '^renderer/state/' },
    to: { circular: true },
  },
  {
    name: 'no-running-cycles',
    comment: 'A slice names the type of the store it is part of; beyond types the store needs the slice and not the other way round.',
    from: { path: '^renderer/state/' },
    to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
  },
  {
    name: 'no-missing-import',
    comment: 'A path that leads nowhere would fail only when it is run.',
    from: {},
    to: { couldNotResolve: true },
  },
  {
    name: 'no-undeclared-package',
    comment: 'A package must stand in package.json, or it vanishes with the one that brought it.',
    from: {},
    to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown'] },
  },
];

module.exports = {
  forbidden: rules.map((rule) => ({ severity: 'error', ...rule })),
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(dist|node_modules/[.]cache)/' },
    enhancedResolveOptions: { conditionNames: ['import', 'node', 'default', 'types'], exportsFields: ['exports'] },
  },
};
