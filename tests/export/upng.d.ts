/* The part of the reader of pictures that the tests use. */
declare module 'upng-js' {
  interface Image {
    readonly width: number;
    readonly height: number;
    readonly depth: number;
    readonly ctype: number;
    readonly tabs: Readonly<Record<string, unknown>>;
  }
  const UPNG: {
    decode(buffer: ArrayBuffer): Image;
    toRGBA8(image: Image): readonly ArrayBuffer[];
  };
  export default UPNG;
}
