import { CylindersStation } from '../features/checks/index.ts';
import { FindingsStation } from '../features/findings/index.ts';
import { PhotosStation } from '../features/photos/index.ts';
import { RunStation } from '../features/run/index.ts';
import { PlugsStation } from '../features/tray/index.ts';
import type { Station } from './route.ts';

export function StationScreen({ station }: { station: Station }) {
  switch (station) {
    case 'run': return <RunStation />;
    case 'plugs': return <PlugsStation />;
    case 'photos': return <PhotosStation />;
    case 'cylinders': return <CylindersStation />;
    case 'findings': return <FindingsStation />;
  }
}
