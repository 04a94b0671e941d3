/**
 * A reading sheet saved as a file is named so, that the system can tell it from other JSON and a double-click opens it here. A sheet is taken
 * in by what it holds, whatever its name.
 */
export const SHEET_EXTENSION = 'corenose';

/** JSON by its suffix (RFC 6839), of a private tree (RFC 6838). */
export const SHEET_MEDIA_TYPE = 'application/vnd.corenose.reading-sheet+json';
