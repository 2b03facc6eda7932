/* Declarations as they are written, with what is said of them: a script of their own in the build. */
declare module '*/trade-functions.ts?whole' {
  export const TRADE: readonly import('../language/functions/declaration.ts').FunctionDeclaration[];
}
