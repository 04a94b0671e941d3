declare module 'heic-decode' {
  function decode(picture: { readonly buffer: Uint8Array }): Promise<{ readonly width: number; readonly height: number; readonly data: Uint8ClampedArray }>;
  export { decode as default };
}
