export { HeatScreen } from './heat-screen.tsx';
