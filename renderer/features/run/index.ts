export { RunStation } from './run-station.tsx';
