import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import { NEAREST_STACK } from './shim-stack.ts';

/** All functions of the trade, for the language, the help and the tests. */
export const TRADE: readonly FunctionDeclaration[] = [NEAREST_STACK];
