/** The part of the reactive runtime that the project uses; the package ships no types. */
declare module '@observablehq/runtime' {
  export interface Observer {
    pending?(): void;
    fulfilled?(value: unknown, name: string | undefined): void;
    rejected?(error: unknown, name: string | undefined): void;
  }

  export interface Variable {
    define(
      name: string,
      inputs: readonly string[],
      definition: (...values: unknown[]) => unknown,
    ): Variable;
    delete(): void;
  }

  export interface Module {
    variable(observer?: Observer | true): Variable;
  }

  export class Runtime {
    constructor(builtins?: Readonly<Record<string, unknown>>, global?: (name: string) => unknown);
    module(): Module;
    dispose(): void;
  }
}
