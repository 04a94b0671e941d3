// Plain JavaScript that any Node can run: it lets a Node that is too old say what to do instead of failing on the first TypeScript file.
const OLDEST = [22, 18];
const [major, minor] = process.versions.node.split('.').map(Number);
const [file, ...args] = process.argv.slice(2);

if (major < OLDEST[0] || (major === OLDEST[0] && minor < OLDEST[1])) {
  console.error(`This is Node ${process.versions.node}; Corenose needs ${OLDEST.join('.')} or newer. Run "npm install" again: it brings Node 24, and "npm start" then uses it.`);
  process.exitCode = 1;
} else {
  const { resolve } = await import('node:path');
  const { pathToFileURL } = await import('node:url');
  const path = resolve(file);
  process.argv.splice(1, process.argv.length - 1, path, ...args);
  await import(pathToFileURL(path).href);
}
