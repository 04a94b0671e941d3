export { CompareScreen } from './compare/compare-screen.tsx';
export { DropPhotos } from './bring-in/drop-photos.tsx';
export { PhotoLibraryScreen } from './library/library-screen.tsx';
export { PlugPhotoMark, PlugPhotos } from './plug-photos.tsx';
export { PhotosStation } from './photos-station.tsx';
export { usePhotoCount } from './use-photos.ts';
