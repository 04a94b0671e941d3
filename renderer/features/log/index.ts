export { EngineLog } from './engine-log.tsx';
