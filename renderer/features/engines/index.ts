export { EngineShelf } from './engine-shelf.tsx';
export { EngineEditor } from './engine-editor.tsx';
export { ImportSheet } from './import-sheet.tsx';
export { OpenedSheets } from './opened-sheets.tsx';
export { StartReading } from './start-reading.tsx';
