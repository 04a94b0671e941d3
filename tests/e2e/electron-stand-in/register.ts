import { registerHooks } from 'node:module';

/** Loaded before the bundled main (`node --import`): from here on, `electron` is the stand-in. */
registerHooks({
  resolve: (specifier, context, next) =>
    (specifier === 'electron' ? { url: new URL('./electron.ts', import.meta.url).href, format: 'module-typescript', shortCircuit: true } : next(specifier, context)),
});
