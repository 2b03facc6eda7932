/* The package's own entry is not a module to Node; the file beside it is one to everybody. */
declare module 'opentype.js/dist/opentype.mjs' {
  export * from 'opentype.js';
}
