import { assertNever } from '../../../shared/result.ts';

/** Why a photo cannot be read or measured. */
export type PhotoError =
  | { readonly code: 'no-file' | 'folder' | 'link' | 'not-a-file' | 'not-allowed' | 'empty' | 'incomplete' | 'damaged' | 'stopped' }
  | { readonly code: 'unknown-format'; readonly format?: string }
  | { readonly code: 'too-large'; readonly limitMB: number }
  | { readonly code: 'too-many-pixels'; readonly limitMP: number }
  | { readonly code: 'too-small'; readonly width: number; readonly height: number; readonly least: number }
  | { readonly code: 'too-slow'; readonly seconds: number }
  | { readonly code: 'outside'; readonly which: 'neutral' | 'shell' | 'bore' | 'nose' | 'centreElectrode' | 'groundElectrode'; readonly width: number; readonly height: number };

const FORMATS = 'JPEG, PNG, WebP, TIFF, GIF, AVIF or HEIC';

/** The error in words for a person, with what is allowed. */
export function photoErrorText(error: PhotoError): string {
  switch (error.code) {
    case 'no-file': return 'there is no such file';
    case 'folder': return 'this is a folder; give a picture';
    case 'link': return 'this is a symbolic link; give the picture itself';
    case 'not-a-file': return 'this is not an ordinary file; give a picture';
    case 'not-allowed': return 'this file may not be read';
    case 'empty': return `the file is empty; give a picture (${FORMATS})`;
    case 'incomplete': return 'the picture is incomplete: the file ends too early; copy it again from the camera';
    case 'damaged': return 'the picture is damaged and cannot be read; copy it again from the camera, or save it as JPEG';
    case 'stopped': return 'reading this picture broke off; it may be damaged, save it as JPEG';
    case 'unknown-format': return `${error.format === undefined ? 'not a picture that can be read' : `${error.format} files cannot be read`}; allowed are ${FORMATS}`;
    case 'too-large': return `the file is too large; at most ${error.limitMB} MB are read`;
    case 'too-many-pixels': return `the picture has too many pixels; at most ${error.limitMP} million are read`;
    case 'too-small': return `the picture is too small (${error.width} x ${error.height} pixels); at least ${error.least} on either side are needed`;
    case 'too-slow': return `reading the picture took more than ${error.seconds} seconds and was stopped; save it smaller`;
    case 'outside': return `not within the picture; it is ${error.width} x ${error.height} pixels, upright`;
    default: return assertNever(error);
  }
}
