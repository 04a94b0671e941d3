import { FuseV1Options, FuseVersion, type FuseV1Config } from '@electron/fuses';

/**
 * What the packaged binary can still be talked into. Every fuse is stated; a binary that has one more cannot be packaged before it is
 * stated here too. Meanings: Electron's documentation, "Electron Fuses".
 */
export const FUSES: FuseV1Config & { readonly strictlyRequireAllFuses: true } = {
  version: FuseVersion.V1,
  strictlyRequireAllFuses: true,
  /** Off: the signed program is nobody's Node. Photos are decoded in a utility process, which does not need it. */
  [FuseV1Options.RunAsNode]: false,
  /** Off: the program keeps no cookies, and encrypting none would ask the person for their keychain. */
  [FuseV1Options.EnableCookieEncryption]: false,
  /** Off: no environment variable loads code into the program. */
  [FuseV1Options.EnableNodeOptionsEnvironmentVariable]: false,
  /** Off: no switch or signal opens a debugger on it. */
  [FuseV1Options.EnableNodeCliInspectArguments]: false,
  /** On: a changed archive is not loaded. The system must support it: macOS and Windows do. */
  [FuseV1Options.EnableEmbeddedAsarIntegrityValidation]: true,
  /** On: the archive is the only place where the program is looked for, so that nothing laid beside it goes first. */
  [FuseV1Options.OnlyLoadAppFromAsar]: true,
  /** Off: the main process has no start-up snapshot of its own. */
  [FuseV1Options.LoadBrowserProcessSpecificV8Snapshot]: false,
  /** Off: the page has its own scheme; nothing is loaded from file addresses. */
  [FuseV1Options.GrantFileProtocolExtraPrivileges]: false,
  /** On, as Electron has it: the HEIC decoder is WebAssembly, and slower without. */
  [FuseV1Options.WasmTrapHandlers]: true,
};
