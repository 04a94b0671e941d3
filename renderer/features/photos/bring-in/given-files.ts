/** What the program can read, by the ends of file names. */
const PICTURES = /\.(jpe?g|png|webp|tiff?|avif|heic|heif|hif|gif)$/i;
export const PICTURE_TYPES = 'image/*,.heic,.heif,.avif,.tif,.tiff';

/** Of a whole folder only the pictures are wanted; what was chosen one by one is taken as it is, and refused with a reason if it is none. */
export const picturesIn = (files: readonly File[]): readonly File[] => files.filter(({ name }) => PICTURES.test(name) && !name.startsWith('.'));

const entriesIn = (folder: FileSystemDirectoryEntry): Promise<readonly FileSystemEntry[]> => {
  const reader = folder.createReader();
  const more = (before: readonly FileSystemEntry[]): Promise<readonly FileSystemEntry[]> =>
    new Promise((done, failed) => { reader.readEntries((some) => { done(some.length === 0 ? before : more([...before, ...some])); }, failed); });
  return more([]);
};

async function filesOf(entry: FileSystemEntry): Promise<readonly File[]> {
  if (entry.isFile) return [await new Promise<File>((done, failed) => { (entry as FileSystemFileEntry).file(done, failed); })];
  const inside = await Promise.all((await entriesIn(entry as FileSystemDirectoryEntry)).map(filesOf));
  return picturesIn(inside.flat());
}

/** The files of a drop, those in dropped folders as well. */
export async function droppedFiles({ items, files }: DataTransfer): Promise<readonly File[]> {
  const entries = [...items].map((item) => item.webkitGetAsEntry()).filter((entry) => entry !== null);
  if (!entries.some(({ isDirectory }) => isDirectory)) return [...files];
  return (await Promise.all(entries.map(filesOf))).flat();
}

/** Whether something carried over the page is files from outside. */
export const carriesFiles = (carried: DataTransfer | null): boolean => carried?.types.includes('Files') ?? false;
