export { PlugsStation } from './plugs-station.tsx';
